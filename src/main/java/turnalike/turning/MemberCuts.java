package turnalike.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import turnalike.outline.Outline;
import turnalike.pattern.CutMethod;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Tool;
import turnalike.settings.CaliperSetting;
import turnalike.settings.Calipers;
import turnalike.settings.Wrenches;
import turnalike.units.Article;
import turnalike.units.Length;

/** The cuts that size members and bring them to their shape, not yet numbered. */
final class MemberCuts {
    /** A sizing cut of more members is told in several, so that each names every place. */
    private static final int MOST_SIZED = 8;

    private static final String CALIPERS = "light hand on the calipers; a nick in the round catches them";

    private static final double SLACK_MM = 1e-6;

    private final TurningProblem work;
    private final List<PlacedMember> run;
    private final List<SizedPlace> sized;
    private final LateSizing late;

    MemberCuts(TurningProblem work, Set<Integer> slender) {
        this.work = work;
        this.run = work.pattern().placed();
        this.sized = SizedPlace.of(work);
        this.late = new LateSizing(work, slender);
    }

    boolean isTenon(int index) {
        return run.get(index).member().enters().isPresent();
    }

    /** All sizing but the tenons' and what waits for its member's turn, the widest opening first. */
    List<Cut> sizing() {
        List<SizedPlace> all = sized.stream()
                .filter(each -> !isTenon(each.member()) && mayBeParted(each))
                .filter(each -> !late.waits(each))
                .toList();
        return sizing(Phase.SIZING, all);
    }

    /**
     * The sizing of one member, for when it is sized as it is cut. Where it meets at one size what was cut before it, the joint has been parted
     * already, and a flat that it meets so is down to its size all along: nobody parts twice in one place.
     *
     * @param before indices of the members that were cut before
     */
    List<Cut> sizing(Phase phase, int index, Set<Integer> before) {
        return sizing(
                phase,
                sized.stream()
                        .filter(each -> each.member() == index && mayBeParted(each))
                        .filter(each -> before.stream().noneMatch(other -> sharesSize(each, other)))
                        .filter(each -> phase != Phase.FROM_TIP
                                || !partedInside(index, before).equals(Optional.of(each)))
                        .toList());
    }

    /**
     * The side of a bead or ball toward the hold, which is parted only once its half toward the tip is rolled: until then the whole cylinder bears
     * the cut. Of a half bead the one line is all there is, and what was cut before has parted the joint that it shares.
     */
    private Optional<SizedPlace> partedInside(int index, Set<Integer> before) {
        PlacedMember placed = run.get(index);
        Length hold = work.held().at() == Held.At.START ? placed.start() : placed.end();
        Length free = work.held().at() == Held.At.START ? placed.end() : placed.start();
        List<SizedPlace> own =
                sized.stream().filter(each -> each.member() == index).toList();
        return own.stream()
                .filter(each -> placed.member().isRolled() && isSame(each.place(), hold) && mayBeParted(each))
                .filter(each -> own.stream()
                        .anyMatch(other ->
                                isSame(other.place(), free) && opening(other).equals(opening(each))))
                .filter(each -> before.stream().noneMatch(other -> sharesSize(each, other)))
                .findFirst();
    }

    /** What has waited for this member's turn. A flat that the parting tool cuts is brought to the calipers by that cut itself. */
    List<Cut> late(Phase phase, int index, Set<Integer> before) {
        if (isFlat(index) && way(run.get(index)).tool() == Tool.PARTING_TOOL) {
            return List.of();
        }
        return sizing(
                phase,
                sized.stream()
                        .filter(each -> each.member() == index && mayBeParted(each))
                        .filter(late::waits)
                        .filter(each -> before.stream().noneMatch(other -> sharesSize(each, other)))
                        .toList());
    }

    /** Whether a member meets this place, or the flat that it stands for, at the same size. */
    private boolean sharesSize(SizedPlace place, int other) {
        if (Math.abs(other - place.member()) != 1) {
            return false;
        }
        Length joint = run.get(Math.max(other, place.member())).start();
        boolean reaches = isFlat(place.member()) || isSame(joint, place.place());
        return reaches
                && sized.stream()
                        .filter(each -> each.member() == other && opening(each).equals(opening(place)))
                        .anyMatch(each -> isFlat(other) || isSame(joint, each.place()));
    }

    private Length opening(SizedPlace place) {
        return least(place.setting().opening());
    }

    /** In a member's own sizing, whom else a joint brings to size: {@code 8 bead | 9 cone}. */
    private String namesAt(Phase phase, SizedPlace place, Length at) {
        IntStream members = phase.cutsMembers()
                ? IntStream.of(place.member() - 1, place.member(), place.member() + 1)
                        .filter(each -> each >= 0 && each < run.size())
                        .filter(each -> each == place.member()
                                || (!isFlat(place.member())
                                        && isSame(
                                                at,
                                                run.get(Math.max(each, place.member()))
                                                        .start())
                                        && sharesSize(place, each)))
                : IntStream.of(place.member());
        return members.mapToObj(this::caption).collect(Collectors.joining(" | "));
    }

    private boolean mayBeParted(SizedPlace place) {
        return !work.isTooThinToPart(place.setting().finished()) && !isNarrow(place);
    }

    /** Whether the parting tool would take finished wood on both sides of it: the walls of a vee, a groove, a flat between two beads. */
    private boolean isNarrow(SizedPlace place) {
        PlacedMember placed = run.get(place.member());
        Outline whole = work.pattern().outline();
        Length half = work.lathe().rules().parting().times(0.5 * (1 - SLACK_MM));
        Length from = place.place().minus(half);
        Length to = place.place().plus(half);
        boolean inside = !isSame(place.place(), placed.start()) && !isSame(place.place(), placed.end());
        if (!inside || from.compareTo(whole.start()) < 0 || to.compareTo(whole.end()) > 0) {
            return false;
        }
        double wall = Math.min(whole.radiusAt(from).mm(), whole.radiusAt(to).mm());
        double bottom = place.setting().finished().mm() / 2;
        return wall - bottom > work.diameterTolerance().mm();
    }

    private List<Cut> sizing(Phase phase, List<SizedPlace> places) {
        List<CaliperSetting> widestFirst = places.stream()
                .map(SizedPlace::setting)
                .distinct()
                .sorted(Comparator.comparing(CaliperSetting::opening).reversed())
                .toList();
        List<Cut> out = new ArrayList<>();
        for (CaliperSetting setting : widestFirst) {
            List<SizedPlace> here = places.stream()
                    .filter(each -> each.setting().equals(setting))
                    .toList();
            List<Integer> members =
                    here.stream().map(SizedPlace::member).distinct().toList();
            for (int from = 0; from < members.size(); from += MOST_SIZED) {
                List<Integer> some = members.subList(from, Math.min(members.size(), from + MOST_SIZED));
                out.add(sizing(
                        phase,
                        setting,
                        here.stream()
                                .filter(each -> some.contains(each.member()))
                                .toList()));
            }
        }
        return out;
    }

    private Cut sizing(Phase phase, CaliperSetting setting, List<SizedPlace> here) {
        Length opening = least(setting.opening());
        // A swell's crest is a hair thicker than its middle, where it is sized: no caliper tells the two apart.
        double same = Math.max(SLACK_MM, work.diameterTolerance().mm() / 2);
        boolean there = opening.mm() >= work.roughed().mm() - same;
        List<SizedPlace> parted = parted(here);
        List<Length> places = places(parted);
        return new Cut(
                0,
                phase,
                Tool.PARTING_TOOL,
                Optional.of(opening),
                places.get(0),
                places.get(places.size() - 1),
                places,
                here.stream().map(SizedPlace::member).distinct().toList(),
                true,
                (there
                                ? "the cylinder is this size: try the calipers and take down only what is over: "
                                : "part down to the calipers: ")
                        + text(phase, parted)
                        + besides(here, parted),
                phase == Phase.THIN ? light(CALIPERS) : CALIPERS,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** Where the tool goes in: not at an edge that lies against a flat of the same size, which is brought down with that flat. */
    private List<SizedPlace> parted(List<SizedPlace> here) {
        return here.stream().filter(each -> !isFlatsEdge(each, here)).toList();
    }

    private boolean isFlatsEdge(SizedPlace place, List<SizedPlace> here) {
        return !isFlat(place.member())
                && here.stream()
                        .filter(other -> Math.abs(other.member() - place.member()) == 1 && isFlat(other.member()))
                        .map(other -> run.get(Math.max(other.member(), place.member()))
                                .start())
                        .anyMatch(joint -> isSame(joint, place.place()));
    }

    /** In order; two members' places at their joint are one. */
    private static List<Length> places(List<SizedPlace> some) {
        List<Length> out = new ArrayList<>();
        some.stream().map(SizedPlace::place).sorted().forEach(place -> {
            if (out.isEmpty() || !isSame(out.get(out.size() - 1), place)) {
                out.add(place);
            }
        });
        return List.copyOf(out);
    }

    private static boolean isSame(Length one, Length other) {
        return one.minus(other).abs().mm() < SLACK_MM;
    }

    private boolean isFlat(int index) {
        return run.get(index).diameters().size() == 1;
    }

    /** {@code 3 bead at 85 mm, 100 mm; 10 bead at 520 mm}; where two members meet at one size, both: {@code 6 ogee | 7 taper at 13 9/16 in}. */
    private String text(Phase phase, List<SizedPlace> parted) {
        Map<String, List<Length>> byMembers = new LinkedHashMap<>();
        places(parted).forEach(place -> {
            String members = parted.stream()
                    .filter(each -> isSame(each.place(), place))
                    .map(each -> namesAt(phase, each, place))
                    .distinct()
                    .collect(Collectors.joining(" | "));
            byMembers.computeIfAbsent(members, none -> new ArrayList<>()).add(place);
        });
        return byMembers.entrySet().stream()
                .map(each -> each.getKey() + " at "
                        + each.getValue().stream()
                                .map(place -> place.format(work.units()))
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    private String besides(List<SizedPlace> here, List<SizedPlace> parted) {
        List<String> members = here.stream()
                .filter(each -> !parted.contains(each))
                .map(each -> caption(each.member()))
                .distinct()
                .toList();
        return members.isEmpty()
                ? ""
                : (members.size() == 1 ? "; no cut of its own where %s meets" : "; no cut of their own where %s meet")
                                .formatted(String.join(", ", members))
                        + " a flat of this size";
    }

    /** No caliper opens wider than the roughed cylinder still is. */
    private Length least(Length opening) {
        return opening.compareTo(work.roughed()) < 0 ? opening : work.roughed();
    }

    String caption(int index) {
        return run.get(index).caption();
    }

    /** The member brought to its shape, from the tip back after those named. */
    Cut fromTip(int index, Set<Integer> before) {
        Cut cut = member(Phase.FROM_TIP, index);
        String how = ThinStretches.isCutInStretches(work, run.get(index)) ? ThinStretches.HOW : "";
        Cut whole = cut.saying(cut.what() + how);
        return partedInside(index, before)
                .map(place -> whole.saying(
                        "%s: roll from the crown down to the line toward the tip first; then part the other"
                                        .formatted(caption(index))
                                + " side down to the calipers at %s and roll that half"
                                        .formatted(place.place().format(work.units()))))
                .orElse(whole);
    }

    /** The member brought to its shape. */
    Cut member(Phase phase, int index) {
        PlacedMember placed = run.get(index);
        CutMethod way = way(placed);
        List<SizedPlace> here =
                sized.stream().filter(each -> each.member() == index).toList();
        // The thinnest is the one that must not be passed; a bead's or a swell's thickest is what is seen, and is
        // sized already.
        String tip = tip(phase, index);
        Length free = work.held().at() == Held.At.START ? placed.end() : placed.start();
        Optional<Length> setting = here.stream()
                .filter(each -> tip.isEmpty() || !isSame(each.place(), free))
                .map(each -> least(each.setting().opening()))
                .min(Comparator.naturalOrder());
        return new Cut(
                0,
                phase,
                way.tool(),
                setting,
                placed.start(),
                placed.end(),
                here.stream().map(SizedPlace::place).distinct().sorted().toList(),
                List.of(index),
                false,
                "%s: %s%s%s".formatted(caption(index), way.what(), fitting(placed.member()), tip),
                phase == Phase.THIN ? light(way.caution()) : way.caution(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** What the tailstock bears stays thick until it goes. */
    private String tip(Phase phase, int index) {
        Held held = work.held();
        Held.At end = held.at().other();
        boolean last = index == (end == Held.At.START ? 0 : run.size() - 1);
        if (phase != Phase.FROM_TIP || !held.tailstock() || !last) {
            return "";
        }
        Outline outline = run.get(index).outline();
        Length radius = end == Held.At.START ? outline.startRadius() : outline.endRadius();
        return work.isTooThinToPart(radius.times(2)) && !work.isPointed()
                ? "; leave the tip itself a pencil thick while the tailstock bears it"
                : "";
    }

    private static String light(String caution) {
        String hand = "the lightest cuts of a sharp tool, a hand behind: what breaks a neck is a dig";
        return caution.isEmpty() ? hand : hand + "; " + caution;
    }

    /** What is thinner than a pencil is not parted down to: the parting tool wrings it off. */
    private CutMethod way(PlacedMember placed) {
        CutMethod way = placed.member().way();
        if (!work.isTooThinToPart(thinnest(placed))) {
            return isFlat(placed.number() - 1) ? narrowEnough(placed, way) : way;
        }
        Tool tool = way.tool() == Tool.PARTING_TOOL ? Tool.SKEW : way.tool();
        return new CutMethod(
                tool,
                way.what() + ", by light cuts" + downTo(placed) + ": thinner than a pencil, it bears no parting tool",
                way.caution());
    }

    /** What is too thin for calipers is judged by eye, all of the member or what is left of it. */
    private String downTo(PlacedMember placed) {
        boolean some = sized.stream().anyMatch(each -> each.member() == placed.number() - 1);
        boolean all = placed.diameters().stream().map(Member.Diameter::size).allMatch(Calipers::canSize);
        return some && all
                ? " down to the calipers"
                : some ? " down to the calipers and on by eye where they do not reach" : " and by eye";
    }

    /** Between walls nearer to one another than the parting tool is wide another must do. */
    private CutMethod narrowEnough(PlacedMember placed, CutMethod way) {
        boolean narrow = way.tool() == Tool.PARTING_TOOL
                && sized.stream().anyMatch(each -> each.member() == placed.number() - 1 && isNarrow(each));
        return narrow
                ? new CutMethod(
                        way.tool(),
                        "%s, with a tool no wider than %s"
                                .formatted(way.what(), placed.member().length().format(work.units())),
                        way.caution())
                : way;
    }

    /** A tenon's chamfer is no neck: the tenon is as thick as it is sized. */
    private static Length thinnest(PlacedMember placed) {
        return placed.member()
                .enters()
                .flatMap(hole ->
                        placed.diameters().stream().map(Member.Diameter::size).min(Comparator.naturalOrder()))
                .orElseGet(() -> placed.outline().smallestRadius().times(2));
    }

    /** What enters a hole is brought down to it by the wrench of its size. */
    private static String fitting(Member member) {
        return member.enters()
                .flatMap(hole -> Wrenches.forHole(hole.diameter()).stream().findFirst())
                .map(each -> ", then a shaving at a time until %s wrench just drops over"
                        .formatted(Article.with(each.name())))
                .orElse("");
    }
}
