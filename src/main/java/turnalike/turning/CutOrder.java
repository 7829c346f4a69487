package turnalike.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import turnalike.outline.Section;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Tool;
import turnalike.units.Length;

/**
 * The cuts in their order, not yet numbered: {@link Phase} by phase. Between centres heavy details go from the tail end to the drive end, so
 * that what still drives the piece is stout; slender stretches after them, see {@link SlenderMembers#order}, their thin places sized only
 * then, see {@link LateSizing}; tenons then, since they hold the
 * piece; and last what is thin for its distance from the centres, see {@link ThinParts}. A piece held by one end goes from the other end back,
 * each member sized as its turn comes, so that the thick end still holds it. Common practice, no source; what the order does to stiffness is
 * reckoned in {@link CutStiffness}.
 */
final class CutOrder {
    private final TurningProblem work;
    private final List<PlacedMember> run;
    private final MemberCuts members;
    private final Holding holding;
    private final Set<Integer> slender;
    private final List<Cut> out = new ArrayList<>();

    private CutOrder(TurningProblem work, Set<Integer> slender) {
        this.work = work;
        this.run = work.pattern().placed();
        this.members = new MemberCuts(work, slender);
        this.holding = new Holding(work);
        this.slender = slender;
    }

    static List<Cut> of(TurningProblem work, Set<Integer> slender) {
        CutOrder order = new CutOrder(work, slender);
        if (work.held().byOneEnd()) {
            order.out.add(order.holding.in());
        }
        order.shoulders();
        order.round();
        order.datum();
        order.out.addAll(LayoutCuts.of(work));
        if (work.held().byOneEnd()) {
            order.holding.away().ifPresent(order.out::add);
            order.fromTip();
        } else {
            order.out.addAll(order.members.sizing());
            order.details();
        }
        order.sanding();
        order.holding.tip().ifPresent(order.out::add);
        order.holding.off().ifPresent(order.out::add);
        return List.copyOf(order.out);
    }

    private void add(
            Phase phase,
            Tool tool,
            Optional<Length> setting,
            Length from,
            Length to,
            List<Length> places,
            List<Integer> members,
            String what,
            String caution) {
        out.add(new Cut(
                0,
                phase,
                tool,
                setting,
                from,
                to,
                places,
                members,
                false,
                what,
                caution,
                Optional.empty(),
                Optional.empty(),
                List.of()));
    }

    private boolean square(int index) {
        return run.get(index).member().section() == Section.SQUARE;
    }

    /** How a shoulder is struck and cut is told once; each line is told by its place, since a square has two of them. */
    private void shoulders() {
        List<Integer> before = IntStream.range(0, run.size() - 1)
                .filter(i -> square(i) != square(i + 1))
                .boxed()
                .toList();
        for (int i : before) {
            int squareMember = square(i) ? i : i + 1;
            Length line = run.get(i).end();
            String what = i == before.get(0)
                    ? "on the bench, before mounting, strike %s round all four faces from the stick%s with square and knife; then,"
                                    .formatted(
                                            before.size() == 1
                                                    ? "this line"
                                                    : "this line and those of the other shoulders",
                                            laidIn())
                            + " first of all cuts, nick the corners with the long point, a little deeper each time, until the shoulder"
                            + " of %s at %s is clean all round"
                    : "in the same way, on its line from the bench: the shoulder of %s at %s";
            add(
                    Phase.SHOULDERS,
                    Tool.SKEW,
                    Optional.empty(),
                    line,
                    line,
                    List.of(line),
                    List.of(squareMember),
                    what.formatted(members.caption(squareMember), line.format(work.units())),
                    "the corners are a blur: hands behind the rest, light cuts, or they split off");
        }
    }

    private void round() {
        boolean fromSquare = work.pattern().stock().section() == Section.SQUARE;
        int i = 0;
        while (i < run.size()) {
            int end = i;
            while (end + 1 < run.size() && square(end + 1) == square(i)) {
                end++;
            }
            if (!square(i)) {
                add(
                        Phase.ROUND,
                        roughingTool(),
                        Optional.of(work.roughed()),
                        run.get(i).start(),
                        run.get(end).end(),
                        List.of(),
                        List.of(),
                        (fromSquare ? "bring the square to one even cylinder" : "true up one even cylinder")
                                + between(i, end),
                        fromSquare
                                ? "slow while out of round; turn it by hand once to clear the rest; stop to set the calipers"
                                : "turn it by hand once to clear the rest; stop to set the calipers");
            }
            i = end + 1;
        }
    }

    private Tool roughingTool() {
        Length across = work.pattern().stock().size();
        return across.compareTo(work.lathe().rules().roughingGouge()) < 0 ? Tool.SPINDLE_GOUGE : Tool.ROUGHING_GOUGE;
    }

    /** Where squares stand between there are several stretches to rough, each told by its shoulders. */
    private String between(int first, int last) {
        boolean shoulderBefore = first > 0;
        boolean shoulderAfter = last + 1 < run.size();
        String from = run.get(first).start().format(work.units());
        String to = run.get(last).end().format(work.units());
        if (shoulderBefore && shoulderAfter) {
            return " between the shoulders at %s and %s".formatted(from, to);
        }
        if (shoulderBefore) {
            return " from the shoulder at %s on".formatted(from);
        }
        return shoulderAfter ? " up to the shoulder at %s".formatted(to) : "";
    }

    private void datum() {
        Length end = work.pattern().length();
        add(
                Phase.DATUM,
                Tool.STICK,
                Optional.empty(),
                Length.ZERO,
                end,
                List.of(Length.ZERO, end),
                List.of(),
                datumText() + stickAlone(),
                "");
    }

    private String laidIn() {
        return work.leadIn().isPositive()
                ? ", laid %s from the blank's start end,".formatted(work.both(work.leadIn()))
                : "";
    }

    private String stickAlone() {
        return !work.dividers().isForTheStickAlone(work.pattern().length())
                ? ""
                : "; so short a piece takes every mark from the stick now, and the rounds with the dividers may be left out";
    }

    private String datumText() {
        if (!work.partsOff()) {
            return square(0) || square(run.size() - 1)
                    ? "check the length against the stick; the start end is the datum, every mark is struck from the shoulder lines: no"
                            + " divider's leg stands on a square"
                    : "check the length against the stick; the start end is the datum, every mark is struck from the two ends";
        }
        if (work.held().byOneEnd()) {
            return "lay the stick along it, the spare length at the %s end; strike the start line, which is the datum, and the far end's line"
                    .formatted(holding.spareAt().side());
        }
        if (work.leadIn().isPositive()) {
            return ("lay the stick %s from the blank's start end, which the slope of that end takes; strike the datum line"
                            + " there and the far end's line")
                    .formatted(work.both(work.leadIn()));
        }
        String end = work.held().at() == Held.At.START ? "drive" : "start";
        return "lay the stick against the %s end; strike the datum line there and the far end's line".formatted(end);
    }

    private void fromTip() {
        Optional<Integer> gripped = holding.ownTenon();
        Set<Integer> before = new TreeSet<>(gripped.stream().toList());
        for (int index : work.towardTheHeadstock()) {
            if (!square(index) && !gripped.equals(Optional.of(index))) {
                out.addAll(members.sizing(Phase.FROM_TIP, index, before));
                out.add(members.fromTip(index, before));
                before.add(index);
            }
        }
    }

    private void details() {
        List<Integer> thin = ThinParts.of(work, slender);
        for (int i : work.towardTheHeadstock()) {
            if (run.get(i).member().isShaped() && !slender.contains(i)) {
                out.add(members.member(Phase.DETAILS, i));
            }
        }
        Set<Integer> before = new TreeSet<>(IntStream.range(0, run.size())
                .filter(i -> !slender.contains(i) && !members.isTenon(i))
                .boxed()
                .toList());
        SlenderMembers.order(work, slender).stream()
                .filter(index -> !thin.contains(index))
                .forEach(index -> lateAndCut(Phase.SLENDER, index, before));
        for (int i : work.towardTheHeadstock()) {
            if (members.isTenon(i)) {
                out.add(members.member(Phase.TENONS, i));
            }
        }
        thin.forEach(index -> lateAndCut(Phase.THIN, index, before));
    }

    private void lateAndCut(Phase phase, int index, Set<Integer> before) {
        out.addAll(members.late(phase, index, before));
        out.add(members.member(phase, index));
        before.add(index);
    }

    private void sanding() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < run.size(); i++) {
            if (run.get(i).member().isShaped()) {
                all.add(i);
            }
        }
        if (!all.isEmpty()) {
            add(
                    Phase.SANDING,
                    Tool.ABRASIVE,
                    Optional.empty(),
                    run.get(all.get(0)).start(),
                    run.get(all.get(all.size() - 1)).end(),
                    List.of(),
                    all,
                    "sand lightly, edges kept sharp" + leftAlone(),
                    "take the rest away first, keep cloth off the lathe, catch the dust");
        }
    }

    /** What fits a hole, and what was planed before it came on the lathe. */
    private String leftAlone() {
        boolean tenons = IntStream.range(0, run.size()).anyMatch(members::isTenon);
        boolean squares = IntStream.range(0, run.size()).anyMatch(this::square);
        if (tenons && squares) {
            return "; leave the tenons and squares alone";
        }
        return tenons ? "; leave the tenons alone" : squares ? "; leave the squares alone" : "";
    }
}
