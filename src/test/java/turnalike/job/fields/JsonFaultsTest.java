package turnalike.job.fields;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.language.Language;
import turnalike.units.Problem;

/** A text that is no JSON is told where and how in words for who typed it, in either language. */
class JsonFaultsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{\"a\": 1,↵ \"b\": {\"c\": 2}↵ | it ends before the { of line 1 is closed",
                "{\"a\": [1,↵2↵ | it ends before the [ of line 1 is closed",
                "{\"a\": \"bea | it ends inside a text",
                "{\"a | it ends inside a text",
                "{\"a\": 1] | a ] stands where a } should",
                "{\"a\": [1} | a } stands where a ] should",
                "{a: 1} | a key in \"\" should stand where 'a' does",
                "{\"a\": 1,} | a key in \"\" should stand where '}' does",
                "{\"a\" 1} | a : should stand where '1' does",
                "{\"a\": 1 \"b\": 2} | a comma should stand where '\"' does",
                "{\"a\": [1 2]} | a comma should stand where '2' does",
                "{\"a\": ,} | a value should stand where ',' does",
                "{\"a\": bead} | 'bead' stands without \"\"",
                "{\"a\": NaN} | 'NaN' is no number",
                "{\"a\": 1, \"a\": 2} | the key 'a' stands twice",
                "{\"a\": 1} } | something follows the closing brace",
                "{\"a\": \"one↵two\"} | a text in \"\" holds a line's end or a tab, in JSON \\n or \\t",
                "{\"a\": \"\\x\"} | after a \\ in a text only \" \\ / b f n r t or u may stand",
                "{\"a\": 007} | a number begins with a 0 too many",
                "{\"a\": 1.} | a number is not complete",
                "{\"a\": -} | a number is not complete",
            })
    void a_slip_is_told_in_plain_words(String text, String words) {
        List<Problem> problems = problems(text.replace('↵', '\n'));
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).line())
                .matches("line \\d+, column \\d+: is not JSON: .*; mend the JSON there")
                .contains(": is not JSON: " + words + ";");
        assertThat(Language.GERMAN.knows(words)).as(words).isTrue();
    }

    /** Whatever is cut off, put in or changed: no class, switch or code of the library's stands in the answer. */
    @Test
    void a_job_file_spoilt_anywhere_is_told_without_the_library_s_own_words() throws Exception {
        String job;
        try (var demo = Json.class.getResourceAsStream("/turnalike/demo/fair-wheel.job.json")) {
            job = new String(demo.readAllBytes(), StandardCharsets.UTF_8);
        }
        Random random = new Random(20261129);
        String odd = "{}[]\":,\\\n\u00011e-.x";
        int told = 0;
        for (int i = 0; i < 3000; i++) {
            int at = random.nextInt(job.length());
            char put = odd.charAt(random.nextInt(odd.length()));
            String spoilt =
                    switch (i % 3) {
                        case 0 -> job.substring(0, at);
                        case 1 -> job.substring(0, at) + put + job.substring(at);
                        default -> job.substring(0, at) + put + job.substring(at + 1);
                    };
            for (Problem each : problems(spoilt)) {
                assertThat(each.line())
                        .doesNotContain(
                                "REDACTED",
                                "Source:",
                                "(code",
                                "CTRL",
                                "JSON String",
                                "VALUE_",
                                "Unexpected",
                                "Invalid",
                                "token");
                told++;
            }
        }
        assertThat(told).isGreaterThan(1000);
    }

    private static List<Problem> problems(String text) {
        Reading reading = new Reading();
        Json.parse(text, reading);
        return reading.problems();
    }
}
