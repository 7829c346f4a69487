package turnalike.drawing.svg;

import java.util.Locale;
import turnalike.language.Speech;

/**
 * One line of lettering.
 *
 * @param xMm the anchor's place
 * @param yMm the baseline's place there
 * @param anchor which part of the line stands at that place
 * @param upright whether it reads from below upwards, turned a quarter anticlockwise about its place
 */
public record TextLine(Lettering lettering, double xMm, double yMm, Anchor anchor, boolean upright, String text)
        implements Shape {
    public TextLine {
        text = Speech.of(text);
    }

    /** Which part of a line of lettering stands at its place. */
    public enum Anchor {
        START,
        MIDDLE,
        END;

        String svg() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public static TextLine of(Lettering lettering, double xMm, double yMm, String text) {
        return new TextLine(lettering, xMm, yMm, Anchor.START, false, text);
    }

    public static TextLine centred(Lettering lettering, double xMm, double yMm, String text) {
        return new TextLine(lettering, xMm, yMm, Anchor.MIDDLE, false, text);
    }

    public static TextLine ending(Lettering lettering, double xMm, double yMm, String text) {
        return new TextLine(lettering, xMm, yMm, Anchor.END, false, text);
    }

    /** Reading upwards, starting at the place. */
    public static TextLine upwards(Lettering lettering, double xMm, double yMm, String text) {
        return new TextLine(lettering, xMm, yMm, Anchor.START, true, text);
    }

    /** Reading upwards, ending at the place. */
    public static TextLine upwardsEnding(Lettering lettering, double xMm, double yMm, String text) {
        return new TextLine(lettering, xMm, yMm, Anchor.END, true, text);
    }

    /** How wide the line sets, in millimetres. */
    public double widthMm() {
        return lettering.asItStandsMm(text);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.words(this);
    }
}
