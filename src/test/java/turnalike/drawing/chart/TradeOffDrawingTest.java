package turnalike.drawing.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import turnalike.drawing.frame.Wheels;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Golden;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Svg;
import turnalike.frame.Moment;
import turnalike.frame.RimFit;
import turnalike.frame.RimPoint;
import turnalike.match.TradeOff;
import turnalike.units.Angle;
import turnalike.units.Length;

class TradeOffDrawingTest {
    private static Svg curve(int points, double firstGMm, double floorGMm) {
        return TradeOffDrawing.svg(Wheels.curve(points, firstGMm), floorGMm, Length.ofMm(160), Length.ofMm(110));
    }

    @Test
    void curve_stays_as_it_was() {
        Golden.check("drawing/trade-off.svg", curve(8, 60, 300).file());
        Drawn.assertSameEverywhere(() -> curve(8, 60, 300));
    }

    @Test
    void every_curve_is_legible() {
        for (int points : new int[] {1, 2, 8, 20}) {
            Drawn.assertSound(curve(points, 60, 300));
            Drawn.assertSound(curve(points, 900, 300));
            Drawn.assertSound(TradeOffDrawing.svg(Wheels.curve(points, 0), 0, Length.ofMm(100), Length.ofMm(60)));
            Drawn.assertSound(TradeOffDrawing.svg(Wheels.curve(points, 60), 300, Length.ofMm(88), Length.ofMm(90)));
        }
    }

    /** The unbalances are 60 · 1.7^i, four of them below 300; the run-out falls with i. */
    @Test
    void curve_names_the_roundest_order_that_the_scale_cannot_fault() {
        Svg svg = curve(8, 60, 300);
        assertThat(svg.file())
                .contains("4 of 8; of these 4 is the roundest")
                .contains("the scale&#39;s noise, 300 g·mm");
        List<Group> orders = Drawn.groups(svg, "order");
        assertThat(orders).hasSize(8);
        for (int i = 0; i < 8; i++) {
            assertThat(((Path) orders.get(i).shapes().get(0)).pen()).isEqualTo(i < 4 ? Pen.INK_FILL : Pen.PAPER);
            assertThat(Drawn.texts(orders.get(i))).containsExactly(Integer.toString(i + 1));
        }
        assertThat(curve(5, 900, 300).title()).contains("1 is balanced best, 5 is the roundest");
        assertThat(curve(1, 900, 300).title()).contains("your scale can see its unbalance");
    }

    /** Against a floor of 100 g·mm nothing below 1 is told in figures, and no run-out as none. */
    @Test
    void a_tip_tells_no_digits_of_chance() {
        assertThat(curve(3, 0.02, 100).file()).contains("1: unbalance under 1 g·mm, run-out ");
        RimFit round = RimFit.of(Stream.of(0, 90, 180, 270)
                .map(degrees -> new RimPoint(Angle.ofDegrees(degrees), Length.ofMm(300)))
                .toList());
        TradeOff.Point point = new TradeOff.Point(List.of(0, 1, 2, 3), new Moment(5, Angle.ofDegrees(0)), round);
        assertThat(TradeOffDrawing.svg(List.of(point), 100, Length.ofMm(160), Length.ofMm(110))
                        .file())
                .contains("1: unbalance 5.00 g·mm, run-out under 0.001 mm");
    }

    @Test
    void a_number_without_room_is_told() {
        Svg svg = curve(40, 900, 300);
        long bare = Drawn.groups(svg, "order").stream()
                .filter(order -> Drawn.texts(order).isEmpty())
                .count();
        assertThat(bare).isPositive();
        assertThat(svg.file()).contains(">" + bare + " numbers left out<");
        assertThat(curve(8, 60, 300).file()).doesNotContain("left out");
    }

    @Test
    void nothing_to_draw_is_refused() {
        assertThatThrownBy(() -> TradeOffDrawing.svg(List.of(), 1, Length.ofMm(160), Length.ofMm(110)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> curve(3, 1, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
