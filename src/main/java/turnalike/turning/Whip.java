package turnalike.turning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import turnalike.outline.Outline;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;
import turnalike.units.UnitSystem;

/**
 * What a piece does in the lathe, as a beam on its true outline that bends and shears, with its supports and under a thrust along it.
 *
 * <p>The elements are cut in two until that changes no figure by more than {@link #SETTLED}; the finer figures are given.
 *
 * @param first the first natural speed: turning at it, the piece whips in one bow
 * @param second the second natural speed, in two bows
 * @param sags the deflection at each place under the cutting force at that very place, in order of place
 * @param cutting the force the sags are reckoned for
 * @param thrust what the tailstock presses with in these figures; empty where they are free of it
 * @param ends what holds the piece
 * @param buckling the end force under which the piece bows out by itself
 * @param steady where one more simple support raises the first natural speed most: the place that the second mode leaves at rest. By the
 *     max-min principle of eigenvalues (Courant &amp; Hilbert, Methods of Mathematical Physics I, ch. VI; from memory) no single support
 *     can raise the first natural speed above the second, and a support there raises it to just that
 * @param elements how many finite elements the figures come from
 * @param halvingChange the largest relative change of any figure when the elements were last cut in two; the steady's place counts by the
 *     length
 * @param thickened whether some place was thinner than a thousandth of the thickest and was reckoned as that
 */
public record Whip(
        Speed first,
        Speed second,
        List<Sag> sags,
        Force cutting,
        Optional<Force> thrust,
        Supports ends,
        Force buckling,
        Length steady,
        int elements,
        double halvingChange,
        boolean thickened) {
    /** Ten times finer than what the file format asks for. */
    static final double SETTLED = 1e-4;

    /**
     * A beam that gives way further than this share of its length is bent too far for a theory of small slopes: they reach a third or so.
     * Common practice, no source.
     */
    static final double SMALL_SHARE = 0.1;

    private static final int MOST_HALVINGS = 4;

    public Whip {
        sags = List.copyOf(sags);
    }

    /**
     * How far the piece gives way at a place when pushed there.
     *
     * @param place where, from the start
     * @param sag how far, by the theory of small deflections
     * @param beyond whether that means nothing any more: it is above the piece's own radius there or a tenth of its length, and the place
     *     cannot be cut unsupported
     */
    public record Sag(Length place, Length sag, boolean beyond) {
        /** Of what is borne right there. */
        private static final double NOTHING_MM = 1e-9;

        /** What is said in place of a sag that means nothing. */
        private static final String UNSUPPORTED = "cannot be cut unsupported";

        /**
         * A sag that means something.
         *
         * @param place as of the record
         * @param sag as of the record
         */
        public Sag(Length place, Length sag) {
            this(place, sag, false);
        }

        /**
         * {@return how far, in the units asked for; or that the place cannot be cut unsupported}
         *
         * @param units in which lengths are told
         */
        public String text(UnitSystem units) {
            if (beyond) {
                return UNSUPPORTED;
            }
            Length least = units == UnitSystem.METRIC ? Length.ofMm(0.01) : Length.ofInches(0.001);
            return sag.mm() > NOTHING_MM && sag.compareTo(least) < 0
                    ? "less than " + least.formatFine(units)
                    : sag.formatFine(units);
        }
    }

    /**
     * {@return the figures of a piece}
     *
     * @param outline of the piece
     * @param wood what it is of
     * @param load what holds it and presses on it; a thrust that the piece does not bear is left out of the figures
     * @param places where the sag is told, from the outline's start
     */
    static Whip of(Outline outline, BeamWood wood, BeamLoad load, List<Length> places) {
        Beam free = beam(outline, wood, load, places, BeamMesh.Fineness.FINE);
        double bucklingN = free.bucklingN();
        double asked = load.thrustN(bucklingN);
        double thrustN = EndThrust.isBorne(asked, bucklingN) ? asked : 0;
        Beam beam = free.pressed(thrustN);
        Figures last = new Figures(beam, places);
        double change = 1;
        for (int i = 0; i < MOST_HALVINGS && change > SETTLED; i++) {
            beam = beam.halved();
            Figures next = new Figures(beam, places);
            change = next.changeFrom(last, outline.length().mm());
            last = next;
        }
        return new Whip(
                Speed.ofRadiansPerSecond(last.natural.first()),
                Speed.ofRadiansPerSecond(last.natural.second()),
                last.sags(outline, places, load.cutting()),
                load.cutting(),
                thrustN > 0 ? Optional.of(Force.ofNewtons(thrustN)) : Optional.empty(),
                load.ends(),
                Force.ofNewtons(last.bucklingN),
                Length.ofMm(last.natural.nodeMm()),
                beam.mesh().elements(),
                change,
                beam.mesh().thickened());
    }

    /**
     * The first natural speed alone, from coarser elements; within about 10⁻³ of {@link #first}. Empty when the piece does not bear the
     * thrust.
     */
    static Optional<Speed> firstOf(Outline outline, BeamWood wood, BeamLoad load) {
        Beam free = beam(outline, wood, load, List.of(), BeamMesh.Fineness.COARSE);
        double bucklingN = free.bucklingN();
        double thrustN = load.thrustN(bucklingN);
        return EndThrust.isBorne(thrustN, bucklingN)
                ? Optional.of(Speed.ofRadiansPerSecond(free.pressed(thrustN).first()))
                : Optional.empty();
    }

    /** A stage's figures from coarser elements; within about 10⁻³ of what {@link #of} gives. */
    static Stage stage(String name, Outline outline, BeamWood wood, BeamLoad load, List<Length> places) {
        Beam free = beam(outline, wood, load, places, BeamMesh.Fineness.COARSE);
        double bucklingN = free.bucklingN();
        double thrustN = load.thrustN(bucklingN);
        boolean borne = EndThrust.isBorne(thrustN, bucklingN);
        Figures figures = new Figures(borne ? free.pressed(thrustN) : free, places);
        return new Stage(
                name,
                Speed.ofRadiansPerSecond(figures.natural.first()),
                Speed.ofRadiansPerSecond(figures.natural.second()),
                Force.ofNewtons(bucklingN),
                most(figures.sags(outline, places, load.cutting())),
                thrustN > 0 ? Optional.of(Force.ofNewtons(thrustN)) : Optional.empty());
    }

    /** Free of thrust. */
    private static Beam beam(
            Outline outline, BeamWood wood, BeamLoad load, List<Length> places, BeamMesh.Fineness fineness) {
        double[] at = places.stream().mapToDouble(Length::mm).toArray();
        return new Beam(BeamMesh.of(outline, at, fineness), wood, load.ends(), 0);
    }

    /** {@return where it gives way most} */
    public Sag most() {
        return most(sags);
    }

    private static Sag most(List<Sag> sags) {
        return sags.stream().max(Comparator.comparing(Sag::sag)).orElseThrow();
    }

    /** Everything that must settle when elements are halved. */
    private static final class Figures {
        private final Beam.Natural natural;
        private final double bucklingN;
        private final double[] sagMmPerN;

        private Figures(Beam beam, List<Length> places) {
            double[] atNodes = beam.sagMmPerN();
            double[] nodes = beam.mesh().nodeMm;
            sagMmPerN = places.stream()
                    .mapToDouble(p -> atNodes[nearest(nodes, p.mm())])
                    .toArray();
            natural = beam.natural();
            bucklingN = beam.bucklingN();
        }

        List<Sag> sags(Outline outline, List<Length> places, Force cutting) {
            List<Sag> out = new ArrayList<>();
            double small = SMALL_SHARE * outline.length().mm();
            for (int i = 0; i < places.size(); i++) {
                double sagMm = sagMmPerN[i] * cutting.newtons();
                double radiusMm =
                        outline.radiusAt(outline.start().plus(places.get(i))).mm();
                out.add(new Sag(places.get(i), Length.ofMm(sagMm), sagMm > Math.min(small, radiusMm)));
            }
            return out;
        }

        /** Every place asked for is an element's end, but for rounding. */
        private static int nearest(double[] nodes, double placeMm) {
            int found = Arrays.binarySearch(nodes, placeMm);
            int after = found >= 0 ? found : Math.min(-found - 1, nodes.length - 1);
            boolean before = after > 0 && placeMm - nodes[after - 1] < nodes[after] - placeMm;
            return before ? after - 1 : after;
        }

        double changeFrom(Figures other, double lengthMm) {
            double most = relative(natural.first(), other.natural.first());
            most = Math.max(most, relative(natural.second(), other.natural.second()));
            most = Math.max(most, relative(bucklingN, other.bucklingN));
            most = Math.max(most, Math.abs(natural.nodeMm() - other.natural.nodeMm()) / lengthMm);
            for (int i = 0; i < sagMmPerN.length; i++) {
                if (sagMmPerN[i] > 0) {
                    most = Math.max(most, relative(sagMmPerN[i], other.sagMmPerN[i]));
                }
            }
            return most;
        }

        private static double relative(double now, double before) {
            return Math.abs(now - before) / now;
        }
    }
}
