package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile;

/**
 * An invented newel with a square at one end, its shoulder rounded, that a near camera sees beside the middle of its picture: one flat, and the next as a
 * sliver. Drawn by asking which points are wood.
 */
class ObliqueSquareTest {
    private static final double DISTANCE = 570;

    private static final double FOCAL = 900;

    private static final double LENGTH = 480;

    private static final double HALF = 28;

    private static final double FIRST = 105;

    private static final double SHOULDER = 18;

    /** Of what a lathe leaves: the square's corners stand farther out than this from where its shoulder begins. */
    private static double turned(double place) {
        double corner = Math.sqrt(2) * HALF;
        double below = 0.8 * HALF;
        if (place < FIRST) {
            return corner;
        }
        if (place < FIRST + SHOULDER) {
            double share = (place - FIRST) / SHOULDER;
            return below + (corner - below) * Math.sqrt(1 - share * share);
        }
        return 17 + 4 * Math.cos((place - FIRST) / (LENGTH - FIRST) * 4 * Math.PI);
    }

    private static double lit(double normal) {
        return 0.25 + 0.75 * Math.max(0, Math.cos(normal - 0.4));
    }

    /** The light of what a ray meets first; below zero where it meets nothing. */
    private static double met(double along, double across, double turn, boolean square) {
        if (Math.abs(across) * DISTANCE > 46) {
            return -1;
        }
        for (double depth = DISTANCE - 41; depth < DISTANCE + 41; depth += 0.5) {
            double x = along * depth + LENGTH / 2;
            if (x < 0 || x > LENGTH) {
                continue;
            }
            double y = across * depth;
            double before = DISTANCE - depth;
            double one = y * Math.cos(turn) + before * Math.sin(turn);
            double other = before * Math.cos(turn) - y * Math.sin(turn);
            boolean flats = square && x < FIRST + SHOULDER;
            double radius = flats || x >= FIRST + SHOULDER ? turned(x) : 1.06 * HALF;
            if (flats && Math.max(Math.abs(one), Math.abs(other)) > HALF) {
                continue;
            }
            if (y * y + before * before <= radius * radius) {
                boolean onFlat = flats && Math.max(Math.abs(one), Math.abs(other)) > HALF - 0.8;
                double flat = Math.abs(other) > Math.abs(one) ? -turn : Math.copySign(Math.PI / 2, one) - turn;
                return lit(onFlat ? flat : Math.atan2(y, before));
            }
        }
        return -1;
    }

    /** Seen so far below the picture's middle, pixels. */
    private static PhotoTrace trace(double turn, boolean square, double below) throws IOException {
        return new AskedPoints(860, 400, FOCAL, below, 0.06, 1.2)
                .trace(LENGTH, (along, across) -> met(along, across, turn, square));
    }

    private static PhotoTrace.Traced traced(double degrees, boolean square, double below) throws IOException {
        PhotoTrace trace = trace(Math.toRadians(degrees), square, below);
        assertThat(trace).as("turned by %s°: %s", degrees, trace).isInstanceOf(PhotoTrace.Traced.class);
        return (PhotoTrace.Traced) trace;
    }

    private static void isSquare(double degrees) throws IOException {
        PhotoTrace.Traced traced = traced(degrees, true, 60);
        assertThat(traced.squares()).as("turned by %s°", degrees).hasSize(1);
        Profile.Stretch square = traced.squares().get(0);
        assertThat(square.from().mm()).isZero();
        assertThat(square.to().mm()).isBetween(FIRST - 2, FIRST + SHOULDER);
        // Its corners are gone before: no promise is made of those.
        assertThat(traced.warnings()).anyMatch(each -> each.contains("of a rounded or sloping one end sooner"));
        // Half its side, on its shoulder as well, and within what is stated.
        for (double place : new double[] {20, 60, 100}) {
            Profile.Station station = at(traced, place);
            assertThat(station.radius().mm())
                    .as("turned by %s°, at %s", degrees, place)
                    .isCloseTo(HALF, within(station.uncertainty().mm()));
            assertThat(station.uncertainty().mm()).isLessThan(0.03 * HALF);
        }
        for (double place : new double[] {200, 300, 400}) {
            assertThat(at(traced, place).radius().mm()).isCloseTo(turned(place), within(0.35));
        }
    }

    private static Profile.Station at(PhotoTrace.Traced traced, double place) {
        return traced.profile().stations().stream()
                .filter(each -> each.place().mm() >= place)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void its_end_s_rim_tells_it_where_its_next_flat_is_a_sliver() throws IOException {
        isSquare(-5);
        isSquare(7);
    }

    @Test
    void a_round_post_seen_so_is_round() throws IOException {
        assertThat(traced(0, false, 60).squares()).isEmpty();
    }
}
