package turnalike.job.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.pattern.CurveRules;
import turnalike.pattern.ShapeRules;
import turnalike.turning.Held;
import turnalike.turning.Lathe;
import turnalike.turning.ShopRules;
import turnalike.turning.SlenderRules;
import turnalike.turning.SpeedChart;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;

/** What a job says of holding and of its shop's rules is what the lathe carries. */
class TurningReaderTest {
    private static Lathe lathe(String file) throws IOException {
        Job.Read read =
                JobReader.read(Files.readString(Path.of("src/test/resources/turnalike/job/good", file + ".job.json")));
        assertThat(read.problems()).isEmpty();
        return read.job().orElseThrow().lathe();
    }

    @Test
    void every_rule_and_the_hold_are_read_where_they_belong() throws IOException {
        Lathe lathe = lathe("every");
        assertThat(lathe.held()).isEqualTo(new Held(Held.By.CHUCK, Held.At.END, true));
        SpeedChart chart = new SpeedChart(List.of(
                SpeedChart.Row.fastest(Length.ofMm(25), Speed.ofRpm(2000)),
                SpeedChart.Row.fastest(Length.ofMm(60), Speed.ofRpm(1000))));
        assertThat(lathe.rules())
                .isEqualTo(new ShopRules(
                        chart,
                        Speed.ofRpm(2500),
                        0.4,
                        Speed.ofRpm(500),
                        0.45,
                        9,
                        Length.ofMm(16),
                        Length.ofMm(8),
                        Length.ofMm(2.5),
                        3,
                        Length.ofMm(0.6),
                        5,
                        0.08,
                        Force.ofNewtons(250),
                        new ShapeRules(0.12, 0.45, 0.55, 0.9, 0.8, Length.ofMm(2), Length.ofMm(0.4), Length.ofMm(0.2)),
                        new SlenderRules(0.6, 0.85, 0.12),
                        new CurveRules(Length.ofMm(4), 2.5, Length.ofMm(0.6))));
    }

    @Test
    void a_job_that_says_nothing_turns_between_centres_by_the_usual_rules() throws IOException {
        assertThat(lathe("legs").held()).isEqualTo(Held.BETWEEN_CENTRES);
        assertThat(lathe("legs").rules()).isEqualTo(ShopRules.USUAL);
    }
}
