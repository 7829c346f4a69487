package turnalike.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import turnalike.outline.Section;
import turnalike.solid.MeshRings.Ring;

/**
 * Stretches a skin over rings. All rings have their corners on the same rays from the axis, so that one strip of triangles joins any two,
 * be they round or square, also at a shoulder, where the strip lies flat.
 */
final class MeshMaker {
    /** Of a whole turn; a multiple of 8, so that a square's corners and the middles of its flats lie on rays. */
    private static final int RAYS = 128;

    /** Where a round and a square meet at a shoulder, corners nearer than this share of the radius are one. */
    private static final double TOUCHING = 5e-4;

    private static final double SAME_RAY = 1e-4;

    private final List<Ring> rings;
    private final double[] cosine;
    private final double[] sine;
    /** A polygon of these rays has the circle's area when its corners stand out so much. */
    private final double outwards;

    private final List<Mesh.Corner> corners = new ArrayList<>();
    private final List<Mesh.Facet> facets = new ArrayList<>();

    MeshMaker(MeshRings rings) {
        this.rings = rings.rings();
        double[] angles = angles(this.rings);
        this.cosine = new double[angles.length];
        this.sine = new double[angles.length];
        double twiceArea = 0;
        for (int i = 0; i < angles.length; i++) {
            cosine[i] = Math.cos(angles[i]);
            sine[i] = Math.sin(angles[i]);
            double next = i + 1 < angles.length ? angles[i + 1] : angles[0] + 2 * Math.PI;
            twiceArea += Math.sin(next - angles[i]);
        }
        this.outwards = Math.sqrt(2 * Math.PI / twiceArea);
    }

    /** Beside the even rays those on which a round crosses the square that it meets at a shoulder: flats of the shoulder end there. */
    private static double[] angles(List<Ring> rings) {
        NavigableSet<Double> out = new TreeSet<>();
        for (int i = 0; i < RAYS; i++) {
            out.add(2 * Math.PI * i / RAYS);
        }
        double evenOutwards = Math.sqrt(2 * Math.PI / (RAYS * Math.sin(2 * Math.PI / RAYS)));
        for (int i = 1; i < rings.size(); i++) {
            Ring before = rings.get(i - 1);
            Ring after = rings.get(i);
            if (before.section() != after.section()) {
                boolean squareFirst = before.section() == Section.SQUARE;
                Ring square = squareFirst ? before : after;
                Ring round = squareFirst ? after : before;
                double ratio = square.radiusMm() / (round.radiusMm() * evenOutwards);
                if (ratio < 1 && ratio > Math.sqrt(0.5)) {
                    addCrossings(out, Math.acos(ratio));
                }
            }
        }
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void addCrossings(NavigableSet<Double> angles, double angle) {
        for (int quarter = 0; quarter < 4; quarter++) {
            for (int side = -1; side <= 1; side += 2) {
                double turned = quarter * Math.PI / 2 + side * angle;
                double ray = turned < 0 ? turned + 2 * Math.PI : turned;
                if (angles.subSet(ray - SAME_RAY, ray + SAME_RAY).isEmpty()) {
                    angles.add(ray);
                }
            }
        }
    }

    Mesh mesh() {
        Ring first = rings.get(0);
        int[] below = ring(first, first, new int[0]);
        cap(below, first, false);
        for (int i = 1; i < rings.size(); i++) {
            int[] above = ring(rings.get(i), rings.get(i - 1), below);
            strip(below, above);
            boolean inside = i + 1 < rings.size();
            // Two cones that meet in a point have a corner there each.
            below = inside && rings.get(i).isPoint() ? ring(rings.get(i), rings.get(i), new int[0]) : above;
        }
        cap(below, rings.get(rings.size() - 1), true);
        return new Mesh(corners, facets);
    }

    /** The corners of a ring; at a shoulder between round and square those of the ring before, where the two touch. */
    private int[] ring(Ring ring, Ring before, int[] beforeCorners) {
        int[] out = new int[cosine.length];
        boolean mayTouch =
                beforeCorners.length > 0 && ring.section() != before.section() && !ring.isPoint() && !before.isPoint();
        for (int i = 0; i < out.length; i++) {
            double reach = reach(ring, i);
            if (ring.isPoint() && i > 0) {
                out[i] = out[0];
            } else if (mayTouch && Math.abs(reach - reach(before, i)) < TOUCHING * reach) {
                out[i] = beforeCorners[i];
            } else {
                out[i] = corner(reach * cosine[i], reach * sine[i], ring.placeMm());
            }
        }
        return out;
    }

    /** How far out the ring's corner on that ray stands from the axis. */
    private double reach(Ring ring, int ray) {
        return ring.section() == Section.ROUND
                ? ring.radiusMm() * outwards
                : ring.radiusMm() / Math.max(Math.abs(cosine[ray]), Math.abs(sine[ray]));
    }

    private int corner(double xMm, double yMm, double zMm) {
        corners.add(new Mesh.Corner(xMm, yMm, zMm));
        return corners.size() - 1;
    }

    private void strip(int[] below, int[] above) {
        for (int i = 0; i < below.length; i++) {
            int next = (i + 1) % below.length;
            facet(below[i], below[next], above[next]);
            facet(below[i], above[next], above[i]);
        }
    }

    private void cap(int[] edge, Ring ring, boolean upwards) {
        if (ring.isPoint()) {
            return;
        }
        int middle = corner(0, 0, ring.placeMm());
        for (int i = 0; i < edge.length; i++) {
            int next = (i + 1) % edge.length;
            facet(middle, edge[upwards ? i : next], edge[upwards ? next : i]);
        }
    }

    /** None where two of the corners are one. */
    private void facet(int a, int b, int c) {
        if (a != b && b != c && a != c) {
            facets.add(new Mesh.Facet(a, b, c));
        }
    }
}
