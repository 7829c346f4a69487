package turnalike.turning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.units.Density;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;

/**
 * What a piece does between centres, pinned at both ends, as a slender beam on its true outline.
 *
 * <p>The elements are cut in two until that changes no figure by more than {@link #SETTLED}; the finer figures are given.
 *
 * @param first the first natural speed: turning at it, the piece whips in one bow
 * @param second the second natural speed, in two bows
 * @param sags the deflection at each place under the cutting force at that very place, in order of place
 * @param cutting the force the sags are reckoned for
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
        Force buckling,
        Length steady,
        int elements,
        double halvingChange,
        boolean thickened) {
    /** Ten times finer than what the file format asks for. */
    static final double SETTLED = 1e-4;

    private static final int MOST_HALVINGS = 4;

    public Whip {
        sags = List.copyOf(sags);
    }

    /**
     * How far the piece gives way at a place when pushed there.
     *
     * @param place from the outline's start
     * @param sag how far the axis moves aside there
     */
    public record Sag(Length place, Length sag) {}

    /**
     * {@return the figures of a piece with both its ends on centres}
     *
     * @param outline of the piece
     * @param moeMpa shear-free modulus of elasticity along the grain, above zero
     * @param density the same all along
     * @param cutting the force with which the tool pushes the piece aside
     * @param places where the sag is told, from the outline's start
     */
    public static Whip of(Outline outline, double moeMpa, Density density, Force cutting, List<Length> places) {
        Beam coarse = beam(outline, moeMpa, density, places, BeamMesh.Fineness.FINE);
        Figures last = new Figures(coarse, places);
        Beam beam = coarse;
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
                last.sags(places, cutting),
                cutting,
                Force.ofNewtons(last.bucklingN),
                Length.ofMm(last.natural.nodeMm()),
                beam.mesh().elements(),
                change,
                beam.mesh().thickened());
    }

    /** The first natural speed alone, from coarser elements; within about 10⁻³ of {@link #first}. */
    static Speed firstOf(Outline outline, double moeMpa, Density density) {
        return Speed.ofRadiansPerSecond(beam(outline, moeMpa, density, List.of(), BeamMesh.Fineness.COARSE)
                .first());
    }

    /** A stage's figures from coarser elements; within about 10⁻³ of what {@link #of} gives. */
    static Stage stage(
            String name, Outline outline, double moeMpa, Density density, Force cutting, List<Length> places) {
        Figures figures = new Figures(beam(outline, moeMpa, density, places, BeamMesh.Fineness.COARSE), places);
        return new Stage(
                name,
                Speed.ofRadiansPerSecond(figures.natural.first()),
                Speed.ofRadiansPerSecond(figures.natural.second()),
                Force.ofNewtons(figures.bucklingN),
                most(figures.sags(places, cutting)));
    }

    private static Beam beam(
            Outline outline, double moeMpa, Density density, List<Length> places, BeamMesh.Fineness fineness) {
        double[] at = places.stream().mapToDouble(Length::mm).toArray();
        return new Beam(BeamMesh.of(outline, at, fineness), moeMpa, density.kgPerM3() * 1e-12);
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

        List<Sag> sags(List<Length> places, Force cutting) {
            List<Sag> out = new ArrayList<>();
            for (int i = 0; i < places.size(); i++) {
                out.add(new Sag(places.get(i), Length.ofMm(sagMmPerN[i] * cutting.newtons())));
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
