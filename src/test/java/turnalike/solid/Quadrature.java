package turnalike.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import turnalike.outline.Section;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Samples;
import turnalike.units.Length;

/** The solid's figures by adaptive Gauss–Legendre quadrature (Hipparchus) of the file format's formulas: the other route. */
public final class Quadrature {
    private static final double RELATIVE = 1e-11;

    private record Part(double start, double length, List<Double> cuts, DoubleUnaryOperator radius, Section section) {}

    private final List<Part> parts = new ArrayList<>();

    private final double relative;

    public Quadrature(Pattern pattern) {
        this(pattern, RELATIVE);
    }

    public Quadrature(Pattern pattern, double relative) {
        this.relative = relative;
        List<PlacedMember> run = pattern.placed();
        for (PlacedMember placed : run) {
            Member member = placed.member();
            Member.Ends ends = new Member.Ends(placed.number() == 1, placed.number() == run.size());
            DoubleUnaryOperator radius = Samples.shape(member, ends);
            double length = member.length().mm();
            parts.add(new Part(
                    placed.start().mm(),
                    length,
                    Samples.breaks(member).stream().map(Length::mm).toList(),
                    radius,
                    member.section()));
        }
    }

    /**
     * Adaptive quadrature with x = a + (b−a)(1−cos φ)/2, under which the upright ends of ellipse arcs become smooth. The integrand is
     * split before the sum is tested, so the relative tolerance holds for each stretch.
     */
    public static double integrate(DoubleUnaryOperator f, double a, double b) {
        return integrate(f, a, b, RELATIVE);
    }

    private static double integrate(DoubleUnaryOperator f, double a, double b, double relative) {
        if (b - a < 1e-12) {
            return 0;
        }
        IterativeLegendreGaussIntegrator integrator = new IterativeLegendreGaussIntegrator(16, relative, 1e-300);
        return integrator.integrate(
                1_000_000,
                phi -> f.applyAsDouble(a + (b - a) * (1 - Math.cos(phi)) / 2) * (b - a) / 2 * Math.sin(phi),
                0,
                Math.PI);
    }

    private interface Kernel {
        double at(double x, double r, Section section);
    }

    private double sum(Kernel kernel) {
        double sum = 0;
        for (Part part : parts) {
            for (int i = 0; i + 1 < part.cuts().size(); i++) {
                sum += integrate(
                        x -> kernel.at(part.start() + x, part.radius().applyAsDouble(x), part.section()),
                        part.cuts().get(i),
                        part.cuts().get(i + 1),
                        relative);
            }
        }
        return sum;
    }

    private static double area(double r, Section section) {
        return section == Section.SQUARE ? 4 * r * r : Math.PI * r * r;
    }

    public double volume() {
        return sum((x, r, section) -> area(r, section));
    }

    public double balance() {
        return sum((x, r, section) -> x * area(r, section)) / volume();
    }

    public double spin() {
        return sum(
                (x, r, section) -> section == Section.SQUARE ? Math.pow(2 * r, 4) / 6 : Math.PI / 2 * Math.pow(r, 4));
    }

    public double swing() {
        double balance = balance();
        return sum((x, r, section) -> {
            double own = section == Section.SQUARE ? Math.pow(2 * r, 4) / 12 : Math.PI / 4 * Math.pow(r, 4);
            return own + area(r, section) * (x - balance) * (x - balance);
        });
    }
}
