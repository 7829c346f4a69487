package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code trace --against} on a table measured from an invented leg: a taper between a foot and a block. */
class TraceAgainstCommandTest {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "title": "Legs (invented)", "units": "in", "count": 4,
             "pattern": {"name": "Leg", "stock": {"section": "round", "size": "2", "length": "13"},
              "members": [{"kind": "cylinder", "length": "60 mm", "diameter": "40 mm"},
                          {"kind": "taper", "length": "180 mm", "from": "30 mm", "to": "20 mm"},
                          {"kind": "cylinder", "length": "60 mm", "diameter": "26 mm"}]},
             "wood": {"species": "White ash", "moisture_pct": 8}}
            """;

    @TempDir
    Path folder;

    /** Every 2 mm, a dig of that depth in diameter from 140 to 160 mm; in mm, or in inches. */
    private String table(double dig, double taperThin, double unit) throws IOException {
        Random random = new Random(4);
        StringBuilder out = new StringBuilder("x,diameter\n");
        for (double x = 0; x <= 300; x += 2) {
            double diameter = x < 60 ? 40 : x < 240 ? 30 - 10 * (x - 60) / 180 - taperThin : 26;
            double there = diameter - (x > 140 && x < 160 ? dig : 0) + 0.05 * random.nextGaussian();
            out.append(String.format(Locale.ROOT, "%.5f,%.5f%n", x / unit, there / unit));
        }
        return Files.writeString(folder.resolve("leg.csv"), out).toString();
    }

    private List<String> words(double dig, double taperThin) throws IOException {
        Path job = Files.writeString(folder.resolve("leg.job.json"), JOB);
        Ran ran = Ran.here("trace", table(dig, taperThin, 1), "--error", "0.05", "--against", job.toString(), "--json");
        List<String> out = new ArrayList<>();
        ran.json().get("against").get("words").forEach(each -> out.add(each.asText()));
        return out;
    }

    @Test
    void a_dig_on_a_taper_is_told_where_it_is() throws IOException {
        assertThat(words(1.2, 0)).filteredOn(each -> each.contains("taper")).anySatisfy(each -> assertThat(each)
                .matches("Its taper is 0\\.04[5-9] in too thin at [56] [0-9/]+ in from the start end\\."));
    }

    @Test
    void none_is_told_where_there_is_none_or_the_whole_taper_is_thin() throws IOException {
        assertThat(words(0, 0)).noneMatch(each -> each.contains(" at "));
        assertThat(words(0, 1.2))
                .noneMatch(each -> each.contains(" at "))
                .anyMatch(each -> each.contains("taper is 0.04"));
    }

    @Test
    void figures_are_millimetres_unless_told_and_a_mistaken_unit_is_asked_about() throws IOException {
        Path job = Files.writeString(folder.resolve("leg.job.json"), JOB);
        Ran inches = Ran.here("trace", table(0, 0, 25.4), "--against", job.toString());
        assertThat(inches.code()).isZero();
        assertThat(inches.out()).contains("if its figures were in inches: say --units in");
        Ran told = Ran.here("trace", table(0, 0, 25.4), "--units", "in", "--against", job.toString());
        assertThat(told.out()).doesNotContain("say --units");
    }
}
