package turnalike.pattern;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import turnalike.outline.MonotoneCubic;
import turnalike.outline.Polynomial;

/** r(x) of each member kind, written a second time straight from the formulas of the file format, x and r in millimetres. */
public final class ContractShape implements Member.Cases<DoubleUnaryOperator> {
    private final Member.Ends ends;

    private ContractShape(Member.Ends ends) {
        this.ends = ends;
    }

    public static DoubleUnaryOperator of(Member member, Member.Ends ends) {
        return member.match(new ContractShape(ends));
    }

    @Override
    public DoubleUnaryOperator square(Square m) {
        return x -> m.side().mm() / 2;
    }

    @Override
    public DoubleUnaryOperator cylinder(Cylinder m) {
        return x -> m.diameter().mm() / 2;
    }

    @Override
    public DoubleUnaryOperator fillet(Fillet m) {
        return x -> m.diameter().mm() / 2;
    }

    @Override
    public DoubleUnaryOperator tenon(Tenon m) {
        double r = m.diameter().mm() / 2;
        double c = m.chamfer().mm();
        double length = m.length().mm();
        return x -> {
            double fromStart = ends.first() && x < c ? r - c + x : r;
            double fromEnd = ends.last() && length - x < c ? r - c + (length - x) : r;
            return Math.min(fromStart, fromEnd);
        };
    }

    @Override
    public DoubleUnaryOperator taper(Taper m) {
        return x ->
                (m.from().mm() + (m.to().mm() - m.from().mm()) * x / m.length().mm()) / 2;
    }

    @Override
    public DoubleUnaryOperator swell(Swell m) {
        return x -> {
            double u = x / m.length().mm();
            double from = (2 * u - 1) * (u - 1) * m.from().mm() / 2;
            double middle = 4 * u * (1 - u) * m.middle().mm() / 2;
            return from + middle + u * (2 * u - 1) * m.to().mm() / 2;
        };
    }

    private static double hump(double x, double length) {
        double u = x / length;
        return Math.sqrt(Math.max(0, 1 - (2 * u - 1) * (2 * u - 1)));
    }

    @Override
    public DoubleUnaryOperator bead(Bead m) {
        return x -> m.root().mm() / 2
                + (m.crown().mm() - m.root().mm()) / 2 * hump(x, m.length().mm());
    }

    @Override
    public DoubleUnaryOperator cove(Cove m) {
        return x -> m.rim().mm() / 2
                - (m.rim().mm() - m.bottom().mm()) / 2 * hump(x, m.length().mm());
    }

    @Override
    public DoubleUnaryOperator halfBead(HalfBead m) {
        double small = Math.min(m.from().mm(), m.to().mm()) / 2;
        double big = Math.max(m.from().mm(), m.to().mm()) / 2;
        return x -> {
            double v = m.from().mm() >= m.to().mm()
                    ? x / m.length().mm()
                    : 1 - x / m.length().mm();
            return small + (big - small) * Math.sqrt(Math.max(0, 1 - v * v));
        };
    }

    @Override
    public DoubleUnaryOperator halfCove(HalfCove m) {
        double small = Math.min(m.from().mm(), m.to().mm()) / 2;
        double big = Math.max(m.from().mm(), m.to().mm()) / 2;
        return x -> {
            double w = m.from().mm() < m.to().mm()
                    ? x / m.length().mm()
                    : 1 - x / m.length().mm();
            return big - (big - small) * Math.sqrt(Math.max(0, 1 - w * w));
        };
    }

    @Override
    public DoubleUnaryOperator ogee(Ogee m) {
        double r1 = m.from().mm() / 2;
        double r2 = m.to().mm() / 2;
        return x -> {
            double u = x / m.length().mm();
            return u < 0.5 ? r1 + (r2 - r1) * 2 * u * u : r2 - (r2 - r1) * 2 * (1 - u) * (1 - u);
        };
    }

    @Override
    public DoubleUnaryOperator reverseOgee(ReverseOgee m) {
        double r1 = m.from().mm() / 2;
        double r2 = m.to().mm() / 2;
        return x -> {
            double u = x / m.length().mm();
            double w = 1 - (1 - 2 * u) * (1 - 2 * u);
            return u < 0.5 ? r1 + (r2 - r1) / 2 * w : r2 - (r2 - r1) / 2 * w;
        };
    }

    @Override
    public DoubleUnaryOperator vee(Vee m) {
        return x -> {
            double u = x / m.length().mm();
            return m.bottom().mm() / 2 + (m.rim().mm() - m.bottom().mm()) / 2 * Math.abs(2 * u - 1);
        };
    }

    @Override
    public DoubleUnaryOperator groove(Groove m) {
        return x -> m.bottom().mm() / 2;
    }

    /** The one kind whose formula is an algorithm; {@code MonotoneCubicTest} checks that on its own. */
    @Override
    public DoubleUnaryOperator freeCurve(FreeCurve m) {
        List<Polynomial> pieces = MonotoneCubic.through(m.points().stream()
                .map(p -> new MonotoneCubic.Point(p.place(), p.diameter().times(0.5)))
                .toList());
        return x -> {
            int i = 0;
            while (i + 1 < pieces.size() && x > m.points().get(i + 1).place().mm()) {
                i++;
            }
            return pieces.get(i).radiusMm(x - m.points().get(i).place().mm());
        };
    }
}
