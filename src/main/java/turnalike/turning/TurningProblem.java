package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.outline.Section;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.settings.CaliperSetting;
import turnalike.settings.DividerPlan;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.wood.Rupture;
import turnalike.wood.Stiffness;

/**
 * What the order of cuts and the whip follow from.
 *
 * @param pattern the finished piece and its blank
 * @param marks its marks, in order of place
 * @param dividers how the marks are laid out
 * @param calipers how the diameters are sized
 * @param sizing what a sizing cut leaves on the diameter
 * @param diameterTolerance how far a finished diameter may be off
 * @param density of the wood
 * @param stiffness of the wood, if known; without it nothing is said of whip
 * @param rupture the stress at which the wood breaks, if known; without it nothing is said of its strength
 * @param lathe the turner's own
 * @param slopes ends that are cut on a slope after turning
 * @param units in which sentences give lengths
 */
public record TurningProblem(
        Pattern pattern,
        List<Mark> marks,
        DividerPlan dividers,
        List<CaliperSetting> calipers,
        Length sizing,
        Length diameterTolerance,
        Density density,
        Optional<Stiffness> stiffness,
        Optional<Rupture> rupture,
        Lathe lathe,
        EndSlopes slopes,
        UnitSystem units) {
    /** A thin tip longer than so many pencils are thick is a point, and a thin member so long is cut in stretches (common practice, no source). */
    private static final double STUB_PENCILS = 3;

    public TurningProblem {
        marks = List.copyOf(marks);
        calipers = List.copyOf(calipers);
    }

    /** What holds the piece until it is round and laid out, and mostly to the end. */
    Supports supports() {
        return lathe.held().supports();
    }

    /** What holds it while it is brought to its shape. */
    Supports supportsOfShaping() {
        return isPointed() ? lathe.held().withoutTailstock().supports() : supports();
    }

    /**
     * Whether the tip is a long thin point: the tailstock is taken away before it is turned, first of all, while the rest stands thick behind it.
     * Nothing that thin can be borne at its end, and with the rest done a cut on it would bend every neck behind.
     */
    boolean isPointed() {
        return isLongForThin(ThinTip.of(this).length());
    }

    /** Whether what is thinner than a pencil is more than a stub. */
    boolean isLongForThin(Length length) {
        return length.mm() > lathe.rules().pencil().times(STUB_PENCILS).mm();
    }

    /** What the blank is longer by than the finished piece. */
    Length spare() {
        return pattern.stock().length().minus(pattern.length());
    }

    /** Whether there is enough spare length to be parted off rather than sanded away: a millimetre. */
    boolean partsOff() {
        return spare().mm() >= 1;
    }

    /** Half the thickest finished diameter that is turned; half the blank's size where nothing is. */
    Length thickestRound() {
        return pattern.placed().stream()
                .filter(each -> each.member().section() == Section.ROUND)
                .map(each -> each.outline().largestRadius())
                .max(Length::compareTo)
                .orElse(pattern.stock().size().times(0.5));
    }

    /** The roughed cylinder's diameter: the thickest finished one and the sizing allowance, as far as the blank cleans up. */
    Length roughed() {
        Length wanted = thickestRound().times(2).plus(sizing);
        Length most = largestRound();
        return wanted.compareTo(most) < 0 ? wanted : most;
    }

    /** The largest round that the blank cleans up to. */
    Length largestRound() {
        return lathe.rules().largestRound(pattern.stock().size());
    }

    /** How far from the blank's end at the datum the stick is laid; zero where the piece begins with the blank. */
    Length leadIn() {
        return partsOff() && !held().byOneEnd() ? slopes.start() : Length.ZERO;
    }

    Held held() {
        return lathe.held();
    }

    /** Whether a sizing cut there would leave the piece thinner than what may be parted down to. */
    boolean isTooThinToPart(Length diameter) {
        return diameter.compareTo(lathe.rules().pencil()) < 0;
    }

    /** Indices of the members from the end away from the headstock to the one at it. */
    List<Integer> towardTheHeadstock() {
        List<Integer> out = new ArrayList<>();
        int count = pattern.members().size();
        for (int i = 0; i < count; i++) {
            out.add(held().at() == Held.At.START ? count - 1 - i : i);
        }
        return out;
    }

    /** The place of one of the two ends. */
    Length place(Held.At end) {
        return end == Held.At.START ? Length.ZERO : pattern.length();
    }

    private boolean bears(Held.At end) {
        return end == held().at() || (held().bears(end) && !isPointed());
    }

    /** How far a place is from the nearer end at which something bears the piece. */
    Length fromSupport(Length place) {
        Length start = place;
        Length end = pattern.length().minus(place);
        if (!bears(Held.At.START)) {
            return end;
        }
        return !bears(Held.At.END) || start.compareTo(end) < 0 ? start : end;
    }

    /**
     * Whether no steady rest is of use: on a piece shorter than so many of its greatest diameters, or one that ends in a point, along which none runs
     * and which is done before anything is thin.
     */
    boolean wantsNoSteady() {
        double greatest = 2 * pattern.outline().largestRadius().mm();
        return isPointed() || pattern.length().mm() < lathe.rules().steadyFrom() * greatest;
    }

    /** A place in a sentence after "at": an end is told by its name, "at 0 mm" is no place that anybody points at. */
    String at(Length place) {
        return place.isPositive() ? both(place) : "its start end";
    }

    /** A length in a sentence: the job's units, the other beside. */
    String both(Length length) {
        return length.formatBoth(units);
    }
}
