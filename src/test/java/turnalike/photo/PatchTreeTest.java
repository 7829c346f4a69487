package turnalike.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class PatchTreeTest {
    private static final int WIDTH = 120;

    private static final int HEIGHT = 80;

    /** A bar of 60 by 12 pixels. */
    private static float[] bar(int left) {
        float[] values = new float[WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                values[y * WIDTH + x] = x >= left && x < left + 60 && y >= 30 && y < 42 ? 1 : 0;
            }
        }
        return values;
    }

    @Test
    void a_bar_with_an_edge_is_found_as_large_as_it_is() {
        List<PatchTree.Patch> found = PatchTree.of(bar(30), WIDTH, HEIGHT);
        assertThat(found).isNotEmpty().allSatisfy(each -> assertThat(each.area())
                .isEqualTo(60 * 12));
    }

    @Test
    void what_is_no_longer_than_wide_is_passed_over() {
        float[] square = new float[WIDTH * HEIGHT];
        for (int y = 20; y < 60; y++) {
            Arrays.fill(square, y * WIDTH + 40, y * WIDTH + 80, 1);
        }
        assertThat(PatchTree.of(square, WIDTH, HEIGHT)).isEmpty();
    }

    @Test
    void what_runs_out_of_the_picture_is_passed_over() {
        assertThat(PatchTree.of(bar(WIDTH - 40), WIDTH, HEIGHT)).isEmpty();
    }
}
