package turnalike.trace.drawn;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Loose strokes joined end to end into closed ones, and the one among them that is the outline. */
final class Strokes {
    /** Ends nearer than this share of the drawing's size are one. */
    private static final double NEAR = 2e-5;
    /** An outline next to another of at least this share of its area is not the only one. */
    private static final double RIVAL = 0.2;

    /** What lies within a rectangle and has less than this share of its area is a detail of it, and it no frame. */
    private static final double DETAIL = 0.01;

    private static final int MOST = 20_000;
    /** Of more that enclose nothing no outline comes, and to lead on each takes its time. */
    private static final int MOST_LED_ON = 4_000;

    private Strokes() {}

    /**
     * What was chosen, or why nothing was.
     *
     * @param others how many other strokes were left aside
     * @param isFramed whether rectangles round it are among these
     */
    record Choice(Optional<Stroke> outline, String what, int others, boolean isFramed) {
        Choice(Optional<Stroke> outline, String what, int others) {
            this(outline, what, others, false);
        }
    }

    static Choice choose(List<Stroke> drawn) {
        if (drawn.isEmpty()) {
            return new Choice(Optional.empty(), "holds no line that could be an outline", 0);
        }
        if (drawn.size() > MOST) {
            return new Choice(Optional.empty(), "holds more than %d lines".formatted(MOST), 0);
        }
        double size = drawn.stream().mapToDouble(Stroke::size).max().orElse(0);
        List<Stroke> joined = joined(drawn, NEAR * size);
        List<Stroke> closed = new ArrayList<>(joined.stream()
                .filter(each -> each.isClosed() && Math.abs(each.doubleArea()) > 1e-9 * size * size)
                .toList());
        if (closed.isEmpty()) {
            Stroke longest = joined.stream()
                    .max((a, b) -> Double.compare(a.size(), b.size()))
                    .orElseThrow();
            String gap = "its longest line is open: its ends lie %s apart"
                    .formatted(
                            String.format(Locale.ROOT, "%.3g", longest.start().distance(longest.end())));
            return new Choice(Optional.empty(), "has no closed outline (" + gap + ", in the drawing's units)", 0);
        }
        closed.sort((a, b) -> Double.compare(Math.abs(b.doubleArea()), Math.abs(a.doubleArea())));
        double near = NEAR * size;
        boolean isFramed = false;
        while (isRectangle(closed.get(0), near) && closed.size() > 1) {
            Stroke frame = closed.get(0);
            List<Stroke> within = closed.subList(1, closed.size()).stream()
                    .filter(each -> !isSame(frame, each, near)
                            && contains(frame, each.start())
                            && Math.abs(each.doubleArea()) > DETAIL * Math.abs(frame.doubleArea()))
                    .toList();
            if (within.isEmpty()) {
                break;
            }
            if (within.stream().allMatch(each -> isRectangle(each, near))) {
                return rivals(frame, within.get(0), closed.size() - 1);
            }
            closed.remove(0);
            isFramed = true;
        }
        Stroke largest = closed.get(0);
        for (Stroke other : closed.subList(1, closed.size())) {
            boolean rival = Math.abs(other.doubleArea()) > RIVAL * Math.abs(largest.doubleArea());
            if (rival && !contains(largest, other.start()) && !isSame(largest, other, NEAR * size)) {
                return rivals(largest, other, closed.size() - 1);
            }
        }
        return new Choice(Optional.of(largest), "", joined.size() - 1, isFramed);
    }

    private static Choice rivals(Stroke one, Stroke other, int others) {
        return new Choice(
                Optional.empty(),
                "has more than one closed outline, and either may be the piece: %s and %s, in the drawing's units"
                        .formatted(extent(one), extent(other)),
                others);
    }

    /** As “260 by 140”. */
    private static String extent(Stroke stroke) {
        double[] box = stroke.box();
        return rounded(box[1] - box[0]) + " by " + rounded(box[3] - box[2]);
    }

    private static String rounded(double length) {
        return BigDecimal.valueOf(length)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Four sides, level and upright. */
    private static boolean isRectangle(Stroke stroke, double near) {
        double[] box = stroke.box();
        return stroke.spots().stream()
                        .allMatch(each -> isOn(each.x(), box[0], box[1], near) || isOn(each.y(), box[2], box[3], near))
                && Math.abs(Math.abs(stroke.doubleArea()) / 2 - (box[1] - box[0]) * (box[3] - box[2]))
                        <= near * (box[1] - box[0] + box[3] - box[2]);
    }

    private static boolean isOn(double at, double low, double high, double near) {
        return Math.abs(at - low) <= near || Math.abs(at - high) <= near;
    }

    private static boolean isSame(Stroke one, Stroke other, double near) {
        return one.spots().size() == other.spots().size() && one.start().distance(other.start()) < near;
    }

    /** By how often a ray to the right crosses the outline. */
    static boolean contains(Stroke outline, Spot spot) {
        boolean in = false;
        List<Spot> spots = outline.spots();
        for (int i = 0, j = spots.size() - 1; i < spots.size(); j = i++) {
            Spot a = spots.get(i);
            Spot b = spots.get(j);
            if ((a.y() > spot.y()) != (b.y() > spot.y())
                    && spot.x() < (b.x() - a.x()) * (spot.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
        }
        return in;
    }

    /** What open strokes enclose together; of those left each is led on from its end by whichever begins or ends there. */
    private static List<Stroke> joined(List<Stroke> drawn, double near) {
        List<Stroke> out =
                new ArrayList<>(drawn.stream().filter(Stroke::isClosed).toList());
        OuterBorder.Found found =
                OuterBorder.of(drawn.stream().filter(each -> !each.isClosed()).toList(), near);
        out.addAll(found.closed());
        List<Stroke> open = new ArrayList<>(found.rest());
        if (open.size() > MOST_LED_ON) {
            out.addAll(open);
            return out;
        }
        while (!open.isEmpty()) {
            Stroke at = open.remove(open.size() - 1);
            boolean grew = true;
            while (grew && at.start().distance(at.end()) > near) {
                grew = false;
                for (int i = 0; i < open.size() && !grew; i++) {
                    Stroke next = open.get(i);
                    if (next.end().distance(at.end()) <= near && next.start().distance(at.end()) > near) {
                        next = next.reversed();
                    }
                    if (next.start().distance(at.end()) <= near) {
                        List<Spot> spots = new ArrayList<>(at.spots());
                        spots.addAll(next.spots().subList(1, next.spots().size()));
                        at = new Stroke(spots, false, at.layer());
                        open.remove(i);
                        grew = true;
                    }
                }
                if (!grew && !isTurned(at, open, near)) {
                    break;
                }
                if (!grew) {
                    at = at.reversed();
                    grew = true;
                }
            }
            boolean closes = at.spots().size() > 3 && at.start().distance(at.end()) <= near;
            out.add(closes ? new Stroke(at.spots().subList(0, at.spots().size() - 1), true, at.layer()) : at);
        }
        return out;
    }

    /** Whether it can be led on from its start instead. */
    private static boolean isTurned(Stroke at, List<Stroke> open, double near) {
        return open.stream()
                .anyMatch(each ->
                        each.start().distance(at.start()) <= near || each.end().distance(at.start()) <= near);
    }
}
