package turnalike.drawing.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Golden;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.frame.Moment;
import turnalike.match.Seat;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;

class PlacesDrawingTest {
    private static final Mass FINE = Mass.ofGrams(0.1);
    private static final Mass COARSE = Mass.ofGrams(10_000);

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    @Test
    void wheels_and_rows_stay_as_they_were() {
        Golden.check(
                "drawing/wheel-12.svg",
                Wheels.wheel(12, false, FINE).svg(mm(114)).file());
        Golden.check(
                "drawing/wheel-60-even.svg",
                Wheels.wheel(60, true, COARSE).svg(mm(186)).file());
        Golden.check(
                "drawing/row-20.svg", Wheels.row(20, true, true).svg(mm(186)).file());
        Drawn.assertSameEverywhere(() -> Wheels.wheel(12, false, FINE).svg(mm(114)));
        Drawn.assertSameEverywhere(() -> Wheels.row(20, false, true).svg(mm(186)));
    }

    @Test
    void every_wheel_and_row_is_legible() {
        for (int places : new int[] {1, 2, 3, 12, 24, 37, 60, 61, 100, 400}) {
            for (boolean hostile : new boolean[] {false, true}) {
                Drawn.assertSound(Wheels.wheel(places, hostile, FINE).svg(mm(186)));
                Drawn.assertSound(Wheels.wheel(places, hostile, COARSE).svg(mm(114)));
                Drawn.assertSound(Wheels.wheel(places, hostile, FINE).svg(mm(60)));
                Drawn.assertSound(Wheels.row(places, hostile, true).svg(mm(186)));
                Drawn.assertSound(Wheels.row(places, hostile, false).svg(mm(60)));
            }
        }
    }

    private static double degrees(double x, double y) {
        return (Math.toDegrees(Math.atan2(-y, x)) + 360) % 360;
    }

    @Test
    void places_stand_anticlockwise_from_the_right() {
        List<Group> places = Drawn.groups(Wheels.wheel(12, false, FINE).svg(mm(150)), "place");
        assertThat(places).hasSize(12);
        for (int i = 0; i < 12; i++) {
            TextLine number = places.get(i).shapes().stream()
                    .filter(TextLine.class::isInstance)
                    .map(TextLine.class::cast)
                    .findFirst()
                    .orElseThrow();
            assertThat(number.text()).isEqualTo(Integer.toString(i + 1));
            double y = number.yMm() - Lettering.NUMBER.capHeightMm() / 2;
            assertThat((degrees(number.xMm(), y) + 0.0001) % 360).isCloseTo(30 * i, within(0.01));
        }
    }

    /** The direction is worked out again from the seats: Σ m R e^{iθ} of the contract. */
    @Test
    void the_arrow_points_to_the_heavy_side() {
        WheelDrawing wheel = Wheels.wheel(12, false, FINE);
        Group drawn = (Group) wheel.svg(mm(150)).shapes().get(0);
        Path head = (Path) drawn.shapes().get(drawn.shapes().size() - 1);
        assertThat(head.pen()).isEqualTo(Pen.ACCENT_FILL);
        Path.Move tip = (Path.Move) head.steps().get(0);
        double heavy = Moment.sum(wheel.placement().seats().stream()
                        .map(PlacesDrawingTest::moment)
                        .toList())
                .at()
                .degrees();
        assertThat(degrees(tip.xMm(), tip.yMm())).isCloseTo(heavy, within(1e-6));
    }

    private static Moment moment(Seat seat) {
        return new Moment(seat.piece().mass().grams() * seat.piece().reach().mm(), seat.angle());
    }

    @Test
    void a_wheel_within_the_noise_has_no_arrow_and_no_counterweight_and_says_so() {
        WheelDrawing even = Wheels.wheel(12, false, COARSE);
        assertThat(even.statements()).hasSize(1);
        assertThat(even.statements().get(0)).contains("balanced to within what your scale can see");
        assertThat(even.svg(mm(150)).file()).doesNotContain("p-accent-fill\" d").doesNotContain("p-accent\" d");
        WheelDrawing heavy = Wheels.wheel(12, false, FINE);
        assertThat(heavy.statements()).hasSize(2);
        assertThat(heavy.svg(mm(150)).file())
                .contains("p-accent-fill\" d")
                .contains("p-accent\" d")
                .contains("Counterweight: add");
        WheelDrawing without =
                new WheelDrawing(heavy.placement(), Wheels.HUB, Optional.empty(), heavy.weighing(), UnitSystem.METRIC);
        assertThat(without.svg(mm(150)).file()).doesNotContain("Counterweight");
    }

    @Test
    void up_to_sixty_places_every_piece_and_mass_is_lettered() {
        for (int count : new int[] {3, 24, 60}) {
            WheelDrawing wheel = Wheels.wheel(count, false, FINE);
            List<Group> groups = Drawn.groups(wheel.svg(mm(186)), "place");
            for (int i = 0; i < count; i++) {
                PlacesDrawing.Place place = wheel.places().get(i);
                String lettered = String.join(" ", Drawn.texts(groups.get(i)));
                assertThat(lettered).matches("%d:? %s,? %s".formatted(place.number(), place.piece(), place.massText()));
            }
        }
    }

    @Test
    void beyond_that_the_picture_says_which_places_are_lettered() {
        String many = Wheels.wheel(400, false, FINE).svg(mm(186)).file();
        assertThat(many).contains("Every 5th is lettered").contains(">396: 8<").doesNotContain(">397: ");
        assertThat(many).contains("<title>place 397 at 356.4°: piece 7, ");
    }

    @Test
    void a_row_letters_every_place_in_order() {
        List<Group> places = Drawn.groups(Wheels.row(200, false, true).svg(mm(186)), "place");
        assertThat(places).hasSize(200);
        for (int i = 0; i < 200; i++) {
            List<String> texts = Drawn.texts(places.get(i));
            assertThat(texts).startsWith(Integer.toString(i + 1), Integer.toString(200 - i));
            assertThat(texts).hasSize(i % 7 != 5 ? 3 : 2);
        }
    }

    @Test
    void legs_are_numbered_by_group_and_leg_a_line_for_each_group() {
        Svg svg = Wheels.legs(3, 4, false).svg(mm(186));
        List<Group> places = Drawn.groups(svg, "place");
        assertThat(places).hasSize(12);
        assertThat(Drawn.texts(places.get(0))).startsWith("1·1", "1");
        assertThat(Drawn.texts(places.get(7))).startsWith("2·4", "8");
        assertThat(svg.file()).contains("3 groups of 4", "each line is a group");
        for (int size = 2; size <= 8; size++) {
            for (int groups : new int[] {1, 2, 9, 40}) {
                Drawn.assertSound(Wheels.legs(groups, size, false).svg(mm(186)));
                Drawn.assertSound(Wheels.legs(groups, size, true).svg(mm(60)));
            }
        }
        List<PlacesDrawing.Place> five = Wheels.row(5, false, true).places();
        assertThatThrownBy(() -> RowDrawing.ofGroups(five, 2)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void pictures_too_small_or_empty_are_refused() {
        assertThatThrownBy(() -> Wheels.wheel(3, false, FINE).svg(mm(59))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Wheels.row(3, false, true).svg(mm(59))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RowDrawing.along(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
