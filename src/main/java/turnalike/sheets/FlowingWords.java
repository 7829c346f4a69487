package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;

/** Lines of words without a heading, as many as the page holds and the rest on the next. */
record FlowingWords(List<String> lines, Lettering lettering, double leftMm, double lineMm) implements Flowing {
    private static final double AFTER_MM = 1;

    FlowingWords {
        lines = List.copyOf(lines);
    }

    @Override
    public Optional<Laid> lay(double roomMm, boolean freshPage) {
        int fit = Math.min(lines.size(), Math.max(freshPage ? 1 : 0, (int) ((roomMm - AFTER_MM) / lineMm)));
        if (fit < 1) {
            return Optional.empty();
        }
        List<Shape> out = new ArrayList<>();
        for (int i = 0; i < fit; i++) {
            out.add(TextLine.of(lettering, leftMm, (i + 1) * lineMm - 1, lines.get(i)));
        }
        Optional<Flowing> rest = fit < lines.size()
                ? Optional.of(new FlowingWords(lines.subList(fit, lines.size()), lettering, leftMm, lineMm))
                : Optional.empty();
        return Optional.of(new Laid(out, fit * lineMm + AFTER_MM, rest));
    }
}
