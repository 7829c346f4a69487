package turnalike.drawing.svg;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a line or an area is drawn: paper, ink and one accent; wood colour only for the piece itself. Everything that carries meaning also
 * differs in width, dash or fill, so a sheet reads the same from a black-and-white printer.
 */
public enum Pen {
    /** The piece's own outline. */
    OUTLINE(null, Palette.INK, 0.4),
    /** The body of the piece. */
    WOOD(Palette.WOOD, null, 0),
    /** A flat face of an unturned square, a shade lighter than the turned wood. */
    WOOD_FLAT(Palette.WOOD_FLAT, null, 0),
    /** A line that is to be found with the eye: a mark, the edge of a table. */
    LINE(null, Palette.INK, 0.3),
    /** A heavy rule. */
    HEAVY(null, Palette.INK, 0.8),
    /** A quiet line: leaders, boundaries between members, rules between rows. */
    FINE(null, Palette.INK, 0.15),
    /** A quiet line that is not part of the thing itself: the axis, a fold. */
    DASHED(null, Palette.INK, 0.2, 2.0, 1.2),
    /** A line to cut along. */
    CUT(null, Palette.INK, 0.25, 4.0, 2.0),
    /** The one accent: what to do, what to set. */
    ACCENT(null, Palette.ACCENT, 0.6),
    /** An area in the accent colour. */
    ACCENT_FILL(Palette.ACCENT, null, 0),
    /** A black area. */
    INK_FILL(Palette.INK, null, 0),
    /** A light grey area, for every other row of a table. */
    TINT(Palette.TINT, null, 0),
    /** A white area, in a black one. */
    WHITE(Palette.PAPER, null, 0),
    /** White under a line: hides what lies beneath. */
    PAPER(Palette.PAPER, Palette.INK, 0.3);

    private final Optional<String> fill;
    private final Optional<String> stroke;
    private final double widthMm;
    private final double drawnMm;
    private final double skippedMm;

    Pen(@Nullable String fill, @Nullable String stroke, double widthMm) {
        this(fill, stroke, widthMm, 0, 0);
    }

    Pen(@Nullable String fill, @Nullable String stroke, double widthMm, double drawnMm, double skippedMm) {
        this.fill = Optional.ofNullable(fill);
        this.stroke = Optional.ofNullable(stroke);
        this.widthMm = widthMm;
        this.drawnMm = drawnMm;
        this.skippedMm = skippedMm;
    }

    /** The colour of the area, as {@code #rrggbb}. */
    public Optional<String> fill() {
        return fill;
    }

    /** The colour of the line, as {@code #rrggbb}. */
    public Optional<String> stroke() {
        return stroke;
    }

    /** The width of the line in millimetres on paper. */
    public double widthMm() {
        return widthMm;
    }

    /** Drawn and skipped lengths in turn, in millimetres; empty for an unbroken line. */
    public List<Double> dashMm() {
        return drawnMm > 0 ? List.of(drawnMm, skippedMm) : List.of();
    }

    /** The class this pen has in an SVG. */
    String className() {
        return "p-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    String css() {
        StringBuilder out =
                new StringBuilder(".").append(className()).append("{fill:").append(fill.orElse("none"));
        out.append(";stroke:").append(stroke.orElse("none"));
        if (stroke.isPresent()) {
            out.append(";stroke-width:").append(SvgNumbers.mm(widthMm));
        }
        if (drawnMm > 0) {
            out.append(";stroke-dasharray:")
                    .append(SvgNumbers.mm(drawnMm))
                    .append(' ')
                    .append(SvgNumbers.mm(skippedMm));
        }
        return out.append('}').toString();
    }

    /** How the same class is coloured on a screen that is dark; widths and dashes stay. */
    String nightCss() {
        String area = fill.map(Palette::night).map("fill:%s"::formatted).orElse("");
        String line = stroke.map(Palette::night).map("stroke:%s"::formatted).orElse("");
        return ".%s{%s}".formatted(className(), area + (area.isEmpty() || line.isEmpty() ? "" : ";") + line);
    }

    /**
     * The colours. Ink is pure black because a laser printer screens every other grey into dots, and a fine mark line with it. Contrast
     * of the accent on white: 7.7 : 1 (WCAG 2.1's formula, computed here).
     */
    static final class Palette {
        static final String INK = "#000000";
        static final String PAPER = "#ffffff";
        static final String ACCENT = "#9a2a1a";
        static final String WOOD = "#e2c08d";
        static final String WOOD_FLAT = "#efdcbc";
        static final String TINT = "#eeeeee";

        /**
         * The colour that stands for one of these on a dark screen: paper goes dark, ink light, and the wood so far down that ink and accent
         * still stand out on it.
         */
        private static final Map<String, String> NIGHT = Map.of(
                INK, "#f2ede3",
                PAPER, "#272420",
                ACCENT, "#f2a08f",
                WOOD, "#73552f",
                WOOD_FLAT, "#876a44",
                TINT, "#3d3830");

        private Palette() {}

        static String night(String day) {
            return Optional.ofNullable(NIGHT.get(day))
                    .orElseThrow(() -> new IllegalArgumentException("no colour for the night in place of " + day));
        }
    }
}
