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

    @Test
    void square_stock_that_stays_square_anywhere_turns_at_half_speed_by_its_corners() {
        SpeedAdvice square = SpeedAdvice.of(SQUARE_LEFT, Lathe.USUAL, Optional.empty(), List.of());
        double corners = 50 * Math.sqrt(2) / INCH;
        assertThat(square.turning().diameter().mm()).isCloseTo(50 * Math.sqrt(2), within(1e-9));
        range(square.turning(), 1500 / corners, 3000 / corners);
        range(square.roughing(), 1500 / corners, 3000 / corners);
        SpeedAdvice round = SpeedAdvice.of(ROUND, Lathe.USUAL, Optional.empty(), List.of());
        range(round.turning(), 3000 / (40 / INCH), 6000 / (40 / INCH));
        range(round.roughing(), 1500 / (45 * Math.sqrt(2) / INCH), 3000 / (45 * Math.sqrt(2) / INCH));
        Pattern roundStock = pattern(Section.ROUND, 45, new Cylinder(mm(200), mm(40), Details.NONE));
        SpeedAdvice round45 = SpeedAdvice.of(roundStock, Lathe.USUAL, Optional.empty(), List.of());
        assertThat(round45.roughing().diameter()).isEqualTo(mm(45));
        range(round45.roughing(), 1500 / (45 / INCH), 3000 / (45 / INCH));
    }

    @Test
    void a_thicker_round_than_the_squares_corners_sets_the_diameter_but_the_square_still_halves_it() {
        Pattern pattern = pattern(
                Section.ROUND,
                80,
                new Cylinder(mm(100), mm(78), Details.NONE),
                new Square(mm(60), mm(40), Details.NONE));
        SpeedAdvice advice = SpeedAdvice.of(pattern, Lathe.USUAL, Optional.empty(), List.of());
        range(advice.turning(), 1500 / (78 / INCH), 3000 / (78 / INCH));
    }

    @Test
    void roughing_is_held_to_half_the_blanks_own_natural_speed() {
        SpeedAdvice advice = advice(ROUND, Lathe.USUAL, 1600, 90_000);
        assertThat(advice.roughing().to().rpm()).isEqualTo(800);
        assertThat(advice.limit()).as("the blank does not hold the turning").isEqualTo(SpeedAdvice.Limit.PRACTICE);
        assertThat(advice.turning().to().rpm()).isCloseTo(6000 / (40 / INCH), within(1e-9));
        // Nothing is left of 599 to 1197 rpm under 200: from half of that.
        range(advice(ROUND, Lathe.USUAL, 400, 90_000).roughing(), 100, 200);
        // A stiff blank leaves common practice as it is.
        range(
                advice(ROUND, Lathe.USUAL, 90_000, 90_000).roughing(),
                1500 / (45 * Math.sqrt(2) / INCH),
                3000 / (45 * Math.sqrt(2) / INCH));
    }

    @Test
    void turning_is_held_to_half_the_natural_speed_of_the_weakest_later_stage() {
        SpeedAdvice advice = advice(ROUND, Lathe.USUAL, 500, 9000, 5000, 7000);
        assertThat(advice.whipLimit()).contains(Speed.ofRpm(2500));
        range(advice.turning(), 3000 / (40 / INCH), 2500);
        assertThat(advice.limit()).isEqualTo(SpeedAdvice.Limit.WHIP);
        assertThat(advice.roughing().to().rpm()).isEqualTo(250);
    }

    @Test
    void a_natural_speed_of_just_twice_common_practice_holds_nothing() {
        double practice = SpeedAdvice.of(ROUND, Lathe.USUAL, Optional.empty(), List.of())
                .turning()
                .to()
                .rpm();
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
        SpeedAdvice steps = advice(ROUND, lathe(Optional.empty(), 2000, 500, 1000), 90_000, 90_000);
        range(steps.turning(), 3000 / (40 / INCH), 2000);
        assertThat(steps.limit()).isEqualTo(SpeedAdvice.Limit.LATHE);
        SpeedAdvice slower = advice(ROUND, lathe(Optional.of(2000.0)), 90_000, 5000);
        assertThat(slower.turning().to().rpm()).isEqualTo(2000);
        assertThat(slower.limit()).as("slower than the whip's 2500").isEqualTo(SpeedAdvice.Limit.LATHE);
        assertThat(advice(ROUND, lathe(Optional.of(2600.0)), 90_000, 5000).limit())
                .isEqualTo(SpeedAdvice.Limit.WHIP);
    }

    @Test
    void a_slow_lathe_sets_the_slow_end_of_roughing_before_the_whip_sets_its_fast_end() {
        SpeedAdvice advice = advice(ROUND, lathe(Optional.of(500.0), 260, 290, 400), 90_000, 600);
        range(advice.roughing(), 250, 300);
        range(advice.turning(), 150, 300);
        assertThat(advice.roughingSteps()).containsExactly(Speed.ofRpm(260), Speed.ofRpm(290));
        assertThat(advice.turningSteps()).containsExactly(Speed.ofRpm(260), Speed.ofRpm(290));
    }

    @Test
    void it_is_never_turned_faster_out_of_round_than_round() {
        SpeedAdvice advice = advice(ROUND, Lathe.USUAL, 90_000, 600);
        range(advice.turning(), 150, 300);
        assertThat(advice.roughing().to().rpm()).isEqualTo(300);
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
        String held = advice(ROUND, Lathe.USUAL, 90_000, 5000).working().toString();
        assertThat(held)
                .contains(
                        "76200 to 152400 mm rpm",
                        "40.0 mm round and 63.6 mm in the rough",
                        "held to 50 % of the weakest stage's first natural speed, 2500 rpm",
                        "set by the piece's own whip");
        String free = SpeedAdvice.of(ROUND, Lathe.USUAL, Optional.empty(), List.of())
                .working()
                .toString();
        assertThat(free).contains("whip not known, so not held by it", "set by common practice for this diameter");
    }
}
