package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.units.Angle;
import turnalike.units.Length;

class LegAnglesTest {
    private static LegAngles legs(double rake, double splay) {
        return new LegAngles(Angle.ofDegrees(rake), Angle.ofDegrees(splay));
    }

    /** Turns a vector about an axis, 0 for the front-back line, 2 for upright: front, side, down. */
    private static double[] turned(double[] vector, int axis, double angle) {
        int one = (axis + 1) % 3;
        int other = (axis + 2) % 3;
        double[] out = vector.clone();
        out[one] = Math.cos(angle) * vector[one] - Math.sin(angle) * vector[other];
        out[other] = Math.sin(angle) * vector[one] + Math.cos(angle) * vector[other];
        return out;
    }

    /** An upright leg tilted by the lean about a level line and then turned to its sight line must look raked and splayed as told. */
    @Test
    void an_upright_leg_tilted_and_turned_is_seen_at_rake_and_splay() {
        Random random = new Random(41);
        for (int i = 0; i < 200; i++) {
            double rake = 40 * random.nextDouble();
            double splay = 40 * random.nextDouble();
            LegAngles legs = legs(rake, splay);
            double[] down = {0, 0, 1};
            // About the side's axis, so that its foot goes to the front; then about the upright one.
            double[] tilted = turned(down, 1, legs.lean().radians());
            double[] leg = turned(tilted, 2, legs.sight().radians());
            assertThat(Math.toDegrees(Math.atan2(leg[0], leg[2]))).isCloseTo(rake, within(1e-9));
            assertThat(Math.toDegrees(Math.atan2(leg[1], leg[2]))).isCloseTo(splay, within(1e-9));
            assertThat(Math.toDegrees(Math.acos(leg[1])))
                    .isCloseTo(legs.toSideways().degrees(), within(1e-9));
            assertThat(Math.toDegrees(Math.acos(leg[0])))
                    .isCloseTo(legs.toFrontBack().degrees(), within(1e-9));
            // Down by its cosine for each unit of its own length.
            assertThat(legs.along(Length.ofMm(leg[2])).mm()).isCloseTo(1, within(1e-12));
        }
    }

    /** Right triangles in whole numbers, from memory: 3-4-5 in plan, 5-12-13 upright. */
    @Test
    void a_foot_three_and_four_over_twelve_leans_by_five_twelfths() {
        LegAngles legs = LegAngles.ofFootMoves(Length.ofMm(3), Length.ofMm(4), Length.ofMm(12));
        assertThat(Math.tan(legs.lean().radians())).isCloseTo(5.0 / 12, within(1e-12));
        assertThat(Math.tan(legs.sight().radians())).isCloseTo(4.0 / 3, within(1e-12));
        assertThat(legs.along(Length.ofMm(12)).mm()).isCloseTo(13, within(1e-12));
        assertThat(legs.frontOrBack(Length.ofMm(12)).mm()).isCloseTo(3, within(1e-12));
        assertThat(legs.sideways(Length.ofMm(12)).mm()).isCloseTo(4, within(1e-12));
    }

    /** Equal rake and splay: the sight line halves the corner, and tan(lean) = √2 tan(rake), the identity of hip rafters (from memory). */
    @ParameterizedTest
    @CsvSource({"5", "10", "14.5", "45"})
    void equal_rake_and_splay_lean_on_the_diagonal(double angle) {
        LegAngles legs = legs(angle, angle);
        assertThat(legs.sight().degrees()).isCloseTo(45, within(1e-12));
        assertThat(Math.tan(legs.lean().radians()))
                .isCloseTo(Math.sqrt(2) * Math.tan(Math.toRadians(angle)), within(1e-12));
    }

    /**
     * The corner of a box of 4, 5 or 6 sides that slope at a pitch stands like a leg: raked by what the pitch leaves of an upright,
     * splayed by half a side for each apothem. Its angle to the level edge of that side is what the mitre leaves of a right angle. Printed
     * to 0.01 degrees; three columns. Source: compound angle setting chart, Ryobi TSS121 operator's manual, for a mitre saw; VERIFIED.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 44.89, 35.90, 29.91",
        "10, 44.56, 35.58, 29.62",
        "15, 44.01, 35.06, 29.15",
        "20, 43.22, 34.32, 28.48",
        "25, 42.19, 33.36, 27.62",
        "30, 40.89, 32.18, 26.57",
        "35, 39.32, 30.76, 25.31",
        "40, 37.45, 29.10, 23.86",
        "45, 35.26, 27.19, 22.21",
        "50, 32.73, 25.03, 20.36",
        "55, 29.84, 22.62, 18.32",
        "60, 26.57, 19.96, 16.10",
        "65, 22.91, 17.07, 13.71",
        "70, 18.88, 13.95, 11.17"
    })
    void the_corners_of_sloping_boxes_stand_as_a_saw_makers_table_of_compound_angles_says(
            double pitch, double four, double five, double six) {
        double[] mitres = {four, five, six};
        for (int i = 0; i < mitres.length; i++) {
            double rake = 90 - pitch;
            double halfSide = Math.tan(Math.PI / (4 + i));
            double splay = Math.toDegrees(Math.atan(Math.tan(Math.toRadians(rake)) * halfSide));
            assertThat(90 - legs(rake, splay).toSideways().degrees())
                    .as("%d sides", 4 + i)
                    .isCloseTo(mitres[i], within(0.0051));
        }
    }

    @Test
    void upright_legs_have_no_lean_and_no_sight_line_of_their_own() {
        LegAngles legs = legs(0, 0);
        assertThat(legs.lean().degrees()).isZero();
        assertThat(legs.sight().degrees()).isZero();
        assertThat(legs.toSideways().degrees()).isEqualTo(90);
    }

    @Test
    void an_angle_of_ninety_or_below_zero_is_none() {
        assertThatThrownBy(() -> legs(90, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> legs(0, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
