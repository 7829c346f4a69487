package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.language.Language;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Samples;
import turnalike.pattern.Stock;
import turnalike.pattern.Tool;
import turnalike.pattern.Warning;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.PlainNumber;
import turnalike.units.Speed;
import turnalike.wood.Stiffness;

@Tag("long-sums")
class TurningTest {
    private static final Optional<Stiffness> STIFF = Optional.of(Stiffness.given(11_000));

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static List<Cut> phase(Turning turning, Phase phase) {
        return turning.cuts().stream().filter(cut -> cut.phase() == phase).toList();
    }

    private static String said(Turning turning) {
        return String.join(
                "\n",
                turning.cautions().stream()
                        .map(each -> each.where() + ": " + each.what())
                        .toList());
    }

    private static Pattern rod(double diameterMm, double lengthMm, double stockMm) {
        return new Pattern(
                "rod",
                new Stock(Section.SQUARE, mm(stockMm), mm(lengthMm)),
                List.of(new Cylinder(mm(lengthMm), mm(diameterMm), Details.NONE)));
    }

    @Test
    void cuts_are_numbered_in_the_order_of_the_phases() {
        Seeds.each(20, random -> {
            Turning turning = Turning.of(Works.stiff(Samples.pattern(1 + random.nextInt(12), random)));
            List<Cut> cuts = turning.cuts();
            for (int i = 0; i < cuts.size(); i++) {
                assertThat(cuts.get(i).order()).isEqualTo(i + 1);
            }
            assertThat(cuts).isSortedAccordingTo(Comparator.comparing(Cut::phase));
        });
    }

    @Test
    void every_round_member_is_shaped_once_and_every_square_never() {
        Seeds.each(20, random -> {
            TurningProblem work = Works.stiff(Samples.pattern(1 + random.nextInt(12), random));
            Set<Integer> shaped = new HashSet<>();
            for (Cut cut : Turning.of(work).cuts()) {
                if (cut.phase().cutsMembers() && !cut.sizes()) {
                    assertThat(shaped.addAll(cut.members())).isTrue();
                    int member = cut.members().get(0);
                    assertThat(cut.from())
                            .isEqualTo(work.pattern().placed().get(member).start());
                    assertThat(cut.to())
                            .isEqualTo(work.pattern().placed().get(member).end());
                }
            }
            for (int i = 0; i < work.pattern().members().size(); i++) {
                boolean square = work.pattern().members().get(i).section() == Section.SQUARE;
                assertThat(shaped.contains(i)).isEqualTo(!square);
            }
        });
    }

    @Test
    void every_mark_is_struck_and_every_diameter_sized_once_it_is_shaped() {
        Seeds.each(20, random -> {
            TurningProblem work = Works.stiff(Samples.pattern(1 + random.nextInt(12), random));
            Turning turning = Turning.of(work);
            Set<Length> struck = new HashSet<>();
            phase(turning, Phase.LAYOUT).forEach(cut -> struck.addAll(cut.places()));
            phase(turning, Phase.DATUM).forEach(cut -> struck.addAll(cut.places()));
            assertThat(struck)
                    .containsAll(work.marks().stream().map(mark -> mark.place()).toList());
            Set<Length> openings = new HashSet<>();
            turning.cuts().stream()
                    .filter(cut -> cut.sizes() || cut.tool() == Tool.PARTING_TOOL)
                    .forEach(cut -> cut.setting().ifPresent(openings::add));
            // Between near walls no parting tool goes: the cut that shapes the member brings it to the calipers.
            Set<Length> shaped = new HashSet<>(openings);
            turning.cuts().stream().filter(cut -> cut.phase().cutsMembers()).forEach(cut -> cut.setting()
                    .ifPresent(shaped::add));
            List<Length> all = work.calipers().stream()
                    .map(each -> each.opening().compareTo(work.roughed()) < 0 ? each.opening() : work.roughed())
                    .distinct()
                    .toList();
            assertThat(all).containsAll(openings).hasSizeGreaterThanOrEqualTo(openings.size());
            // What is thinner than a pencil is not parted down to.
            assertThat(shaped)
                    .containsAll(work.calipers().stream()
                            .filter(each -> each.finished().mm() >= 7)
                            .map(each -> each.opening().compareTo(work.roughed()) < 0 ? each.opening() : work.roughed())
                            .toList());
        });
    }

    @Test
    void the_slender_middle_of_a_baluster_waits_for_its_heavy_ends() {
        Turning turning = Turning.of(Works.stiff(Works.baluster()));
        assertThat(phase(turning, Phase.SLENDER)).isEmpty();
        // 16 mm thick at 300 mm from the nearer centre: less than a tenth, so after all the rest.
        assertThat(phase(turning, Phase.THIN).stream().map(cut -> cut.members().get(0)))
                .as(
                        "the one across the middle first, each sized at both its ends when its turn comes; their joint once")
                .containsExactly(5, 5, 5, 6, 6);
        assertThat(phase(turning, Phase.THIN).stream().map(Cut::sizes)).containsExactly(true, true, false, true, false);
        assertThat(phase(turning, Phase.THIN).get(0).caution()).startsWith("the lightest cuts of a sharp tool");
        assertThat(phase(turning, Phase.DETAILS).stream()
                        .map(cut -> cut.members().get(0)))
                .containsExactly(9, 8, 7, 4, 3, 2);
        assertThat(phase(turning, Phase.TENONS).stream()
                        .map(cut -> cut.members().get(0)))
                .containsExactly(11, 0);
        assertThat(phase(turning, Phase.SHOULDERS).stream().map(Cut::from))
                .containsExactly(mm(25), mm(85), mm(535), mm(575));
        assertThat(phase(turning, Phase.ROUND)).hasSize(3);
        assertThat(phase(turning, Phase.PARTING)).singleElement().satisfies(cut -> assertThat(cut.from())
                .isEqualTo(mm(600)));
    }

    @Test
    void slender_stretches_go_from_the_middle_to_the_tail_end_and_then_to_the_drive_end() {
        List<Member> run = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            run.add(new Cylinder(mm(70), mm(25), Details.NONE));
            run.add(new Bead(mm(10), mm(30), mm(40), Details.NONE));
        }
        Pattern pattern = new Pattern("six", new Stock(Section.SQUARE, mm(45), mm(480)), run);
        assertThat(phase(Turning.of(Works.stiff(pattern)), Phase.SLENDER).stream()
                        .filter(cut -> !cut.sizes())
                        .map(cut -> cut.members().get(0)))
                .containsExactly(6, 8, 10, 4, 2, 0);
        // Driven at the far end, the other way round; none lies across the middle but ends there.
        Lathe farEnd = Lathe.USUAL.withHeld(new Held(Held.By.CENTRES, Held.At.END, true));
        assertThat(phase(Turning.of(Works.of(pattern, STIFF, farEnd)), Phase.SLENDER).stream()
                        .filter(cut -> !cut.sizes())
                        .map(cut -> cut.members().get(0)))
                .containsExactly(4, 2, 0, 6, 8, 10);
    }

    /** A stout spoke that would whip at 50,000 rpm and bow under nine tonnes is told so in words; a long thin one by its figures. */
    @Test
    void what_no_lathe_and_no_tailstock_comes_near_is_told_apart() {
        Pattern stout = new Pattern(
                "stout",
                new Stock(Section.ROUND, mm(45), mm(200)),
                List.of(new Cylinder(mm(200), mm(40), Details.NONE)));
        Turning near = Turning.of(Works.stiff(Works.baluster()));
        Turning far = Turning.of(Works.stiff(stout));
        assertThat(far.isFarFromWhip()).isTrue();
        assertThat(far.isFarFromBowing()).isTrue();
        assertThat(near.isFarFromWhip()).isFalse();
        Pattern thin = new Pattern(
                "thin",
                new Stock(Section.ROUND, mm(20), mm(600)),
                List.of(new Cylinder(mm(600), mm(12), Details.NONE)));
        assertThat(Turning.of(Works.stiff(thin)).isFarFromBowing()).isFalse();
        assertThat(Turning.of(Works.of(stout, Optional.empty(), Lathe.USUAL)).isFarFromWhip())
                .isFalse();
        // Half of the speed it whips at is the most that is turned; the farthest from that a lathe goes is 3500 rpm.
        double first = far.whip().orElseThrow().first().rpm();
        assertThat(first * 0.5).isGreaterThan(2 * 3500);
        assertThat(near.whip().orElseThrow().first().rpm() * 0.5).isLessThan(2 * 3500);
    }

    /** The computed reason holds by itself: the stage it speaks of really is stiffer than the other order's. */
    @Test
    void the_reason_for_the_order_is_reckoned() {
        TurningProblem work = Works.stiff(Works.baluster());
        Cut first = phase(Turning.of(work), Phase.THIN).get(0);
        assertThat(first.why()).isPresent();
        StageOutlines shapes = new StageOutlines(work);
        Set<Integer> round = Set.of(2, 3, 4, 5, 6, 7, 8, 9);
        Speed ordered = Whip.firstOf(shapes.after(Set.of(2, 3, 4, 7, 8, 9), round), Works.wood(), Works.usual())
                .orElseThrow();
        Speed other = Whip.firstOf(shapes.after(Set.of(5, 6), round), Works.wood(), Works.usual())
                .orElseThrow();
        assertThat(ordered.rpm()).isGreaterThan(1.5 * other.rpm());
        assertThat(first.why().orElseThrow())
                .contains(PlainNumber.toFigures(ordered.rpm(), 3) + " rpm", PlainNumber.toFigures(other.rpm(), 3));
    }

    @Test
    void stages_run_from_the_blank_to_the_contracts_finished_piece() {
        Turning turning = Turning.of(Works.stiff(Works.baluster()));
        assertThat(turning.stages().stream().map(Stage::name))
                .containsExactly(
                        "blank",
                        "roughed cylinder",
                        "sizing cuts made",
                        "heavy details cut",
                        "slender stretches cut",
                        "all but the thinnest cut",
                        "finished",
                        "finished, spare length still on");
        Whip whip = Whip.of(Works.baluster().outline(), Works.wood(), Works.usual(), List.of(mm(300)));
        Stage finished = turning.stages().get(6);
        assertThat(finished.first().rpm()).isCloseTo(whip.first().rpm(), withinPercentage(0.1));
        assertThat(finished.buckling().newtons()).isCloseTo(whip.buckling().newtons(), withinPercentage(0.1));
        Cut last = phase(turning, Phase.THIN).get(4);
        assertThat(last.natural().orElseThrow().rpm()).isCloseTo(whip.first().rpm(), withinPercentage(0.1));
        assertThat(turning.stages().get(7).first()).isLessThan(finished.first());
    }

    /** The blank is a plain square bar, under the 300 N of a job that says nothing: the closed form of two centres. */
    @Test
    void the_blank_swings_as_the_square_bar_it_is() {
        Stage blank = Turning.of(Works.stiff(Works.baluster())).stages().get(0);
        double omega = EvenRod.square(600, 50, 11_000, 880, 700e-12, 300).pinned(1);
        assertThat(blank.thrust()).contains(Force.ofNewtons(300));
        assertThat(blank.first().rpm()).isCloseTo(omega * 30 / Math.PI, withinPercentage(1e-4));
    }

    @Test
    void without_a_stiffness_there_are_cuts_and_speeds_but_nothing_of_whip() {
        Turning turning = Turning.of(Works.of(Works.baluster(), Optional.empty(), Lathe.USUAL));
        assertThat(turning.whip()).isEmpty();
        assertThat(turning.stages()).isEmpty();
        assertThat(turning.cuts()).isNotEmpty().allSatisfy(cut -> assertThat(cut.natural())
                .isEmpty());
        assertThat(turning.speeds().whipLimit()).isEmpty();
        assertThat(said(turning)).contains("moe_mpa");
    }

    /** 1 in round: 2,000 to 2,800 rpm; out of 1 in square: half of it. */
    @Test
    void a_stout_piece_turns_at_common_practice() {
        SpeedAdvice speeds = Turning.of(Works.stiff(rod(25.4, 200, 25.4))).speeds();
        assertThat(speeds.limit()).isEqualTo(SpeedAdvice.Limit.PRACTICE);
        assertThat(speeds.turning().from().rpm()).isCloseTo(2000, within(1e-9));
        assertThat(speeds.turning().to().rpm()).isCloseTo(2800, within(1e-9));
        assertThat(speeds.turning().to().surfaceMetresPerSecond(mm(25.4))).isCloseTo(3.724, within(0.0005));
        assertThat(speeds.roughing().to().rpm()).isCloseTo(1400, within(1e-9));
    }

    @Test
    void a_whippy_piece_is_held_to_half_its_weakest_natural_speed() {
        Turning turning = Turning.of(Works.stiff(rod(16, 1100, 20)));
        double weakest = turning.stages().stream()
                .mapToDouble(each -> each.first().rpm())
                .min()
                .orElseThrow();
        assertThat(turning.speeds().limit()).isEqualTo(SpeedAdvice.Limit.WHIP);
        assertThat(turning.speeds().turning().to().rpm()).isCloseTo(weakest / 2, within(1e-6));
        assertThat(turning.speeds().turning().from())
                .isLessThanOrEqualTo(turning.speeds().turning().to());
        assertThat(said(turning)).contains("own whip", "steady rest");
    }

    @Test
    void no_advice_is_faster_than_the_whip_or_the_lathe_allow() {
        Seeds.each(40, random -> {
            Speed most = Speed.ofRpm(300 + random.nextInt(4000));
            Lathe lathe = new Lathe(Lathe.USUAL_CUTTING, List.of(), Optional.of(most), Optional.empty());
            Turning turning = Turning.of(Works.of(Samples.pattern(1 + random.nextInt(30), random), STIFF, lathe));
            int stages = turning.stages().size();
            heldTo(turning.speeds().turning(), most, turning.stages().subList(1, stages));
            heldTo(turning.speeds().roughing(), most, turning.stages().subList(0, 2));
        });
    }

    private static void heldTo(SpeedRange range, Speed most, List<Stage> stages) {
        double weakest =
                stages.stream().mapToDouble(each -> each.first().rpm()).min().orElseThrow();
        assertThat(range.to()).isLessThanOrEqualTo(most);
        assertThat(range.to().rpm()).isLessThanOrEqualTo(0.5 * weakest * (1 + 1e-3));
        assertThat(range.from()).isLessThanOrEqualTo(range.to());
    }

    @Test
    void the_lathes_own_steps_in_range_are_named() {
        List<Speed> steps = List.of(Speed.ofRpm(1500), Speed.ofRpm(500), Speed.ofRpm(900), Speed.ofRpm(3600));
        Lathe lathe = new Lathe(Lathe.USUAL_CUTTING, steps, Optional.empty(), Optional.empty());
        SpeedAdvice speeds =
                Turning.of(Works.of(rod(40, 200, 45), STIFF, lathe)).speeds();
        assertThat(speeds.turningSteps()).containsExactly(Speed.ofRpm(1500));
        assertThat(speeds.roughingSteps()).containsExactly(Speed.ofRpm(900));
        Lathe fast = new Lathe(Lathe.USUAL_CUTTING, List.of(Speed.ofRpm(9000)), Optional.empty(), Optional.empty());
        assertThat(said(Turning.of(Works.of(rod(40, 200, 45), STIFF, fast)))).contains("every step is faster");
    }

    @Test
    void a_tailstock_wound_up_beyond_buckling_is_told() {
        Force force = Force.ofNewtons(900);
        Lathe lathe = new Lathe(Lathe.USUAL_CUTTING, List.of(), Optional.empty(), Optional.of(force));
        Turning slim = Turning.of(Works.of(rod(12, 900, 20), STIFF, lathe));
        Turning stout = Turning.of(Works.of(rod(40, 300, 45), STIFF, lathe));
        assertThat(slim.whip().orElseThrow().buckling()).isLessThan(force);
        assertThat(said(slim)).contains("bows this piece out by itself");
        assertThat(slim.cautions().get(0).where()).isEqualTo("tailstock");
        assertThat(slim.offered()).isEmpty();
        assertThatThrownBy(slim::speeds).isInstanceOf(IllegalStateException.class);
        assertThat(said(slim)).contains("No speed is offered").doesNotContain("held to", "once it is round");
        assertThat(stout.offered()).isPresent();
        assertThat(said(stout)).doesNotContain("tailstock");
    }

    /** 16 × 900 mm under 300 N: half of f₀·√(1 − P/Pcr) and no more, though the free piece would bear more. */
    @Test
    void a_given_thrust_holds_the_speed_below_half_of_what_it_leaves() {
        Lathe lathe = new Lathe(Lathe.USUAL_CUTTING, List.of(), Optional.empty(), Optional.of(Force.ofNewtons(300)));
        Turning turning = Turning.of(Works.of(rod(16, 900, 20), STIFF, lathe));
        EvenRod rod = EvenRod.round(900, 16, 11_000, 880, 700e-12, 300);
        assertThat(turning.speeds().turning().to().rpm())
                .isCloseTo(0.5 * rod.pinned(1) * 30 / Math.PI, withinPercentage(0.1));
        assertThat(turning.whip().orElseThrow().first().rpm())
                .isCloseTo(rod.pinned(1) * 30 / Math.PI, withinPercentage(0.01));
        assertThat(said(turning)).contains("of what bows the piece out");
    }

    @Test
    void a_tailstock_that_nobody_told_presses_with_a_tenth_of_what_bows_the_piece_and_no_more_than_300_newtons() {
        Turning slim = Turning.of(Works.stiff(rod(16, 900, 20)));
        Stage finished = slim.stages().get(5);
        EvenRod rod = EvenRod.round(900, 16, 11_000, 880, 700e-12, 0);
        assertThat(finished.thrust().orElseThrow().newtons()).isCloseTo(0.1 * rod.buckling(1), withinPercentage(0.1));
        assertThat(slim.whip().orElseThrow().thrust())
                .as("the finished piece's own figures are free of it")
                .isEmpty();
        Stage stout = Turning.of(Works.stiff(rod(40, 300, 45))).stages().get(5);
        assertThat(stout.thrust()).contains(Force.ofNewtons(300));
    }

    @Test
    void a_piece_held_by_one_end_is_reckoned_so_and_without_a_tailstock_nothing_presses() {
        Held alone = new Held(Held.By.CHUCK, Held.At.START, false);
        Lathe lathe = new Lathe(Lathe.USUAL_CUTTING, List.of(), Optional.empty(), Optional.of(Force.ofNewtons(5000)))
                .withHeld(alone);
        Turning turning = Turning.of(Works.of(rod(20, 200, 25), STIFF, lathe));
        EvenRod rod = EvenRod.round(200, 20, 11_000, 880, 700e-12, 0);
        assertThat(turning.whip().orElseThrow().first().rpm())
                .isCloseTo(rod.speeds(Supports.CHUCK, 1).get(0) * 30 / Math.PI, withinPercentage(0.01));
        assertThat(turning.stages())
                .allSatisfy(stage -> assertThat(stage.thrust()).isEmpty());
        assertThat(turning.offered()).isPresent();
        assertThat(new Held(Held.By.SCREW, Held.At.END, true).supports())
                .isEqualTo(new Supports(Support.PINNED, Support.FIXED));
        assertThat(alone.supports()).isEqualTo(Supports.CHUCK);
        assertThatThrownBy(() -> new Supports(Support.FREE, Support.PINNED))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_piece_that_cannot_be_cut_unsupported_is_told_so_without_a_figure() {
        Turning thread = Turning.of(Works.stiff(rod(6, 900, 10)));
        assertThat(thread.whip().orElseThrow().most().beyond()).isTrue();
        assertThat(said(thread))
                .contains("cannot be cut unsupported", "steady rest")
                .doesNotContain("more than the 0.4 mm allowed");
        assertThat(thread.cautions())
                .filteredOn(each -> each.where().equals("bending"))
                .isNotEmpty()
                .allMatch(each -> Language.GERMAN.knows(each.sentence()) && Language.GERMAN.knows(each.what()));
    }

    @Test
    void a_piece_that_bends_more_than_its_tolerance_asks_for_a_steady() {
        Turning slim = Turning.of(Works.stiff(rod(16, 700, 20)));
        assertThat(slim.whip().orElseThrow().most().sag().mm()).isGreaterThan(0.2);
        assertThat(said(slim)).contains("more than the 0.4 mm allowed", "steady rest at about 350 mm");
        assertThat(said(Turning.of(Works.stiff(rod(40, 300, 45))))).doesNotContain("allowed");
    }

    @Test
    void nothing_is_ever_called_by_the_word_that_promises() {
        Seeds.each(15, random -> {
            Turning turning = Turning.of(Works.stiff(Samples.pattern(1 + random.nextInt(20), random)));
            StringBuilder text = new StringBuilder(said(turning));
            turning.cuts()
                    .forEach(
                            cut -> text.append(cut.what()).append(cut.caution()).append(cut.why()));
            turning.workings().forEach(each -> text.append(each));
            assertThat(text.toString().toLowerCase(java.util.Locale.ROOT)).doesNotContain("safe", "complies", "nan");
            assertThat(turning.cautions()).isNotEmpty().allSatisfy(TurningTest::oneSentence);
        });
    }

    private static void oneSentence(Warning caution) {
        assertThat(caution.where()).isNotBlank();
        assertThat(caution.what()).isNotBlank().doesNotContain("\n");
    }
}
