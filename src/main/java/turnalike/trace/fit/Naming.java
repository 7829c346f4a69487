package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.outline.Polynomial;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Fillet;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Groove;
import turnalike.pattern.HalfBead;
import turnalike.pattern.HalfCove;
import turnalike.pattern.Member;
import turnalike.pattern.Ogee;
import turnalike.pattern.ReverseOgee;
import turnalike.pattern.Square;
import turnalike.pattern.Swell;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.pattern.Vee;
import turnalike.units.Length;

/**
 * What a turner calls each form by what stands beside it. A level stretch is a tenon at an end below a shoulder, a groove where it is narrow
 * and both walls rise from it to what goes on behind it, a fillet where it is narrow, else a cylinder;
 * narrow is up to {@link #NARROW_MM} or a quarter of the diameter (common practice, no source).
 */
final class Naming {
    private static final double NARROW_MM = 8;
    private static final double NARROW_SHARE = 0.25;
    private static final double LEAST_MM = 0.01;
    private static final int CURVE_PARTS = 16;

    private final List<Part> parts;
    private final double shoulderMm;
    private final Grid grid;
    private final List<Double> chamfers;

    private Naming(List<Part> parts, double shoulderMm, Grid grid, List<Double> chamfers) {
        this.parts = parts;
        this.shoulderMm = shoulderMm;
        this.grid = grid;
        this.chamfers = chamfers;
    }

    /**
     * The members, in order.
     *
     * @param shoulderMm a step in radius that is not below this is a shoulder
     * @param grid what sizes are rounded to
     * @param chamfers of the first part and the last, zero for none
     */
    static List<Member> of(List<Part> parts, double shoulderMm, Grid grid, List<Double> chamfers) {
        Naming naming = new Naming(parts, shoulderMm, grid, chamfers);
        List<Member> out = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            out.add(naming.member(i));
        }
        return out;
    }

    private Member member(int i) {
        Part part = parts.get(i);
        Length length = grid.length(part.fromMm(), part.toMm());
        if (part.isSquare()) {
            return new Square(length, diameter(part.startRadius()), Details.NONE);
        }
        if (part.isCurve()) {
            return curve(part);
        }
        if (dipsTooDeep(part)) {
            return curve(Part.curve(points(part)));
        }
        Length from = diameter(part.sizes().get(0));
        Length to = diameter(part.sizes().get(part.sizes().size() - 1));
        boolean rises = to.compareTo(from) > 0;
        if (part.sizes().size() == 2 && from.compareTo(to) == 0) {
            return level(i, length, from);
        }
        return switch (part.form()) {
            case LEVEL -> level(i, length, from);
            case STRAIGHT -> new Taper(length, from, to, Details.NONE);
            case BELLY -> new Swell(length, from, diameter(part.sizes().get(1)), to, Details.NONE);
            case HUMP -> rises ? new Bead(length, from, to, Details.NONE) : new Cove(length, from, to, Details.NONE);
            case LEVEL_AT_START ->
                rises ? new HalfCove(length, from, to, Details.NONE) : new HalfBead(length, from, to, Details.NONE);
            case LEVEL_AT_END ->
                rises ? new HalfBead(length, from, to, Details.NONE) : new HalfCove(length, from, to, Details.NONE);
            case S -> new Ogee(length, from, to, Details.NONE);
            case REVERSE_S -> new ReverseOgee(length, from, to, Details.NONE);
            case POINT -> new Vee(length, from, to, Details.NONE);
        };
    }

    /** Of rows far apart a quadratic through three of them may fall below the axis between: no swell is turned so. */
    private boolean dipsTooDeep(Part part) {
        return part.form() == Form.BELLY
                && !Polynomial.leastOfQuadratic(
                                diameter(part.sizes().get(0)),
                                diameter(part.sizes().get(1)),
                                diameter(part.sizes().get(2)))
                        .isPositive();
    }

    /** Places along the form with the radii there. */
    private static List<double[]> points(Part part) {
        List<double[]> out = new ArrayList<>();
        double[] weights = new double[3];
        for (int i = 0; i <= CURVE_PARTS; i++) {
            double u = (double) i / CURVE_PARTS;
            part.form().weights(u, weights);
            double radius = 0;
            for (int k = 0; k < part.sizes().size(); k++) {
                radius += weights[k] * part.sizes().get(k);
            }
            out.add(new double[] {part.fromMm() + u * part.lengthMm(), radius});
        }
        return out;
    }

    private Member level(int i, Length length, Length diameter) {
        double wallBefore = i == 0 ? 0 : parts.get(i - 1).endRadius() - diameter.mm() / 2;
        double wallAfter = i + 1 == parts.size() ? 0 : parts.get(i + 1).startRadius() - diameter.mm() / 2;
        boolean first = i == 0;
        boolean last = i + 1 == parts.size();
        if ((first && !last && wallAfter >= shoulderMm) || (last && !first && wallBefore >= shoulderMm)) {
            double chamfer = chamfers.get(first ? 0 : 1);
            double most = Math.min(length.mm(), diameter.mm()) / 2;
            Length edge = Length.ofMm(Math.min(most, grid.size(chamfer)));
            return new Tenon(length, diameter, edge, Optional.empty(), Details.NONE);
        }
        boolean narrow = length.mm() <= Math.max(NARROW_MM, NARROW_SHARE * diameter.mm());
        if (narrow && wallBefore >= shoulderMm && wallAfter >= shoulderMm && isCutInto(i)) {
            Length rim = diameter(diameter.mm() / 2 + Math.min(wallBefore, wallAfter));
            if (rim.compareTo(diameter) > 0) {
                return new Groove(length, rim, diameter, Details.NONE);
            }
        }
        return narrow ? new Fillet(length, diameter, Details.NONE) : new Cylinder(length, diameter, Details.NONE);
    }

    /**
     * Whether it is cut into what goes on behind it: both rims alike, and no arc that stands upright on either side. What lies between two members of
     * their own sets them off, be it as deep.
     */
    private boolean isCutInto(int i) {
        Part before = parts.get(i - 1);
        Part after = parts.get(i + 1);
        boolean upright = (!before.isCurve() && before.form().steepAtEnd())
                || (!after.isCurve() && after.form().steepAtStart());
        return !upright && Math.abs(before.endRadius() - after.startRadius()) < shoulderMm;
    }

    private Member curve(Part part) {
        List<FreeCurve.Point> points = new ArrayList<>();
        double start = grid.place(part.fromMm());
        for (double[] each : part.points()) {
            Length place = Length.ofMm(grid.place(each[0]) - start);
            boolean beyond = points.isEmpty()
                    || place.minus(points.get(points.size() - 1).place()).mm() > LEAST_MM;
            if (beyond) {
                points.add(new FreeCurve.Point(place, diameter(each[1])));
            }
        }
        return new FreeCurve(points, Details.NONE);
    }

    private Length diameter(double radiusMm) {
        return Length.ofMm(Math.max(grid.stepMm(), grid.size(2 * radiusMm)));
    }
}
