package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.LabelSpacing;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;

/**
 * Labels along a piece, each on a leader from its own place. They read upwards, keep their order, and are moved apart just enough: so no
 * label covers another and no leader crosses one. When one row is too short every other label goes to a second row, its leader passing
 * between two labels of the first.
 */
public final class LeaderLabels {
    private static final double GAP = 1.2;

    private final List<Flag> flags;
    private final double[] placesMm;
    private final Way way;
    private final double fanMm;
    private final double rowMm;

    /**
     * One label.
     *
     * @param placeMm where on the paper it points
     * @param number a short bold figure that stands level, if any
     * @param text what it says, reading upwards; may be empty
     * @param tip what a pointer resting on it shows
     * @param attributes what a page finds it by
     */
    public record Flag(double placeMm, String number, String text, String tip, Map<String, String> attributes) {}

    private LeaderLabels(List<Flag> flags, double[] placesMm, Way way) {
        this.flags = flags;
        this.placesMm = placesMm;
        this.way = way;
        this.fanMm = Math.max(2, Math.min(14, farthestMm() * 0.5));
        this.rowMm = numberMm() + longestMm() + 2;
    }

    /** A way of lettering the labels. */
    private record Way(Lettering text, int rows) {}

    /** From the easiest to read to the closest. */
    private static final List<Way> WAYS = List.of(
            new Way(Lettering.BODY, 1),
            new Way(Lettering.SMALL, 1),
            new Way(Lettering.SMALL, 2),
            new Way(Lettering.TINY, 2));

    /** How far a label may stand from its place before closer lettering is chosen instead. */
    private static final double FAR_MM = 24;

    /** Lays the labels out between two places, as large as there is room for; they must be in order of place. */
    public static LeaderLabels between(double leastMm, double mostMm, List<Flag> flags) {
        LeaderLabels out = laid(leastMm, mostMm, flags, WAYS.get(0));
        for (Way way : WAYS) {
            out = laid(leastMm, mostMm, flags, way);
            boolean fits = pitch(flags, way.text()) / way.rows() * flags.size() <= mostMm - leastMm;
            if (fits && out.farthestMm() <= FAR_MM) {
                break;
            }
        }
        return out;
    }

    private static LeaderLabels laid(double leastMm, double mostMm, List<Flag> flags, Way way) {
        double pitch = pitch(flags, way.text());
        List<Double> wanted = flags.stream().map(Flag::placeMm).toList();
        double[] places = LabelSpacing.apart(wanted, pitch / way.rows(), leastMm + pitch / 2, mostMm - pitch / 2);
        return new LeaderLabels(flags, places, way);
    }

    private double farthestMm() {
        double farthest = 0;
        for (int i = 0; i < placesMm.length; i++) {
            farthest = Math.max(farthest, Math.abs(placesMm[i] - flags.get(i).placeMm()));
        }
        return farthest;
    }

    /** The paper a row of labels takes along the piece when each stands at its closest to the next, in two rows. */
    public static double closestMm(List<Flag> flags) {
        return (flags.size() + 1) * pitch(flags, Lettering.SMALL) / 2;
    }

    private static double pitch(List<Flag> flags, Lettering text) {
        double widest = text.capHeightMm();
        for (Flag flag : flags) {
            widest = Math.max(widest, numbers(text).widthMm(flag.number()));
        }
        return widest + GAP;
    }

    private static Lettering numbers(Lettering text) {
        return switch (text) {
            case TINY -> Lettering.TINY;
            case BODY -> Lettering.STRONG;
            default -> Lettering.NUMBER;
        };
    }

    /** How far the labels reach from where their leaders start. */
    public double depthMm() {
        return fanMm + way.rows() * rowMm;
    }

    private double longestMm() {
        return flags.stream()
                .mapToDouble(flag -> way.text().widthMm(flag.text()))
                .max()
                .orElse(0);
    }

    private double numberMm() {
        boolean any = flags.stream().anyMatch(flag -> !flag.number().isEmpty());
        return any ? numbers(way.text()).capHeightMm() + 1.4 : 0.6;
    }

    /** The labels below a line, their leaders starting on it. */
    public List<Shape> below(double yMm) {
        return shapes(yMm, 1);
    }

    /** The labels above a line. */
    public List<Shape> above(double yMm) {
        return shapes(yMm, -1);
    }

    private List<Shape> shapes(double yMm, int away) {
        Lettering text = way.text();
        List<Shape> out = new ArrayList<>();
        for (int i = 0; i < flags.size(); i++) {
            Flag flag = flags.get(i);
            double fan = away * fanMm;
            double start = fan + away * (i % way.rows()) * rowMm;
            double from = flag.placeMm() - placesMm[i];
            List<Shape> parts = new ArrayList<>();
            // All within a label is told from where it stands: one that only moves is the same but for that, and a
            // page that shows it anew has little to lay out.
            parts.add(
                    start == fan
                            ? Path.line(Pen.FINE, from, -start, 0, 0)
                            : Path.through(Pen.FINE, from, -start, 0, fan - start, 0, 0));
            double capMm = numbers(text).capHeightMm();
            if (!flag.number().isEmpty()) {
                parts.add(TextLine.centred(numbers(text), 0, away > 0 ? 0.7 + capMm : -0.7, flag.number()));
            }
            if (!flag.text().isEmpty()) {
                double textAt = away * numberMm();
                double baseline = text.capHeightMm() / 2;
                parts.add(
                        away > 0
                                ? TextLine.upwardsEnding(text, baseline, textAt, flag.text())
                                : TextLine.upwards(text, baseline, textAt, flag.text()));
            }
            out.add(new Group(placesMm[i], yMm + start, flag.attributes(), Optional.of(flag.tip()), parts));
        }
        return out;
    }
}
