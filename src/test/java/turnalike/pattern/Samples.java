package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import turnalike.outline.Section;
import turnalike.units.Length;

/** Random members and patterns of every kind, from a seed. */
public final class Samples {
    private Samples() {}

    public static final int KINDS = 15;

    public static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    /** A member of the kind numbered 0 to {@code KINDS - 1}, at most 40 mm across and 60 mm long. */
    public static Member member(int kind, Random random) {
        Length length = mm(2 + 58 * random.nextDouble());
        Length thin = mm(4 + 14 * random.nextDouble());
        Length thick = thin.plus(mm(0.5 + 20 * random.nextDouble()));
        boolean rises = random.nextBoolean();
        Length from = rises ? thin : thick;
        Length to = rises ? thick : thin;
        Details plain = Details.NONE;
        return switch (kind) {
            case 0 -> new Square(length, thick, plain);
            case 1 -> new Cylinder(length, thick, plain);
            case 2 -> new Fillet(length, thin, plain);
            case 3 -> new Tenon(length, thin, mm(random.nextDouble() * Math.min(length.mm(), thin.mm()) / 2), plain);
            case 4 -> new Taper(length, from, to, plain);
            case 5 -> new Swell(length, from, thin.plus(thick).times(0.5), to, plain);
            case 6 -> new Bead(length, thin, thick, plain);
            case 7 -> new HalfBead(length, from, to, plain);
            case 8 -> new Cove(length, thick, thin, plain);
            case 9 -> new HalfCove(length, from, to, plain);
            case 10 -> new Ogee(length, from, to, plain);
            case 11 -> new ReverseOgee(length, from, to, plain);
            case 12 -> new Vee(length, thick, thin, plain);
            case 13 -> new Groove(length, thick, thin, plain);
            case 14 -> freeCurve(random);
            default -> throw new IllegalArgumentException("no kind " + kind);
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

    public static Pattern pattern(int members, Random random) {
        List<Member> run = new ArrayList<>();
        for (int i = 0; i < members; i++) {
            run.add(member(random.nextInt(KINDS), random));
        }
        return new Pattern("sample", new Stock(Section.SQUARE, mm(45), mm(20_000)), run);
    }
}
