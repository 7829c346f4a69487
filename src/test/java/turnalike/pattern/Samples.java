package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import turnalike.outline.MonotoneCubic;
import turnalike.outline.Polynomial;
import turnalike.outline.Section;
import turnalike.units.Length;

/**
 * Random members and patterns of every kind, from a seed; and r(x) of each kind, written a second time straight from the formulas of the
 * file format, x and r in millimetres. A new kind is one line of the table.
 */
public final class Samples {
    private Samples() {}

    /** Sizes to make a member of: {@code from} and {@code to} are thin and thick, one way or the other. */
    record Draw(Length length, Length thin, Length thick, boolean rises, Random random) {
        Length from() {
            return rises ? thin : thick;
        }

        Length to() {
            return rises ? thick : thin;
        }
    }

    /**
     * A kind: how one is drawn, its formula at given ends of the piece, and where that formula changes besides its middle.
     */
    record Sample<M extends Member>(
            Class<M> type,
            Function<Draw, M> draw,
            BiFunction<M, Member.Ends, DoubleUnaryOperator> formula,
            Function<M, List<Length>> breaks) {
        DoubleUnaryOperator shape(Member member, Member.Ends ends) {
            return formula.apply(type.cast(member), ends);
        }

        List<Length> breaksOf(Member member) {
            return breaks.apply(type.cast(member));
        }
    }

    private static <M extends Member> Sample<M> sample(
            Class<M> type, Function<Draw, M> draw, Function<M, DoubleUnaryOperator> formula) {
        return new Sample<>(type, draw, (member, ends) -> formula.apply(member), member -> List.of());
    }

    private static final Details PLAIN = Details.NONE;

    private static final List<Sample<?>> TABLE = List.of(
            sample(Square.class, d -> new Square(d.length(), d.thick(), PLAIN), m -> level(m.side())),
            sample(Cylinder.class, d -> new Cylinder(d.length(), d.thick(), PLAIN), m -> level(m.diameter())),
            sample(Fillet.class, d -> new Fillet(d.length(), d.thin(), PLAIN), m -> level(m.diameter())),
            new Sample<>(
                    Tenon.class,
                    Samples::tenon,
                    Samples::chamfered,
                    m -> List.of(m.chamfer(), m.length().minus(m.chamfer()))),
            sample(
                    Taper.class,
                    d -> new Taper(d.length(), d.from(), d.to(), PLAIN),
                    m -> x -> mix(m.from(), m.to(), x / m.length().mm())),
            sample(
                    Swell.class,
                    d -> new Swell(
                            d.length(), d.from(), d.thin().plus(d.thick()).times(0.5), d.to(), PLAIN),
                    Samples::swelling),
            sample(
                    Bead.class,
                    d -> new Bead(d.length(), d.thin(), d.thick(), PLAIN),
                    m -> x -> mix(m.root(), m.crown(), hump(x, m.length()))),
            sample(HalfBead.class, d -> new HalfBead(d.length(), d.from(), d.to(), PLAIN), Samples::bulging),
            sample(
                    Cove.class,
                    d -> new Cove(d.length(), d.thick(), d.thin(), PLAIN),
                    m -> x -> mix(m.rim(), m.bottom(), hump(x, m.length()))),
            sample(HalfCove.class, d -> new HalfCove(d.length(), d.from(), d.to(), PLAIN), Samples::hollow),
            sample(Ogee.class, d -> new Ogee(d.length(), d.from(), d.to(), PLAIN), Samples::levelAtEnds),
            sample(
                    ReverseOgee.class,
                    d -> new ReverseOgee(d.length(), d.from(), d.to(), PLAIN),
                    Samples::levelAtItsMiddle),
            sample(
                    Vee.class,
                    d -> new Vee(d.length(), d.thick(), d.thin(), PLAIN),
                    m -> x ->
                            mix(m.bottom(), m.rim(), Math.abs(2 * x / m.length().mm() - 1))),
            sample(Groove.class, d -> new Groove(d.length(), d.thick(), d.thin(), PLAIN), m -> level(m.bottom())),
            new Sample<>(FreeCurve.class, d -> freeCurve(d.random()), (m, ends) -> through(m), m -> m.points().stream()
                    .map(FreeCurve.Point::place)
                    .toList()));

    public static final int KINDS = TABLE.size();

    /** The classes of the kinds, in order. */
    static List<Class<?>> types() {
        return TABLE.stream().<Class<?>>map(Sample::type).toList();
    }

    public static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    /** A member of the kind numbered 0 to {@code KINDS - 1}, at most 40 mm across and 60 mm long. */
    public static Member member(int kind, Random random) {
        Length length = mm(2 + 58 * random.nextDouble());
        Length thin = mm(4 + 14 * random.nextDouble());
        Length thick = thin.plus(mm(0.5 + 20 * random.nextDouble()));
        return TABLE.get(kind).draw().apply(new Draw(length, thin, thick, random.nextBoolean(), random));
    }

    public static Pattern pattern(int members, Random random) {
        List<Member> run = new ArrayList<>();
        for (int i = 0; i < members; i++) {
            run.add(member(random.nextInt(KINDS), random));
        }
        return new Pattern("sample", new Stock(Section.SQUARE, mm(45), mm(20_000)), run);
    }

    /** r(x) by the kind's formula. */
    public static DoubleUnaryOperator shape(Member member, Member.Ends ends) {
        return of(member).shape(member, ends);
    }

    /** Where the formula changes, so that each stretch between is smooth inside. */
    public static List<Length> breaks(Member member) {
        List<Length> out = new ArrayList<>(List.of(Length.ZERO, member.length().times(0.5), member.length()));
        out.addAll(of(member).breaksOf(member));
        return out.stream().distinct().sorted().toList();
    }

    private static Sample<?> of(Member member) {
        return TABLE.stream()
                .filter(each -> each.type().isInstance(member))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no sample of a " + member.getClass()));
    }

    /** The radius that lies at that share of the way from one diameter to another. */
    private static double mix(Length from, Length to, double share) {
        return from.mm() / 2 + (to.mm() - from.mm()) / 2 * share;
    }

    private static DoubleUnaryOperator level(Length diameter) {
        return x -> diameter.mm() / 2;
    }

    private static double hump(double x, Length length) {
        double u = x / length.mm();
        return Math.sqrt(Math.max(0, 1 - (2 * u - 1) * (2 * u - 1)));
    }

    private static Tenon tenon(Draw d) {
        double most = Math.min(d.length().mm(), d.thin().mm()) / 2;
        return new Tenon(d.length(), d.thin(), mm(d.random().nextDouble() * most), PLAIN);
    }

    private static DoubleUnaryOperator chamfered(Tenon m, Member.Ends ends) {
        double r = m.diameter().mm() / 2;
        double c = m.chamfer().mm();
        double length = m.length().mm();
        return x -> {
            double fromStart = ends.first() && x < c ? r - c + x : r;
            double fromEnd = ends.last() && length - x < c ? r - c + (length - x) : r;
            return Math.min(fromStart, fromEnd);
        };
    }

    private static DoubleUnaryOperator swelling(Swell m) {
        return x -> {
            double u = x / m.length().mm();
            double from = (2 * u - 1) * (u - 1) * m.from().mm() / 2;
            double middle = 4 * u * (1 - u) * m.middle().mm() / 2;
            return from + middle + u * (2 * u - 1) * m.to().mm() / 2;
        };
    }

    private static DoubleUnaryOperator bulging(HalfBead m) {
        double small = Math.min(m.from().mm(), m.to().mm()) / 2;
        double big = Math.max(m.from().mm(), m.to().mm()) / 2;
        return x -> {
            double v = m.from().mm() >= m.to().mm()
                    ? x / m.length().mm()
                    : 1 - x / m.length().mm();
            return small + (big - small) * Math.sqrt(Math.max(0, 1 - v * v));
        };
    }

    private static DoubleUnaryOperator hollow(HalfCove m) {
        double small = Math.min(m.from().mm(), m.to().mm()) / 2;
        double big = Math.max(m.from().mm(), m.to().mm()) / 2;
        return x -> {
            double w = m.from().mm() < m.to().mm()
                    ? x / m.length().mm()
                    : 1 - x / m.length().mm();
            return big - (big - small) * Math.sqrt(Math.max(0, 1 - w * w));
        };
    }

    private static DoubleUnaryOperator levelAtEnds(Ogee m) {
        double r1 = m.from().mm() / 2;
        double r2 = m.to().mm() / 2;
        return x -> {
            double u = x / m.length().mm();
            return u < 0.5 ? r1 + (r2 - r1) * 2 * u * u : r2 - (r2 - r1) * 2 * (1 - u) * (1 - u);
        };
    }

    private static DoubleUnaryOperator levelAtItsMiddle(ReverseOgee m) {
        double r1 = m.from().mm() / 2;
        double r2 = m.to().mm() / 2;
        return x -> {
            double u = x / m.length().mm();
            double w = 1 - (1 - 2 * u) * (1 - 2 * u);
            return u < 0.5 ? r1 + (r2 - r1) / 2 * w : r2 - (r2 - r1) / 2 * w;
        };
    }

    private static FreeCurve freeCurve(Random random) {
        List<FreeCurve.Point> points = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < 2 + random.nextInt(6); i++) {
            points.add(new FreeCurve.Point(mm(at), mm(5 + 33 * random.nextDouble())));
            at += 1 + 20 * random.nextDouble();
        }
        return new FreeCurve(points, Details.NONE);
    }

    /** The one kind whose formula is an algorithm; {@code MonotoneCubicTest} checks that on its own. */
    private static DoubleUnaryOperator through(FreeCurve m) {
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
