package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.LengthMessage;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * The master spindle: what every piece of the set copies. A value: two are equal when their names, stocks, members
 * and what they are sized within are. Where its
 * members stand is worked out once, since everything else asks for it again and again.
 */
public final class Pattern {
    /** Places are sums of lengths, so the same place met twice may differ by rounding; far below what any tool can hold. */
    private static final double ROUNDING_MM = 1e-6;

    /** How truly the curves are sized. */
    private record Sized(Length within, CurveRules rules) {}

    private final String name;
    private final Stock stock;
    private final List<Member> members;
    private final Optional<Sized> sizedWithin;
    private final List<PlacedMember> placed;
    private final Outline outline;

    /**
     * A pattern, not yet told how truly it is sized: a curve through points then has no marks inside, see {@link #sizedWithin}.
     *
     * @param name the turner's name for it
     * @param stock the blank it is turned from
     * @param members the run, in order from the datum end; at least one
     * @throws IllegalArgumentException with the first of {@link #problems}
     */
    public Pattern(String name, Stock stock, List<Member> members) {
        this(name, stock, members, Optional.empty());
    }

    private Pattern(String name, Stock stock, List<Member> members, Optional<Sized> sizedWithin) {
        this.name = name;
        this.stock = stock;
        this.members = List.copyOf(members);
        this.sizedWithin = sizedWithin;
        List<Problem> problems = problems(stock, this.members, UnitSystem.METRIC);
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(problems.get(0).line());
        }
        this.placed = List.copyOf(placed(this.members, sizedWithin));
        this.outline = Outline.join(placed.stream().map(PlacedMember::outline).toList());
    }

    /**
     * {@return the same pattern, its curves marked and sized at so many places that the straight line between two of them stays true}
     *
     * @param tolerance how far a finished diameter may be off, above zero
     */
    public Pattern sizedWithin(Length tolerance) {
        return sizedWithin(tolerance, CurveRules.USUAL);
    }

    /**
     * {@return the same by other rules}
     *
     * @param tolerance how far a finished diameter may be off, above zero
     * @param rules what counts as a peak, a step and a line of its own
     */
    public Pattern sizedWithin(Length tolerance, CurveRules rules) {
        return new Pattern(name, stock, members, Optional.of(new Sized(tolerance, rules)));
    }

    /**
     * {@return why the pattern cannot be made with that member as long as that; empty when it can} A curve through points has no length that
     * could be told apart from its points.
     *
     * @param member its index from 0, of the run
     * @param length its new length
     */
    public List<Fault> stretchFaults(int member, Length length) {
        Member drawn = members.get(member);
        if (drawn.kind().find(MemberKey.Type.LENGTH, MemberKey.LENGTH).isEmpty()) {
            return List.of(new Fault(
                    MemberKey.LENGTH,
                    LengthMessage.of("is what %s has none of: its points say how long it is"
                            .formatted(Article.with(drawn.kind().word()))),
                    "name a member that is given by its length"));
        }
        return drawn.kind().faults(drawn.sizes().with(MemberKey.LENGTH, length));
    }

    /**
     * {@return the same turning with one member longer or shorter, and its blank with it} What the blank has over the run stays.
     *
     * @param name of that pattern
     * @param member its index from 0, of the run
     * @param length its new length
     * @throws IllegalArgumentException when {@link #stretchFaults} has any
     */
    public Pattern stretched(String name, int member, Length length) {
        Faults.refuse("stretch", stretchFaults(member, length));
        Member drawn = members.get(member);
        List<Member> run = new ArrayList<>(members);
        run.set(member, drawn.kind().make(drawn.sizes().with(MemberKey.LENGTH, length)));
        Length blank = stock.length().plus(length).minus(drawn.length());
        return new Pattern(name, new Stock(stock.section(), stock.size(), blank), run, sizedWithin);
    }

    /** {@return the turner's name for it} */
    public String name() {
        return name;
    }

    /** {@return the blank it is turned from} */
    public Stock stock() {
        return stock;
    }

    /** {@return the run, in order from the datum end; at least one} */
    public List<Member> members() {
        return members;
    }

    /**
     * {@return everything about the run as a whole that cannot exist: no members, one wider than the blank, a run longer than the stock;
     * empty when a pattern can be made of them}
     *
     * @param stock the blank
     * @param members the run, in order from the datum end
     * @param units in which lengths are printed, the other system's beside
     */
    public static List<Problem> problems(Stock stock, List<Member> members, UnitSystem units) {
        List<Problem> out = new ArrayList<>();
        if (members.isEmpty()) {
            out.add(new Problem("pattern: members", "the run is empty", "add at least one member"));
            return out;
        }
        for (PlacedMember placed : placed(members, Optional.empty())) {
            tooWide(stock, placed, units).ifPresent(out::add);
        }
        Length run = runLength(members);
        // The hair lets a run of sixty-fourths add up to its stock in spite of rounding.
        if (run.mm() > stock.length().mm() * (1 + 1e-12)) {
            out.add(new Problem(
                    "pattern: members",
                    "the run of %s is longer than the stock of %s"
                            .formatted(
                                    run.formatFinestBoth(units), stock.length().formatFinestBoth(units)),
                    "shorten a member or take longer stock"));
        }
        return out;
    }

    private static Optional<Problem> tooWide(Stock stock, PlacedMember placed, UnitSystem units) {
        Length radius = placed.member().reach(placed.outline());
        if (stock.holds(placed.member().section(), radius)) {
            return Optional.empty();
        }
        return Optional.of(new Problem(
                placed.where(),
                "is %s across, wider than the blank of %s"
                        .formatted(
                                radius.times(2 * stockReach(stock, placed)).formatFinestBoth(units),
                                stock.size().formatFinestBoth(units)),
                "make it narrower or take a larger blank"));
    }

    private static double stockReach(Stock stock, PlacedMember placed) {
        boolean arrisesCount = stock.section() == Section.ROUND;
        return arrisesCount ? placed.member().section().reachFactor() : 1;
    }

    private static Length runLength(List<Member> members) {
        Length sum = Length.ZERO;
        for (Member member : members) {
            sum = sum.plus(member.length());
        }
        return sum;
    }

    private static List<PlacedMember> placed(List<Member> members, Optional<Sized> within) {
        List<PlacedMember> out = new ArrayList<>();
        Length at = Length.ZERO;
        for (int i = 0; i < members.size(); i++) {
            Member member = members.get(i);
            Member.Ends ends = new Member.Ends(i == 0, i == members.size() - 1);
            Outline outline = Outline.of(at, member.curves(ends), member.section());
            Member.Sizing sizing = within.map(each -> member.sizing(each.within(), each.rules()))
                    .orElseGet(() -> new Member.Sizing(member.diameters(), member.crests()));
            List<Member.Crest> crests = member.details().byEye() ? List.of() : sizing.crests();
            out.add(new PlacedMember(i + 1, member, at, outline, sizing.diameters(), crests));
            at = outline.end();
        }
        return out;
    }

    /** {@return the members in their places, numbered from 1} */
    public List<PlacedMember> placed() {
        return placed;
    }

    /** {@return the length of the run, which is the finished piece's; the stock may be longer} */
    public Length length() {
        return placed.get(placed.size() - 1).end();
    }

    /** {@return the shape of the whole piece, from the datum end} */
    public Outline outline() {
        return outline;
    }

    /** {@return the marks in order of place: both ends, every boundary, and inside each member that is not done by eye its crests} */
    public List<Mark> marks() {
        List<PlacedMember> run = placed();
        List<Mark> out = new ArrayList<>();
        out.add(new Mark(Length.ZERO, "start end", Mark.Kind.END));
        for (int i = 0; i < run.size(); i++) {
            PlacedMember placed = run.get(i);
            placed.crests().forEach(crest -> out.add(crestMark(placed, crest)));
            boolean last = i + 1 == run.size();
            out.add(last ? new Mark(placed.end(), "far end", Mark.Kind.END) : boundary(placed, run.get(i + 1)));
        }
        return out;
    }

    private static Mark boundary(PlacedMember before, PlacedMember after) {
        String label = caption(before) + " | " + caption(after);
        return new Mark(
                before.end(), label, isSquare(before) || isSquare(after) ? Mark.Kind.SHOULDER : Mark.Kind.BOUNDARY);
    }

    private static boolean isSquare(PlacedMember placed) {
        return placed.member().section() == Section.SQUARE;
    }

    /** {@return the indices of the marks from which to the next one the piece stays square} */
    public Set<Integer> squares() {
        List<Mark> marks = marks();
        Set<Integer> out = new TreeSet<>();
        for (PlacedMember each : placed) {
            for (int mark = 0; isSquare(each) && mark + 1 < marks.size(); mark++) {
                double middleMm = (marks.get(mark).place().mm()
                                + marks.get(mark + 1).place().mm())
                        / 2;
                if (each.start().mm() < middleMm && middleMm < each.end().mm()) {
                    out.add(mark);
                }
            }
        }
        return out;
    }

    /**
     * {@return the index, from 0, of the mark at that place to a millionth of a millimetre; the first, should two lie there; empty when
     * none does}
     *
     * @param place from the datum end
     */
    public Optional<Integer> markAt(Length place) {
        List<Mark> marks = marks();
        return IntStream.range(0, marks.size())
                .filter(i -> marks.get(i).place().minus(place).abs().mm() < ROUNDING_MM)
                .boxed()
                .findFirst();
    }

    private static Mark crestMark(PlacedMember placed, Member.Crest crest) {
        return new Mark(placed.start().plus(crest.place()), caption(placed) + " " + crest.word(), Mark.Kind.CREST);
    }

    private static String caption(PlacedMember placed) {
        return placed.caption();
    }

    /** {@return the same pattern turned end for end, each member with it} */
    public Pattern mirrored() {
        List<Member> turned = new ArrayList<>();
        for (int i = members.size() - 1; i >= 0; i--) {
            turned.add(members.get(i).mirrored());
        }
        return new Pattern(name, stock, turned, sizedWithin);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pattern that
                && that.name.equals(name)
                && that.stock.equals(stock)
                && that.members.equals(members)
                && that.sizedWithin.equals(sizedWithin);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, stock, members, sizedWithin);
    }

    @Override
    public String toString() {
        return "Pattern[%s, %s, %s]".formatted(name, stock, members);
    }
}
