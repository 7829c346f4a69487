package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MirroredPatchTest {
    private static final int WIDTH = 200;

    private static final int HEIGHT = 140;

    private static final double TURN = Math.toRadians(12);

    /** A bar of 120 by 20 pixels about (100, 70), turned, with a lump on one side of it if wished. */
    private static byte[] bar(boolean lump) {
        byte[] patch = new byte[WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double along = (x + 0.5 - 100) * Math.cos(TURN) + (y + 0.5 - 70) * Math.sin(TURN);
                double across = (y + 0.5 - 70) * Math.cos(TURN) - (x + 0.5 - 100) * Math.sin(TURN);
                boolean in = Math.abs(along) < 60 && Math.abs(across) < 10;
                boolean on = lump && across > 0 && across < 25 && Math.abs(along - 20) < 8;
                patch[y * WIDTH + x] = (byte) (in || on ? 1 : 0);
            }
        }
        return patch;
    }

    private static MirroredPatch of(byte[] patch) {
        int[] labels = new int[patch.length];
        for (int i = 0; i < labels.length; i++) {
            labels[i] = patch[i];
        }
        return new MirroredPatch(patch, WIDTH, Blob.of(labels, 1, WIDTH, HEIGHT)[0]);
    }

    @Test
    void a_bar_is_halved_along_its_middle() {
        MirroredPatch mirrored = of(bar(false));
        assertThat(Math.toDegrees(mirrored.angle())).isCloseTo(12, within(0.4));
        assertThat(mirrored.to() - mirrored.from()).isCloseTo(120, within(2.5));
        assertThat(mirrored.half(0)).isCloseTo(10, within(1.0));
        assertThat(mirrored.share()).isGreaterThan(0.95);
    }

    @Test
    void a_lump_on_one_side_hardly_moves_the_axis_and_drops_out() {
        MirroredPatch mirrored = of(bar(true));
        assertThat(Math.toDegrees(mirrored.angle())).isCloseTo(12, within(1.0));
        assertThat(mirrored.share()).isLessThan(of(bar(false)).share() - 0.05);
        byte[] lump = bar(true);
        byte[] bare = bar(false);
        byte[] both = mirrored.mirrored();
        int kept = 0;
        int lost = 0;
        for (int i = 0; i < both.length; i++) {
            kept += lump[i] > bare[i] ? both[i] : 0;
            lost += bare[i] > both[i] ? 1 : 0;
        }
        assertThat(kept).isLessThan(40);
        assertThat(lost).isLessThan(60);
    }

    @Test
    void in_a_picture_of_more_pixels_all_of_it_is_larger() {
        MirroredPatch mirrored = of(bar(false));
        BodyFinder.Body body = mirrored.body(new byte[0], 2);
        assertThat(body.to() - body.from()).isCloseTo(240, within(5.0));
        assertThat(body.widest()).isCloseTo(20, within(2.0));
        assertThat(body.x() * -Math.sin(TURN) + body.y() * Math.cos(TURN))
                .isCloseTo(200 * -Math.sin(TURN) + 140 * Math.cos(TURN), within(1.0));
    }
}
