package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptPiece;
import turnalike.store.StoreFile;

/** {@code price} on an invented order of eight dowels without a blank to spare. */
class PriceCommandTest {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "title": "Dowels (invented)", "units": "mm", "count": 8, "loss_pct": 0,
             "pattern": {"name": "Dowel", "stock": {"section": "round", "size": 40, "length": 250},
              "members": [{"kind": "cylinder", "length": 200, "diameter": 30}]},
             "wood": {"species": "White ash", "moisture_pct": 8}}
            """;
    private static final String TIMES = """
            stage;minutes;pieces;note
            design;1:15;0;
            milling;40;8;
            turning;20;;first
            turning;"18,5";;
            turning;17;1;
            turning;16,5;;
            """;

    @TempDir
    Path folder;

    private Ran run(String times, String... more) throws IOException {
        Path job = Files.writeString(folder.resolve("dowel.job.json"), JOB);
        Path file = Files.writeString(folder.resolve("times.csv"), times);
        String[] all = new String[more.length + 4];
        System.arraycopy(new String[] {"price", job.toString(), "--times", file.toString()}, 0, all, 0, 4);
        System.arraycopy(more, 0, all, 4, more.length);
        return Ran.here(all);
    }

    @Test
    void times_alone_where_no_rate_is_told() throws IOException {
        JsonNode json = run(TIMES, "--json").json();
        assertThat(json.get("blanks").asInt()).isEqualTo(8);
        assertThat(json.has("quote")).isFalse();
        JsonNode stages = json.get("stages");
        assertThat(stages.get(0).get("total_minutes").asDouble()).isEqualTo(75);
        assertThat(stages.get(1).get("total_minutes").asDouble()).isEqualTo(40);
        JsonNode turning = stages.get(2);
        assertThat(turning.get("timed_minutes").asDouble()).isCloseTo(72, within(1e-9));
        assertThat(turning.get("doubling_pct").asDouble()).isBetween(88.0, 93.0);
        // Four more, each less than the last timed.
        assertThat(turning.get("total_minutes").asDouble()).isBetween(72 + 4 * 14.0, 72 + 4 * 16.5);
        assertThat(turning.get("from_minutes").asDouble())
                .isLessThan(turning.get("total_minutes").asDouble());
        assertThat(json.get("total_minutes").asDouble()).isGreaterThan(75 + 40 + 72);
    }

    @Test
    void a_quote_in_words_and_on_paper_with_an_invoice_that_adds_up() throws IOException {
        Path out = folder.resolve("out");
        Ran ran = run(
                TIMES,
                "--rate",
                "30",
                "--other",
                "wood=20",
                "--tax",
                "7.5",
                "--currency",
                "EUR",
                "--out",
                out.toString(),
                "--paper",
                "a4");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains(
                        "8 of Dowel, White ash at 8 %, 200 mm long",
                        "design", "75 min, once for the order", "EUR ", "tax in it");
        assertThat(out.resolve("quote-a4.pdf")).isNotEmptyFile();
        assertThat(Files.readString(out.resolve("quote-a4.svg"))).contains("one piece of them, before tax");
        double sum = Files.readAllLines(out.resolve("invoice.csv")).stream()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[4]))
                .sum();
        String told = String.format(Locale.ROOT, "EUR %.2f", sum);
        assertThat(ran.out()).contains(told);
    }

    @Test
    void a_markup_is_spread_into_the_prices_and_told_to_the_turner_alone() throws IOException {
        Path out = folder.resolve("out");
        Ran ran = run(TIMES, "--rate", "30", "--other", "wood=20", "--markup", "10", "--out", out.toString());
        assertThat(ran.out()).contains("The markup of 10 %", "the quote has no line of it", " h at 33.00");
        assertThat(Files.readString(out.resolve("invoice.csv")))
                .contains("wood,1,,22.00,22.00")
                .doesNotContain("markup");
        assertThat(Files.readString(out.resolve("quote-a4.svg"))).doesNotContain("arkup");
        JsonNode quote = run(TIMES, "--rate", "30", "--other", "wood=20", "--markup", "10", "--json")
                .json()
                .get("quote");
        double net = Double.parseDouble(quote.get("net").asText());
        assertThat(Double.parseDouble(quote.get("markup").asText())).isCloseTo(net / 11, within(0.06));
    }

    @Test
    void without_a_table_the_jobs_own_times_and_charges_count() throws IOException {
        String own = JOB.strip().replaceFirst("}$", """
                , "times": [{"stage": "turning", "minutes": 20}, {"stage": "turning", "minutes": 16}],
                "price": {"rate": 30, "tax_pct": 20, "currency": "EUR", "others": [{"item": "wood", "amount": 20}]}}""");
        Path job = Files.writeString(folder.resolve("own.job.json"), own);
        JsonNode quote = Ran.here("price", job.toString(), "--json").json().get("quote");
        // Eight at the mean of 18 minutes are 2.4 h, 72 in money; the wood and a fifth of tax on both.
        assertThat(quote.get("total").asText()).isEqualTo("110.40");
        assertThat(Ran.here("price", job.toString(), "--rate", "60", "--tax", "0", "--json")
                        .json()
                        .get("quote")
                        .get("total")
                        .asText())
                .isEqualTo("164.00");
        Path bare = Files.writeString(folder.resolve("bare.job.json"), JOB);
        assertRefused(Ran.here("price", bare.toString()), "--times: nothing is timed yet");
    }

    @Test
    void a_kept_jobs_log_counts() throws IOException {
        Path job = Files.writeString(folder.resolve("dowel.job.json"), JOB);
        Path file = folder.resolve("shop.db");
        Ran.here("keep", job.toString(), "--store", file.toString());
        String id;
        try (JobStore store = StoreFile.open(file, Clock.systemUTC())) {
            JobId kept = store.list().get(0).id();
            id = kept.text();
            KeptPiece first = KeptPiece.unmeasured("1").with(Duration.ofMinutes(24));
            store.edit(kept, now -> Edit.of("log piece 1", Change.of(first)));
        }
        JsonNode answer =
                Ran.here("price", id, "--store", file.toString(), "--json").json();
        assertThat(answer.get("stages").get(0).get("stage").asText()).isEqualTo("turning");
        assertThat(answer.get("total_minutes").asDouble()).isCloseTo(8 * 24, within(1e-9));
        assertRefused(Ran.here("price", "zzzz-zzzz-zzzz", "--store", file.toString()), "ID: ");
    }

    @Test
    void bad_input_is_named_with_its_place() throws IOException {
        assertRefused(run(""), "the file is empty");
        assertRefused(run("stage,minutes\n"), "there is a header and no time");
        assertRefused(run("stage,pieces\nturning,1\n"), "no column 'minutes'");
        assertRefused(run("stage,minutes\nturning,-4\n"), "line 2, column minutes: '-4' is no time");
        assertRefused(run("stage,minutes\nturning,43201\n"), "is no time");
        assertRefused(run("stage,minutes\nturning,1:75\n"), "is no time");
        assertRefused(run("stage,minutes\n,4\n"), "line 2, column stage: the stage is not named");
        assertRefused(run("stage,minutes,pieces\nturning,4,2.5\n"), "line 2, column pieces: '2.5' is no count");
        assertRefused(run(TIMES, "--rate", "-3"), "--rate: '-3' is no amount of money");
        assertRefused(run(TIMES, "--rate", "30", "--tax", "501"), "--tax: '501' is no share");
        assertRefused(run(TIMES, "--rate", "30", "--other", "wood=ten"), "--other wood: 'ten' is no amount");
        assertRefused(run(TIMES, "--other", "wood=10"), "--rate: is missing");
    }

    private static void assertRefused(Ran ran, String said) {
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(said).hasLineCount(1);
    }
}
