package turnalike.job.nudge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.effort.Progress;
import turnalike.job.Plan;
import turnalike.job.edit.NudgeEdit;
import turnalike.job.edit.NudgeEdit.Shift;
import turnalike.job.kept.JobText;
import turnalike.job.nudge.Nudge.Saving;
import turnalike.settings.DividerProblem;
import turnalike.settings.Dividers;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Invented spindles in millimetres; half a millimetre is the step, and the tolerance of places and of diameters unless a test says else. */
class NudgeSearchTest {
    private static JobText job(String members, String more) {
        JobText.Read read = JobText.read("""
                {"format": "turnalike-job", "version": 1, "title": "Invented", "units": "mm", %s
                 "pattern": {"name": "p", "stock": {"section": "round", "size": 60, "length": 2000}, "members": [%s]},
                 "wood": {"density_kg_m3": 700}}""".formatted(more, members));
        return read.text().orElseThrow(() -> new AssertionError(read.problems()));
    }

    private static final String HALF = "\"tolerances\": {\"mark\": 0.5, \"diameter\": 0.5},";

    private static String cylinder(double length, double diameter) {
        return "{\"kind\": \"cylinder\", \"length\": %s, \"diameter\": %s}".formatted(length, diameter);
    }

    private static Plan plan(JobText text) {
        return Plan.of(text.job(), Effort.unlimited());
    }

    private static Nudges nudges(JobText text, Effort effort) {
        return NudgeSearch.of(text, plan(text), effort);
    }

    private static JobText random(Random random) {
        List<String> members = new ArrayList<>();
        int count = 2 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            double length = 10 + 10 * random.nextInt(4) + 0.5 * random.nextInt(3);
            double diameter = 20 + 5 * random.nextInt(4) + 0.3 * random.nextInt(4);
            members.add(
                    random.nextInt(3) == 0
                            ? "{\"kind\": \"bead\", \"length\": %s, \"root\": %s, \"crown\": %s}"
                                    .formatted(length, diameter, diameter + 8)
                            : cylinder(length, diameter));
        }
        String largest = random.nextBoolean() ? "" : " \"settings\": {\"largest\": 45},";
        return job(String.join(", ", members), HALF + largest);
    }

    private static int openings(Plan plan, Saving saving) {
        return saving == Saving.DIVIDERS
                ? plan.settings().dividers().settings().size()
                : plan.settings().calipers().size();
    }

    /** 0.5 mm are the tolerance of both, and weights are 3 and 2. */
    @Test
    void each_saves_what_it_says_once_it_is_taken_and_moves_nothing_further_than_the_tolerance() {
        List<Saving> seen = new ArrayList<>();
        Seeds.each(20, random -> {
            JobText text = random(random);
            Plan before = plan(text);
            for (Nudge nudge : nudges(text, Effort.unlimited()).nudges()) {
                JobText taken = nudge.edit().on(text).text().orElseThrow();
                assertThat(taken).isEqualTo(nudge.text());
                Plan after = plan(taken);
                assertThat(openings(before, nudge.saves())).isEqualTo(nudge.before());
                assertThat(openings(after, nudge.saves()))
                        .as("%s %s", nudge, text)
                        .isLessThanOrEqualTo(nudge.after())
                        .isLessThan(nudge.before());
                assertThat(after.settings().dividers().listOnTheStick().size())
                        .isLessThanOrEqualTo(
                                before.settings().dividers().listOnTheStick().size());
                assertThat(nudge.cost()).isCloseTo(cost(before, after), within(1e-9));
                seen.add(nudge.saves());
            }
        });
        assertThat(seen).filteredOn(each -> each == Saving.DIVIDERS).hasSizeGreaterThan(3);
        assertThat(seen).filteredOn(each -> each == Saving.CALIPERS).hasSizeGreaterThan(3);
    }

    private static double cost(Plan before, Plan after) {
        double sum = 0;
        for (int i = 0; i < before.marks().size(); i++) {
            double off = Math.abs(after.marks().get(i).place().mm()
                    - before.marks().get(i).place().mm());
            assertThat(off).isLessThanOrEqualTo(0.5 + 1e-9);
            sum += 3 * off / 0.5;
        }
        for (int i = 0; i < before.job().pattern().members().size(); i++) {
            var was = before.job().pattern().members().get(i).diameters();
            var is = after.job().pattern().members().get(i).diameters();
            for (int k = 0; k < was.size(); k++) {
                double off = Math.abs(was.get(k).size().mm() - is.get(k).size().mm());
                assertThat(off).isLessThanOrEqualTo(0.5 + 1e-9);
                sum += 2 * off / 0.5;
            }
        }
        return sum;
    }

    /** Distances 20 and 20.5 from the two ends are two openings; half a millimetre makes them one. */
    @Test
    void a_boundary_half_a_millimetre_off_its_mirror_image_is_told_with_its_sentence() {
        JobText text = job(cylinder(20, 30) + ", " + cylinder(80, 25) + ", " + cylinder(20.5, 30), HALF);
        Nudges nudges = nudges(text, Effort.unlimited());
        assertThat(nudges.fewestProven()).isTrue();
        assertThat(nudges.stopped()).isFalse();
        assertThat(nudges.nudges())
                .extracting(Nudge::words)
                .contains(
                        "let mark 1 (1 cylinder | 2 cylinder) stand 0.5 mm further on, and 1 divider opening does instead of 2",
                        "let mark 2 (2 cylinder | 3 cylinder) stand 0.5 mm further on, and 1 divider opening does instead of 2");
        assertThat(nudges.nudges()).extracting(Nudge::cost).isSorted();
        assertThat(nudges.nudges().get(0).cost()).isCloseTo(3, within(1e-9));
    }

    @Test
    void what_fits_another_part_stays() {
        String tenons =
                "{\"kind\": \"tenon\", \"length\": 20, \"diameter\": 15}, %s, {\"kind\": \"tenon\", \"length\": 20.5,"
                        + " \"diameter\": 15.8}";
        assertThat(nudges(job(tenons.formatted(cylinder(80, 25)), HALF), Effort.unlimited())
                        .nudges())
                .isEmpty();
        String squares =
                "{\"kind\": \"square\", \"length\": 20, \"side\": 30}, %s, {\"kind\": \"square\", \"length\": 20.5, \"side\": 30}";
        JobText leg = job(squares.formatted(cylinder(80, 25)), HALF);
        assertThat(nudges(leg, Effort.unlimited()).nudges()).isEmpty();
    }

    @Test
    void no_marks_and_one_mark_have_nothing_to_save() {
        assertThat(nudges(job(cylinder(80, 25), HALF), Effort.unlimited()).nudges())
                .isEmpty();
        JobText one = job(cylinder(80, 25) + ", " + cylinder(70, 30), HALF);
        assertThat(nudges(one, Effort.unlimited()).nudges()).noneMatch(nudge -> nudge.saves() == Saving.DIVIDERS);
    }

    /** The usual tolerances are 0.25 and 0.4 mm: a move is the whole of it where a step of half a millimetre would be too much. */
    @Test
    void a_tolerance_below_a_step_is_never_passed() {
        JobText text = job(cylinder(20, 30) + ", " + cylinder(80, 25) + ", " + cylinder(20.25, 30.9), "");
        assertThat(nudges(text, Effort.unlimited()).nudges()).isNotEmpty().allSatisfy(nudge -> assertThat(
                        nudge.edit().shifts())
                .allSatisfy(shift ->
                        assertThat(shift.by().abs().mm()).isLessThanOrEqualTo(shift.isBoundary() ? 0.25 : 0.4)));
    }

    @Test
    void in_inches_a_move_is_a_sixty_fourth_and_is_spelled_as_one() {
        JobText.Read read = JobText.read("""
                {"format": "turnalike-job", "version": 1, "title": "Invented", "units": "in",
                 "tolerances": {"mark": "1/64"},
                 "pattern": {"name": "p", "stock": {"section": "round", "size": 2, "length": 20}, "members": [
                  {"kind": "cylinder", "length": "1 1/4", "diameter": 1}, {"kind": "cylinder", "length": 4, "diameter": "3/4"},
                  {"kind": "cylinder", "length": "1 17/64", "diameter": 1}]},
                 "wood": {"density_kg_m3": 700}}""");
        Nudges nudges = nudges(read.text().orElseThrow(), Effort.unlimited());
        assertThat(nudges.nudges())
                .extracting(Nudge::words)
                .anyMatch(words -> words.contains("stand 1/64 in further on"));
        assertThat(nudges.nudges())
                .extracting(nudge -> nudge.text().text())
                .anyMatch(text -> text.contains("\"4 1/64\""));
    }

    /** Sixty marks of no order: the search ends with its effort, says so, and has told how far it came. */
    @Test
    void sixty_marks_end_with_the_effort_and_progress_is_told() {
        Random random = new Random(7);
        List<String> members = new ArrayList<>();
        for (int i = 0; i < 59; i++) {
            members.add(cylinder(Math.round(100 * (5 + 20 * random.nextDouble())) / 100.0, 20 + random.nextInt(9)));
        }
        JobText text = job(String.join(", ", members), HALF);
        Plan quick = Plan.of(text.job(), Effort.ofAsks(100));
        assertThat(quick.marks()).hasSize(60);
        List<Progress> told = new ArrayList<>();
        Effort few = Effort.ofAsks(3_000);
        Nudges nudges = NudgeSearch.of(text, quick, new Effort() {
            @Override
            public boolean spent() {
                return few.spent();
            }

            @Override
            public Effort share(double share) {
                return few.share(share);
            }

            @Override
            public void report(Progress progress) {
                told.add(progress);
            }
        });
        assertThat(nudges.stopped() || nudges.left() > 0).isTrue();
        assertThat(nudges.left()).isPositive();
        assertThat(nudges.fewestProven()).isFalse();
        assertThat(told).isNotEmpty();
        assertThat(told.get(0).what()).contains("1 tried");
    }

    @Test
    void an_edit_comes_back_from_the_word_it_is_sent_as_and_nonsense_does_not() {
        NudgeEdit edit = new NudgeEdit(
                List.of(new Shift(3, "crown", Length.ofInches(-1 / 64.0)), new Shift(4, "length", Length.ofMm(0.5))));
        assertThat(NudgeEdit.parse(edit.format())).contains(edit);
        for (String bad :
                List.of("", "3", "3:crown", "3:crown:x", "x:crown:1", "3:crown:1:2", "3:crown:NaN", "3:crown:1e999")) {
            assertThat(NudgeEdit.parse(bad)).as(bad).isEmpty();
        }
    }

    /** Every way of moving four or five diameters by half a millimetre or not: none that saves a caliper costs the eye less. */
    @Test
    void no_choice_of_moves_saves_a_caliper_at_less_cost() {
        int[] saved = {0};
        Seeds.each(20, random -> {
            int count = 4 + random.nextInt(2);
            List<Double> diameters = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                diameters.add(20 + 0.1 * random.nextInt(40));
            }
            JobText text = job(cylinders(diameters), HALF);
            int before = plan(text).settings().calipers().size();
            double least = Double.POSITIVE_INFINITY;
            for (int choice = 0; choice < Math.pow(3, count); choice++) {
                List<Double> moved = new ArrayList<>();
                int moves = 0;
                for (int i = 0, rest = choice; i < count; i++, rest /= 3) {
                    moved.add(diameters.get(i) + 0.5 * (rest % 3 - 1));
                    moves += rest % 3 == 1 ? 0 : 1;
                }
                if (groups(moved) < before) {
                    least = Math.min(least, 2.0 * moves);
                }
            }
            double cheapest = nudges(text, Effort.unlimited()).nudges().stream()
                    .filter(nudge -> nudge.saves() == Saving.CALIPERS)
                    .mapToDouble(Nudge::cost)
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            if (distinct(diameters)) {
                assertThat(cheapest).as("%s", diameters).isEqualTo(least);
                saved[0] += least < Double.POSITIVE_INFINITY ? 1 : 0;
            }
        });
        assertThat(saved[0]).isGreaterThan(5);
    }

    /**
     * Lines a half off from where equal steps would reach them, of a kind that no move of one or two mends: every move of three or four is tried by
     * brute force, and where one saves an opening the search mostly finds one too.
     */
    @Test
    void three_and_four_lines_at_once_are_found_where_fewer_do_not_save() {
        int[] saved = {0};
        int[] seen = {0};
        Seeds.each(14, random -> {
            int lines = 4 + random.nextInt(2);
            List<Double> marks = new ArrayList<>(List.of(0.0));
            for (int i = 1; i <= lines; i++) {
                marks.add(30.0 * i + 0.5 * (random.nextInt(3) - 1));
            }
            marks.add(30.0 * (lines + 1));
            int before = openings(marks);
            int fewest = fewest(marks, before);
            if (fewest > 2) {
                saved[0]++;
                List<String> run = new ArrayList<>();
                for (int i = 1; i < marks.size(); i++) {
                    run.add(cylinder(marks.get(i) - marks.get(i - 1), 20 + i));
                }
                List<Nudge> found = nudges(job(String.join(", ", run), HALF), Effort.unlimited()).nudges().stream()
                        .filter(nudge -> nudge.saves() == Saving.DIVIDERS)
                        .toList();
                found.forEach(nudge -> assertThat(nudge.edit().shifts()).hasSizeBetween(3, 4));
                seen[0] += found.isEmpty() ? 0 : 1;
            }
        });
        assertThat(saved[0]).isGreaterThan(2);
        assertThat(seen[0]).isGreaterThanOrEqualTo(saved[0] * 3 / 4);
    }

    /** The fewest lines to move by half a millimetre that save an opening; 0 where no four do. */
    private static int fewest(List<Double> marks, int before) {
        int lines = marks.size() - 2;
        int best = 0;
        for (int choice = 1; choice < Math.pow(3, lines); choice++) {
            List<Double> moved = new ArrayList<>(marks);
            int moves = 0;
            for (int i = 0, rest = choice; i < lines; i++, rest /= 3) {
                moved.set(i + 1, marks.get(i + 1) + 0.5 * (rest % 3 == 2 ? -1 : rest % 3));
                moves += rest % 3 == 0 ? 0 : 1;
            }
            if (moves <= 4 && (best == 0 || moves < best) && openings(moved) < before) {
                best = moves;
            }
        }
        return best;
    }

    private static int openings(List<Double> marks) {
        List<Length> places = marks.stream().map(Length::ofMm).toList();
        return Dividers.solve(DividerProblem.of(places, UnitSystem.METRIC), Effort.unlimited())
                .findPlan()
                .orElseThrow()
                .settings()
                .size();
    }

    private static boolean distinct(List<Double> diameters) {
        return diameters.stream().distinct().count() == diameters.size();
    }

    private static String cylinders(List<Double> diameters) {
        return String.join(
                ", ", diameters.stream().map(each -> cylinder(10, each)).toList());
    }

    /** Sizing is nothing here, so an opening serves half a millimetre upwards of the least. */
    private static int groups(List<Double> diameters) {
        List<Double> rising = diameters.stream().sorted().toList();
        int count = 0;
        double low = Double.NEGATIVE_INFINITY;
        for (double each : rising) {
            if (each > low + 0.5 + 1e-6) {
                low = each;
                count++;
            }
        }
        return count;
    }
}
