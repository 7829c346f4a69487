package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;
import turnalike.turning.SpeedAdvice;
import turnalike.units.Speed;

/** What hangs beside the lathe: the speed for roughing where roughing stands, and first of all what cannot be built. */
class TurningFactsTest {
    /** A finial in a chuck: out of round it turns half as fast as once it is round. */
    private static Plan finial(String turning) {
        return plan("\"turning\": {\"held\": \"chuck\"%s}, \"count\": 4".formatted(turning), 30, 60);
    }

    private static Plan plan(String rest, double size, double length) {
        String text = """
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"name": "Knob", "stock": {"section": "square", "size": %s, "length": %s},
                  "members": [{"kind": "tenon", "length": 20, "diameter": 16}, {"kind": "cylinder", "length": 20, "diameter": 24}]},
                 "wood": {"density_kg_m3": 650}, %s}
                """.formatted(size, length, rest);
        return Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(200));
    }

    private static BenchCardContent.Fact fact(Plan plan, String name) {
        return TurningFacts.content(plan).facts().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void roughing_stands_with_the_speed_for_roughing() {
        Plan plan = finial("");
        SpeedAdvice speeds = plan.turning().speeds();
        assertThat(speeds.roughing().to().rpm())
                .isLessThan(0.7 * speeds.turning().to().rpm());
        assertThat(fact(plan, "roughing, no faster than").figure())
                .isEqualTo(speeds.roughing().to().noFaster() + " rpm");
        assertThat(fact(plan, "round, no faster than").figure())
                .isEqualTo(speeds.turning().to().noFaster() + " rpm");
    }

    @Test
    void each_names_the_lathes_own_steps_for_it() {
        Plan plan = finial(", \"speeds\": [600, 1000, 1200, 2000, 2400]");
        SpeedAdvice speeds = plan.turning().speeds();
        assertThat(speeds.roughingSteps()).isNotEmpty().doesNotContainAnyElementsOf(speeds.turningSteps());
        assertThat(fact(plan, "roughing, no faster than").beside()).isEqualTo(Speed.ofLathe(speeds.roughingSteps()));
        assertThat(fact(plan, "round, no faster than").beside()).isEqualTo(Speed.ofLathe(speeds.turningSteps()));
    }

    @Test
    void what_cannot_be_built_comes_first_and_what_is_only_thin_stands_on_the_frames_own_sheet() {
        Plan plan =
                plan("\"frame\": {\"kind\": \"wheel\", \"places\": 6, \"hub_radius\": 20, \"rim_width\": 30}", 30, 60);
        List<String> cautions = TurningFacts.content(plan).cautions();
        List<String> forbidding = plan.frame().orElseThrow().misfits().stream()
                .filter(each -> each.forbids())
                .map(each -> each.sentence())
                .toList();
        List<String> others = plan.frame().orElseThrow().misfits().stream()
                .filter(each -> !each.forbids())
                .map(each -> each.sentence())
                .toList();
        assertThat(forbidding).isNotEmpty();
        assertThat(others).isNotEmpty();
        assertThat(cautions.subList(0, forbidding.size())).isEqualTo(forbidding);
        assertThat(cautions).doesNotContainAnyElementsOf(others);
        assertThat(cautions)
                .hasSize(forbidding.size() + plan.turning().cautions().size());
    }
}
