package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Groove;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Stock;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.units.Force;
import turnalike.units.Length;

/** Why a cut stands where it does: which stretches are slender, what that saves, what each cut sizes, and the stages' own figures. */
class CutReasonsTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Cylinder rod(double lengthMm, double diameterMm) {
        return new Cylinder(mm(lengthMm), mm(diameterMm), Details.NONE);
    }

    private static Taper taper(double lengthMm, double fromMm, double toMm) {
        return new Taper(mm(lengthMm), mm(fromMm), mm(toMm), Details.NONE);
    }

    private static TurningProblem work(double stockMm, Member... members) {
        double length = List.of(members).stream()
                .mapToDouble(each -> each.length().mm())
                .sum();
        return Works.stiff(new Pattern("any", new Stock(Section.ROUND, mm(stockMm), mm(length)), List.of(members)));
    }

    private static List<Cut> phase(TurningProblem work, Phase phase) {
        return Turning.of(work).cuts().stream()
                .filter(cut -> cut.phase() == phase)
                .toList();
    }

    private static List<Integer> slenderOrder(Member... members) {
        return phase(work(60, members), Phase.SLENDER).stream()
                .filter(cut -> !cut.sizes())
                .map(cut -> cut.members().get(0))
                .toList();
    }

    @Test
    void the_slender_stretch_across_the_middle_begins_also_when_most_of_it_lies_toward_the_drive_end() {
        assertThat(slenderOrder(rod(170, 20), rod(30, 50), rod(100, 20))).containsExactly(0, 2);
        // One that only comes up to the middle waits.
        assertThat(slenderOrder(rod(150, 20), rod(30, 50), rod(120, 20))).containsExactly(2, 0);
        assertThat(slenderOrder(rod(30, 50), rod(120, 20), rod(150, 21))).containsExactly(2, 1);
    }

    /** ∫ sin²(πx/L)(1/r⁴ − 1/r₀⁴) dx over each stretch by four hundred plain midpoints, the mean diameter likewise. */
    @Test
    void the_slender_stretches_of_any_tapers_are_those_of_the_measure_by_plain_sums() {
        int[] decided = new int[2];
        Seeds.each(120, random -> {
            Member[] run = new Member[2 + random.nextInt(4)];
            for (int i = 0; i < run.length; i++) {
                run[i] = taper(20 + random.nextInt(200), 26 + random.nextInt(15), 26 + random.nextInt(15));
            }
            TurningProblem work = work(60, run);
            double thickest = 2 * work.thickestRound().mm();
            double[] limber = new double[run.length];
            double[] mean = new double[run.length];
            double all = 0;
            for (PlacedMember placed : work.pattern().placed()) {
                int i = placed.number() - 1;
                sums(work, placed, limber, mean, i);
                all += limber[i];
            }
            Set<Integer> slender = SlenderMembers.of(work);
            for (int i = 0; i < run.length; i++) {
                double share = mean[i] / thickest;
                double part = limber[i] / all;
                boolean clear =
                        Math.abs(share - 2.0 / 3) > 1e-3 && Math.abs(share - 0.9) > 1e-3 && Math.abs(part - 0.1) > 1e-3;
                if (clear) {
                    boolean expected = share < 2.0 / 3 || (share < 0.9 && part > 0.1);
                    assertThat(slender.contains(i))
                            .as("share %s, part %s", share, part)
                            .isEqualTo(expected);
                    decided[expected ? 1 : 0]++;
                }
            }
        });
        assertThat(decided[0]).isGreaterThan(50);
        assertThat(decided[1]).isGreaterThan(50);
    }

    private static void sums(TurningProblem work, PlacedMember placed, double[] limber, double[] mean, int i) {
        int parts = 400;
        double length = work.pattern().length().mm();
        double rough = Math.pow(work.roughed().mm() / 2, -4);
        double h = placed.member().length().mm() / parts;
        double square = 0;
        for (int k = 0; k < parts; k++) {
            double x = placed.start().mm() + (k + 0.5) * h;
            double r = work.pattern().outline().radiusAt(mm(x)).mm();
            double bow = Math.sin(Math.PI * x / length);
            limber[i] += h * bow * bow * (Math.pow(r, -4) - rough);
            square += r * r / parts;
        }
        mean[i] = 2 * Math.sqrt(square);
    }

    @Test
    void the_reason_gives_both_sags_and_both_natural_speeds_and_the_force_they_are_for() {
        TurningProblem work = Works.stiff(Works.baluster());
        StageOutlines shapes = new StageOutlines(work);
        Set<Integer> sized = Set.of(2, 3, 4, 5, 6, 7, 8, 9);
        Whip ordered = finely(shapes.after(Set.of(2, 3, 4, 7, 8, 9), sized));
        Whip other = finely(shapes.after(Set.of(5, 6), sized));
        String why = phase(work, Phase.THIN).get(0).why().orElseThrow();
        assertThat(why).startsWith("with the slender stretches cut first, 20 N would push the piece ");
        List<Double> figures = numbers(why);
        // The force, the sag of the other order, this order's, and the two speeds.
        assertThat(figures).hasSize(5);
        assertThat(figures.get(1)).isCloseTo(other.most().sag().mm(), within(0.006));
        assertThat(figures.get(2)).isCloseTo(ordered.most().sag().mm(), within(0.006));
        assertThat(figures.get(3)).isCloseTo(ordered.first().rpm(), withinPercentage(0.5));
        assertThat(figures.get(4)).isCloseTo(other.first().rpm(), withinPercentage(0.5));
    }

    private static Whip finely(Outline outline) {
        List<Length> places = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            places.add(mm(i * 30));
        }
        return Whip.of(outline, Works.wood(), Works.usual(), places);
    }

    private static List<Double> numbers(String text) {
        return java.util.regex.Pattern.compile("\\d+(\\.\\d+)?")
                .matcher(text)
                .results()
                .map(found -> Double.parseDouble(found.group()))
                .toList();
    }

    @Test
    void nothing_is_claimed_for_the_order_where_nothing_waits_or_the_waiting_saves_nothing() {
        List<Cut> alone = phase(work(60, taper(400, 40, 21)), Phase.SLENDER);
        assertThat(alone).singleElement().satisfies(cut -> assertThat(cut.why()).isEmpty());
        // A short slender end beside long details that give far more: cut first it would cost less than they do.
        List<Cut> end = phase(work(60, rod(10, 26), rod(20, 40), rod(400, 36.2), rod(400, 36.2)), Phase.SLENDER);
        assertThat(end).isNotEmpty().allSatisfy(cut -> {
            assertThat(cut.members()).containsExactly(0);
            assertThat(cut.why()).isEmpty();
        });
        // The reason stands at the first slender cut alone.
        List<Cut> two = phase(Works.stiff(Works.baluster()), Phase.THIN);
        assertThat(two.get(0).why()).isPresent();
        assertThat(two.get(1).why()).isEmpty();
    }

    @Test
    void each_members_cut_carries_its_own_sized_places_and_the_least_of_their_openings() {
        TurningProblem work = Works.stiff(Works.baluster());
        int seen = 0;
        for (Cut cut : Turning.of(work).cuts()) {
            if (!cut.phase().cutsMembers() || cut.sizes()) {
                continue;
            }
            PlacedMember placed = work.pattern().placed().get(cut.members().get(0));
            List<Length> places = placed.member().diameters().stream()
                    .map(each -> placed.start().plus(each.place()))
                    .distinct()
                    .sorted()
                    .toList();
            double least = placed.member().diameters().stream()
                    .mapToDouble(each -> each.size().mm())
                    .min()
                    .orElseThrow();
            assertThat(cut.places()).isEqualTo(places);
            assertThat(cut.setting().orElseThrow().mm()).isCloseTo(least + 0.8, within(1e-9));
            seen++;
        }
        assertThat(seen).isEqualTo(10);
        Cut bead = phase(work(60, new Bead(mm(15), mm(36), mm(48), Details.NONE)), Phase.DETAILS)
                .get(0);
        assertThat(bead.setting()).contains(mm(36.8));
    }

    @Test
    void each_sizing_cut_names_the_places_and_the_members_that_its_opening_serves() {
        TurningProblem work = work(60, rod(40, 40), rod(60, 30), rod(50, 40), rod(30, 30));
        List<Cut> cuts = phase(work, Phase.SIZING);
        assertThat(cuts).extracting(Cut::members).containsExactly(List.of(0, 2), List.of(1, 3));
        assertThat(cuts)
                .extracting(Cut::what)
                .containsExactly(
                        "the cylinder is this size: try the calipers and take down only what is over: 1 cylinder at 20 mm;"
                                + " 3 cylinder at 125 mm",
                        "part down to the calipers: 2 cylinder at 70 mm; 4 cylinder at 165 mm");
        for (Cut cut : cuts) {
            List<Length> places = cut.members().stream()
                    .map(index -> work.pattern().placed().get(index))
                    .map(placed -> placed.start()
                            .plus(placed.member().diameters().get(0).place()))
                    .toList();
            assertThat(cut.places()).isEqualTo(places);
        }
    }

    /** One plunge of the tool where two members meet at one size, and none where an edge lies against a flat that is brought down anyway. */
    @Test
    void what_one_cut_sizes_is_cut_once() {
        Bead bead = new Bead(mm(10), mm(24), mm(40), Details.NONE);
        List<Cut> flats = phase(work(60, rod(8, 24), bead, rod(8, 24), rod(30, 40)), Phase.SIZING);
        assertThat(flats.get(1).what())
                .isEqualTo(
                        "part down to the calipers: 1 cylinder at 4 mm; 3 cylinder at 22 mm; no cut of its own where 2 bead"
                                + " meets a flat of this size");
        assertThat(flats.get(1).places()).containsExactly(mm(4), mm(22));
        assertThat(flats.get(1).members()).containsExactly(0, 1, 2);
        List<Cut> joint = phase(work(60, taper(100, 40, 24), taper(100, 24, 40)), Phase.SIZING);
        assertThat(joint.get(1).what()).isEqualTo("part down to the calipers: 1 taper | 2 taper at 100 mm");
        // A flat of another size saves nothing.
        List<Cut> apart = phase(work(60, rod(8, 30), bead, rod(8, 30)), Phase.SIZING);
        assertThat(apart.get(2).what()).isEqualTo("part down to the calipers: 2 bead at 8 mm, 18 mm");
    }

    /** A slot is as weak as the neck it begins: the apple is rolled before the necks beside it are parted down to. */
    @Test
    void a_necks_thin_place_is_parted_when_its_turn_comes_and_its_thick_one_with_the_rest() {
        Bead apple = new Bead(mm(20), mm(18), mm(40), Details.NONE);
        TurningProblem work = work(60, taper(120, 32, 13), apple, taper(120, 15, 36));
        assertThat(phase(work, Phase.SIZING))
                .extracting(Cut::what)
                .noneMatch(what -> what.contains("at 120 mm; 3") || what.contains("1 taper at 120 mm"))
                .anyMatch(what -> what.contains("2 bead at 120 mm, 140 mm"))
                .anyMatch(what -> what.contains("1 taper at 0 mm"))
                .anyMatch(what -> what.contains("3 taper at 260 mm"));
        List<Cut> late = phase(work, Phase.SLENDER);
        assertThat(late).extracting(Cut::members).containsExactly(List.of(2), List.of(2), List.of(0), List.of(0));
        assertThat(late).extracting(Cut::sizes).containsExactly(true, false, true, false);
        assertThat(late.get(0).what()).isEqualTo("part down to the calipers: 3 taper at 140 mm");
        assertThat(late.get(2).what()).isEqualTo("part down to the calipers: 1 taper at 120 mm");
        // Until then the piece stands there as the apple's root leaves it; once parted it is as weak as the neck.
        StageOutlines shapes = new StageOutlines(work);
        Set<Integer> all = Set.of(0, 1, 2);
        assertThat(shapes.after(Set.of(1), all).radiusAt(mm(118)).mm()).isCloseTo(20.4, within(1e-9));
        assertThat(shapes.after(Set.of(1), all, Set.of(0)).radiusAt(mm(118)).mm())
                .isCloseTo(6.9, within(1e-9));
        // With nothing heavy to cut first there is nothing to wait for; a flat that the parting tool cuts is sized by
        // that cut.
        assertThat(phase(work(60, taper(400, 40, 21)), Phase.SIZING)).hasSize(2);
        Groove groove = new Groove(mm(5), mm(40), mm(12), Details.NONE);
        TurningProblem grooved = work(60, rod(100, 40), groove, rod(100, 40));
        assertThat(phase(grooved, Phase.SIZING)).extracting(Cut::members).containsExactly(List.of(0, 2));
        assertThat(phase(grooved, Phase.SLENDER)).singleElement().satisfies(cut -> {
            assertThat(cut.what()).isEqualTo("2 groove: straight in between its lines to the calipers");
            assertThat(cut.sizes()).isFalse();
        });
    }

    /** Two sags that are printed alike are no reason for an order. */
    @Test
    void a_stout_piece_is_given_no_reason_of_nothing() {
        List<Cut> slender = phase(work(60, rod(100, 50), taper(60, 45, 24), rod(60, 50)), Phase.SLENDER);
        assertThat(slender).isNotEmpty().allSatisfy(cut -> assertThat(cut.why()).isEmpty());
    }

    @Test
    void a_sizing_cut_stays_within_its_member_and_is_no_wider_than_a_short_one() {
        TurningProblem work = work(60, taper(100, 40, 20), rod(2, 30), rod(50, 40));
        Outline slotted = new StageOutlines(work).after(Set.of(), Set.of(), Set.of(0, 1));
        double rough = 20.4;
        assertThat(slotted.radiusAt(mm(96.9)).mm()).isCloseTo(rough, within(1e-9));
        assertThat(slotted.radiusAt(mm(97.1)).mm()).isCloseTo(10.4, within(1e-9));
        assertThat(slotted.radiusAt(mm(99.9)).mm()).isCloseTo(10.4, within(1e-9));
        assertThat(slotted.radiusAt(mm(100.1)).mm()).isCloseTo(15.4, within(1e-9));
        assertThat(slotted.radiusAt(mm(101.9)).mm()).isCloseTo(15.4, within(1e-9));
        assertThat(slotted.radiusAt(mm(102.1)).mm()).isCloseTo(rough, within(1e-9));
        // A blank that leaves less than the sizing allowance: nothing is sized thicker than the cylinder is.
        TurningProblem tight = work(41, rod(100, 40));
        assertThat(new StageOutlines(tight)
                        .after(Set.of(), Set.of(0))
                        .largestRadius()
                        .mm())
                .isCloseTo((41 - 25.4 / 32) / 2, within(1e-9));
    }

    /** A round bar of even thickness under the 300 N of a job that says nothing: closed forms; the thrust adds to its sag as P/(Pcr − P). */
    @Test
    void the_stages_of_a_plain_rod_are_those_of_even_bars() {
        List<Stage> stages = Turning.of(work(45, rod(600, 40))).stages();
        assertThat(stages)
                .extracting(Stage::name)
                .containsExactly(
                        "blank",
                        "roughed cylinder",
                        "sizing cuts made",
                        "heavy details cut",
                        "slender stretches cut",
                        "finished");
        bar(stages.get(0), 45);
        bar(stages.get(1), 40.8);
        bar(stages.get(3), 40);
        bar(stages.get(5), 40);
    }

    private static void bar(Stage stage, double diameterMm) {
        EvenRod rod = EvenRod.round(600, diameterMm, 11_000, 880, 700e-12, 300);
        assertThat(stage.thrust()).contains(Force.ofNewtons(300));
        assertThat(stage.first().rpm()).isCloseTo(rod.pinned(1) * 30 / Math.PI, withinPercentage(0.01));
        assertThat(stage.second().rpm()).isCloseTo(rod.pinned(2) * 30 / Math.PI, withinPercentage(0.01));
        assertThat(stage.buckling().newtons()).isCloseTo(rod.buckling(1), withinPercentage(0.01));
        assertThat(stage.most().place()).isEqualTo(mm(300));
        double more = 1 / (1 - 300 / rod.buckling(1));
        assertThat(stage.most().sag().mm()).isCloseTo(more * rod.sagMm(20), withinPercentage(0.05));
    }

    @Test
    void the_sag_is_asked_at_forty_even_parts_and_at_marks_between_them() {
        TurningProblem work = work(60, rod(111, 40), rod(289, 30));
        List<Length> places = Turning.of(work).whip().orElseThrow().sags().stream()
                .map(Whip.Sag::place)
                .toList();
        List<Length> expected = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            expected.add(mm(i * 10));
        }
        expected.add(12, mm(111));
        assertThat(places).hasSize(42);
        for (int i = 0; i < 42; i++) {
            assertThat(places.get(i).mm()).isCloseTo(expected.get(i).mm(), within(1e-9));
        }
    }

    @Test
    void tenons_are_no_detail_nor_sized_before_their_turn() {
        Tenon tenon = new Tenon(mm(25), mm(18), mm(2), Details.NONE);
        TurningProblem work = work(60, rod(200, 40), tenon);
        assertThat(phase(work, Phase.SIZING)).extracting(Cut::members).containsExactly(List.of(0));
        assertThat(phase(work, Phase.DETAILS)).extracting(Cut::members).containsExactly(List.of(0));
        assertThat(phase(work, Phase.TENONS)).extracting(Cut::members).containsExactly(List.of(1));
        List<Stage> stages = Turning.of(work).stages();
        // With its details cut the tenon is still as roughed, 40.8 mm, and so stiffer than the finished piece.
        assertThat(stages.get(4).first()).isGreaterThan(stages.get(5).first());
        assertThat(Turning.of(Works.of(work.pattern(), Optional.empty(), Lathe.USUAL))
                        .workings())
                .hasSize(2);
    }
}
