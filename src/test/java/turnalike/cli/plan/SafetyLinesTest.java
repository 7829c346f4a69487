package turnalike.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;

/** Where work can hurt somebody it is said, and where it cannot it is not. */
class SafetyLinesTest {
    private static final String WHEEL =
            "\"frame\": {\"kind\": \"wheel\", \"places\": 4, \"hub_radius\": 80, \"hub_seat\": 10, \"rim_width\": 40},";

    @TempDir
    private Path folder;

    /** A rod between two ends of that diameter. */
    private Path job(String more, String ends) throws IOException {
        return Files.writeString(folder.resolve("x.job.json"), """
                {"format": "turnalike-job", "version": 1, "units": "mm", "count": 4, %s
                 "pattern": {"name": "Rod", "stock": {"section": "square", "size": 40, "length": 190},
                  "members": [%s, {"kind": "cylinder", "length": 120, "diameter": 30}]},
                 "wood": {"species": "White ash", "moisture_pct": 8}}
                """.formatted(more, ends));
    }

    private static String tenon(int diameter) {
        return "{\"kind\": \"tenon\", \"length\": 20, \"diameter\": %d}".formatted(diameter);
    }

    private static String said(String... command) {
        Ran ran = Ran.here(command);
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out();
    }

    private String plan(String more, String ends) throws IOException {
        return said("plan", job(more, ends).toString());
    }

    @Test
    void an_end_too_thin_to_be_driven() throws IOException {
        assertThat(plan("", tenon(6)))
                .contains("thinner than a pencil: no drive centre bites in that; drive the far end");
        assertThat(plan("", tenon(16))).doesNotContain("no drive centre bites");
    }

    @Test
    void a_rim_that_nothing_enters() throws IOException {
        assertThat(plan(WHEEL, tenon(16))).contains("glue alone does not hold end grain");
        assertThat(plan(WHEEL.replace(", \"rim_width\": 40", ""), tenon(16))).doesNotContain("end grain");
    }

    @Test
    void a_joint_that_bears_a_person() throws IOException {
        assertThat(plan("\"home\": {\"dry_pct\": 6, \"damp_pct\": 12},", tenon(16)))
                .contains("Where a joint bears a person, test it before it is used");
    }

    @Test
    void a_printed_master_that_would_burst_on_the_lathe() throws IOException {
        Path job = job("", tenon(16));
        assertThat(said(
                        "export",
                        job.toString(),
                        "--out",
                        folder.resolve("export").toString()))
                .contains("keep it off the lathe, where plastic may burst");
    }

    @Test
    void a_record_of_a_wheel_that_turns_and_the_dust_and_the_chucks_key() throws IOException {
        Path job = job(WHEEL + "\"turning\": {\"held\": \"chuck\"},", tenon(16));
        Path pieces = Files.writeString(folder.resolve("x.csv"), "piece,mass_g\n1,70\n2,71\n3,70\n4,71\n");
        Path out = folder.resolve("out");
        said("match", job.toString(), pieces.toString(), "--out", out.toString());
        assertThat(words(out, "set-record"))
                .contains(
                        "Keep hands, sleeves and hair clear of a spinning wheel", "stand out of the plane of the rim");
        said("plan", job.toString(), "--out", out.toString());
        assertThat(words(out, "cut-order"))
                .contains("keep cloth off the lathe, catch the dust", "key out of the chuck, one turn by hand");
    }

    /** What the sheet's pictures say, line after line in one. */
    private static String words(Path folder, String sheet) throws IOException {
        StringBuilder out = new StringBuilder();
        try (var files = Files.list(folder)) {
            for (Path each : files.filter(file -> {
                        String name = file.getFileName().toString();
                        return name.startsWith(sheet) && name.endsWith(".svg");
                    })
                    .sorted()
                    .toList()) {
                out.append(Files.readString(each)
                                .replaceAll("<title>[^<]*</title>", "")
                                .replaceAll("<[^>]+>", " ")
                                .replaceAll("\\s+", " "))
                        .append(' ');
            }
        }
        return out.toString();
    }
}
