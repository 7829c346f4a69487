package turnalike.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.outline.Section;
import turnalike.pattern.CutMethod;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Tool;
import turnalike.settings.CaliperSetting;
import turnalike.settings.Wrenches;
import turnalike.units.Length;

/**
 * The cuts in their order, not yet numbered: {@link Phase} by phase. Heavy details go from the tail end to the drive end, so that what
 * still drives the piece is stout; slender stretches after them, see {@link SlenderMembers#order}; tenons last but for sanding, since they hold
 * the piece. Common practice, no source; what the order does to stiffness is reckoned in {@link CutStiffness}.
 */
final class CutOrder {
    /** A sentence names no more members than this; the cut itself holds them all. */
    private static final int MOST_NAMED = 12;

    private final TurningProblem work;
    private final List<PlacedMember> run;
    private final List<SizedPlace> sized;
    private final Set<Integer> slender;
    private final List<Cut> out = new ArrayList<>();

    private CutOrder(TurningProblem work, Set<Integer> slender) {
        this.work = work;
        this.run = work.pattern().placed();
        this.sized = SizedPlace.of(work);
        this.slender = slender;
    }

    static List<Cut> of(TurningProblem work, Set<Integer> slender) {
        CutOrder order = new CutOrder(work, slender);
        order.shoulders();
        order.round();
        order.datum();
        order.out.addAll(LayoutCuts.of(work));
        order.sizing();
        order.details();
        order.tenons();
        order.sanding();
        order.parting();
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
                0, phase, tool, setting, from, to, places, members, what, caution, Optional.empty(), Optional.empty()));
    }

    private boolean square(int index) {
        return run.get(index).member().section() == Section.SQUARE;
    }

    private String caption(int index) {
        return (index + 1) + " " + run.get(index).member().title();
    }

    private String captions(List<Integer> members) {
        String told = members.stream().limit(MOST_NAMED).map(this::caption).collect(Collectors.joining(", "));
        return members.size() <= MOST_NAMED ? told : told + " and %d more".formatted(members.size() - MOST_NAMED);
    }

    private void shoulders() {
        for (int i = 0; i + 1 < run.size(); i++) {
            if (square(i) != square(i + 1)) {
                int squareMember = square(i) ? i : i + 1;
                Length line = run.get(i).end();
                add(
                        Phase.SHOULDERS,
                        Tool.SKEW,
                        Optional.empty(),
                        line,
                        line,
                        List.of(line),
                        List.of(squareMember),
                        "strike this line on all four faces from the stick, then nick the corners with the long point, a little"
                                + " deeper each time, until the shoulder of %s is clean all round"
                                        .formatted(caption(squareMember)),
                        "the corners are a blur: hands behind the rest, light cuts, or they split off");
            }
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
                        Tool.ROUGHING_GOUGE,
                        Optional.of(work.roughed()),
                        run.get(i).start(),
                        run.get(end).end(),
                        List.of(),
                        List.of(),
                        fromSquare ? "bring the square to one even cylinder" : "true up one even cylinder",
                        fromSquare
                                ? "slow while out of round; turn it by hand once to clear the rest; stop to set the calipers"
                                : "turn it by hand once to clear the rest; stop to set the calipers");
            }
            i = end + 1;
        }
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
                work.partsOff()
                        ? "lay the stick against the drive end; strike the datum line there and the far end's line"
                        : "check the length against the stick; the drive end is the datum, every mark is struck from the two ends",
                "");
    }

    private void sizing() {
        List<CaliperSetting> widestFirst = new ArrayList<>(work.calipers());
        widestFirst.sort(Comparator.comparing(CaliperSetting::opening).reversed());
        for (CaliperSetting setting : widestFirst) {
            List<SizedPlace> here = sized.stream()
                    .filter(each -> each.setting().equals(setting) && !tenon(each.member()))
                    .toList();
            if (here.isEmpty()) {
                continue;
            }
            List<Integer> members =
                    here.stream().map(SizedPlace::member).distinct().toList();
            List<Length> places =
                    here.stream().map(SizedPlace::place).distinct().sorted().toList();
            add(
                    Phase.SIZING,
                    Tool.PARTING_TOOL,
                    Optional.of(setting.opening()),
                    places.get(0),
                    places.get(places.size() - 1),
                    places,
                    members,
                    "part down to the calipers at %s".formatted(captions(members)),
                    "light hand on the calipers; a nick in the round catches them");
        }
    }

    private boolean tenon(int index) {
        return run.get(index).member().enters().isPresent();
    }

    private void details() {
        for (int i = run.size() - 1; i >= 0; i--) {
            if (run.get(i).member().isShaped() && !slender.contains(i)) {
                member(Phase.DETAILS, i);
            }
        }
        SlenderMembers.order(work, slender).forEach(index -> member(Phase.SLENDER, index));
    }

    private void tenons() {
        for (int i = run.size() - 1; i >= 0; i--) {
            if (tenon(i)) {
                member(Phase.TENONS, i);
            }
        }
    }

    private void member(Phase phase, int index) {
        PlacedMember placed = run.get(index);
        Member member = placed.member();
        CutMethod way = member.way();
        List<SizedPlace> here =
                sized.stream().filter(each -> each.member() == index).toList();
        // The thinnest is the one that must not be passed; a bead's or a swell's thickest is what is seen, and is sized
        // already.
        Optional<Length> setting =
                here.stream().map(each -> each.setting().opening()).min(Comparator.naturalOrder());
        add(
                phase,
                way.tool(),
                setting,
                placed.start(),
                placed.end(),
                here.stream().map(SizedPlace::place).distinct().sorted().toList(),
                List.of(index),
                "%s: %s%s".formatted(caption(index), way.what(), fitting(member)),
                way.caution());
    }

    /** What enters a hole is brought down to it by the wrench of its size. */
    private static String fitting(Member member) {
        return member.enters()
                .flatMap(hole -> Wrenches.forHole(hole.diameter()).stream().findFirst())
                .map(each -> ", then a shaving at a time until a %s wrench just drops over".formatted(each.name()))
                .orElse("");
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
                    "sand lightly, edges kept sharp; leave the tenons and squares alone",
                    "take the rest away first, keep cloth off the lathe, catch the dust");
        }
    }

    private void parting() {
        if (work.partsOff()) {
            Length end = work.pattern().length();
            add(
                    Phase.PARTING,
                    Tool.PARTING_TOOL,
                    Optional.empty(),
                    end,
                    end,
                    List.of(end),
                    List.of(run.size() - 1),
                    "part down at the far end's line to a pencil's thickness, stop the lathe, and saw it off",
                    "never part right through between centres: the piece jams and flies");
        }
    }
}
