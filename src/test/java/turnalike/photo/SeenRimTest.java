package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rims of flat ends against points of their surface seen one by one, in units of the camera's distance. */
class SeenRimTest {
    private static final double RADIUS = 0.06;

    /** Of all points of a quarter round the farthest out at that Y, each seen by itself. */
    private static double seen(double round, double place, double y) {
        double ball = RADIUS * round;
        double most = 0;
        for (int i = 0; i <= 2000; i++) {
            double over = Math.PI / 2 * i / 2000;
            double at = place - ball + ball * Math.sin(over);
            double radius = RADIUS - ball + ball * Math.cos(over);
            // A circle's point at that Y, by halving its turn from the side that faces the camera.
            double low = 0;
            double high = Math.PI / 2;
            for (int k = 0; k < 50; k++) {
                double turn = (low + high) / 2;
                boolean within = radius * Math.sin(turn) / (1 - radius * Math.cos(turn)) < y;
                low = within ? turn : low;
                high = within ? high : turn;
            }
            double x = at / (1 - radius * Math.cos(low));
            double off = radius * Math.sin(low) / (1 - radius * Math.cos(low)) - y;
            most = Math.abs(off) < 1e-6 ? Math.max(most, x) : most;
        }
        return most;
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.3", "0.3, 0.3", "0.3, 0.15", "0.6, 0.4", "0.95, 0.3"})
    void a_rounded_rim_is_where_its_farthest_points_are(double round, double place) {
        SeenRim rim = SeenRim.of(RADIUS, EndEdge.rounded(round), place);
        for (double share : new double[] {0, 0.3, 0.6, 0.85}) {
            double y = share * RADIUS;
            assertThat(place * rim.at(y)).as("at %s", share).isCloseTo(seen(round, place, y), within(3e-5));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0.3", "0.2, 0.3", "0.5, 0.15", "1, 0.4", "0.3, -0.35"})
    void the_end_stands_where_what_is_seen_of_it_says(double round, double place) {
        EndEdge edge = EndEdge.rounded(round);
        double apex = place * SeenRim.of(RADIUS, edge, Math.abs(place)).at(0);
        assertThat(edge.place(apex, RADIUS)).isCloseTo(place, within(1e-6));
    }

    /** Between a chamfer with sharp corners and a quarter round: of all its circles the farthest out at that Y. */
    private static double easedAt(double wide, double eased, double place, double y) {
        double most = 0;
        for (int i = 0; i <= 4000; i++) {
            double share = i / 4000.0;
            double out = (1 - eased) * share + eased * Math.sin(Math.PI / 2 * share);
            double deep = (1 - eased) * share + eased * (1 - Math.cos(Math.PI / 2 * share));
            double radius = RADIUS * (1 - wide + wide * out);
            // Of that circle the near point at Y: y(1 − r cos t) = r sin t.
            double tilted = Math.hypot(1, y) * radius;
            double turn = tilted < y ? Double.NaN : Math.asin(Math.min(1, y / tilted)) - Math.atan(y);
            double x = (place - RADIUS * wide * deep) / (1 - radius * Math.cos(turn));
            most = Double.isNaN(x) ? most : Math.max(most, x);
        }
        return most;
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.25, 0.3", "0.25, 0.25, 0.3", "0.3, 0.55, 0.3", "0.2, 0.55, 0.15", "0.2, 0.55, -0.4"})
    void an_eased_chamfer_is_where_its_farthest_circles_are(double wide, double eased, double place) {
        EndEdge edge = EndEdge.eased(wide, eased);
        SeenRim rim = SeenRim.of(RADIUS, edge, Math.abs(place));
        for (double share : new double[] {0, 0.3, 0.6, 0.85}) {
            double y = share * RADIUS;
            assertThat(Math.abs(place) * rim.at(y))
                    .as("at %s", share)
                    .isCloseTo(easedAt(wide, eased, Math.abs(place), y), within(5e-5));
        }
        assertThat(edge.place(place * rim.at(0), RADIUS)).isCloseTo(place, within(1e-6));
    }

    @Test
    void a_rim_that_is_hardly_rounded_is_a_sharp_one() {
        SeenRim sharp = SeenRim.of(RADIUS, EndEdge.SHARP, 0.3);
        SeenRim worn = SeenRim.of(RADIUS, EndEdge.rounded(1e-4), 0.3);
        for (double share : new double[] {0, 0.4, 0.8}) {
            assertThat(worn.at(share * RADIUS)).isCloseTo(sharp.at(share * RADIUS), within(1e-4));
        }
    }
}
