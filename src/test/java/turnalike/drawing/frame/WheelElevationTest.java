package turnalike.drawing.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Svg;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;

/** A rim is drawn where there is one: spokes with a tenon for it, or a rim that is told. */
class WheelElevationTest {
    private static Svg picture(String last, String more) {
        Plan plan = Plan.of(JobReader.read("""
                        {"format": "turnalike-job", "version": 1, "units": "mm",
                         "pattern": {"stock": {"section": "square", "size": 40, "length": 230},
                          "members": [{"kind": "tenon", "length": 20, "diameter": 16}, {"kind": "taper", "length": 180, "from": 30, "to": 20},
                           {"kind": "%s", "length": 20, "diameter": 14}]},
                         "wood": {"density_kg_m3": 700}, "frame": {"kind": "wheel", "places": 6, "hub_radius": 60%s}}
                        """.formatted(last, more)).job().orElseThrow(), Effort.ofAsks(100));
        return plan.frame().orElseThrow().match(new FrameElevation(plan.job().pattern(), 150));
    }

    /** Paths of that pen beside the pieces. */
    private static List<Path> drawn(Svg svg, Pen pen) {
        return svg.shapes().stream()
                .filter(shape -> shape instanceof Path path && path.pen() == pen)
                .map(Path.class::cast)
                .toList();
    }

    @Test
    void round_the_tips_of_a_helm_there_is_no_rim() {
        Svg helm = picture("cylinder", "");
        Svg wheel = picture("tenon", "");
        Svg told = picture("cylinder", ", \"rim_width\": 30");
        // The hub alone, and with it the rim.
        assertThat(drawn(helm, Pen.PAPER)).hasSize(1);
        assertThat(drawn(wheel, Pen.PAPER)).hasSize(2);
        assertThat(drawn(told, Pen.PAPER)).hasSize(2);
        assertThat(drawn(helm, Pen.DASHED))
                .hasSizeGreaterThan(drawn(wheel, Pen.DASHED).size());
    }
}
