package turnalike.cli.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;
import turnalike.language.Language;

/** What the one-screen summary of a match says of roundness, legs and left-over pieces; the figures themselves are checked in {@code job}. */
class RoundSummaryTest {
    @TempDir
    Path folder;

    private static String job(String frame) {
        return """
                {"format": "turnalike-job", "version": 1, "units": "mm",
                 "pattern": {"name": "Spoke", "stock": {"section": "square", "size": 40, "length": 160},
                  "members": [{"kind": "tenon", "length": 20, "diameter": 16}, {"kind": "cylinder", "length": 100, "diameter": 30},
                   {"kind": "tenon", "length": 10, "diameter": 12}]},
                 "wood": {"density_kg_m3": 700}, "tolerances": {"mass_pct": 5, "scale_g": 1}, "frame": %s}
                """.formatted(frame);
    }

    private static String pieces(int count) {
        StringBuilder csv = new StringBuilder("piece,mass_g,length\n");
        for (int i = 1; i <= count; i++) {
            csv.append(String.format(
                    Locale.ROOT,
                    "%d,%.1f,%.2f%n",
                    i,
                    50 + i * 37 % 11 * 0.1,
                    130 + i * 29 % 17 * 0.05 + i * i * 0.007));
        }
        return csv.toString();
    }

    private String summary(String frame, String csv) throws IOException {
        Path job = Files.writeString(folder.resolve("x.job.json"), job(frame));
        Path pieces = Files.writeString(folder.resolve("x.csv"), csv);
        Ran ran = Ran.here("match", job.toString(), pieces.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).doesNotContain("Optional", "null", "NaN");
        return ran.out();
    }

    @Test
    void a_wheel_tells_rim_trade_off_rocking_grade_and_next_set() throws IOException {
        String text = summary(
                "{\"kind\": \"wheel\", \"places\": 6, \"hub_radius\": 60, \"rpm\": 60, \"rocking\":"
                        + " {\"period_s\": 60, \"inertia_g_mm2\": 1e7, \"rests_at_deg\": 90}}",
                pieces(8));
        assertThat(text)
                .contains("hub and rim by rocking 11.2 g·mm toward 90°")
                .containsPattern("Round      run-out \\d+\\.\\d\\d mm \\(0\\.\\d{3} in\\) about the rim's best centre")
                .containsPattern("rim at 160\\.\\d mm \\(6 \\d+/\\d+ in\\) from its centre")
                .containsPattern(
                        "Boring     with \\d seats bored deeper that gauge would read \\S+ mm \\(.*\\) at most, the run-out be .* g·mm left:")
                .containsPattern(
                        "a gauge held to the rim as it turns on its axle would read \\d\\.\\d\\d mm \\(\\S+ in\\) at most; seats"
                                + " off by up to 0.25 mm \\(0.01 in\\) add up to 0.5 mm \\(0.02 in\\), bored or not\n")
                .containsPattern("pieces \\d(, \\d){5} from place 1 on;\n +seats \\d by \\d\\.\\d+ mm")
                .contains("Trade-off  ", ", as placed")
                .containsPattern("at 60 turns a minute that is balance grade G\\S+, for information")
                .containsPattern("next set: keep pieces \\d, \\d; turn 4 more of \\d\\d to \\d\\d g")
                .contains("another order has less", "places the best balanced", "--strict searches below");
        assertThat(text.lines()).hasSizeLessThan(32);
    }

    /** The gauge reads what it reads, and boring brings it down by more than seats are off by anyhow: else nobody would bore. */
    @Test
    void boring_is_told_where_it_brings_more_than_a_seat_is_off_by() throws IOException {
        String wheel = "{\"kind\": \"wheel\", \"places\": 6, \"hub_radius\": 60}";
        String rough = summary(wheel, pieces(8));
        Matcher reads = Pattern.compile("would read (\\d\\.\\d+) mm").matcher(rough);
        assertThat(reads.find()).isTrue();
        double now = Double.parseDouble(reads.group(1));
        int ways = 0;
        for (; reads.find(); ways++) {
            assertThat(Double.parseDouble(reads.group(1))).isLessThan(now - 0.25 + 0.005);
        }
        assertThat(ways).isPositive();
        StringBuilder csv = new StringBuilder("piece,mass_g,length\n");
        for (int i = 1; i <= 8; i++) {
            csv.append(String.format(Locale.ROOT, "%d,%.1f,%.2f%n", i, 50 + i * 37 % 11 * 0.1, 130 + i * 5 % 7 * 0.02));
        }
        assertThat(summary(wheel, csv.toString())).contains("would read 0.").doesNotContain("Boring");
    }

    /** Beyond its rim a helm has handles: the lengths measured tell where their tips lie, and its rim is no part of the spokes' ends. */
    @Test
    void a_helm_s_tips_are_not_called_its_rim() throws IOException {
        String helm = job("{\"kind\": \"wheel\", \"places\": 6, \"hub_radius\": 60, \"run_out\": 0.01}")
                .replace(
                        "\"tenon\", \"length\": 10, \"diameter\": 12",
                        "\"cylinder\", \"length\": 10, \"diameter\": 12");
        Path file = Files.writeString(folder.resolve("helm.job.json"), helm);
        Path csv = Files.writeString(folder.resolve("helm.csv"), pieces(8));
        Path sheets = folder.resolve("sheets");
        Ran ran = Ran.here("match", file.toString(), csv.toString(), "--out", sheets.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        String text = ran.out();
        assertThat(text)
                .contains("about the tips' best centre", "held to the tips as the wheel turns on its axle")
                .containsPattern("tips \\S+ mm \\(.*\\) from their centre, which lies")
                .contains("the tips ");
        assertThat(text.replaceAll("(?s)Written.*", "")).doesNotContain("the rim", "rim at");
        assertThat(Files.readString(sheets.resolve("set-record-a4.svg"))).contains("run-out of the tips");
        assertThat(Language.GERMAN.say("Run-out of the tips")).isEqualTo("Rundlauffehler der Spitzen");
        String unmet =
                "the tips run out by more than the 0.01 mm (0.001 in) you want: no way of boring was found with as good a"
                        + " balance, so none is advised; what boring would cost is told beside it";
        for (String note : List.of(
                unmet,
                unmet.replace("tips run", "rim runs"),
                "the wheel's roundness is not known: no length measured on piece 7",
                "the wheel's roundness is not judged: the seat of place 3 is deeper than any slip; check it",
                "the wheel's roundness is not judged: piece 7 is no longer than its tenons; measure it again",
                "the wheel's roundness is not judged: piece 7 is far from as long as the others; measure it again")) {
            assertThat(Language.GERMAN.knows(note)).as(note).isTrue();
        }
    }

    /** All but two weigh the same and those two hardly more: what the scale cannot see by far is told by no digits of chance. */
    @Test
    void a_trade_off_tells_no_digits_that_the_scale_cannot_see() throws IOException {
        StringBuilder csv = new StringBuilder("piece,mass_g,length\n");
        for (int i = 1; i <= 6; i++) {
            csv.append(String.format(Locale.ROOT, "%d,%.3f,%.2f%n", i, i < 3 ? 50.004 : 50, 130 + i * i * 0.05));
        }
        String text = summary("{\"kind\": \"wheel\", \"places\": 6, \"hub_radius\": 60}", csv.toString());
        assertThat(text).containsPattern("Trade-off .*\n +under \\d\\S* g·mm with a run-out of \\d");
        assertThat(text).doesNotContain("0.000 g·mm");
    }

    /** All are as long as one another, to the step that they were measured in. */
    @Test
    void a_run_out_is_never_told_as_nothing() throws IOException {
        StringBuilder csv = new StringBuilder("piece,mass_g,length\n");
        for (int i = 1; i <= 6; i++) {
            csv.append(String.format(Locale.ROOT, "%d,%.1f,130%n", i, 50 + i * 0.1));
        }
        String text = summary("{\"kind\": \"wheel\", \"places\": 6, \"hub_radius\": 60}", csv.toString());
        assertThat(text).contains("run-out under 0.01 mm (0.001 in) about").doesNotContainPattern("\\b0 mm|\\b0 in");
        assertThat(Language.GERMAN.say("under 0.001 in (0.01 mm)")).isEqualTo("unter 0,001 Zoll (0,01 mm)");
    }

    @Test
    void legs_tell_their_groups() throws IOException {
        String text = summary("{\"kind\": \"legs\", \"places\": 4}", pieces(9));
        assertThat(text)
                .contains("Set        2 groups of 4")
                .containsPattern("group 1: pieces 1, \\d, \\d, \\d \\(\\d\\d to \\d\\d g\\)|group 1: pieces 2")
                .containsPattern("spare: piece \\d\n")
                .containsPattern("next set: keep piece \\d; turn 3 more of")
                .contains("no other grouping has less");
    }

    @Test
    void a_group_that_all_weighs_alike_is_told_by_one_figure() throws IOException {
        String alike = "piece,mass_g\n1,142\n2,142\n3,142\n4,142\n5,142\n";
        String text = summary("{\"kind\": \"legs\", \"places\": 4}", alike);
        assertThat(text).contains("group 1: pieces 1, 2, 3, 4 (142 g each)").doesNotContain("142 to 142");
        assertThat(Language.GERMAN.say("Group 1: pieces 1, 2, 3, 4 (142 g each)"))
                .isEqualTo("Gruppe 1: Stücke 1, 2, 3, 4 (je 142 g)");
    }

    @Test
    void a_row_tells_its_next_set() throws IOException {
        assertThat(summary("{\"kind\": \"row\", \"places\": 3}", pieces(6)))
                .containsPattern("next set: keep pieces \\d, \\d, \\d; they make a set as they are");
    }
}
