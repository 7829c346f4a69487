package turnalike.drawing.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Golden;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.pieces.control.ChartPoint;
import turnalike.pieces.control.ControlChart;
import turnalike.units.Length;

class ControlChartDrawingTest {
    private static Svg chart(ControlChart chart, double width, double height) {
        return ControlChartDrawing.svg(chart, "Weight of the spokes", "g", Length.ofMm(width), Length.ofMm(height));
    }

    @Test
    void chart_stays_as_it_was() {
        Golden.check(
                "drawing/control-chart.svg", chart(Charts.spokes(24), 255, 130).file());
        Drawn.assertSameEverywhere(() -> chart(Charts.spokes(24), 255, 130));
    }

    @Test
    void every_chart_is_legible() {
        for (int pieces : new int[] {2, 3, 24, 120, 700}) {
            Drawn.assertSound(chart(Charts.spokes(pieces), 255, 130));
            Drawn.assertSound(chart(Charts.spokes(pieces), 80, 70));
        }
        Drawn.assertSound(chart(Charts.still(), 80, 70));
        Drawn.assertSound(ControlChartDrawing.svg(Charts.still(), "", "", Length.ofMm(80), Length.ofMm(70)));
        Drawn.assertSound(ControlChartDrawing.svg(
                Charts.hostile(), "<b>&\"' ".repeat(40), "<g> & ".repeat(20), Length.ofMm(186), Length.ofMm(120)));
    }

    private static double middleY(Group group) {
        Path circle = (Path) group.shapes().get(0);
        return ((Path.Move) circle.steps().get(0)).yMm();
    }

    /** Values 10 and 12: mean 11, moving range 2, limits 11 ± 3 · 2 / 1.128 (NIST/SEMATECH e-Handbook 6.3.2.2). */
    @Test
    void points_and_limit_lines_stand_in_proportion() {
        ControlChart two = Charts.chart(List.of(new ChartPoint("a", 10), new ChartPoint("b", 12)));
        Svg svg = chart(two, 200, 120);
        List<Group> points = Drawn.groups(svg, "point");
        assertThat(points).hasSize(3);
        double perUnit = (middleY(points.get(0)) - middleY(points.get(1))) / 2;
        assertThat(perUnit).isPositive();
        double upper = middleY(points.get(0)) - (11 + 6 / 1.128 - 10) * perUnit;
        List<Double> dashed = new ArrayList<>();
        for (Shape shape : svg.shapes()) {
            if (shape instanceof Path path && path.pen() == Pen.DASHED) {
                dashed.add(((Path.Move) path.steps().get(0)).yMm());
            }
        }
        assertThat(dashed).hasSize(3);
        assertThat(dashed.get(0)).isCloseTo(upper, within(1e-9));
        assertThat(dashed.get(1) - dashed.get(0)).isCloseTo(12 / 1.128 * perUnit, within(1e-9));
        assertThat(svg.file())
                .contains(">upper 16.3<")
                .contains(">centre 11.0<")
                .contains(">lower 5.7<");
    }

    @Test
    void signalled_pieces_are_ringed_in_the_chart_whose_rule_speaks_and_lettered() {
        Svg svg = chart(Charts.spokes(24), 255, 130);
        List<Group> rings = Drawn.groups(svg, "signal");
        assertThat(rings.stream().map(ring -> ring.attributes().get("data-piece")))
                .containsExactly("9", "9", "10");
        for (Group ring : rings) {
            assertThat(((Path) ring.shapes().get(0)).pen()).isEqualTo(Pen.ACCENT);
            assertThat(Drawn.texts(ring)).containsExactly(ring.attributes().get("data-piece"));
        }
        assertThat(rings.get(0).tip()).hasValueSatisfying(tip -> assertThat(tip).contains("beyond 3 sigma"));
        assertThat(rings.get(1).tip()).hasValueSatisfying(tip -> assertThat(tip).contains("moving range"));
        assertThat(middleY(rings.get(0))).isLessThan(middleY(rings.get(1)));
    }

    @Test
    void a_chart_says_how_many_rings_it_could_not_letter() {
        Svg svg = chart(Charts.hostile(), 186, 120);
        long bare = Drawn.groups(svg, "signal").stream()
                .filter(ring -> Drawn.texts(ring).isEmpty())
                .count();
        assertThat(bare).isPositive();
        assertThat(svg.file()).contains("(%d without room for a label)".formatted(bare));
    }

    @Test
    void a_picture_too_small_is_refused() {
        assertThatThrownBy(() -> chart(Charts.still(), 79, 100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> chart(Charts.still(), 90, 69)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void ticks_are_round_within_the_span_and_told_apart() {
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            double size = Math.pow(10, random.nextInt(9) - 4);
            double least = (random.nextDouble() - 0.5) * size * 20;
            double most = least + size * (0.05 + random.nextDouble());
            Ticks ticks = Ticks.between(least, most, 6);
            assertThat(ticks.values()).as("seed %d", seed).hasSizeBetween(2, 7);
            for (double value : ticks.values()) {
                assertThat(value).as("seed %d", seed).isBetween(least - size * 1e-6, most + size * 1e-6);
                double steps = value / ticks.step();
                assertThat(steps).as("seed %d", seed).isCloseTo(Math.rint(steps), within(1e-6));
                assertThat(Double.parseDouble(ticks.label(value).replace('−', '-')))
                        .as("seed %d", seed)
                        .isCloseTo(value, within(ticks.step() * 1e-6));
            }
        }
    }

    /** Against walking along the stroke in ten thousand steps; strokes that only graze the box are left out. */
    @Test
    void a_stroke_crosses_a_box_when_some_of_it_lies_inside() {
        Box box = new Box(-1, -2, 3, 1);
        int crossing = 0;
        for (long seed = 1; seed <= 400; seed++) {
            Random random = new Random(seed);
            double x1 = random.nextDouble() * 12 - 6;
            double y1 = random.nextDouble() * 12 - 6;
            double x2 = seed % 5 == 0 ? x1 : random.nextDouble() * 12 - 6;
            double y2 = random.nextDouble() * 12 - 6;
            boolean well = walks(x1, y1, x2, y2, box.grown(-0.01));
            boolean hardly = walks(x1, y1, x2, y2, box.grown(0.01));
            if (well == hardly) {
                assertThat(new Box.Stroke(x1, y1, x2, y2).crosses(box))
                        .as("seed %d", seed)
                        .isEqualTo(well);
                crossing += well ? 1 : 0;
            }
        }
        assertThat(crossing).isBetween(60, 340);
    }

    private static boolean walks(double x1, double y1, double x2, double y2, Box box) {
        for (int i = 0; i <= 10_000; i++) {
            double x = x1 + (x2 - x1) * i / 10_000;
            double y = y1 + (y2 - y1) * i / 10_000;
            if (x >= box.left() && x <= box.right() && y >= box.top() && y <= box.bottom()) {
                return true;
            }
        }
        return false;
    }
}
