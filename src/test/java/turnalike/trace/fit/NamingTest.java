package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a narrow level stretch below both its neighbours is called. */
class NamingTest {
    private static String middle(Part left, Part right) {
        Part narrow = Part.of(Form.LEVEL, 30, 35, List.of(12.0));
        return Naming.of(List.of(left, narrow, right), 0.25, new Grid(0.01), List.of(0.0, 0.0))
                .get(1)
                .kind()
                .word();
    }

    private static Part before(Form form, double... sizes) {
        return part(form, 0, 30, sizes);
    }

    private static Part after(Form form, double... sizes) {
        return part(form, 35, 60, sizes);
    }

    private static Part part(Form form, double from, double to, double... sizes) {
        return Part.of(form, from, to, Arrays.stream(sizes).boxed().toList());
    }

    @Test
    void what_is_cut_into_one_surface_is_a_groove() {
        assertThat(middle(before(Form.LEVEL, 15), after(Form.LEVEL, 15))).isEqualTo("groove");
        assertThat(middle(before(Form.STRAIGHT, 13, 15), after(Form.STRAIGHT, 15.1, 18)))
                .isEqualTo("groove");
        assertThat(middle(before(Form.BELLY, 13, 17, 15), after(Form.S, 15, 11)))
                .isEqualTo("groove");
    }

    @Test
    void what_sets_off_a_bead_or_parts_two_thicknesses_is_a_fillet() {
        assertThat(middle(before(Form.HUMP, 15, 18), after(Form.LEVEL, 15))).isEqualTo("fillet");
        assertThat(middle(before(Form.LEVEL, 15), after(Form.LEVEL_AT_END, 15, 18)))
                .isEqualTo("fillet");
        assertThat(middle(before(Form.LEVEL, 15), after(Form.LEVEL, 17))).isEqualTo("fillet");
    }
}
