package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Fillet;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.HalfBead;
import turnalike.pattern.HalfCove;
import turnalike.pattern.Member;
import turnalike.pattern.Ogee;
import turnalike.pattern.ReverseOgee;
import turnalike.pattern.Swell;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.pattern.Vee;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** Runs of members as turners make them, drawn from a seed, and what a caliper or a camera would read off them. */
public final class RandomRuns {
    private final Random random;

    private final int kindsDrawn;

    /** Of every kind that a form can name; without curves through points, which by their nature forms may explain as well. */
    public RandomRuns(long seed) {
        this(seed, 11);
    }

    private RandomRuns(long seed, int kindsDrawn) {
        this.random = new Random(seed);
        this.kindsDrawn = kindsDrawn;
    }

    static RandomRuns withCurves(long seed) {
        return new RandomRuns(seed, 12);
    }

    private double between(double low, double high) {
        // Tenths of a millimetre, as a job file has.
        return Math.rint(10 * (low + (high - low) * random.nextDouble())) / 10;
    }

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    /** A tenon, so many members between, a tenon. */
    public List<Member> run(int between) {
        List<Member> out = new ArrayList<>();
        double tenon = between(14, 22);
        out.add(new Tenon(mm(between(18, 30)), mm(tenon), mm(random.nextBoolean() ? between(1, 2) : 0), Details.NONE));
        double at = tenon + between(5, 12);
        int before = -1;
        for (int i = 0; i < between; i++) {
            Member member = tellable(out.get(out.size() - 1), at, before);
            int kind = kinds;
            out.add(member);
            before = kind;
            at = 2
                    * Outline.of(Length.ZERO, member.curves(Member.Ends.NEITHER), Section.ROUND)
                            .endRadius()
                            .mm();
            boolean stepped = random.nextDouble() < 0.4;
            if (stepped) {
                at = at > 30 ? at - between(2.5, 5) : at + between(2.5, 5);
            } else if (kind == 0 || kind == 1) {
                before = 20;
            }
        }
        out.add(new Tenon(
                mm(between(15, 25)), mm(Math.max(8, Math.min(at - 5, between(12, 18)))), mm(0), Details.NONE));
        return out;
    }

    private int kinds;

    /**
     * A member whose joint with the one before it can be told: a step of 1.25 mm at least, or a corner of some 11 degrees. A fillet that
     * runs on into a taper, say, is one thing to any caliper.
     */
    private Member tellable(Member last, double at, int before) {
        for (int tries = 0; tries < 200; tries++) {
            kinds = next(before);
            Member member = member(kinds, at);
            Segment one = last(last);
            Segment two = Outline.of(Length.ZERO, member.curves(Member.Ends.NEITHER), Section.ROUND)
                    .segments()
                    .get(0);
            double step = Math.abs(one.curve().endRadiusMm() - two.curve().startRadiusMm());
            double corner = Math.abs(
                    one.curve().slope(one.curve().length().mm()) - two.curve().slope(0));
            if (step > 1.2 || corner > 0.2) {
                return member;
            }
        }
        throw new IllegalStateException("nothing can be told from " + last);
    }

    private static Segment last(Member member) {
        List<Segment> segments = Outline.of(Length.ZERO, member.curves(Member.Ends.NEITHER), Section.ROUND)
                .segments();
        return segments.get(segments.size() - 1);
    }

    /** Not what would run on into the one before it. */
    private int next(int before) {
        while (true) {
            int kind = random.nextInt(kindsDrawn);
            boolean level = kind == 0 || kind == 1;
            boolean twoLevels = level && before == 20;
            boolean longOnes = kind >= 8 && before >= 8 && before < 20;
            if (!twoLevels && !longOnes && !(kind == before && kind != 2)) {
                return kind;
            }
        }
    }

    private Member member(int kind, double at) {
        boolean thick = at > 34;
        boolean thin = at < 24;
        double other = thick
                ? at - between(5, 11)
                : thin ? at + between(5, 11) : at + (random.nextBoolean() ? 1 : -1) * between(5, 9);
        return switch (kind) {
            case 0 -> new Fillet(mm(between(3, 7)), mm(at), Details.NONE);
            case 1 -> new Cylinder(mm(between(16, 50)), mm(at), Details.NONE);
            case 2 -> new Bead(mm(between(8, 22)), mm(at), mm(at + between(4, 10)), Details.NONE);
            case 3 -> new Cove(mm(between(9, 22)), mm(at), mm(at - between(5, 9)), Details.NONE);
            case 4 -> new HalfBead(mm(between(8, 16)), mm(at), mm(other), Details.NONE);
            case 5 -> new HalfCove(mm(between(8, 16)), mm(at), mm(other), Details.NONE);
            case 6 -> new Ogee(mm(between(16, 36)), mm(at), mm(other), Details.NONE);
            case 7 -> new Vee(mm(between(5, 9)), mm(at), mm(at - between(4, 7)), Details.NONE);
            case 8 -> new Taper(mm(between(40, 140)), mm(at), mm(other), Details.NONE);
            case 9 ->
                new Swell(mm(between(50, 120)), mm(at), mm(at + between(5, 10)), mm(at + between(-2, 3)), Details.NONE);
            case 10 -> new ReverseOgee(mm(between(18, 36)), mm(at), mm(other), Details.NONE);
            default -> curve(at);
        };
    }

    private FreeCurve curve(double at) {
        List<FreeCurve.Point> points = new ArrayList<>();
        double low = Math.max(14, at - 8);
        points.add(new FreeCurve.Point(Length.ZERO, mm(at)));
        double x = 0;
        int count = 3 + random.nextInt(3);
        double before = at;
        for (int i = 0; i < count; i++) {
            x += between(10, 25);
            double d = before;
            while (Math.abs(d - before) < 2.5 || Math.abs(d - before) > 10) {
                d = between(low, low + 18);
            }
            points.add(new FreeCurve.Point(mm(x), mm(d)));
            before = d;
        }
        return new FreeCurve(points, Details.NONE);
    }

    public static Outline outline(List<Member> members) {
        List<Outline> parts = new ArrayList<>();
        Length at = Length.ZERO;
        for (int i = 0; i < members.size(); i++) {
            Member.Ends ends = new Member.Ends(i == 0, i + 1 == members.size());
            Outline part =
                    Outline.of(at, members.get(i).curves(ends), members.get(i).section());
            parts.add(part);
            at = part.end();
        }
        return Outline.join(parts);
    }

    /** The profile of an outline, read each so many millimetres, each radius off by chance. */
    Profile profile(Outline outline, double stepMm, double sigmaMm, double toldMm) {
        List<Profile.Station> stations = new ArrayList<>();
        double length = outline.end().mm();
        int count = (int) Math.floor(length / stepMm);
        double first = random.nextDouble() * (length - count * stepMm);
        for (int i = 0; i <= count; i++) {
            double x = Math.min(length, first + i * stepMm);
            double r = outline.radiusAt(mm(x)).mm() + sigmaMm * random.nextGaussian();
            stations.add(new Profile.Station(mm(x), mm(Math.max(0, r)), mm(toldMm)));
        }
        return new Profile(outline.end(), stations, List.of());
    }
}
