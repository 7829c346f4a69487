package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Length;

class RowGapTest {
    private static final Outline VASE = body(
            Section.ROUND,
            new Line(mm(60), mm(10), mm(14)),
            new EllipseArc(mm(40), mm(20), mm(20), mm(12), mm(9)),
            new Line(mm(120), mm(15), mm(8)));

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Outline body(Section section, Curve... curves) {
        return Outline.of(mm(25), List.of(curves), section);
    }

    @Test
    void level_neighbours_are_nearest_where_they_are_thickest() {
        RowGap.Nearest nearest = RowGap.of(VASE, mm(50), Length.ZERO);
        assertThat(nearest.left().mm()).isCloseTo(50 - 2 * 21, within(1e-12));
        assertThat(nearest.at().mm()).isCloseTo(80, within(1e-9));
    }

    @Test
    void a_square_counts_with_half_its_diagonal() {
        Outline square = body(Section.SQUARE, Line.level(mm(100), mm(20)));
        assertThat(RowGap.of(square, mm(50), Length.ZERO).left().mm()).isCloseTo(50 - 40 * Math.sqrt(2), within(1e-12));
        assertThat(RowGap.reach(square).mm()).isCloseTo(20 * Math.sqrt(2), within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 17.5, 40, 100, 219})
    void on_a_rake_it_is_what_a_fine_search_finds(double rise) {
        double most = 0;
        for (double up = rise; up <= 220; up += 0.001) {
            most = Math.max(
                    most,
                    VASE.radiusAt(mm(25 + up)).mm()
                            + VASE.radiusAt(mm(25 + up - rise)).mm());
        }
        assertThat(RowGap.of(VASE, mm(50), mm(rise)).left().mm()).isCloseTo(50 - most, within(2e-3));
    }

    /** The same vase on a longer foot, begun higher or lower than its neighbour. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 12.5, 35, 180})
    void two_that_differ_are_nearest_where_a_fine_search_finds(double rise) {
        Outline longer = body(
                Section.ROUND,
                Line.level(mm(35), mm(16)),
                new Line(mm(60), mm(10), mm(14)),
                new EllipseArc(mm(40), mm(20), mm(20), mm(12), mm(9)),
                new Line(mm(120), mm(15), mm(8)));
        double[] most = new double[2];
        for (double up = rise; up <= 255; up += 0.001) {
            if (up <= 220 && up - rise <= 255) {
                double sum = VASE.radiusAt(mm(25 + up)).mm()
                        + longer.radiusAt(mm(25 + up - rise)).mm();
                most[0] = Math.max(most[0], sum);
            }
            if (up - rise <= 220) {
                double sum = longer.radiusAt(mm(25 + up)).mm()
                        + VASE.radiusAt(mm(25 + up - rise)).mm();
                most[1] = Math.max(most[1], sum);
            }
        }
        assertThat(RowGap.of(VASE, longer, mm(50), mm(rise)).left().mm()).isCloseTo(50 - most[0], within(2e-3));
        assertThat(RowGap.of(longer, VASE, mm(50), mm(rise)).left().mm()).isCloseTo(50 - most[1], within(2e-3));
    }
}
