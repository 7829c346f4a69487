package turnalike.drawing.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Drawn;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.ShadedArea;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;
import turnalike.job.set.RowFit;
import turnalike.units.Length;

/** A stair's row, invented: two lengths on each tread under a straight rail. */
class RowElevationTest {
    private static RowFit fit(String frame) {
        return (RowFit) plan(frame).frame().orElseThrow();
    }

    private static Plan plan(String frame) {
        var read = JobReader.read("""
                {"format": "turnalike-job", "version": 1, "title": "Stair (invented)", "units": "mm",
                 "pattern": {"name": "Post", "stock": {"section": "square", "size": 42, "length": 700},
                  "members": [{"kind": "square", "length": 180}, {"kind": "bead", "length": 20, "root": 30, "crown": 40},
                   {"kind": "taper", "length": 400, "from": 36, "to": 26}, {"kind": "tenon", "length": 20, "diameter": 20}]},
                 "wood": {"density_kg_m3": 600}, "frame": {"kind": "row", "clear": 620, %s}}""".formatted(frame));
        return Plan.of(read.job().orElseThrow(() -> new AssertionError(read.problems())), Effort.ofAsks(100));
    }

    private static Svg picture(Plan plan) {
        return plan.frame().orElseThrow().match(new FrameElevation(plan.job().pattern(), 150));
    }

    private static List<double[]> spots(List<Shape> shapes) {
        List<double[]> out = new ArrayList<>();
        for (Shape shape : shapes) {
            List<Path.Step> steps = shape instanceof Path path
                    ? path.steps()
                    : shape instanceof ShadedArea tone ? tone.steps() : List.of();
            for (Path.Step step : steps) {
                if (step instanceof Path.Move move) {
                    out.add(new double[] {move.xMm(), move.yMm()});
                } else if (step instanceof Path.Straight straight) {
                    out.add(new double[] {straight.xMm(), straight.yMm()});
                }
            }
        }
        return out;
    }

    /** In whole pictures, from the top of the tenon to the foot. */
    private static List<Double> tall(List<Group> pieces) {
        return pieces.stream().map(each -> bottom(each) - top(each)).toList();
    }

    private static double top(Group piece) {
        return spots(piece.shapes()).stream().mapToDouble(each -> each[1]).min().orElseThrow();
    }

    private static double bottom(Group piece) {
        return spots(piece.shapes()).stream().mapToDouble(each -> each[1]).max().orElseThrow();
    }

    @Test
    void each_piece_is_drawn_at_its_own_length_with_its_head_on_the_rail() {
        double pitch = (620 + 42) / 7.0;
        double rake = Math.toDegrees(Math.atan(80 / pitch));
        Plan plan = plan(
                ("\"rake_deg\": %s, \"lengths_stand\": \"in_turn\", \"lengths\": [{\"stretch\": 0, \"length\": 150, \"count\":"
                                + " 3}, {\"stretch\": 0, \"length\": 230, \"count\": 3}]")
                        .formatted(rake));
        Svg svg = picture(plan);
        List<Group> pieces = Drawn.groups(svg, "place");
        List<Double> tall = tall(pieces);
        for (int i = 0; i < 6; i += 2) {
            assertThat(tall.get(i + 1) / tall.get(i)).isCloseTo((230 + 440) / (150 + 440.0), within(1e-3));
            assertThat(bottom(pieces.get(i))).as("on one tread").isCloseTo(bottom(pieces.get(i + 1)), within(1e-3));
        }
        double step = top(pieces.get(0)) - top(pieces.get(1));
        for (int i = 0; i < 5; i++) {
            assertThat(top(pieces.get(i)) - top(pieces.get(i + 1)))
                    .as("the rail is straight")
                    .isCloseTo(step, within(1e-6));
        }
        assertThat(pieces.get(1).attributes()).containsEntry("data-place", "2");
        assertThat(pieces.get(1).tip())
                .hasValueSatisfying(tip -> assertThat(tip).contains("length B"));
    }

    /** The ball that is told is drawn between the two of which it is told. */
    private static long rings(Svg svg) {
        return svg.shapes().stream()
                .filter(shape -> shape instanceof Path path && path.pen() == Pen.ACCENT)
                .count();
    }

    /** Each step of a touching stair is ringed, and both posts that a piece runs into; one wide enough has no ring. */
    @Test
    void a_touching_row_of_lengths_is_ringed_at_every_place_and_at_the_posts() {
        String lengths =
                "\"lengths_stand\": \"in_turn\", \"lengths\": [{\"stretch\": 0, \"length\": 150, \"count\": 8}, {\"stretch\": 0,"
                        + " \"length\": 230, \"count\": 8}]";
        Plan plan = plan(lengths);
        RowFit fit = (RowFit) plan.frame().orElseThrow();
        assertThat(rings(picture(plan))).isEqualTo(15 + 2);
        assertThat(fit.misfits().get(0).what())
                .startsWith("member 1 (square) of length B runs")
                .contains("into the A beside it, 80 mm");
        assertThat(rings(picture(plan(lengths.replace("\"count\": 8", "\"count\": 3")))))
                .isZero();
    }

    @Test
    void the_widest_ball_is_drawn_between_the_two_lengths_that_leave_it() {
        RowFit fit = fit(
                "\"lengths\": [{\"stretch\": 0, \"length\": 150, \"count\": 3}, {\"stretch\": 0, \"length\": 230, \"count\": 3}]");
        int at = fit.widestAt();
        RowFit.Beside widest = fit.besides().stream()
                .filter(each -> each.ball().equals(fit.between().orElseThrow().diameter()))
                .findFirst()
                .orElseThrow();
        assertThat(fit.own().get(at).letter()).isEqualTo(widest.left());
        assertThat(fit.own().get(at + 1).letter()).isEqualTo(widest.right());
        assertThat(fit.own()).extracting(RowFit.Own::letter).containsExactly("A", "A", "A", "B", "B", "B");
        assertThat(fit.own().get(0).foot()).isEqualTo(Length.ofMm(30));
        assertThat(fit.own().get(5).foot()).isEqualTo(Length.ofMm(-50));
    }
}
