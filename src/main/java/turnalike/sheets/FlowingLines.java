package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;

/** Lines of running text under a heading, which breaks between lines. */
record FlowingLines(String heading, List<String> lines, boolean continued) implements Flowing {
    static final double LINE_MM = 5.2;
    private static final double HEAD_MM = 5;
    private static final double AFTER_MM = 4;

    /** What hangs below the last line; at a page's foot nothing else is wanted there. */
    private static final double BELOW_MM = 1.5;

    /** Text is not begun at the foot of a page for fewer. */
    private static final int LEAST_LINES = 2;

    FlowingLines {
        lines = List.copyOf(lines);
    }

    @Override
    public Optional<Laid> lay(double roomMm, boolean freshPage) {
        int fit = Math.max(0, Math.min(lines.size(), (int) ((roomMm - HEAD_MM - BELOW_MM) / LINE_MM)));
        if (!freshPage && fit < Math.min(LEAST_LINES, lines.size())) {
            return Optional.empty();
        }
        int laid = Math.max(fit, Math.min(1, lines.size()));
        List<Shape> out = new ArrayList<>();
        out.add(TextLine.of(Lettering.HEADING, 0, HEAD_MM, continued ? heading + ", continued" : heading));
        for (int i = 0; i < laid; i++) {
            out.add(TextLine.of(Lettering.BODY, 0, HEAD_MM + (i + 1) * LINE_MM, lines.get(i)));
        }
        Optional<Flowing> rest = laid < lines.size()
                ? Optional.of(new FlowingLines(heading, lines.subList(laid, lines.size()), true))
                : Optional.empty();
        return Optional.of(new Laid(out, HEAD_MM + laid * LINE_MM + AFTER_MM, rest));
    }
}
