package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.frame.DividingHead;
import turnalike.frame.SegmentedRim;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How a pattern stands in a wheel.
 *
 * @param places how many
 * @param pitch from one to the next
 * @param stagger how far every second one is set off along the axle; zero for one row
 * @param neighbours where two of them come nearest
 * @param hub the mortises in the hub, where the pattern has a tenon for it
 * @param rimSeats those in the rim, likewise
 * @param outside what is left from a rim mortise's bottom to the rim's outside, if its width is told; below zero where it comes out
 * @param hubRadius from the axle to the hub tenon's shoulder
 * @param axleHole diameter of the axle's hole; zero where none is told
 * @param shoulder of the hub tenon, from the start end
 * @param hubEndFirst whether the pattern's start end enters the hub
 * @param innerRadius from the axle to the rim tenon's shoulder
 * @param outerRadius from the axle to the rim's outside, if its width is told
 * @param rim what the rim's segments are, if they are told
 * @param whole the wheel before it is built, every spoke as drawn
 * @param misfits what cannot be built or is thin
 * @param workings how the figures were found
 */
public record WheelFit(
        int places,
        Angle pitch,
        Length stagger,
        Neighbours neighbours,
        Optional<Seats> hub,
        Optional<Seats> rimSeats,
        Optional<Length> outside,
        Length hubRadius,
        Length axleHole,
        Length shoulder,
        boolean hubEndFirst,
        Length innerRadius,
        Optional<Length> outerRadius,
        Optional<SegmentedRim> rim,
        WholeWheel whole,
        List<Misfit> misfits,
        List<Working> workings)
        implements FrameFit {
    /** Where a {@link Misfit} stands that is between two spokes. */
    public static final String SPOKES = "spokes";

    /** Where one stands that is in the hub. */
    public static final String HUB = "hub";

    /** Where one stands that is in the rim. */
    public static final String RIM = "rim";

    public WheelFit {
        misfits = List.copyOf(misfits);
        workings = List.copyOf(workings);
    }

    /**
     * Where two spokes come nearest.
     *
     * @param gap what is left there; below zero where they run into one another
     * @param at where on the piece, from its start end
     * @param member the member there, from 0
     * @param apart how many places further the other one stands, 1 or 2
     */
    public record Neighbours(Length gap, Length at, int member, int apart) {}

    /**
     * Mortises all alike.
     *
     * @param hole diameter
     * @param depth how deep
     * @param wall what is left between two of them where they are nearest; below zero where they meet
     */
    public record Seats(Length hole, Length depth, Length wall) {
        private String text(UnitSystem units) {
            RuleSteps steps = new RuleSteps(units);
            String bored = "bore %s, %s deep".formatted(steps.print(hole), steps.print(depth));
            String left = wall.mm() < 0 ? steps.much(wall.abs()) : steps.left(wall);
            return wall.mm() < 0
                    ? "%s: two mortises run into one another by %s".formatted(bored, left)
                    : "%s: %s of wood between two mortises".formatted(bored, left);
        }
    }

    /** {@return how long a paper strip round the hub is} */
    public Length strip() {
        return hubRadius.times(2 * Math.PI);
    }

    /** {@return how far from the axle the spokes come nearest to one another, along their axes} */
    public Length nearest() {
        Length beyondTenon = neighbours.at.minus(shoulder);
        return hubRadius.plus(hubEndFirst ? beyondTenon : beyondTenon.times(-1));
    }

    /** {@return a paper strip's length from one place to the next} */
    public Length stripStep() {
        return strip().times(1.0 / places);
    }

    /** {@return whether the spokes reach into no rim that is told: where they end are their tips} */
    public boolean endsInTips() {
        return rimSeats.isEmpty() && outerRadius.isEmpty();
    }

    /** Where the rim lies; of spokes with no tenon for one and no rim told, as of a helm with its handles, where they end. */
    private String ends(UnitSystem units) {
        if (endsInTips()) {
            return "  tips     %s from the axle".formatted(innerRadius.formatBoth(units));
        }
        return (rimSeats.isPresent() ? "           " : "  rim      ")
                + "inside %s from the axle%s"
                        .formatted(
                                innerRadius.formatBoth(units),
                                outerRadius
                                        .map(radius -> ", outside %s".formatted(radius.formatBoth(units)))
                                        .orElse(""));
    }

    @Override
    public Optional<Length> touches() {
        boolean touch =
                misfits.stream().anyMatch(each -> each.forbids() && each.where().equals(SPOKES));
        return touch ? Optional.of(neighbours.at()) : Optional.empty();
    }

    @Override
    public List<String> facts(UnitSystem units, MassUnit masses) {
        List<String> out = new ArrayList<>();
        out.add(String.format(
                Locale.ROOT,
                "Frame      a wheel of %d places, %s apart%s",
                places,
                pitch.format(),
                stagger.isPositive() ? ", every second one set off by " + stagger.formatBoth(units) : ""));
        RuleSteps steps = new RuleSteps(units);
        String near = neighbours.gap.mm() < 0 ? steps.much(neighbours.gap.abs()) : steps.left(neighbours.gap);
        String where = neighbours.at.formatBoth(units);
        out.add(
                neighbours.gap.mm() < 0
                        ? "  spokes   run into one another by %s, %s from the start end".formatted(near, where)
                        : "  spokes   %s between two of them at the nearest, %s from the start end"
                                .formatted(near, where));
        hub.ifPresent(seats -> out.add("  hub      " + seats.text(units)));
        out.add("           a strip round it is %s long, a place every %s"
                .formatted(strip().formatBoth(units), stripStep().formatBoth(units)));
        rimSeats.ifPresent(seats -> out.add("  rim      "
                + seats.text(units)
                + outside.map(left -> left.mm() < 0
                                ? ", coming out at the rim's outside by %s".formatted(steps.much(left.abs()))
                                : ", %s to the outside".formatted(steps.left(left)))
                        .orElse("")));
        out.add(ends(units));
        rim.ifPresent(segments -> out.add(segments.text(units)));
        whole.segmentsPull()
                .ifPresent(pull -> out.add("           as they were weighed its segments pull %s toward %s"
                        .formatted(pull.format(), pull.at().formatDirection())));
        out.addAll(whole.lines(units, masses));
        if (hub.isPresent() || rimSeats.isPresent()) {
            out.add("  boring   " + DividingHead.text(places));
            out.add("           bore a scrap of the same wood first and try the tenon in it");
        }
        return out;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.wheel(this);
    }
}
