package turnalike.turning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Pattern;
import turnalike.pattern.Square;
import turnalike.pattern.Stock;
import turnalike.pattern.Warning;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;
import turnalike.units.Working;
import turnalike.wood.Rupture;
import turnalike.wood.Stiffness;

/** Which caution appears on which side of its threshold, with the figures that it names. */
class CautionsTest {
    private static final Pattern ROD = new Pattern(
            "rod",
            new Stock(Section.SQUARE, mm(45), mm(400)),
            List.of(new Cylinder(mm(200), mm(40), Details.NONE), new Square(mm(200), mm(45), Details.NONE)));

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Stage stage(String name, double bucklingN) {
        return new Stage(
                name,
                Speed.ofRpm(9000),
                Speed.ofRpm(36_000),
                Force.ofNewtons(bucklingN),
                new Whip.Sag(mm(200), mm(0.01)));
    }

    private static Whip whip(double sagMm, double steadyMm, boolean thickened) {
        return new Whip(
                Speed.ofRpm(9000),
                Speed.ofRpm(36_000),
                List.of(new Whip.Sag(mm(50), mm(sagMm / 2)), new Whip.Sag(mm(150), mm(sagMm))),
                Force.ofNewtons(20),
                Optional.empty(),
                Supports.BETWEEN_CENTRES,
                Force.ofNewtons(1000),
                mm(steadyMm),
                40,
                1e-5,
                thickened);
    }

    private static SpeedAdvice speeds(SpeedAdvice.Limit limit, List<Speed> turningSteps) {
        return speeds(limit, List.of(Speed.ofRpm(500)), turningSteps);
    }

    private static SpeedAdvice speeds(SpeedAdvice.Limit limit, List<Speed> roughingSteps, List<Speed> turningSteps) {
        return new SpeedAdvice(
                new SpeedRange(Speed.ofRpm(300), Speed.ofRpm(600), mm(60)),
                new SpeedRange(Speed.ofRpm(1000), Speed.ofRpm(2000), mm(40)),
                Optional.empty(),
                limit,
                roughingSteps,
                turningSteps);
    }

    private static Lathe lathe(Optional<Double> tailstockN, double... steps) {
        return new Lathe(
                Lathe.USUAL_CUTTING,
                Arrays.stream(steps).mapToObj(Speed::ofRpm).toList(),
                Optional.empty(),
                tailstockN.map(Force::ofNewtons));
    }

    private static final Optional<Rupture> ASH =
            Optional.of(new Rupture(106, new Working("Strength", "as printed", "table", "average")));

    private static List<String> said(Lathe lathe, Optional<Whip> whip, List<Stage> stages, SpeedAdvice speeds) {
        return said(ASH, lathe, whip, stages, speeds);
    }

    private static List<String> said(
            Optional<Rupture> rupture, Lathe lathe, Optional<Whip> whip, List<Stage> stages, SpeedAdvice speeds) {
        TurningProblem work = Works.of(ROD, Optional.of(Stiffness.given(11_000)), rupture, lathe);
        List<Warning> cautions = Cautions.of(work, whip, stages, speeds);
        return cautions.stream().map(each -> each.where() + ": " + each.what()).toList();
    }

    private static final SpeedAdvice FREE = speeds(SpeedAdvice.Limit.PRACTICE, List.of(Speed.ofRpm(1500)));

    private static List<String> tailstock(double forceN, double... bucklingN) {
        List<Stage> stages = Arrays.stream(bucklingN)
                .mapToObj(n -> stage("stage of " + n, n))
                .toList();
        return said(lathe(Optional.of(forceN)), Optional.of(whip(0.01, 100, false)), stages, FREE).stream()
                .filter(each -> each.startsWith("tailstock"))
                .toList();
    }

    @Test
    void nothing_but_the_general_caution_is_said_of_a_stout_round_piece() {
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.01, 100, false)), List.of(stage("blank", 9e9)), FREE))
                .singleElement()
                .asString()
                .startsWith("speed: the figures suppose sound, straight-grained wood")
                .contains("start slow, stand aside, wear a face shield", "down a step at the first shake");
    }

    @Test
    void a_wood_of_unknown_strength_is_told_since_nothing_warns_of_its_necks() {
        assertThat(said(
                        Optional.empty(),
                        Lathe.USUAL,
                        Optional.of(whip(0.01, 100, false)),
                        List.of(stage("blank", 9e9)),
                        FREE))
                .hasSize(2)
                .first()
                .asString()
                .startsWith("strength: not reckoned")
                .contains("thinnest parts last, with a light hand");
    }

    @Test
    void a_tailstock_force_is_told_above_a_quarter_of_the_weakest_stages_buckling_load() {
        assertThat(tailstock(250, 1000)).isEmpty();
        assertThat(tailstock(250)).isEmpty();
        assertThat(tailstock(251, 1000))
                .singleElement()
                .asString()
                .contains("251 N is 25 % of what bows the piece out (stage of 1000.0)", "about 1.3-fold");
        assertThat(tailstock(900, 9000, 1000, 5000))
                .singleElement()
                .asString()
                .contains("900 N is 90 %", "(stage of 1000.0)", "about 10.0-fold");
    }

    @Test
    void a_tailstock_force_at_the_buckling_load_or_above_bows_the_piece_by_itself() {
        assertThat(tailstock(999, 1000)).singleElement().asString().contains("every sag grows");
        assertThat(tailstock(1000, 1000))
                .singleElement()
                .asString()
                .contains("1000 N bows this piece out by itself (stage of 1000.0: 1000 N); ease the tailstock");
        assertThat(tailstock(1500, 4000, 1000)).singleElement().asString().contains("1500 N bows", "1000 N)");
    }

    @Test
    void a_sag_is_told_when_twice_of_it_is_more_than_the_tolerance_of_the_diameter() {
        // The tolerance of a diameter in these works is 0.4 mm.
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.2, 100, false)), List.of(), FREE))
                .noneMatch(each -> each.startsWith("bending"));
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.21, 100, false)), List.of(), FREE))
                .filteredOn(each -> each.startsWith("bending"))
                .singleElement()
                .asString()
                .contains(
                        "20 N push the finished piece 0.21 mm aside at 150 mm",
                        "diameter 0.42 mm too large there",
                        "the 0.4 mm allowed",
                        "steady rest at about 100 mm");
    }

    @Test
    void the_usual_force_is_told_to_be_heavy_on_what_is_thinner_than_a_pencil() {
        assertThat(force(2, Lathe.USUAL_CUTTING))
                .singleElement()
                .asString()
                .startsWith("20 N is a light cut on stout work, but a heavy one")
                .contains("2 mm (5/64 in) at its thinnest", "turning.force_n");
        assertThat(force(7, Lathe.USUAL_CUTTING)).isEmpty();
        assertThat(force(2, Force.ofNewtons(4))).isEmpty();
    }

    private static List<String> force(double thinnestMm, Force cutting) {
        Pattern spire = new Pattern(
                "spire",
                new Stock(Section.SQUARE, mm(45), mm(60)),
                List.of(
                        new Cylinder(mm(20), mm(30), Details.NONE),
                        new Cylinder(mm(40), mm(thinnestMm), Details.NONE)));
        Lathe lathe = new Lathe(cutting, List.of(), Optional.empty(), Optional.empty());
        TurningProblem work = Works.of(spire, Optional.of(Stiffness.given(11_000)), lathe);
        return Cautions.of(work, Optional.of(whip(0.01, 30, false)), List.of(), FREE).stream()
                .filter(each -> each.where().equals("force"))
                .map(Warning::what)
                .toList();
    }

    @Test
    void figures_of_a_piece_reckoned_thicker_than_it_is_are_not_to_be_trusted() {
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.01, 100, true)), List.of(), FREE))
                .anyMatch(each -> each.contains("reckoned as that; do not trust these figures"));
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.01, 100, false)), List.of(), FREE))
                .noneMatch(each -> each.contains("do not trust"));
    }

    @Test
    void a_steady_rest_that_would_run_on_a_square_is_to_be_set_elsewhere() {
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.01, 300, false)), List.of(), FREE))
                .filteredOn(each -> each.startsWith("steady rest"))
                .singleElement()
                .asString()
                .contains("300 mm", "on a square, where none can run", "nearest round stretch");
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.01, 100, false)), List.of(), FREE))
                .noneMatch(each -> each.startsWith("steady rest"));
    }

    /** Only a piece that was roughed faster than it may turn is slowed down; at one speed throughout there is nothing to do. */
    @Test
    void to_go_slower_once_it_is_round_is_said_where_roughing_may_be_faster() {
        assertThat(said(Lathe.USUAL, Optional.empty(), List.of(), roughedAt(2001)))
                .anyMatch(each -> each.contains("once it is round go down to 2000 rpm or less"));
        assertThat(said(Lathe.USUAL, Optional.empty(), List.of(), roughedAt(2000)))
                .noneMatch(each -> each.contains("once it is round"));
    }

    private static SpeedAdvice roughedAt(double rpm) {
        SpeedAdvice usual = speeds(SpeedAdvice.Limit.PRACTICE, List.of());
        SpeedRange roughing = new SpeedRange(Speed.ofRpm(300), Speed.ofRpm(rpm), mm(60));
        return new SpeedAdvice(roughing, usual.turning(), usual.whipLimit(), usual.limit(), List.of(), List.of());
    }

    /** A rest does not run on a bead's crown. */
    @Test
    void a_steady_rest_that_would_run_on_a_detail_says_so_and_is_silent_beside_it() {
        Pattern beaded = new Pattern(
                "beaded",
                new Stock(Section.SQUARE, mm(45), mm(430)),
                List.of(
                        new Cylinder(mm(190), mm(40), Details.NONE),
                        new Bead(mm(20), mm(36), mm(42), Details.NONE),
                        new Cylinder(mm(190), mm(40), Details.NONE)));
        assertThat(of(beaded, whip(0.01, 200, false), Lathe.USUAL))
                .filteredOn(each -> each.startsWith("steady rest"))
                .singleElement()
                .asString()
                .contains("about 200 mm, is on member 2 (bead)", "cut that detail last");
        assertThat(of(beaded, whip(0.01, 150, false), Lathe.USUAL)).noneMatch(each -> each.startsWith("steady rest"));
    }

    private static List<String> of(Pattern pattern, Whip whip, Lathe lathe) {
        TurningProblem work = Works.of(pattern, Optional.of(Stiffness.given(11_000)), ASH, lathe);
        return Cautions.of(work, Optional.of(whip), List.of(), FREE).stream()
                .map(each -> each.where() + ": " + each.what())
                .toList();
    }

    /** A pin of 5 mm at the headstock; turned round, the spare length is driven. */
    @Test
    void an_end_too_thin_to_be_driven_is_told_of() {
        Pattern pin = pin(412, 5);
        Lathe turned = Lathe.USUAL.withHeld(new Held(Held.By.CENTRES, Held.At.END, true));
        assertThat(of(pin, whip(0.01, 200, false), Lathe.USUAL))
                .anyMatch(each -> each.startsWith("holding: its start end is driven and only 5 mm"));
        assertThat(of(pin, whip(0.01, 200, false), turned)).noneMatch(each -> each.contains("is driven"));
        assertThat(of(pin(400, 5), whip(0.01, 200, false), turned))
                .anyMatch(each -> each.startsWith("holding: its far end is driven"));
        assertThat(of(pin(412, 7), whip(0.01, 200, false), Lathe.USUAL)).noneMatch(each -> each.startsWith("holding"));
    }

    /** The same pin's other end: what the tailstock's centre is wound into. */
    @Test
    void an_end_too_thin_for_the_tailstocks_centre_is_told_of() {
        Lathe turned = Lathe.USUAL.withHeld(new Held(Held.By.CENTRES, Held.At.END, true));
        assertThat(of(pin(412, 5), whip(0.01, 200, false), turned))
                .filteredOn(each -> each.startsWith("holding"))
                .singleElement()
                .asString()
                .startsWith("holding: its start end, at the tailstock, is only 5 mm")
                .contains("a centre splits that");
        assertThat(of(pin(412, 7), whip(0.01, 200, false), turned)).noneMatch(each -> each.startsWith("holding"));
        assertThat(of(pin(412, 5), whip(0.01, 200, false), Lathe.USUAL))
                .as("the spare length stands at the tailstock")
                .noneMatch(each -> each.contains("at the tailstock"));
        assertThat(of(pin(400, 5), whip(0.01, 200, false), Lathe.USUAL))
                .anyMatch(each -> each.startsWith("holding: its far end, at the tailstock"));
    }

    private static Pattern pin(double stockMm, double endMm) {
        return new Pattern(
                "pin",
                new Stock(Section.SQUARE, mm(45), mm(stockMm)),
                List.of(
                        new Cylinder(mm(10), mm(endMm), Details.NONE),
                        new Cylinder(mm(380), mm(40), Details.NONE),
                        new Cylinder(mm(10), mm(endMm), Details.NONE)));
    }

    @Test
    void the_pieces_own_whip_is_named_when_it_holds_the_speed_and_only_then() {
        SpeedAdvice held = speeds(SpeedAdvice.Limit.WHIP, List.of(Speed.ofRpm(1500)));
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.01, 100, false)), List.of(), held))
                .first()
                .asString()
                .startsWith("speed: held to 2000 rpm by the piece's own whip")
                .contains("a steady rest lets it be turned with less shake");
        SpeedAdvice lathe = speeds(SpeedAdvice.Limit.LATHE, List.of(Speed.ofRpm(1500)));
        assertThat(said(Lathe.USUAL, Optional.of(whip(0.01, 100, false)), List.of(), lathe))
                .noneMatch(each -> each.contains("held to"));
    }

    @Test
    void a_piece_that_bears_less_finished_than_roughed_is_to_be_slowed_down_once_round() {
        SpeedRange rough = new SpeedRange(Speed.ofRpm(300), Speed.ofRpm(600), mm(60));
        for (double most : new double[] {599, 600}) {
            SpeedAdvice speeds = new SpeedAdvice(
                    rough,
                    new SpeedRange(Speed.ofRpm(200), Speed.ofRpm(most), mm(40)),
                    Optional.empty(),
                    SpeedAdvice.Limit.PRACTICE,
                    List.of(),
                    List.of());
            assertThat(said(Lathe.USUAL, Optional.of(whip(0.01, 100, false)), List.of(), speeds).stream()
                            .filter(each -> each.contains("go down to 590 rpm or less before the sizing cuts")))
                    .hasSize(most < 600 ? 1 : 0);
        }
    }

    private static List<String> steps(List<Double> within, double... steps) {
        SpeedAdvice speeds = speeds(
                SpeedAdvice.Limit.PRACTICE, within.stream().map(Speed::ofRpm).toList());
        return said(lathe(Optional.empty(), steps), Optional.of(whip(0.01, 100, false)), List.of(), speeds).stream()
                .filter(each -> each.startsWith("lathe steps"))
                .toList();
    }

    @Test
    void a_lathe_without_a_step_in_range_is_told_to_take_the_next_slower_or_has_none() {
        assertThat(steps(List.of(1500.0), 500, 1500)).isEmpty();
        assertThat(steps(List.of(), 500, 5000))
                .containsExactly("lathe steps: no step lies from 1000 to 2000 rpm; take the next slower one, 500");
        assertThat(steps(List.of(), 2000.5))
                .hasSize(2)
                .first()
                .asString()
                .contains("every step is faster than 2000 rpm");
        // A slowest step of just the fastest speed is not faster than it.
        assertThat(steps(List.of(), 2000)).first().asString().contains("take the next slower one");
        assertThat(steps(List.of())).isEmpty();
    }

    @Test
    void a_lathe_without_a_step_for_roughing_is_told_the_next_slower_one() {
        SpeedAdvice none = speeds(SpeedAdvice.Limit.PRACTICE, List.of(), List.of(Speed.ofRpm(1500)));
        assertThat(said(
                        lathe(Optional.empty(), 200, 250, 601, 1500),
                        Optional.of(whip(0.01, 100, false)),
                        List.of(),
                        none))
                .contains("lathe steps: for roughing no step lies from 300 to 600 rpm; take the next slower one, 250");
        assertThat(said(lathe(Optional.empty(), 601, 1500), Optional.of(whip(0.01, 100, false)), List.of(), none))
                .noneMatch(each -> each.contains("for roughing no step"));
        assertThat(said(lathe(Optional.empty()), Optional.of(whip(0.01, 100, false)), List.of(), none))
                .noneMatch(each -> each.contains("for roughing no step"));
    }

    /** With a square left in it a piece is roughed and turned within one range, told in the plan's own figures. */
    @Test
    void one_range_for_both_is_told_once_and_as_the_plan_tells_it() {
        Pattern pommel = new Pattern(
                "leg",
                new Stock(Section.SQUARE, Length.ofMm(90), Length.ofMm(700)),
                List.of(
                        new Square(Length.ofMm(140), Length.ofMm(90), Details.NONE),
                        new Cylinder(Length.ofMm(540), Length.ofMm(60), Details.NONE)));
        Turning turning = Turning.of(
                Works.of(pommel, Optional.of(Stiffness.given(11_000)), lathe(Optional.empty(), 300, 550, 850)));
        assertThat(turning.cautions().stream()
                        .filter(each -> each.where().equals("lathe steps"))
                        .map(Warning::what))
                .containsExactly("no step lies from %s to %s rpm; take the next slower one, 300"
                        .formatted(
                                turning.speeds().turning().from().about(),
                                turning.speeds().turning().to().noFaster()));
    }

    @Test
    void a_lathe_whose_slowest_step_is_above_the_roughing_speed_is_told() {
        assertThat(steps(List.of(1500.0), 600, 1500)).isEmpty();
        assertThat(steps(List.of(1500.0), 601, 1500))
                .containsExactly("lathe steps: the slowest step is above 600 rpm, the most for roughing; knock the"
                        + " corners off first");
    }

    @Test
    void without_a_stiffness_the_piece_is_to_be_taken_for_one_that_whips() {
        assertThat(said(lathe(Optional.of(5000.0)), Optional.empty(), List.of(stage("blank", 10)), FREE))
                .hasSize(3)
                .satisfies(told -> assertThat(told.get(0))
                        .startsWith("whip: not reckoned")
                        .contains("take a slim piece for one that whips"))
                .satisfies(told -> assertThat(told.get(1)).startsWith("strength: not reckoned"));
    }
}
