package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.outline.Section;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Square;
import turnalike.pattern.Stock;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;

/** Every line of the speed advice by the rule it states: rpm times diameter, half while anything is square, half the natural speed. */
class SpeedAdviceTest {
    private static final double INCH = 25.4;
    private static final Pattern ROUND = pattern(Section.SQUARE, 45, new Cylinder(mm(200), mm(40), Details.NONE));
    private static final Pattern SQUARE_LEFT = pattern(
            Section.SQUARE, 50, new Square(mm(60), mm(50), Details.NONE), new Cylinder(mm(200), mm(30), Details.NONE));

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Pattern pattern(Section section, double stockMm, Member... members) {
        return new Pattern("any", new Stock(section, mm(stockMm), mm(400)), List.of(members));
    }

    private static Stage stage(double rpm) {
        Whip.Sag sag = new Whip.Sag(mm(100), mm(0.01));
        return new Stage("any", Speed.ofRpm(rpm), Speed.ofRpm(4 * rpm), Force.ofNewtons(1e5), sag);
    }

    private static Lathe lathe(Optional<Double> most, double... steps) {
        List<Speed> each = Arrays.stream(steps).mapToObj(Speed::ofRpm).toList();
        return new Lathe(Lathe.USUAL_CUTTING, each, most.map(Speed::ofRpm), Optional.empty());
    }

    private static SpeedAdvice advice(Pattern pattern, Lathe lathe, double blankRpm, double... laterRpm) {
        return SpeedAdvice.of(
                pattern,
                lathe,
                Optional.of(stage(blankRpm)),
                Arrays.stream(laterRpm).mapToObj(SpeedAdviceTest::stage).toList());
    }

    private static void range(SpeedRange range, double fromRpm, double toRpm) {
        assertThat(range.from().rpm()).isCloseTo(fromRpm, within(1e-6));
        assertThat(range.to().rpm()).isCloseTo(toRpm, within(1e-6));
    }

    private static SpeedAdvice free(Pattern pattern) {
        return SpeedAdvice.of(pattern, Lathe.USUAL, Optional.empty(), List.of());
    }

    /** Short enough that its length holds nothing. */
    private static Pattern round(double inches) {
        return new Pattern(
                "any",
                new Stock(Section.ROUND, mm(inches * INCH), mm(220)),
                List.of(new Cylinder(mm(200), mm(inches * INCH), Details.NONE)));
    }

    private static Pattern square(double inches) {
        return pattern(Section.SQUARE, inches * INCH, new Cylinder(mm(200), mm(inches * INCH * 0.9), Details.NONE));
    }

    /** The chart, written down by hand: common practice for a hand lathe. */
    @Test
    void round_work_turns_by_the_chart() {
        range(free(round(2)).turning(), 1200, 1800);
        range(free(round(1)).turning(), 2000, 2800);
        range(free(round(0.5)).turning(), 3000, 3500);
        range(free(round(0.3)).turning(), 3000, 3500);
        range(free(round(4)).turning(), 600, 900);
        assertThat(free(round(1)).turning().diameter().mm()).isCloseTo(INCH, within(1e-9));
        assertThat(free(round(1)).limit()).isEqualTo(SpeedAdvice.Limit.PRACTICE);
        // Half-way between two rows by proportion, both ends stand at the rows' geometric mean.
        range(free(round(Math.sqrt(2))).turning(), Math.sqrt(2000 * 1200), Math.sqrt(2800 * 1800));
    }

    @Test
    void square_stock_turns_at_half_the_chart_by_its_flats_and_what_stays_square_goes_on_so() {
        range(free(square(2)).roughing(), 600, 900);
        assertThat(free(square(2)).roughing().diameter().mm()).isCloseTo(2 * INCH * Math.sqrt(2), within(1e-9));
        range(free(square(1)).roughing(), 1000, 1400);
        range(free(round(2)).roughing(), 600, 900);
        SpeedAdvice left = free(SQUARE_LEFT);
        assertThat(left.turning().diameter().mm()).isCloseTo(50 * Math.sqrt(2), within(1e-9));
        double power = Math.log(50 / INCH) / Math.log(2);
        double from = 0.5 * 2000 * Math.pow(0.6, power);
        double to = 0.5 * 2800 * Math.pow(1800 / 2800.0, power);
        range(left.turning(), from, to);
        range(left.roughing(), from, to);
    }

    @Test
    void a_thicker_round_than_the_square_sets_the_diameter_but_the_square_still_halves_it() {
        Pattern pattern = pattern(
                Section.ROUND,
                4 * INCH,
                new Cylinder(mm(100), mm(4 * INCH), Details.NONE),
                new Square(mm(60), mm(40), Details.NONE));
        range(free(pattern).turning(), 300, 450);
    }

    private static Pattern longer(double inches, double lengthInches) {
        Length length = mm(lengthInches * INCH);
        return new Pattern(
                "long",
                new Stock(Section.SQUARE, mm(inches * INCH), length),
                List.of(new Cylinder(length, mm(inches * INCH * 0.9), Details.NONE)));
    }

    @Test
    void long_work_turns_slower_than_the_chart_seven_feet_at_three_to_six_hundred() {
        SpeedAdvice post = free(longer(3, 84));
        range(post.turning(), 300, 600);
        assertThat(post.limit()).isEqualTo(SpeedAdvice.Limit.LENGTH);
        range(post.roughing(), 400, 600);
        range(free(longer(1.5, 84)).roughing(), 300, 600);
        // Half as long, twice as fast.
        range(free(longer(2, 42)).turning(), 600, 1200);
        // Where the chart's own range begins below what its length allows, it still begins at half of that.
        range(free(longer(2, 33.6)).turning(), 750, 1500);
        assertThat(free(longer(2, 25)).limit()).isEqualTo(SpeedAdvice.Limit.PRACTICE);
    }

    @Test
    void nothing_turns_faster_than_the_ceiling() {
        ShopRules usual = ShopRules.USUAL;
        SpeedChart fast = new SpeedChart(List.of(SpeedChart.Row.fastest(mm(10), Speed.ofRpm(9000))));
        SpeedAdvice held = SpeedAdvice.of(
                round(0.25),
                Lathe.USUAL.withRules(rules(fast, usual.ceiling(), 0.5, 0.5)),
                Optional.empty(),
                List.of());
        // Its length, 220 mm, held it first to 5,819 rpm.
        range(held.turning(), 600 * 2133.6 / 220 / 2, 3500);
        assertThat(held.limit()).isEqualTo(SpeedAdvice.Limit.CEILING);
        range(held.roughing(), 3000, 3500);
    }

    private static ShopRules rules(SpeedChart chart, Speed ceiling, double outOfRound, double whip) {
        ShopRules usual = ShopRules.USUAL;
        return new ShopRules(
                chart,
                ceiling,
                outOfRound,
                usual.longWork(),
                whip,
                usual.steadyFrom(),
                usual.roughingGouge(),
                usual.pencil(),
                usual.parting(),
                usual.overhang(),
                usual.centring(),
                usual.strengthMargin(),
                usual.thrustShare(),
                usual.thrustMost(),
                usual.shapes(),
                usual.slender(),
                usual.curves());
    }

    @Test
    void each_rule_can_be_set() {
        SpeedChart own = new SpeedChart(List.of(
                SpeedChart.Row.fastest(mm(50), Speed.ofRpm(900)), SpeedChart.Row.fastest(mm(25), Speed.ofRpm(1800))));
        Lathe lathe = Lathe.USUAL.withRules(rules(own, Speed.ofRpm(1700), 0.25, 0.4));
        Pattern fifty = pattern(Section.ROUND, 50, new Cylinder(mm(200), mm(50), Details.NONE));
        SpeedAdvice advice = SpeedAdvice.of(fifty, lathe, Optional.of(stage(90_000)), List.of(stage(90_000)));
        range(advice.turning(), 600, 900);
        range(advice.roughing(), 150, 225);
        Pattern ten = pattern(Section.ROUND, 10, new Cylinder(mm(200), mm(10), Details.NONE));
        range(SpeedAdvice.of(ten, lathe, Optional.empty(), List.of()).turning(), 1200, 1700);
        assertThat(SpeedAdvice.of(fifty, lathe, Optional.of(stage(90_000)), List.of(stage(2000)))
                        .turning()
                        .to()
                        .rpm())
                .isCloseTo(800, within(1e-9));
        assertThatThrownBy(() -> rules(own, Speed.ofRpm(1700), 1.01, 0.4)).hasMessageContaining("outOfRound");
        assertThatThrownBy(() -> rules(own, Speed.ofRpm(1700), 0.5, 0)).hasMessageContaining("whipShare");
    }

    @Test
    void a_chart_that_contradicts_itself_is_told_row_by_row() {
        SpeedChart.Row thin = SpeedChart.Row.fastest(mm(25), Speed.ofRpm(2000));
        SpeedChart.Row thick = SpeedChart.Row.fastest(mm(50), Speed.ofRpm(2500));
        assertThat(SpeedChart.problems("chart", List.of(thin, thin)))
                .singleElement()
                .satisfies(each -> assertThat(each.line()).startsWith("chart 2: its diameter is there twice"));
        assertThat(SpeedChart.problems("chart", List.of(thin, thick)))
                .singleElement()
                .satisfies(each -> assertThat(each.line()).startsWith("chart 2: thicker work would turn faster"));
        assertThat(SpeedChart.problems("chart", List.of(thick, thin))).hasSize(1);
        assertThat(SpeedChart.problems("chart", SpeedChart.USUAL.rows())).isEmpty();
        assertThatThrownBy(() -> new SpeedChart(List.of())).hasMessageContaining("at least one row");
    }

    /** The blank of 45 mm: the chart by its flats, half of it. */
    private static final double ROUGH_TO = 0.5 * 2800 * Math.pow(1800 / 2800.0, Math.log(45 / INCH) / Math.log(2));

    private static final double TURN_TO = 2800 * Math.pow(1800 / 2800.0, Math.log(40 / INCH) / Math.log(2));

    private static final double TURN_FROM = 2000 * Math.pow(0.6, Math.log(40 / INCH) / Math.log(2));

    @Test
    void roughing_is_held_to_half_the_natural_speed_of_the_blank_and_of_the_cylinder_it_becomes_alone() {
        SpeedAdvice advice = advice(ROUND, Lathe.USUAL, 1600, 90_000);
        assertThat(advice.roughing().to().rpm()).isEqualTo(800);
        assertThat(advice.limit()).as("the blank does not hold the turning").isEqualTo(SpeedAdvice.Limit.PRACTICE);
        range(advice.turning(), TURN_FROM, TURN_TO);
        assertThat(advice(ROUND, Lathe.USUAL, 90_000, 1500, 90_000)
                        .roughing()
                        .to()
                        .rpm())
                .isEqualTo(750);
        // Nothing is left of the chart's half under 200: from half of that.
        range(advice(ROUND, Lathe.USUAL, 400, 90_000).roughing(), 100, 200);
        // A stiff blank leaves common practice as it is, whatever the finished piece does.
        assertThat(advice(ROUND, Lathe.USUAL, 90_000, 90_000, 500)
                        .roughing()
                        .to()
                        .rpm())
                .isCloseTo(ROUGH_TO, within(1e-9));
    }

    @Test
    void turning_is_held_to_half_the_natural_speed_of_the_weakest_later_stage() {
        SpeedAdvice advice = advice(ROUND, Lathe.USUAL, 500, 9000, 3600, 7000);
        assertThat(advice.whipLimit()).contains(Speed.ofRpm(1800));
        range(advice.turning(), TURN_FROM, 1800);
        assertThat(advice.limit()).isEqualTo(SpeedAdvice.Limit.WHIP);
        assertThat(advice.roughing().to().rpm()).isEqualTo(250);
    }

    @Test
    void a_natural_speed_of_just_twice_common_practice_holds_nothing() {
        double practice = free(ROUND).turning().to().rpm();
        assertThat(advice(ROUND, Lathe.USUAL, 90_000, 2 * practice).limit()).isEqualTo(SpeedAdvice.Limit.PRACTICE);
        assertThat(advice(ROUND, Lathe.USUAL, 90_000, 2 * practice * 0.999).limit())
                .isEqualTo(SpeedAdvice.Limit.WHIP);
        assertThat(advice(ROUND, lathe(Optional.of(practice)), 90_000, 90_000).limit())
                .isEqualTo(SpeedAdvice.Limit.PRACTICE);
        assertThat(advice(ROUND, lathe(Optional.of(practice * 0.999)), 90_000, 90_000)
                        .limit())
                .isEqualTo(SpeedAdvice.Limit.LATHE);
    }

    @Test
    void the_lathe_holds_both_ranges_by_what_it_is_allowed_or_by_its_fastest_step() {
        SpeedAdvice told = advice(ROUND, lathe(Optional.of(700.0), 500, 900, 3000), 90_000, 90_000);
        assertThat(told.limit()).isEqualTo(SpeedAdvice.Limit.LATHE);
        range(told.turning(), 350, 700);
        assertThat(told.roughing().to().rpm()).isEqualTo(700);
        SpeedAdvice steps = advice(ROUND, lathe(Optional.empty(), 1900, 500, 1000), 90_000, 90_000);
        range(steps.turning(), TURN_FROM, 1900);
        assertThat(steps.limit()).isEqualTo(SpeedAdvice.Limit.LATHE);
        SpeedAdvice slower = advice(ROUND, lathe(Optional.of(1600.0)), 90_000, 3600);
        assertThat(slower.turning().to().rpm()).isEqualTo(1600);
        assertThat(slower.limit()).as("slower than the whip's 1800").isEqualTo(SpeedAdvice.Limit.LATHE);
        assertThat(advice(ROUND, lathe(Optional.of(1900.0)), 90_000, 3600).limit())
                .isEqualTo(SpeedAdvice.Limit.WHIP);
    }

    @Test
    void the_steps_within_each_range_are_named() {
        SpeedAdvice advice = advice(ROUND, lathe(Optional.of(500.0), 160, 260, 290, 400), 90_000, 90_000, 600);
        range(advice.roughing(), 250, 500);
        range(advice.turning(), 150, 300);
        assertThat(advice.roughingSteps()).containsExactly(Speed.ofRpm(260), Speed.ofRpm(290), Speed.ofRpm(400));
        assertThat(advice.turningSteps()).containsExactly(Speed.ofRpm(160), Speed.ofRpm(260), Speed.ofRpm(290));
    }

    /** Out of round never by common practice faster than round: half of the chart, for a blank no thinner than the piece. */
    @Test
    void common_practice_is_never_faster_out_of_round_than_round() {
        for (double inches = 0.25; inches < 6; inches += 0.25) {
            for (double length = 6; length < 100; length += 7) {
                SpeedAdvice advice = free(longer(inches, length));
                assertThat(advice.roughing().to())
                        .isLessThanOrEqualTo(advice.turning().to());
            }
        }
    }

    @Test
    void a_lathes_step_at_either_end_of_a_range_is_within_it() {
        SpeedRange range = new SpeedRange(Speed.ofRpm(500), Speed.ofRpm(900), mm(40));
        assertThat(range.holds(Speed.ofRpm(500))).isTrue();
        assertThat(range.holds(Speed.ofRpm(900))).isTrue();
        assertThat(range.holds(Speed.ofRpm(499.9))).isFalse();
        assertThat(range.holds(Speed.ofRpm(900.1))).isFalse();
        assertThatThrownBy(() -> new SpeedRange(Speed.ofRpm(900), Speed.ofRpm(899), mm(40)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("900");
        assertThat(new SpeedRange(Speed.ofRpm(900), Speed.ofRpm(900), mm(40)).holds(Speed.ofRpm(900)))
                .isTrue();
    }

    @Test
    void a_limit_at_the_slow_end_leaves_that_speed_alone_and_one_below_it_half_of_itself() {
        SpeedRange range = new SpeedRange(Speed.ofRpm(500), Speed.ofRpm(900), mm(40));
        range(range.limited(Speed.ofRpm(1000)), 500, 900);
        range(range.limited(Speed.ofRpm(700)), 500, 700);
        range(range.limited(Speed.ofRpm(500)), 500, 500);
        range(range.limited(Speed.ofRpm(400)), 200, 400);
        assertThat(range.limited(Speed.ofRpm(400)).diameter()).isEqualTo(mm(40));
    }

    /** π · 40 mm · 1000 rpm = 2.094 m/s = 412 ft/min; twice that at 2000. */
    @Test
    void the_surface_speed_is_told_in_both_units() {
        assertThat(new SpeedRange(Speed.ofRpm(1000), Speed.ofRpm(2000), mm(40)).surface())
                .isEqualTo("2.1 to 4.2 m/s, 412 to 825 ft/min");
    }

    @Test
    void the_workings_say_what_held_it() {
        String held = advice(ROUND, Lathe.USUAL, 90_000, 3600)
                .working(ShopRules.USUAL)
                .toString();
        assertThat(held)
                .contains(
                        "12.7 mm 3000 to 3500 rpm, 25.4 mm 2000 to 2800 rpm, 50.8 mm 1200 to 1800 rpm",
                        "50 % of it out of round or with square parts",
                        "no faster than 600 rpm x 2133.6 mm / length and than 3500 rpm",
                        "held to 50 % of the weakest stage's first natural speed, 1800 rpm",
                        "set by the piece's own whip");
        assertThat(free(ROUND).working(ShopRules.USUAL).toString())
                .contains("whip not known, so not held by it", "set by common practice for this diameter");
    }
}
