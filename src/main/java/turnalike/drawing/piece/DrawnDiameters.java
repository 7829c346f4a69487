package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import turnalike.pattern.Mark;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/** The diameters worth writing beside a drawing of the piece. */
public final class DrawnDiameters {
    private DrawnDiameters() {}

    /** A diameter, and where along the piece it is taken. */
    public record Size(Length place, Length diameter) {}

    /**
     * Every diameter that is sized, in order of place, with neighbours of one size told once: a bead's root and the fillet it stands on
     * are one setting of the calipers. Of several the one in the middle of a flat is kept, since that is where calipers are held.
     */
    public static List<Size> of(Pattern pattern) {
        List<Size> out = new ArrayList<>();
        boolean flat = false;
        for (PlacedMember placed : pattern.placed()) {
            for (Member.Diameter each : placed.diameters()) {
                Size size = new Size(placed.start().plus(each.place()), each.size());
                boolean onFlat = placed.diameters().size() == 1;
                if (out.isEmpty() || !alike(out.get(out.size() - 1).diameter(), each.size())) {
                    out.add(size);
                    flat = onFlat;
                } else if (onFlat && !flat) {
                    out.set(out.size() - 1, size);
                    flat = true;
                }
            }
        }
        return out;
    }

    /** Every place along the piece where a mark is struck or a diameter taken, from the datum end. */
    public static List<Length> places(Pattern pattern) {
        return Stream.concat(
                        pattern.marks().stream().map(Mark::place),
                        of(pattern).stream().map(Size::place))
                .toList();
    }

    private static boolean alike(Length a, Length b) {
        return a.minus(b).abs().mm() < 1e-6;
    }
}
