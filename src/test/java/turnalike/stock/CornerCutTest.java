package turnalike.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class CornerCutTest {
    /** The octagon from angles alone: its corners lie at 22.5°, 67.5°, … on the circle that touches the square's sides in their middles. */
    @Test
    void the_octagon_is_the_regular_one_found_by_angles() {
        Seeds.each(200, random -> {
            double side = 1 + 200 * random.nextDouble();
            CornerCut cut = new CornerCut(Length.ofMm(side));
            double out = side / 2 / Math.cos(Math.PI / 8);
            double x0 = out * Math.cos(Math.PI / 8);
            double y0 = out * Math.sin(Math.PI / 8);
            double x1 = out * Math.cos(3 * Math.PI / 8);
            double y1 = out * Math.sin(3 * Math.PI / 8);
            assertThat(cut.face().mm()).isEqualTo(Math.hypot(x1 - x0, y1 - y0), within(1e-12 * side));
            assertThat(cut.face().mm()).isEqualTo(2 * y0, within(1e-12 * side));
            assertThat(cut.markIn().mm()).isEqualTo(side / 2 - y0, within(1e-12 * side));
            double cornerToFace = Math.hypot(side / 2 - (x0 + x1) / 2, side / 2 - (y0 + y1) / 2);
            assertThat(cut.depth().mm()).isEqualTo(cornerToFace, within(1e-12 * side));
            double middleToFace = Math.hypot((x0 + x1) / 2, (y0 + y1) / 2);
            assertThat(cut.largestRound().mm()).isEqualTo(2 * middleToFace, within(1e-12 * side));
        });
    }

    @Test
    void two_marks_and_a_face_make_a_side() {
        CornerCut cut = new CornerCut(Length.ofInches(1.75));
        assertThat(cut.markIn().times(2).plus(cut.face()).mm()).isEqualTo(1.75 * 25.4, within(1e-12));
        assertThat(cut.markIn().inches()).isEqualTo(0.2929 * 1.75, within(0.0001));
    }

    /** 1.75 x 0.292893 = 0.51256 in, nearest 33/64; in millimetres 13.02. */
    @Test
    void the_working_gives_the_mark_to_set_a_gauge_by() {
        CornerCut cut = new CornerCut(Length.ofInches(1.75));
        assertThat(cut.working(UnitSystem.INCH, false).how()).contains("33/64 in (13.02 mm)");
        assertThat(cut.working(UnitSystem.METRIC, false).how()).contains("13.02 mm (0.513 in)");
        assertThat(cut.working(UnitSystem.INCH, false).sureness()).doesNotContain("corners stay");
        assertThat(cut.working(UnitSystem.INCH, true).sureness()).contains("corners stay");
    }

    @Test
    void a_square_without_a_side_is_refused() {
        assertThatThrownBy(() -> new CornerCut(Length.ZERO)).isInstanceOf(IllegalArgumentException.class);
    }
}
