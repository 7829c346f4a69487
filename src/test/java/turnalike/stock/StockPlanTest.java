package turnalike.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Section;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.LengthText;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

class StockPlanTest {
    private static Length inches(String text) {
        return LengthText.parse(text, UnitSystem.INCH).get();
    }

    private static StockPlan plan(Section section, String size, String length, String run) {
        Blank blank = new Blank(section, inches(size), inches(length));
        return new StockPlan(
                new BlankNeed(blank, inches(run), false),
                Allowances.usual(UnitSystem.INCH),
                Spares.of(12, 0.05),
                Density.ofKgPerM3(600));
    }

    @Test
    void a_rough_blank_is_the_blank_and_its_allowances() {
        StockPlan plan = plan(Section.SQUARE, "1 3/4", "20", "19 1/2");
        assertThat(plan.finished().text(UnitSystem.INCH)).isEqualTo("1 3/4 in square, 20 in long");
        assertThat(plan.rough().text(UnitSystem.INCH)).isEqualTo("1 7/8 in square, 21 in long");
        assertThat(plan.need().waste().format(UnitSystem.INCH)).isEqualTo("1/2 in");
    }

    @Test
    void a_round_blank_is_sawn_square() {
        StockPlan plan = plan(Section.ROUND, "1 3/4", "20", "20");
        assertThat(plan.rough().section()).isEqualTo(Section.SQUARE);
        assertThat(plan.workings(UnitSystem.INCH).get(1).how()).contains("sawn square");
        assertThat(plan.finished().timber().mm3()).isEqualTo(Math.PI / 4 * 44.45 * 44.45 * 508, within(1e-6));
    }

    /** 144 in³ = 2359.737 cm³ (COMPUTED in our notes from the definition; VERIFIED second-hand, S16). */
    @Test
    void a_board_foot_is_a_foot_square_an_inch_thick() {
        Timber board = new Timber(304.8 * 304.8 * 25.4);
        assertThat(board.boardFeet()).isEqualTo(1, within(1e-15));
        assertThat(Timber.MM3_PER_BOARD_FOOT).isEqualTo(2359737.216, within(1e-6));
        assertThat(board.cubicMetres()).isEqualTo(0.002359737216, within(1e-15));
    }

    /** 1 7/8 x 1 7/8 x 21 = 73.828125 in³ each; 14 of them are 7.177734375 board feet. */
    @Test
    void the_timber_is_that_of_all_rough_blanks() {
        StockPlan plan = plan(Section.SQUARE, "1 3/4", "20", "20");
        assertThat(plan.spares().blanks()).isEqualTo(14);
        assertThat(plan.timber().boardFeet()).isEqualTo(14 * 73.828125 / 144, within(1e-12));
        assertThat(plan.timber().cubicMetres()).isEqualTo(7.177734375 * 0.002359737216, within(1e-14));
        assertThat(plan.roughMass().grams()).isEqualTo(73.828125 * 16.387064 * 0.6, within(1e-9));
    }

    @Test
    void every_figure_has_its_working_in_order() {
        List<Working> workings = plan(Section.SQUARE, "1 3/4", "20", "20").workings(UnitSystem.INCH);
        assertThat(workings)
                .extracting(Working::figure)
                .containsExactly("Blank", "Rough blank", "Corner cut", "Spares", "Timber", "Rough blank's weight");
        assertThat(workings.get(1).how()).contains("1/16 in").contains("1/2 in");
        assertThat(workings.get(1).source()).isEqualTo(Working.COMMON_PRACTICE);
        assertThat(workings.get(4).how()).contains("14 rough blanks").contains("7.18 board feet");
        assertThat(workings.get(4).sureness()).contains("surface measure");
        assertThat(workings.get(5).how()).contains("726 g"); // 1209.83 cm3 x 0.6 = 725.9 g
    }

    @Test
    void square_members_keep_their_corners() {
        Blank blank = new Blank(Section.SQUARE, inches("1 3/4"), inches("20"));
        StockPlan plan = new StockPlan(
                new BlankNeed(blank, inches("20"), true),
                Allowances.usual(UnitSystem.INCH),
                Spares.of(4, 0.05),
                Density.ofKgPerM3(600));
        assertThat(plan.workings(UnitSystem.INCH).get(2).sureness()).contains("their corners stay");
        assertThat(plan.cautions()).isNotEmpty();
    }

    @Test
    void timber_grows_with_the_cube_of_the_scale() {
        Seeds.each(100, random -> {
            double scale = 0.5 + 3 * random.nextDouble();
            Length size = Length.ofMm(20 + 60 * random.nextDouble());
            Length length = Length.ofMm(100 + 900 * random.nextDouble());
            for (Section section : Section.values()) {
                double once = new Blank(section, size, length).timber().mm3();
                double scaled = new Blank(section, size.times(scale), length.times(scale))
                        .timber()
                        .mm3();
                assertThat(scaled / once).isEqualTo(scale * scale * scale, within(1e-9));
            }
        });
    }

    @Test
    void no_allowances_leave_the_blank_as_it_is() {
        Blank blank = new Blank(Section.SQUARE, Length.ofMm(45), Length.ofMm(500));
        StockPlan plan = new StockPlan(
                new BlankNeed(blank, Length.ofMm(500), false),
                new Allowances(Length.ZERO, Length.ZERO),
                Spares.of(1, 0),
                Density.ofKgPerM3(600));
        assertThat(plan.rough()).isEqualTo(blank);
    }

    @Test
    void what_cannot_be_is_refused() {
        Blank blank = new Blank(Section.SQUARE, Length.ofMm(45), Length.ofMm(500));
        assertThatThrownBy(() -> new BlankNeed(blank, Length.ofMm(500.1), false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("500.1");
        assertThatThrownBy(() -> new Blank(Section.ROUND, Length.ZERO, Length.ofMm(1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Allowances(Length.ofMm(-1), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void workings_keep_the_decimal_point_in_every_locale() {
        Locale before = Locale.getDefault();
        try {
            StockPlan plan = plan(Section.SQUARE, "1 3/4", "20", "20");
            Locale.setDefault(Locale.US);
            String english = plan.workings(UnitSystem.METRIC).toString();
            Locale.setDefault(Locale.GERMANY);
            assertThat(plan.workings(UnitSystem.METRIC).toString()).isEqualTo(english);
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Common practice in both systems; a metric shop does not saw sixteenths. */
    @Test
    void the_usual_allowances_are_round_figures_in_the_jobs_units() {
        assertThat(Allowances.usual(UnitSystem.INCH))
                .isEqualTo(new Allowances(Length.ofInches(0.0625), Length.ofInches(0.5)));
        assertThat(Allowances.usual(UnitSystem.METRIC)).isEqualTo(new Allowances(Length.ofMm(1.5), Length.ofMm(12)));
    }

    @Test
    void a_metric_blank_gains_both_faces_and_both_ends() {
        StockPlan plan = new StockPlan(
                new BlankNeed(new Blank(Section.ROUND, Length.ofMm(45), Length.ofMm(500)), Length.ofMm(480), false),
                Allowances.usual(UnitSystem.METRIC),
                Spares.of(4, 0.05),
                Density.ofKgPerM3(600));
        assertThat(plan.finished().text(UnitSystem.METRIC)).isEqualTo("45 mm round, 500 mm long");
        assertThat(plan.rough().text(UnitSystem.METRIC)).isEqualTo("48 mm square, 524 mm long");
        assertThat(plan.cornerCut().side()).isEqualTo(Length.ofMm(45));
        // 48 x 48 x 524 mm is 1207.296 cm3; at 0.6 g/cm3 724.3776 g, 25.55 oz.
        assertThat(plan.roughMass().grams()).isEqualTo(724.3776, within(1e-9));
        List<Working> workings = plan.workings(UnitSystem.METRIC);
        assertThat(workings.get(0).how())
                .isEqualTo(
                        "45 mm round, 500 mm long, as the pattern's stock says; the run is 480 mm, so 20 mm of its length is for"
                                + " holding and parting off");
        assertThat(workings.get(1).how())
                .isEqualTo(
                        "48 mm square, 524 mm long: the blank, and 1.5 mm for milling on each face and 12 mm for trimming at each"
                                + " end; sawn square, as boards are");
        assertThat(workings.get(4).how())
                .startsWith("5 rough blanks of 0.5116 board feet (0.001207 m3): 2.56 board feet, 0.00604 m3");
        assertThat(workings.get(5).how()).isEqualTo("1207.3 cm3 x 600.0 kg/m3 = 724 g (1 lb 9.6 oz)");
    }

    @Test
    void a_square_blank_is_not_said_to_be_sawn_square() {
        assertThat(plan(Section.SQUARE, "1 3/4", "20", "20")
                        .workings(UnitSystem.INCH)
                        .get(1)
                        .how())
                .doesNotContain("sawn square");
    }

    @Test
    void sawing_corners_off_is_warned_of_with_what_to_do() {
        assertThat(plan(Section.SQUARE, "1 3/4", "20", "20").cautions())
                .singleElement()
                .satisfies(caution -> assertThat(caution.line())
                        .startsWith("stock: corner cut: ")
                        .contains("loose three-sided strip")
                        .contains("guard and push stick"));
    }

    /** Rounding of sixty-fourths may carry a run a hair past its blank, which then has no waste, never less than none. */
    @Test
    void a_run_as_long_as_its_blank_leaves_no_waste() {
        Blank blank = new Blank(Section.SQUARE, Length.ofMm(45), Length.ofMm(500));
        assertThat(new BlankNeed(blank, Length.ofMm(500), false).waste()).isEqualTo(Length.ZERO);
        assertThat(new BlankNeed(blank, Length.ofMm(500 + 4e-10), false).waste())
                .isEqualTo(Length.ZERO);
        assertThatThrownBy(() -> new BlankNeed(blank, Length.ofMm(500 + 6e-10), false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BlankNeed(blank, Length.ZERO, false)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void no_side_of_a_blank_and_no_allowance_may_be_missing() {
        assertThatThrownBy(() -> new Blank(Section.ROUND, Length.ofMm(1), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Allowances(Length.ZERO, Length.ofMm(-1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Timber(0).boardFeet()).isZero();
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Timber(bad)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** A gauge is set in the job's units and to hundredths of a millimetre or thousandths of an inch in the other. */
    @Test
    void the_corner_cuts_working_gives_mark_depth_and_face_in_both_systems() {
        // s = 50 mm: mark 14.645, depth 10.355, face 20.711 mm.
        assertThat(new CornerCut(Length.ofMm(50))
                        .working(UnitSystem.METRIC, false)
                        .how())
                .contains("= 0.2929 s = 14.64 mm (0.577 in)")
                .contains("s (sqrt 2 - 1)/2 = 10.36 mm (0.408 in)")
                .contains("s (sqrt 2 - 1) = 20.71 mm (0.815 in)")
                .contains("largest round 50 mm");
    }
}
