package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;
import turnalike.units.LengthMessage;

/**
 * The peg that enters a hole. At a free end of the piece its edge may be broken by a 45° chamfer.
 *
 * @param length along the axis, chamfer included; above zero
 * @param diameter finished, above zero
 * @param chamfer along the axis and on the radius alike; zero for none, at most half the length and half the diameter
 * @param hole the diameter of the hole it enters, when told; above zero, and smaller than the tenon where the joint is to be snug
 * @param details its own name, and whether it is turned by eye
 */
public record Tenon(Length length, Length diameter, Length chamfer, Optional<Length> hole, Details details)
        implements Member {
    /** Two sizes typed a tenth apart differ by a little less or more. */
    private static final double HAIR_MM = 1e-9;

    static final MemberKind KIND = MemberKind.of("tenon", Tenon.class)
            .words("The round end that goes into a hole; it may have a chamfer at its free end.")
            .shape("one diameter; 45° chamfer at a free end")
            .length()
            .size("diameter", "Diameter", Tenon::diameter, Room::before)
            .may(
                    MemberKey.optional("chamfer", "Chamfer", "left empty: none", stock -> Optional.of(Length.ZERO))
                            .noted("0"),
                    tenon -> Optional.of(tenon.chamfer()))
            .may(
                    MemberKey.optional(
                                    "hole",
                                    "Diameter of its hole",
                                    "left empty: the tenon's own size",
                                    stock -> Optional.empty())
                            .noted("diameter of its hole; the tenon's own if left out"),
                    Tenon::hole)
            .made(
                    Tenon::faults,
                    sizes -> new Tenon(
                            sizes.length(),
                            sizes.size("diameter"),
                            sizes.size("chamfer"),
                            sizes.find("hole"),
                            sizes.details()),
                    () -> new Tenon(Length.ofMm(34), Length.ofMm(20), Length.ofMm(3), Details.NONE));

    public Tenon {
        Faults.refuse(KIND.word(), faults(length, diameter, chamfer));
        Faults.refuse(KIND.word(), holeFaults(hole));
    }

    private static List<Fault> faults(Sizes sizes) {
        List<Fault> own = faults(sizes.length(), sizes.size("diameter"), sizes.size("chamfer"));
        return own.isEmpty() ? holeFaults(sizes.find("hole")) : own;
    }

    /**
     * A tenon whose hole is not told: one of its own size is taken for it.
     *
     * @param length along the axis, chamfer included; above zero
     * @param diameter finished, above zero
     * @param chamfer along the axis and on the radius alike; zero for none
     * @param details its own name, and whether it is turned by eye
     * @throws IllegalArgumentException with the first of {@link #faults(Length, Length, Length)}
     */
    public Tenon(Length length, Length diameter, Length chamfer, Details details) {
        this(length, diameter, chamfer, Optional.empty(), details);
    }

    /**
     * {@return why there can be no such hole: it is not above zero; empty when there can, or none is told} A hole smaller than the tenon is
     * none: that is how snug joints are made.
     *
     * @param hole the hole's diameter, when told
     */
    public static List<Fault> holeFaults(Optional<Length> hole) {
        return hole.map(size -> new Faults().positive("hole", size).list()).orElse(List.of());
    }

    /**
     * {@return why no tenon can have these sizes, in the order of its keys; empty when one can} Length and diameter must be above zero,
     * and a chamfer runs at most to the tenon's middle, along it and across.
     *
     * @param length along the axis, chamfer included
     * @param diameter finished
     * @param chamfer along the axis and on the radius alike; zero for none
     */
    public static List<Fault> faults(Length length, Length diameter, Length chamfer) {
        Faults faults = Faults.in(length).positive("diameter", diameter).notNegative("chamfer", chamfer);
        boolean sized = length.isPositive() && diameter.isPositive();
        return faults.when(
                        sized && chamfer.times(2).compareTo(length) > 0,
                        "chamfer",
                        LengthMessage.of("runs past the tenon's middle, was %s on a length of %s", chamfer, length),
                        "make it at most half the length")
                .when(
                        sized && chamfer.times(2).compareTo(diameter) > 0,
                        "chamfer",
                        LengthMessage.of("runs past the tenon's middle, was %s on a diameter of %s", chamfer, diameter),
                        "make it at most half the diameter")
                .list();
    }

    @Override
    public MemberKind kind() {
        return KIND;
    }

    @Override
    public List<Curve> curves(Ends ends) {
        Length full = diameter.times(0.5);
        if (!chamfer.isPositive() || !(ends.first() || ends.last())) {
            return List.of(Line.level(length, full));
        }
        Length tip = full.minus(chamfer);
        Length straight = length.minus(chamfer.times(ends.first() && ends.last() ? 2 : 1));
        List<Curve> curves = new ArrayList<>();
        if (ends.first()) {
            curves.add(new Line(chamfer, tip, full));
        }
        if (straight.isPositive()) {
            curves.add(Line.level(straight, full));
        }
        if (ends.last()) {
            curves.add(new Line(chamfer, full, tip));
        }
        return curves;
    }

    @Override
    public List<Diameter> diameters() {
        return List.of(new Diameter("diameter", length.times(0.5), diameter));
    }

    @Override
    public Tenon mirrored() {
        return this;
    }

    @Override
    public CutMethod way() {
        return new CutMethod(
                Tool.PARTING_TOOL,
                "cut the tenon to the calipers, shoulder to end",
                "stop the lathe before you try the wrench, and try the fit in a bored scrap of the same wood first");
    }

    @Override
    public Optional<Hole> enters() {
        return Optional.of(new Hole(hole.orElse(diameter), hole.isPresent()));
    }

    @Override
    public List<String> unwise(Surroundings around) {
        List<String> out = new ArrayList<>();
        for (Surroundings.Joint joint : around.joints()) {
            boolean shoulder = diameter.times(0.5).compareTo(joint.radius()) <= 0;
            if (!shoulder && joint.neighbour().member().enters().isEmpty()) {
                out.add(
                        "is thicker (%s) than %s beside it (%s there): it has no shoulder to stop at, so the length in the hole is not fixed"
                                .formatted(
                                        around.print(diameter),
                                        joint.neighbour().where(),
                                        around.print(joint.radius().times(2))));
            }
        }
        if (!around.isAtAnEnd()) {
            out.add("stands inside the run, where no hole can take it: move it to an end or make it a cylinder"
                    + (chamfer.isPositive() ? "; its chamfer is left off: only a free end has one" : ""));
        }
        hole.map(size -> size.minus(diameter))
                .filter(play -> play.compareTo(around.rules().tenonPlay()) > 0)
                .ifPresent(play -> out.add(
                        "is %s thinner than its hole; a tenon that rattles is held by glue alone, so turn it to the hole or wedge it"
                                .formatted(around.print(play))));
        hole.map(diameter::minus)
                .filter(over -> over.mm() >= around.rules().tenonSnug().mm() - HAIR_MM)
                .ifPresent(over -> out.add(
                        "is %s thicker than its hole; is that meant? So much crushes the wood or splits what it is driven into, so check both sizes"
                                .formatted(around.print(over))));
        if (hole.isEmpty() && around.isAnyHoleGiven()) {
            // Once one hole is told, one that is not was likely forgotten.
            out.add("has no hole given; one of the tenon's own size is taken for it");
        }
        return out;
    }
}
