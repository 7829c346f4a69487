package turnalike.drawing.svg;

import java.util.Locale;
import turnalike.language.Speech;

/**
 * The sizes of lettering, in millimetres of paper from baseline to baseline of solid setting. Nothing is set below 2.6 mm (7.4 pt), and
 * what has to be read with the piece in hand is 4 mm or more: at 600 mm a 4 mm letter's lower-case height stands at 12 minutes of arc,
 * more than twice the 5 minutes of the smallest letter of normal sight (20/20 by definition; from memory).
 */
public enum Lettering {
    /** The name of the job. */
    TITLE(7.0, true),
    /** An opening to set: the largest thing beside the drawing. */
    SETTING(6.0, true),
    /** What to do, read from the lathe a step away: 14.7 pt. */
    LATHE(5.2, false),
    /** The heading of a part of a sheet. */
    HEADING(4.6, true),
    /** A figure in a table, and running text. */
    BODY(4.0, false),
    /** The same, standing out. */
    STRONG(4.0, true),
    /** Captions and the other unit. */
    SMALL(3.3, false),
    /** Numbers of marks. */
    NUMBER(3.3, true),
    /** The closest labels of a crowded drawing, and printers' notes. */
    TINY(2.6, false);

    private final double sizeMm;
    private final boolean bold;

    Lettering(double sizeMm, boolean bold) {
        this.sizeMm = sizeMm;
        this.bold = bold;
    }

    /** The font size in millimetres. */
    public double sizeMm() {
        return sizeMm;
    }

    public Typeface typeface() {
        return bold ? Typeface.BOLD : Typeface.REGULAR;
    }

    /** How wide the words set, in millimetres, in the language that is being drawn in: as {@link TextLine} sets them. */
    public double widthMm(String words) {
        return asItStandsMm(Speech.of(words));
    }

    /** The same of words, or a part of a line, that are in their language already. */
    double asItStandsMm(String text) {
        return typeface().widthMm(text, sizeMm);
    }

    /** The height of capitals and figures, in millimetres: 0.729 of the size in this typeface (its OS/2 table). */
    public double capHeightMm() {
        return 0.729 * sizeMm;
    }

    String className() {
        return "t-" + name().toLowerCase(Locale.ROOT);
    }

    String css() {
        return ".%s{font-family:%s;font-size:%spx;font-weight:%s;fill:%s;stroke:none}"
                .formatted(
                        className(), Typeface.FAMILIES, SvgNumbers.mm(sizeMm), bold ? "700" : "400", Pen.Palette.INK);
    }

    String nightCss() {
        return ".%s{fill:%s}".formatted(className(), Pen.Palette.night(Pen.Palette.INK));
    }
}
