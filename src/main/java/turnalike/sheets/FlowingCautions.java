package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;

/**
 * Cautions under their heading with a bar beside them, which go on to the next page rather than over the foot of this one.
 *
 * @param lines broken to the width; an empty one stands between two cautions
 * @param continued whether a page before has the first of them
 */
record FlowingCautions(List<String> lines, boolean continued) implements Flowing {
    private static final double HEAD_MM = 5;
    private static final double BETWEEN_MM = 1;
    private static final double AFTER_MM = 4;

    /** They are not begun at the foot of a page for fewer. */
    private static final int LEAST_LINES = 2;

    FlowingCautions {
        lines = List.copyOf(lines);
    }

    static FlowingCautions of(List<String> cautions, double widthMm) {
        List<String> lines = new ArrayList<>();
        for (String caution : cautions) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            lines.addAll(TextWrap.wrap(caution, Lettering.BODY, widthMm - 6));
        }
        return new FlowingCautions(lines, false);
    }

    @Override
    public Optional<Laid> lay(double roomMm, boolean freshPage) {
        List<Shape> out = new ArrayList<>();
        out.add(TextLine.of(Lettering.HEADING, 5, HEAD_MM, continued ? "Cautions, continued" : "Cautions"));
        double y = HEAD_MM;
        int laid = 0;
        while (laid < lines.size() && (y + step(laid) + AFTER_MM <= roomMm || (freshPage && laid == 0))) {
            y += step(laid);
            out.add(TextLine.of(Lettering.BODY, 5, y, lines.get(laid++)));
        }
        if (!freshPage && laid < Math.min(LEAST_LINES, lines.size())) {
            return Optional.empty();
        }
        out.add(Path.rectangle(Pen.ACCENT_FILL, 0, 1, 2, y));
        return Optional.of(new Laid(out, y + AFTER_MM, rest(laid)));
    }

    private double step(int line) {
        return lines.get(line).isEmpty() ? BETWEEN_MM : FlowingLines.LINE_MM;
    }

    private Optional<Flowing> rest(int laid) {
        int from = laid;
        while (from < lines.size() && lines.get(from).isEmpty()) {
            from++;
        }
        return from < lines.size()
                ? Optional.of(new FlowingCautions(lines.subList(from, lines.size()), true))
                : Optional.empty();
    }
}
