package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import turnalike.trace.Profile;

/** Invented balusters seen from near, square at both ends: where the squares end. The pictures are drawn by asking which points are wood. */
class SquareEndTest {
    private static final double DISTANCE = 850;

    private static final double FOCAL = 1290;

    private static final double LENGTH = 620;

    private static final double HALF = 22;

    private static final double FIRST = 95;

    private static final double SECOND = 505;

    /** The radius at a place, of what is turned. */
    private static double turned(double place) {
        return 13 + 4 * Math.cos((place - FIRST) / (SECOND - FIRST) * 4 * Math.PI);
    }

    private static double lit(double normal) {
        return 0.2 + 0.8 * Math.max(0, Math.cos(normal - 0.7));
    }

    /** The light of what a ray meets first, going from point to point; below zero where it meets nothing. */
    private static double met(double along, double across, double turn) {
        if (Math.abs(across) * DISTANCE > 40) {
            return -1;
        }
        for (double depth = DISTANCE - 32; depth < DISTANCE + 32; depth += 0.5) {
            double x = along * depth + LENGTH / 2;
            double y = across * depth;
            double before = DISTANCE - depth;
            if (x < 0 || x > LENGTH) {
                continue;
            }
            if (x <= FIRST || x >= SECOND) {
                double one = y * Math.cos(turn) + before * Math.sin(turn);
                double other = before * Math.cos(turn) - y * Math.sin(turn);
                if (Math.max(Math.abs(one), Math.abs(other)) <= HALF) {
                    return Math.abs(other) > Math.abs(one) ? lit(-turn) : lit(Math.PI / 2 - turn);
                }
            } else if (y * y + before * before <= turned(x) * turned(x)) {
                return lit(Math.atan2(y, before));
            }
        }
        return -1;
    }

    private static PhotoTrace.Traced traced(double turn) throws IOException {
        PhotoTrace trace =
                new AskedPoints(1040, 360, FOCAL, 0, 0, 1.5).trace(LENGTH, (along, across) -> met(along, across, turn));
        assertThat(trace).as("%s", trace).isInstanceOf(PhotoTrace.Traced.class);
        return (PhotoTrace.Traced) trace;
    }

    /** What the answer says that a square's ends are known to. */
    private static double known(PhotoTrace.Traced traced, Profile.Stretch square) {
        String from = String.format(Locale.ROOT, "From %.0f to", square.from().mm());
        String words = traced.warnings().stream()
                .filter(each -> each.startsWith(from))
                .findFirst()
                .orElseThrow();
        Matcher told = Pattern.compile("its ends known to ([0-9.]+) mm if").matcher(words);
        assertThat(told.find()).as(words).isTrue();
        return Double.parseDouble(told.group(1));
    }

    private static void endsAreFound(double degrees) throws IOException {
        PhotoTrace.Traced traced = traced(Math.toRadians(degrees));
        assertThat(traced.squares()).as("turned by %s°", degrees).hasSize(2);
        Profile.Stretch first = traced.squares().get(0);
        Profile.Stretch second = traced.squares().get(1);
        assertThat(first.from().mm()).isZero();
        assertThat(first.to().mm()).as("turned by %s°", degrees).isCloseTo(FIRST, within(1.0));
        assertThat(second.from().mm()).as("turned by %s°", degrees).isCloseTo(SECOND, within(1.0));
        assertThat(second.to().mm()).isEqualTo(LENGTH);
        assertThat(first.to().mm()).isCloseTo(FIRST, within(2 * known(traced, first)));
        assertThat(second.from().mm()).isCloseTo(SECOND, within(2 * known(traced, second)));
        assertThat(traced.profile().stations().get(100).radius().mm()).isCloseTo(HALF, within(0.03 * HALF));
        // What is turned keeps its size: the scale hangs on the squares' own ends.
        assertThat(traced.profile().stations().get(620).radius().mm()).isCloseTo(turned(310), within(0.15));
        assertThat(traced.profile().hidden())
                .noneMatch(each -> each.from().mm() < FIRST - 1.5 || each.to().mm() > SECOND + 1.5);
    }

    @Test
    void with_a_flat_that_faces_the_camera() throws IOException {
        endsAreFound(0);
    }

    /** Its second flat is a sliver of three pixels; taken for mirror images its edges disagreed, and the picture was refused. */
    @Test
    void with_a_flat_that_is_hardly_turned_away() throws IOException {
        endsAreFound(-6);
    }

    @Test
    void with_two_flats_in_sight() throws IOException {
        endsAreFound(20);
        endsAreFound(-38);
    }

    /** Seen so, the end looks like a round's that bulges by far too much, which made the view lean by three degrees. */
    @Test
    void over_its_arris() throws IOException {
        endsAreFound(44);
        endsAreFound(45);
        endsAreFound(46);
        endsAreFound(-45);
    }

    /** Read at the inner shoulder, an end stood ten times as far before the axis as the square is thick, and the piece came out a tenth too thick. */
    @Test
    void an_end_read_somewhere_else_stands_as_the_section_does() {
        assertThat(SquaredView.before(0.27, 0.026)).isEqualTo(0.026);
        assertThat(SquaredView.before(-0.01, 0.026)).isEqualTo(0.026);
        assertThat(SquaredView.before(0.024, 0.026)).isEqualTo(0.024);
    }

    @Test
    void a_ray_enters_and_leaves_the_section_where_its_points_do() {
        SplittableRandom dice = new SplittableRandom(8);
        for (int round = 0; round < 200; round++) {
            SquareSection section =
                    new SquareSection(0.01 + 0.08 * dice.nextDouble(), (dice.nextDouble() - 0.5) * Math.PI / 2);
            double across = (dice.nextDouble() * 1.8 - 0.9) * section.half();
            double enters = Double.NaN;
            double leaves = Double.NaN;
            for (double depth = 0.8; depth < 1.2; depth += 1e-4) {
                if (holds(section, across * depth, 1 - depth)) {
                    enters = Double.isNaN(enters) ? depth : enters;
                    leaves = depth;
                }
            }
            assertThat(section.near(across)).isCloseTo(enters, within(2e-4));
            assertThat(section.far(across)).isCloseTo(leaves, within(2e-4));
            for (double sign : new double[] {1, -1}) {
                double edge = section.seen(sign > 0);
                assertThat(section.far(sign * 0.9999 * edge)).isGreaterThan(section.near(sign * 0.9999 * edge));
                // Beyond its edge a ray meets no point of it.
                double beyond = sign * 1.0001 * edge;
                for (double depth = 0.8; depth < 1.2; depth += 1e-3) {
                    assertThat(holds(section, beyond * depth, 1 - depth)).isFalse();
                }
            }
        }
    }

    private static boolean holds(SquareSection section, double across, double before) {
        // Its corners stand at the arris' direction and every quarter of a turn from there; so its flats' middles stand
        // an eighth of a turn on.
        double turned = section.arris() + Math.PI / 4;
        double one = before * Math.cos(turned) + across * Math.sin(turned);
        double other = across * Math.cos(turned) - before * Math.sin(turned);
        return Math.max(Math.abs(one), Math.abs(other)) <= section.half();
    }

    @Test
    void side_and_turn_follow_from_what_is_seen() {
        for (double half : new double[] {0.01, 0.03, 0.08}) {
            for (double arris : new double[] {-0.6, -0.2, 0, 0.3, 0.7}) {
                SquareSection section = new SquareSection(half, arris);
                double diagonal = half * Math.sqrt(2);
                double between = diagonal * Math.sin(arris) / (1 - diagonal * Math.cos(arris));
                double mean = (section.seen(true) + section.seen(false)) / 2;
                SquareSection read = SquareSection.turned(mean, between);
                assertThat(read.half()).isCloseTo(half, within(1e-3 * half));
                assertThat(read.arris()).isCloseTo(arris, within(2e-3));
            }
            SquareSection facing = new SquareSection(half, Math.PI / 4);
            assertThat(SquareSection.facing(facing.seen(true)).half()).isCloseTo(half, within(1e-12));
        }
    }
}
