package turnalike.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.cli.Ran;

class ExportCommandTest {
    private static final String JOB = "src/main/resources/turnalike/demo/fair-wheel.job.json";

    @TempDir
    Path folder;

    @Test
    void each_format_asked_for_is_written_and_told_with_the_caution() {
        Ran ran = Ran.here("export", JOB, "--to", "STL, svg", "--out", folder.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("piece.stl", "outline.svg", "keep it off the lathe", "longer than the bed")
                .doesNotContain("piece.3mf");
        assertThat(folder.resolve("piece.stl")).isNotEmptyFile();
        assertThat(folder.toFile().list()).hasSize(2);
    }

    @Test
    void what_is_thinner_than_a_printer_holds_is_said() throws IOException {
        Path thin = Files.writeString(folder.resolve("thin.job.json"), """
                {"format": "turnalike-job", "version": 1, "title": "pin", "units": "mm", "count": 1, "wood": {"species": "sugar maple"},
                 "pattern": {"name": "pin", "stock": {"section": "round", "size": 10, "length": 30},
                  "members": [{"kind": "cylinder", "length": 20, "diameter": 8},
                              {"kind": "taper", "length": 10, "from": 8, "to": 0.5}]}}
                """);
        Ran ran = Ran.here("export", thin.toString(), "--to", "3mf", "--out", folder.toString());
        assertThat(ran.out()).as(ran.err()).contains("less than two lines of a usual nozzle");
    }

    @Test
    void stations_stand_as_far_apart_as_asked() throws IOException {
        Ran.here("export", JOB, "--to", "stations", "--every", "1", "--out", folder.toString());
        String coarse = Files.readString(folder.resolve("stations.csv"));
        Ran.here("export", JOB, "--to", "stations", "--every", "1/8", "--out", folder.toString());
        String fine = Files.readString(folder.resolve("stations.csv"));
        assertThat(fine.lines().count()).isGreaterThan(coarse.lines().count() + 50);
        assertThat(coarse).contains("\r\n7,");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--to | step | step' is no format; give dxf, svg, stl, 3mf, stations",
                "--every | 0 | --every: must be above zero; like 5 mm",
                "--every | x | --every; ",
                "--every | 0.0001 mm | more than 20000 stations; take a longer step"
            })
    void a_bad_option_is_told_and_nothing_is_written(String option, String value, String told) {
        Ran ran = Ran.here(
                "export", JOB, option, value, "--out", folder.resolve("out").toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err()).contains(told.split("; *"));
        assertThat(folder.resolve("out")).doesNotExist();
    }
}
