package turnalike.turning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;

/**
 * An outline cut into elements, each with four stations at which its bending stiffness and its mass by length are known. An element
 * never crosses a shoulder or a crest, nor a place where the sag is asked, and within one the second moment of area changes by no more
 * than a set ratio; so narrow necks and the steep edges of coves get short elements, and plain stretches long ones.
 */
final class BeamMesh {
    /** How finely the piece is cut. */
    enum Fineness {
        /** For figures that are told; then halved to see what that changes. */
        FINE(40, 1.3),
        /** For figures that are only looked at beside others: within a thousandth of the fine ones. */
        COARSE(20, 2);

        /** Elements are no longer than this share of the piece. */
        private final int leastElements;

        /** The largest over the smallest second moment of area within an element. */
        private final double mostChange;

        Fineness(int leastElements, double mostChange) {
            this.leastElements = leastElements;
            this.mostChange = mostChange;
        }
    }

    /** Places nearer than this share of the piece are one place. */
    private static final double SAME = 1e-9;

    /**
     * Radii below this share of the largest are reckoned as that: a tip chamfered to a point would have no stiffness at all, and what a
     * centre holds is never so thin.
     */
    static final double THINNEST = 1e-3;

    private final Outline outline;
    private final double startMm;
    private final double thinnestMm;

    /** Ends of the elements from the start of the piece, one more than there are elements. */
    final double[] nodeMm;

    /** Stations, {@link GaussLegendre#COUNT} to an element. */
    final double[] stationMm;

    /** Second moment of area about an axis across the piece, by station. */
    final double[] inertiaMm4;

    /** Area of the section, by station. */
    final double[] areaMm2;

    /** The part of the area that shear counts with, by station. */
    final double[] shearAreaMm2;

    /** The same at its thinnest, by element's end: of the two sides of a shoulder the thinner. */
    final double[] leastShearAreaMm2;

    /** Bending moment over the greatest stress, by element's end; of the two sides of a shoulder the weaker. */
    final double[] modulusMm3;

    private BeamMesh(Outline outline, double[] nodeMm, int[] segmentOf) {
        this.outline = outline;
        this.startMm = outline.start().mm();
        this.thinnestMm = THINNEST * outline.largestRadius().mm();
        this.nodeMm = nodeMm;
        int stations = (nodeMm.length - 1) * GaussLegendre.COUNT;
        stationMm = new double[stations];
        inertiaMm4 = new double[stations];
        areaMm2 = new double[stations];
        shearAreaMm2 = new double[stations];
        leastShearAreaMm2 = new double[nodeMm.length];
        modulusMm3 = new double[nodeMm.length];
        Arrays.fill(leastShearAreaMm2, Double.POSITIVE_INFINITY);
        Arrays.fill(modulusMm3, Double.POSITIVE_INFINITY);
        for (int e = 0; e + 1 < nodeMm.length; e++) {
            Segment segment = outline.segments().get(segmentOf[e]);
            for (int i = 0; i < GaussLegendre.COUNT; i++) {
                int at = e * GaussLegendre.COUNT + i;
                stationMm[at] = nodeMm[e] + GaussLegendre.at(i) * (nodeMm[e + 1] - nodeMm[e]);
                double r = radiusMm(segment, stationMm[at]);
                Section section = segment.section();
                inertiaMm4[at] = section.secondMomentFactor() * r * r * r * r;
                areaMm2[at] = section.areaFactor() * r * r;
                shearAreaMm2[at] = section.shearFactor() * areaMm2[at];
            }
            weaken(segment, e);
            weaken(segment, e + 1);
        }
        this.segmentOf = segmentOf;
    }

    private final int[] segmentOf;

    private void weaken(Segment segment, int node) {
        double r = radiusMm(segment, nodeMm[node]);
        Section section = segment.section();
        double modulus = section.secondMomentFactor() * r * r * r / section.reachFactor();
        modulusMm3[node] = Math.min(modulusMm3[node], modulus);
        double shearArea = section.shearFactor() * section.areaFactor() * r * r;
        leastShearAreaMm2[node] = Math.min(leastShearAreaMm2[node], shearArea);
    }

    /** The outline with element ends at its own joints and crests and at the given places, which are measured from its start. */
    static BeamMesh of(Outline outline, double[] placesMm, Fineness fineness) {
        return new Cutter(outline, placesMm, fineness).mesh();
    }

    /** The same with every element cut in two. */
    BeamMesh halved() {
        double[] nodes = new double[2 * nodeMm.length - 1];
        int[] segments = new int[2 * segmentOf.length];
        for (int e = 0; e < segmentOf.length; e++) {
            nodes[2 * e] = nodeMm[e];
            nodes[2 * e + 1] = (nodeMm[e] + nodeMm[e + 1]) / 2;
            segments[2 * e] = segmentOf[e];
            segments[2 * e + 1] = segmentOf[e];
        }
        nodes[nodes.length - 1] = nodeMm[nodeMm.length - 1];
        return new BeamMesh(outline, nodes, segments);
    }

    int elements() {
        return segmentOf.length;
    }

    double lengthMm() {
        return nodeMm[nodeMm.length - 1];
    }

    /** Whether some radius was too thin to be reckoned with as it is. */
    boolean thickened() {
        return outline.smallestRadius().mm() < thinnestMm;
    }

    private double radiusMm(Segment segment, double placeMm) {
        return Math.max(thinnestMm, radiusMm(segment, placeMm, startMm));
    }

    private static double radiusMm(Segment segment, double placeMm, double startMm) {
        return segment.curve().radiusMm(placeMm + startMm - segment.start().mm());
    }

    /** Finds the elements' ends. */
    private static final class Cutter {
        private final Outline outline;
        private final Fineness fineness;
        private final double[] placesMm;
        private final double lengthMm;
        private final double thinnestMm;
        private final List<Double> nodes = new ArrayList<>();
        private final List<Integer> segmentOf = new ArrayList<>();

        Cutter(Outline outline, double[] placesMm, Fineness fineness) {
            this.outline = outline;
            this.fineness = fineness;
            this.lengthMm = outline.length().mm();
            this.thinnestMm = THINNEST * outline.largestRadius().mm();
            this.placesMm = withGrid(placesMm);
        }

        private double[] withGrid(double[] places) {
            double[] out = Arrays.copyOf(places, places.length + fineness.leastElements);
            for (int i = 0; i < fineness.leastElements; i++) {
                out[places.length + i] = lengthMm * i / fineness.leastElements;
            }
            Arrays.sort(out);
            return out;
        }

        BeamMesh mesh() {
            nodes.add(0.0);
            List<Segment> segments = outline.segments();
            for (int s = 0; s < segments.size(); s++) {
                segment(s);
            }
            nodes.set(nodes.size() - 1, lengthMm);
            double[] ends = nodes.stream().mapToDouble(Double::doubleValue).toArray();
            return new BeamMesh(
                    outline,
                    ends,
                    segmentOf.stream().mapToInt(Integer::intValue).toArray());
        }

        private void segment(int s) {
            Segment segment = outline.segments().get(s);
            double from = segment.start().minus(outline.start()).mm();
            double to = segment.end().minus(outline.start()).mm();
            List<Double> stops = new ArrayList<>();
            for (double place : placesMm) {
                if (place > from && place < to) {
                    stops.add(place);
                }
            }
            Curve curve = segment.curve();
            curve.levelPlacesMm().forEach(x -> stops.add(from + x));
            stops.add(to);
            stops.sort(Double::compare);
            for (double stop : stops) {
                double last = nodes.get(nodes.size() - 1);
                if (stop - last > SAME * lengthMm) {
                    cut(s, last, stop);
                }
            }
        }

        private void cut(int s, double fromMm, double toMm) {
            double middle = (fromMm + toMm) / 2;
            if (tooUneven(s, fromMm, middle, toMm) && toMm - fromMm > 2 * SAME * lengthMm) {
                cut(s, fromMm, middle);
                cut(s, middle, toMm);
            } else {
                nodes.add(toMm);
                segmentOf.add(s);
            }
        }

        private boolean tooUneven(int s, double a, double b, double c) {
            Segment segment = outline.segments().get(s);
            double start = outline.start().mm();
            double ra = Math.max(thinnestMm, radiusMm(segment, a, start));
            double rb = Math.max(thinnestMm, radiusMm(segment, b, start));
            double rc = Math.max(thinnestMm, radiusMm(segment, c, start));
            double most = Math.max(ra, Math.max(rb, rc));
            double least = Math.min(ra, Math.min(rb, rc));
            return Math.pow(most / least, 4) > fineness.mostChange;
        }
    }
}
