package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.units.Length;
import turnalike.units.Mass;

/** A rim of segments against its corners laid out as points, and its joints against every way to turn it. */
class SegmentedRimTest {
    @Test
    void chord_and_board_hold_the_ring_between_two_joints() {
        SegmentedRim rim = SegmentedRim.of(7, 14, Length.ofMm(300), Optional.of(Length.ofMm(350)), Length.ofMm(16));
        double half = Math.PI / 7;
        // The outside's two corners, and the inside's at the joint, with the segment's middle straight up.
        double corner = 350 * Math.sin(half);
        assertThat(rim.chord().orElseThrow().mm()).isCloseTo(2 * corner, within(1e-9));
        assertThat(rim.boardWidth().orElseThrow().mm()).isCloseTo(350 - 300 * Math.cos(half), within(1e-9));
        assertThat(rim.mitre().degrees()).isCloseTo(180.0 / 7, within(1e-12));
        assertThat(SegmentedRim.of(7, 14, Length.ofMm(300), Optional.empty(), Length.ZERO)
                        .chord())
                .isEmpty();
    }

    /** However the joints are turned against the places, none leaves more. */
    @Test
    void the_joints_keep_as_far_from_the_mortises_as_they_can() {
        for (int places = 2; places <= 16; places++) {
            for (int segments = 3; segments <= 16; segments++) {
                double best = 0;
                for (int turn = 0; turn < 720; turn++) {
                    best = Math.max(best, nearest(places, segments, turn * Math.PI / 360 / segments));
                }
                SegmentedRim rim =
                        SegmentedRim.of(segments, places, Length.ofMm(200), Optional.empty(), Length.ofMm(10));
                double told = nearest(places, segments, rim.jointAt().radians());
                assertThat(told).as("%d places, %d segments", places, segments).isCloseTo(best, within(2e-3));
                assertThat(rim.jointClear().mm()).isCloseTo(200 * Math.sin(told) - 5, within(1e-6));
            }
        }
    }

    /** Against the ring cut into some hundred thousand grains, each as heavy as its share of its segment. */
    @Test
    void uneven_segments_pull_as_their_grains_do() {
        double[] grams = {410, 402.5, 418, 407, 399};
        SegmentedRim rim = SegmentedRim.of(5, 8, Length.ofMm(300), Optional.of(Length.ofMm(356)), Length.ofMm(16));
        double x = 0;
        double y = 0;
        int around = 400;
        int out = 60;
        double whole = (356.0 * 356 - 300.0 * 300) / 2;
        for (int segment = 0; segment < 5; segment++) {
            for (int i = 0; i < around; i++) {
                double angle = rim.jointAt().radians() + 2 * Math.PI / 5 * (segment + (i + 0.5) / around);
                for (int j = 0; j < out; j++) {
                    double radius = 300 + 56 * (j + 0.5) / out;
                    double share = radius * 56 / out / around / whole * grams[segment];
                    x += share * radius * Math.cos(angle);
                    y += share * radius * Math.sin(angle);
                }
            }
        }
        Moment pull =
                rim.pull(Arrays.stream(grams).mapToObj(Mass::ofGrams).toList(), Length.ofMm(300), Length.ofMm(356));
        assertThat(pull.xGMm()).isCloseTo(x, within(0.05)); // of 3,900 g mm
        assertThat(pull.yGMm()).isCloseTo(y, within(0.05));
        assertThat(pull.gMm()).isGreaterThan(1000);
        assertThat(rim.pull(Collections.nCopies(5, Mass.ofGrams(410)), Length.ofMm(300), Length.ofMm(356))
                        .gMm())
                .isCloseTo(0, within(1e-6));
        assertThatThrownBy(() -> rim.pull(List.of(Mass.ofGrams(1)), Length.ofMm(300), Length.ofMm(356)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double nearest(int places, int segments, double turned) {
        double least = Math.PI;
        for (int i = 0; i < segments; i++) {
            for (int k = 0; k < places; k++) {
                double apart = Math.abs(turned + 2 * Math.PI * i / segments - 2 * Math.PI * k / places) % (2 * Math.PI);
                least = Math.min(least, Math.min(apart, 2 * Math.PI - apart));
            }
        }
        return least;
    }
}
