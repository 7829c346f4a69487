package turnalike.web.help;

import java.util.Map;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.job.edit.MemberEdit;
import turnalike.job.edit.MemberKind;
import turnalike.job.kept.JobText;
import turnalike.units.Length;

/**
 * A kind of member with its picture, between two cylinders.
 *
 * @param kind the kind
 * @param words what it is and which sizes it is given by
 * @param picture the drawing
 */
public record MemberPicture(MemberKind kind, String words, String picture) {
    private static final String BETWEEN = """
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"stock": {"section": "square", "size": 42, "length": 90}, "members": [
              {"kind": "cylinder", "length": 12, "diameter": 30},
              {"kind": "taper", "length": 34, "from": 30, "to": %s},
              {"kind": "cylinder", "length": 12, "diameter": %s}]},
             "wood": {"density_kg_m3": 700}}
            """;

    static MemberPicture of(MemberKind kind) {
        boolean steps = kind.sizes().contains("to") && kind != MemberKind.SWELL;
        String after = steps ? "20" : "30";
        JobText blank = JobText.read(BETWEEN.formatted(after, after)).text().orElseThrow();
        JobText made = telling(kind, after(blank, 2, new MemberEdit.Turn(kind)));
        String title = "a " + kind.word() + " between two cylinders";
        String picture = ShadedSpindle.svg(made.job().pattern().outline(), title, Length.ofMm(56), Length.ofMm(40))
                .inline();
        return new MemberPicture(kind, words(kind), picture);
    }

    /** Sizes that show what the kind is for, where the usual ones do not. */
    private static JobText telling(MemberKind kind, JobText text) {
        return switch (kind) {
            case CYLINDER -> after(text, 2, new MemberEdit.Sizes(Map.of("diameter", "22")));
            case FILLET -> after(text, 2, new MemberEdit.Sizes(Map.of("length", "5", "diameter", "38")));
            case GROOVE -> after(text, 2, new MemberEdit.Sizes(Map.of("length", "8")));
            case TENON ->
                after(
                        after(text, 3, new MemberEdit.Remove()),
                        2,
                        new MemberEdit.Sizes(Map.of("diameter", "20", "chamfer", "3")));
            default -> text;
        };
    }

    private static JobText after(JobText text, int number, MemberEdit.Deed deed) {
        return new MemberEdit(number, deed).on(text).text().orElseThrow();
    }

    private static String words(MemberKind kind) {
        return switch (kind) {
            case SQUARE -> "Left square, arrises and all. Side: across the flats; left empty, the stock's own size.";
            case CYLINDER -> "Straight and round, of one diameter.";
            case FILLET -> "A short straight step beside a bead or cove, of one diameter.";
            case TENON -> "The round end that goes into a hole; it may have a chamfer at its free end.";
            case TAPER -> "Straight from one diameter to another.";
            case SWELL -> "A long gentle belly: a diameter at each end and one in the middle.";
            case BEAD -> "A round swelling: the diameter at its foot and at its crown.";
            case HALF_BEAD -> "A quarter round, convex, from one diameter to another.";
            case COVE -> "A round hollow: the diameter at its rim and at its bottom.";
            case HALF_COVE -> "A quarter round, hollow, from one diameter to another.";
            case OGEE -> "An S that is level at both ends, from one diameter to another.";
            case REVERSE_OGEE -> "An S that is steep at both ends and level in its middle.";
            case VEE -> "A cut straight down to a bottom diameter and up again.";
            case GROOVE -> "A square-walled groove down to a bottom diameter.";
            case CURVE -> "A curve of your own through points: place from its start, and diameter there.";
        };
    }
}
