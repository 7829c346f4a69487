package turnalike.drawing.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Svg;
import turnalike.effort.Effort;
import turnalike.job.InventedLeg;
import turnalike.job.Plan;
import turnalike.job.YearOfJoints;
import turnalike.job.read.JobReader;
import turnalike.units.UnitSystem;

class JointDrawingTest {
    private static YearOfJoints.Stand stand(String home) {
        String text = InventedLeg.text("\"home\": " + home + ",", ", \"hole\": 20")
                .replace("{\"density_kg_m3\": 700}", "{\"species\": \"White ash\", \"moisture_pct\": 8}");
        Plan plan = Plan.of(JobReader.read(text).job().orElseThrow(), Effort.unlimited());
        return plan.year().orElseThrow().stands().get(0);
    }

    /** Half axes along and across of each ellipse of that pen, in the order drawn. */
    private static List<double[]> ellipses(Svg svg, Pen pen) {
        List<double[]> out = new ArrayList<>();
        svg.shapes().forEach(shape -> {
            if (shape instanceof Path path && path.pen() == pen && path.steps().get(1) instanceof Path.Arc arc) {
                out.add(new double[] {arc.rxMm(), arc.ryMm()});
            }
        });
        return out;
    }

    @Test
    void tenon_and_hole_differ_by_as_much_as_is_said_below() {
        YearOfJoints.Stand stand = stand("{\"dry_pct\": 6, \"damp_pct\": 12}");
        Svg svg = new JointDrawing(stand, UnitSystem.METRIC).svg();
        assertThat(svg.file()).contains("differences drawn 20 times their size", ">dry, 6.0 %<", ">damp, 12.0 %<");
        assertThat(svg.file()).contains("along: 0.22 mm tight", "across: 0.08 mm of play");
        List<double[]> tenons = ellipses(svg, Pen.OUTLINE);
        List<double[]> holes = ellipses(svg, Pen.ACCENT);
        assertThat(tenons).hasSize(2);
        assertThat(holes).hasSize(2);
        // 26 mm on paper for a hole of 20: 0.2192 mm tight and 0.084 mm of play, 20 times enlarged, halved for the
        // radius.
        assertThat(tenons.get(1)[0] - holes.get(1)[0]).isEqualTo(20 * 0.2192 / 20 * 13, within(1e-9));
        assertThat(holes.get(1)[1] - tenons.get(1)[1]).isEqualTo(20 * 0.084 / 20 * 13, within(1e-9));
        assertThat(holes.get(0)[0]).isEqualTo(13, within(1e-9));
    }

    @Test
    void a_year_without_a_change_and_one_in_inches_are_drawn_too() {
        Svg still = new JointDrawing(stand("{\"dry_pct\": 8, \"damp_pct\": 8}"), UnitSystem.INCH).svg();
        assertThat(still.file()).contains("along: size for size", "diameter, in", "drawn 1 times their size");
        assertThat(ellipses(still, Pen.OUTLINE).get(0)).containsExactly(13, 13);
        Svg slight = new JointDrawing(stand("{\"dry_pct\": 7.9, \"damp_pct\": 8.1}"), UnitSystem.INCH).svg();
        // The picture says what the words beside it say.
        assertThat(slight.file()).contains("along: under 0.001 in tight").doesNotContain("0.000 in", "size for size");
    }
}
