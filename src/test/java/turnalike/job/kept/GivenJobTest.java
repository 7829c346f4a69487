package turnalike.job.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.Seeds;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;

class GivenJobTest {
    private static final JobId ID = JobId.parse("7k3m-2x9q-ht4d").get();

    private static GivenJob read(String text) {
        GivenJob.Read read = GivenJob.read(text);
        assertThat(read.problems()).isEmpty();
        return read.job().orElseThrow();
    }

    @Test
    void carried_away_and_brought_back_it_is_the_same_to_the_byte() {
        Seeds.each(60, random -> {
            GivenJob given = new GivenJob(ID, Histories.draw(random, 1 + random.nextInt(40)));
            String text = given.format();
            assertThat(GivenJob.claims(text)).isTrue();
            assertThat(read(text)).isEqualTo(given);
            assertThat(read(text).format()).isEqualTo(text);
        });
    }

    @Test
    void the_jobs_text_comes_back_to_the_letter() {
        JobText text = Histories.job("Spacing kept", 22.5);
        GivenJob given = new GivenJob(ID, List.of(new Replay().edit(Instant.EPOCH, Edit.of("keep", Change.of(text)))));
        assertThat(read(given.format()).kept().text().text()).isEqualTo(text.text());
    }

    /** Other programs write 1.50 as 1.5 and 4E+2 as 400; what the job says is the same. */
    @Test
    void another_programs_printing_makes_no_difference() {
        Seeds.each(20, random -> {
            GivenJob given = new GivenJob(ID, Histories.draw(random, 20));
            String reprinted = reprinted(given.format());
            assertThat(read(reprinted).kept().pieces()).isEqualTo(given.kept().pieces());
            assertThat(read(reprinted).kept().text()).isEqualTo(given.kept().text());
        });
    }

    private static String reprinted(String json) {
        try {
            ObjectMapper plain = new ObjectMapper();
            return plain.writeValueAsString(plain.readValue(json, TreeMap.class));
        } catch (JsonProcessingException notJson) {
            throw new AssertionError(notJson);
        }
    }

    @Test
    void a_person_can_read_the_job_and_its_pieces_in_it() {
        Replay replay = new Replay();
        replay.edit(Instant.EPOCH, Edit.of("keep", Change.of(Histories.job("Leg", 22.5))));
        Measures measures = Measures.ofMass(Mass.ofGrams(243.1)).with(Column.diameter(1), Length.ofMm(22));
        KeptPiece piece = KeptPiece.unmeasured("7").with(measures);
        replay.edit(Instant.EPOCH, Edit.of("log piece 7", Change.of(piece)));
        assertThat(new GivenJob(ID, replay.history()).format())
                .contains("\"id\" : \"7k3m-2x9q-ht4d\"")
                .contains("\"title\" : \"Leg\"")
                .contains("\"piece\" : \"7\",\n      \"mass_g\" : 243.1,\n      \"d1_mm\" : 22");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"mass_g\" : 243.1 | \"mass_g\" : 244.1 | pieces: is not what the history comes to",
                "\"title\" : \"Leg\" | \"title\" : \"Log\" | job: is not what the history comes to",
                "\"version\" : 1,\\n  \"id\" | \"version\" : 2,\\n  \"id\" | format: is not turnalike-kept-job, version 1",
                "\"photos\" | \"fotos\" | given job: has an unknown key 'fotos'",
                "7k3m-2x9q-ht4d | seven | id: is no job's id",
                "\"what\" : \"log | \"undo\" : 1, \"what\" : \"log | history: step 2: there is nothing to undo or redo",
                "1970-01-01T00:00:00Z | yesterday | history: step 1: 'at' is no time, was 'yesterday'",
                "\"history\" | \"hist\" | history: is missing or no list",
                "\"now\" | \"then\" | history: step 2: 'now' is missing"
            })
    void a_file_that_was_tampered_with_is_refused(String from, String to, String line) {
        Replay replay = new Replay();
        replay.edit(Instant.EPOCH, Edit.of("keep", Change.of(Histories.job("Leg", 22.5))));
        KeptPiece piece = KeptPiece.unmeasured("7").with(Measures.ofMass(Mass.ofGrams(243.1)));
        replay.edit(Instant.EPOCH, Edit.of("log piece 7", Change.of(piece)));
        String text = new GivenJob(ID, replay.history()).format();
        String tampered = text.replaceFirst(Pattern.quote(from.replace("\\n", "\n")), to.replace("\\n", "\n"));
        assertThat(tampered).isNotEqualTo(text);
        assertThat(GivenJob.read(tampered).problems())
                .extracting(Problem::line)
                .singleElement()
                .asString()
                .startsWith(line);
    }

    @Test
    void cutting_it_anywhere_never_throws() {
        String text = new GivenJob(ID, Histories.draw(new Random(1), 4)).format();
        for (int end = 0; end < text.length() - 2; end++) {
            assertThat(GivenJob.read(text.substring(0, end)).job()).isEmpty();
        }
    }

    @Test
    void a_job_file_does_not_claim_to_be_one() {
        assertThat(GivenJob.claims(Histories.job("Leg", 22).text())).isFalse();
        assertThat(GivenJob.claims("")).isFalse();
        assertThat(GivenJob.claims("[1]")).isFalse();
    }

    /** A tenth of a gram is one digit; every double comes back; no exponent that a person would stumble over. */
    @Test
    void figures_keep_every_digit_and_no_more() {
        assertThat(KeptJson.digits(243.1)).hasToString("243.1");
        assertThat(KeptJson.digits(22)).hasToString("22");
        assertThat(KeptJson.digits(1000)).hasToString("1000");
        assertThat(KeptJson.digits(2e-3)).hasToString("0.002");
        Random random = new Random(1);
        for (int i = 0; i < 2000; i++) {
            double any = Double.longBitsToDouble(random.nextLong() & Long.MAX_VALUE);
            if (Double.isFinite(any)) {
                assertThat(KeptJson.digits(any).doubleValue()).isEqualTo(any);
            }
        }
    }

    @Test
    void what_cannot_be_is_not_made() {
        assertThatThrownBy(() -> new JobId("7K3M-2x9q-ht4d")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new GivenJob(ID, List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Edit.of("nothing")).isInstanceOf(IllegalArgumentException.class);
        KeptPiece seven = KeptPiece.unmeasured("7");
        assertThatThrownBy(() -> Edit.of("twice", Change.of(seven), Change.of(seven)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> seven.with(Measures.ofMass(Mass.ofGrams(1)), new FromPhoto("a.jpg", Optional.empty())))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PhotoResult.of("a.jpg", "[1]")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_figure_taken_by_hand_replaces_the_photographs() {
        FromPhoto photo = new FromPhoto("a.jpg", Optional.of(Length.ofMm(0.3)));
        Measures length = Measures.NONE.with(Column.LENGTH, Length.ofMm(400));
        KeptPiece read = KeptPiece.unmeasured("7").with(length, photo);
        assertThat(read.fromPhoto()).containsEntry(Column.LENGTH, photo);
        KeptPiece taken = read.with(Measures.NONE.with(Column.LENGTH, Length.ofMm(400.2)));
        assertThat(taken.fromPhoto()).isEmpty();
        assertThat(taken.piece().length()).contains(Length.ofMm(400.2));
    }
}
