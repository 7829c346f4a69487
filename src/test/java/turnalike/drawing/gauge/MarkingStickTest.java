package turnalike.drawing.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.DrawingsTest;
import turnalike.drawing.piece.Samples;
import turnalike.drawing.svg.Path;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.units.UnitSystem;

class MarkingStickTest {
    @Test
    void each_notch_has_its_point_at_its_mark_and_leaves_a_tooth_to_the_next() {
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            MarkingStick stick = MarkingStick.of(pattern, UnitSystem.METRIC, MarkingStick.Edge.NOTCHES);
            Path edge = (Path) stick.svg().shapes().get(0);
            List<Double> points = new ArrayList<>();
            double before = 0;
            for (Path.Step step : edge.steps()) {
                if (step instanceof Path.Straight to) {
                    assertThat(to.xMm()).as("never backwards").isGreaterThan(before);
                    before = to.xMm();
                    if (to.yMm() > stick.edge().mm()) {
                        points.add(to.xMm() - stick.datum().mm());
                    }
                }
            }
            List<Mark> marks = pattern.marks();
            assertThat(points).hasSameSizeAs(marks);
            for (int i = 0; i < points.size(); i++) {
                assertThat(points.get(i)).isCloseTo(marks.get(i).place().mm(), within(1e-9));
            }
        }
    }

    @Test
    void without_notches_the_edge_is_straight() {
        Path edge = (Path)
                MarkingStick.of(Samples.spoke(), UnitSystem.INCH).svg().shapes().get(0);
        assertThat(edge.steps()).hasSize(2);
    }
}
