package turnalike.drawing.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.Samples;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.ShadedArea;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.outline.Section;
import turnalike.pattern.Details;
import turnalike.pattern.Pattern;
import turnalike.pattern.Square;
import turnalike.pattern.Stock;
import turnalike.pattern.Taper;
import turnalike.units.Length;
import turnalike.units.Mass;

/** The piece and the frame as they will look. */
class TurnedViewTest {
    private static final Mass FINE = Mass.ofGrams(0.1);

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static List<double[]> spots(ShadedArea tone) {
        List<double[]> out = new ArrayList<>();
        for (Path.Step step : tone.steps()) {
            if (step instanceof Path.Move move) {
                out.add(new double[] {move.xMm(), move.yMm()});
            } else if (step instanceof Path.Straight straight) {
                out.add(new double[] {straight.xMm(), straight.yMm()});
            }
        }
        return out;
    }

    private static List<ShadedArea> tones(List<Shape> shapes) {
        return shapes.stream()
                .filter(ShadedArea.class::isInstance)
                .map(ShadedArea.class::cast)
                .toList();
    }

    @Test
    void tones_run_from_shade_through_wood_to_bright() {
        assertThat(new ShadedArea(0, List.of()).fill()).isEqualTo("#7a552c");
        assertThat(new ShadedArea(0.7, List.of()).fill())
                .isEqualTo(Pen.WOOD.fill().orElseThrow());
        assertThat(new ShadedArea(1, List.of()).fill()).isEqualTo("#f8e8cb");
        assertThatThrownBy(() -> new ShadedArea(1.1, List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_turned_piece_fills_its_room_at_one_scale_and_is_lit_from_above() {
        Pattern spoke = Samples.spoke();
        Svg svg = ShadedSpindle.svg(spoke, mm(200), mm(400));
        List<double[]> spots = new ArrayList<>();
        tones(svg.shapes()).forEach(tone -> spots.addAll(spots(tone)));
        double left = spots.stream().mapToDouble(each -> each[0]).min().orElseThrow();
        double right = spots.stream().mapToDouble(each -> each[0]).max().orElseThrow();
        double top = spots.stream().mapToDouble(each -> each[1]).min().orElseThrow();
        double bottom = spots.stream().mapToDouble(each -> each[1]).max().orElseThrow();
        assertThat(right - left).isCloseTo(194, within(1e-6));
        double scale = 194 / spoke.length().mm();
        assertThat(bottom - top)
                .isCloseTo(2 * scale * spoke.outline().largestRadius().mm(), within(1e-3));
        List<ShadedArea> bands = tones(svg.shapes());
        ShadedArea above = bands.get(8);
        ShadedArea below = bands.get(bands.size() - 2);
        assertThat(above.light()).isGreaterThan(below.light() + 0.3);
        Drawn.assertSameEverywhere(() -> ShadedSpindle.svg(spoke, mm(200), mm(60)));
        assertThatThrownBy(() -> ShadedSpindle.svg(spoke, mm(20), mm(60))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void legs_stand_on_their_feet_whichever_end_they_are_laid_out_from() {
        Pattern leg = new Pattern(
                "leg",
                new Stock(Section.SQUARE, mm(60), mm(400)),
                List.of(new Square(mm(100), mm(50), Details.NONE), new Taper(mm(300), mm(40), mm(20), Details.NONE)));
        Svg svg = FrameView.row(leg, Wheels.legs(3, 4, false), mm(240)).orElseThrow();
        List<double[]> spots = Drawn.groups(svg, "place").get(0).shapes().stream()
                .flatMap(each -> tones(List.of(each)).stream())
                .flatMap(each -> spots(each).stream())
                .toList();
        double left = spots.stream().mapToDouble(each -> each[0]).min().orElseThrow();
        double middle = spots.stream().mapToDouble(each -> each[1]).average().orElseThrow();
        assertThat(spots.stream().filter(each -> each[0] < left + 0.01))
                .as("the widest part, the square")
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each[1]).isLessThan(middle));
        assertThat(FrameView.row(leg.mirrored(), Wheels.legs(3, 4, false), mm(240)))
                .contains(svg);
    }

    @Test
    void every_spoke_of_the_wheel_stands_at_its_places_angle() {
        WheelDrawing wheel = Wheels.wheel(12, false, FINE);
        Svg svg = FrameView.wheel(Samples.spoke(), true, wheel, mm(200)).orElseThrow();
        List<Group> places = Drawn.groups(svg, "place");
        assertThat(places).hasSize(12);
        for (int i = 0; i < 12; i++) {
            List<double[]> spots = spots(tones(places.get(i).shapes()).get(0));
            double x =
                    spots.stream().mapToDouble(each -> each[0] - 100).average().orElseThrow();
            double y =
                    spots.stream().mapToDouble(each -> 100 - each[1]).average().orElseThrow();
            double degrees = (Math.toDegrees(Math.atan2(y, x)) + 360) % 360;
            double wanted = wheel.places().get(i).angle().orElseThrow().degrees();
            assertThat(Math.abs((degrees - wanted + 540) % 360 - 180))
                    .as("place " + (i + 1))
                    .isLessThan(0.01);
        }
        Drawn.assertSound(svg);
    }

    @Test
    void frames_are_legible_at_any_size_and_give_way_to_the_plan_when_they_are_large() {
        for (int places : new int[] {1, 2, 3, 7, 24, 60}) {
            for (boolean hostile : new boolean[] {false, true}) {
                Drawn.assertSound(FrameView.wheel(Samples.spoke(), false, Wheels.wheel(places, hostile, FINE), mm(240))
                        .orElseThrow());
                Drawn.assertSound(FrameView.row(Samples.newel(), Wheels.row(places, hostile, true), mm(240))
                        .orElseThrow());
            }
        }
        Drawn.assertSound(FrameView.row(Samples.newel(), Wheels.legs(3, 4, false), mm(240))
                .orElseThrow());
        assertThat(FrameView.wheel(Samples.spoke(), true, Wheels.wheel(61, false, FINE), mm(240)))
                .isEmpty();
        assertThat(FrameView.row(Samples.spoke(), Wheels.row(61, false, true), mm(240)))
                .isEmpty();
        WheelDrawing few = Wheels.wheel(3, false, FINE);
        assertThatThrownBy(() -> FrameView.wheel(Samples.spoke(), true, few, mm(79)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_piece_of_the_rail_stands_on_its_start_end() {
        Svg svg = FrameView.row(Samples.spoke(), Wheels.row(5, false, true), mm(200))
                .orElseThrow();
        List<Group> places = Drawn.groups(svg, "place");
        double before = 0;
        for (Group place : places) {
            List<double[]> spots = spots(tones(place.shapes()).get(0));
            double lowest = spots.stream().mapToDouble(each -> each[1]).max().orElseThrow();
            double middle =
                    spots.stream().mapToDouble(each -> each[0]).average().orElseThrow();
            double[] start = spots.get(0);
            assertThat(start[1]).isCloseTo(lowest, within(1e-9));
            assertThat(middle).isGreaterThan(before);
            before = middle;
        }
    }
}
