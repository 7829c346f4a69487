package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.units.Length;

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
