package turnalike.solid;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.units.Density;

/**
 * The sections that a skin is stretched between, from the datum end to the far end; at a shoulder two stand at one place.
 *
 * @param rings two or more
 */
record MeshRings(List<Ring> rings) {
    /** Two rings nearer than this share of the length are one: a file's numbers of 7 digits must still tell them apart. */
    private static final double HAIR_SHARE = 1e-6;

    private static final double FIRST_STRAY_MM = 0.02;

    /** What the rings may take of what {@link Mesh#SHARE} allows; the rest is for where corners are drawn together. */
    private static final double RINGS_SHARE = 0.75 * Mesh.SHARE;

    private static final int MOST_STEPS = 16;

    /**
     * One section.
     *
     * @param placeMm along the axis, from the datum end
     * @param radiusMm half the side where it is square; zero where the piece comes to a point
     */
    record Ring(double placeMm, double radiusMm, Section section) {
        boolean isPoint() {
            return radiusMm == 0;
        }

        boolean isNear(Ring other, double hairMm) {
            return section == other.section
                    && Math.abs(placeMm - other.placeMm) < hairMm
                    && Math.abs(radiusMm - other.radiusMm) < hairMm;
        }
    }

    MeshRings {
        rings = List.copyOf(rings);
    }

    static MeshRings of(Outline outline) {
        double exact = Solid.of(outline, Density.ofKgPerM3(1)).volumeMm3();
        double stray = FIRST_STRAY_MM;
        MeshRings made = within(stray, outline);
        double off = Math.abs(made.volumeMm3() / exact - 1);
        for (int i = 0; i < MOST_STEPS && off > RINGS_SHARE; i++) {
            // What a chord leaves out goes by how far it strays; a little less, so that rounding does not ask for one
            // step more.
            stray *= Math.max(0.1, 0.95 * RINGS_SHARE / off);
            made = within(stray, outline);
            off = Math.abs(made.volumeMm3() / exact - 1);
        }
        return made;
    }

    private static MeshRings within(double strayMm, Outline outline) {
        double hair = HAIR_SHARE * outline.length().mm();
        double datum = outline.start().mm();
        List<Ring> out = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            Curve curve = segment.curve();
            for (double x : curve.chordPlacesMm(strayMm)) {
                double radius = curve.radiusMm(x);
                Ring ring = new Ring(segment.start().mm() - datum + x, radius < hair ? 0 : radius, segment.section());
                // The later one stays, so that the piece keeps its whole length; the first keeps its place.
                if (out.size() > 1 && out.get(out.size() - 1).isNear(ring, hair)) {
                    out.remove(out.size() - 1);
                }
                if (out.size() != 1 || !out.get(0).isNear(ring, hair)) {
                    out.add(ring);
                }
            }
        }
        return new MeshRings(out);
    }

    /** Between two rings of one section lies the frustum h·A(r₁² + r₁r₂ + r₂²)/3, at a shoulder nothing. */
    double volumeMm3() {
        double sum = 0;
        for (int i = 1; i < rings.size(); i++) {
            Ring before = rings.get(i - 1);
            Ring after = rings.get(i);
            double a = before.radiusMm();
            double b = after.radiusMm();
            sum += after.section().areaFactor() * (after.placeMm() - before.placeMm()) * (a * a + a * b + b * b) / 3;
        }
        return sum;
    }
}
