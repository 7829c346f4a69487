package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Loose strokes joined end to end into closed ones, and the one among them that is the outline. */
final class Strokes {
    /** Ends nearer than this share of the drawing's size are one. */
    private static final double NEAR = 2e-5;
    /** An outline next to another of at least this share of its area is not the only one. */
    private static final double RIVAL = 0.2;

    private static final int MOST = 20_000;

    private Strokes() {}

    /** What was chosen, or why nothing was; and how many other strokes were left aside. */
    record Choice(Optional<Stroke> outline, String what, int others) {}

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
                    .formatted(String.format(
                            java.util.Locale.ROOT, "%.3g", longest.start().distance(longest.end())));
            return new Choice(Optional.empty(), "has no closed outline (" + gap + ", in the drawing's units)", 0);
        }
        closed.sort((a, b) -> Double.compare(Math.abs(b.doubleArea()), Math.abs(a.doubleArea())));
        Stroke largest = closed.get(0);
        for (Stroke other : closed.subList(1, closed.size())) {
            boolean rival = Math.abs(other.doubleArea()) > RIVAL * Math.abs(largest.doubleArea());
            if (rival && !contains(largest, other.start()) && !isSame(largest, other, NEAR * size)) {
                return new Choice(Optional.empty(), "has more than one closed outline", closed.size() - 1);
            }
        }
        return new Choice(Optional.of(largest), "", joined.size() - 1);
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

    /** Each open stroke is led on from its end by whichever open one begins or ends there. */
    private static List<Stroke> joined(List<Stroke> drawn, double near) {
        List<Stroke> out = new ArrayList<>();
        List<Stroke> open = new ArrayList<>();
        for (Stroke each : drawn) {
            if (each.isClosed()) {
                out.add(each);
            } else {
                open.add(each);
            }
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
