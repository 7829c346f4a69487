package turnalike.drawing.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** A handle must lie on what is dragged by it: a page turns its way on the screen into a size. */
class HandlesTest {
    private static SpindleDrawing holding(Pattern pattern, int number) {
        return SpindleDrawing.filling(pattern, UnitSystem.INCH, Length.ofMm(300), Length.ofMm(90))
                .holding(number);
    }

    private record Dot(double x, double y) {}

    /** The middle of the circle a handle is drawn as. */
    private static Dot middle(Group handle) {
        List<Path.Step> steps = ((Path) handle.shapes().get(0)).steps();
        Path.Move left = (Path.Move) steps.get(0);
        Path.Arc right = (Path.Arc) steps.get(1);
        return new Dot((left.xMm() + right.xMm()) / 2, (left.yMm() + right.yMm()) / 2);
    }

    private static double number(Group handle, String attribute) {
        return Double.parseDouble(handle.attributes().get(attribute));
    }

    @Test
    void where_a_piece_runs_into_its_neighbour_a_ring_stands_on_both_sides_of_it() {
        Pattern pattern = DrawingsTest.PATTERNS.get(1);
        SpindleDrawing drawing = holding(pattern, 1);
        Length place = pattern.length().times(0.37);
        assertThat(Drawn.groups(drawing.touching(Optional.empty()).svg(), "touching"))
                .isEmpty();
        Group ring = Drawn.groups(drawing.touching(Optional.of(place)).svg(), "touching")
                .get(0);
        Dot upper = middle(Group.at(0, 0, ring.shapes().subList(0, 1)));
        Dot lower = middle(Group.at(0, 0, ring.shapes().subList(1, 2)));
        double scale = drawing.scale().paperOverWood();
        assertThat(upper.x()).isCloseTo(4 + scale * place.mm(), within(1e-9)).isEqualTo(lower.x());
        assertThat(lower.y() - upper.y())
                .isCloseTo(2 * scale * pattern.outline().radiusAt(place).mm(), within(1e-9));
        assertThat(drawing.at(scale / 2).scale().paperOverWood()).isEqualTo(scale / 2);
    }

    @Test
    void a_diameters_handle_stands_its_radius_off_the_axis_and_the_lengths_at_the_far_end() {
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            for (PlacedMember placed : pattern.placed()) {
                SpindleDrawing drawing = holding(pattern, placed.number());
                Svg svg = drawing.svg();
                double scale = drawing.scale().paperOverWood();
                List<Group> along = Drawn.groups(svg, "handle along");
                List<Group> across = Drawn.groups(svg, "handle across");
                if (placed.member() instanceof FreeCurve) {
                    assertThat(along).isEmpty();
                    assertThat(across).isEmpty();
                    continue;
                }
                assertThat(along).hasSize(1);
                Dot end = middle(along.get(0));
                assertThat(number(along.get(0), "data-mm"))
                        .isEqualTo(placed.member().length().mm());
                List<String> keys = placed.member().diameters().stream()
                        .map(Member.Diameter::key)
                        .distinct()
                        .toList();
                assertThat(across)
                        .extracting(handle -> handle.attributes().get("data-key"))
                        .containsExactlyElementsOf(keys);
                for (Group handle : across) {
                    Dot dot = middle(handle);
                    double mm = number(handle, "data-mm");
                    double placeMm = placed.end().mm() + (dot.x() - end.x()) / scale;
                    assertThat(number(handle, "data-scale")).isEqualTo(scale);
                    assertThat(number(handle, "data-number")).isEqualTo(placed.number());
                    assertThat(end.y() - dot.y()).isCloseTo(scale * mm / 2, within(1e-9));
                    Member.Diameter own = placed.member().diameters().stream()
                            .filter(each ->
                                    each.key().equals(handle.attributes().get("data-key")))
                            .findFirst()
                            .orElseThrow();
                    assertThat(mm).isEqualTo(own.size().mm());
                    assertThat(placeMm)
                            .isCloseTo(placed.start().mm() + own.place().mm(), within(1e-6));
                }
            }
        }
    }

    /** Against the picture itself: a taper begins and ends in corners of the drawn outline. */
    @Test
    void the_handles_of_a_taper_lie_on_corners_of_the_drawn_outline() {
        Pattern pattern = Samples.spoke();
        PlacedMember taper = pattern.placed().stream()
                .filter(placed -> placed.member().kind().word().equals("taper"))
                .findFirst()
                .orElseThrow();
        Svg svg = holding(pattern, taper.number()).svg();
        List<Dot> corners = new ArrayList<>();
        corners(svg.shapes(), corners);
        List<Group> handles = Drawn.groups(svg, "handle across");
        assertThat(handles).hasSize(2);
        for (Group handle : handles) {
            Dot dot = middle(handle);
            assertThat(corners)
                    .as(handle.attributes().get("data-key"))
                    .anyMatch(corner -> Math.hypot(corner.x() - dot.x(), corner.y() - dot.y()) < 1e-6);
        }
    }

    /** Where a pen is set down or a straight line ends, in whatever is drawn but the handles. */
    private static void corners(List<Shape> shapes, List<Dot> out) {
        for (Shape shape : shapes) {
            if (shape instanceof Group group
                    && !group.attributes().getOrDefault("class", "").startsWith("handle")) {
                corners(group.shapes(), out);
            } else if (shape instanceof Path path) {
                for (Path.Step step : path.steps()) {
                    if (step instanceof Path.Move move) {
                        out.add(new Dot(move.xMm(), move.yMm()));
                    } else if (step instanceof Path.Straight straight) {
                        out.add(new Dot(straight.xMm(), straight.yMm()));
                    }
                }
            }
        }
    }
}
