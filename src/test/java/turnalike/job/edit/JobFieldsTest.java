package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.job.kept.JobText;
import turnalike.units.UnitSystem;

class JobFieldsTest {
    static JobText demo() {
        try (InputStream in = JobFieldsTest.class.getResourceAsStream("/turnalike/demo/fair-wheel.job.json")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return JobText.read(text).text().orElseThrow();
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static Job after(JobText text, Map<String, String> values) {
        JobText.Read read = JobEdit.fields(values).on(text);
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow().job();
    }

    @Test
    void numbers_lengths_and_words_are_set_by_their_path() {
        Job job = after(
                demo(),
                Map.of("count", "20", "tolerances.mark", "0.5 mm", "title", "Other", "wood.moisture_pct", "9,5"));
        assertThat(job.count()).isEqualTo(20);
        assertThat(job.tolerances().mark().mm()).isEqualTo(0.5);
        assertThat(job.title()).isEqualTo("Other");
        assertThat(job.wood().working().how()).contains("9.5");
    }

    @Test
    void an_empty_field_is_taken_out() {
        Job job = after(demo(), Map.of("allowances.sizing", "", "allowances.sanding", ""));
        assertThat(job.cutting().sizing().mm()).isZero();
    }

    @Test
    void a_number_that_is_none_is_told_at_its_field() {
        JobText.Read read = JobEdit.fields(Map.of("count", "a dozen")).on(demo());
        assertThat(read.problems()).singleElement().satisfies(problem -> assertThat(problem.where())
                .isEqualTo("count"));
    }

    @Test
    void a_density_takes_the_place_of_a_species_and_back() {
        JobText dense = JobEdit.fields(Map.of("wood.density_kg_m3", "700"))
                .on(demo())
                .text()
                .orElseThrow();
        assertThat(dense.job().wood().density().kgPerM3()).isEqualTo(700);
        assertThat(after(dense, Map.of("wood.species", "Black cherry"))
                        .wood()
                        .working()
                        .how())
                .contains("Black cherry");
    }

    @Test
    void another_frame_starts_from_sizes_that_can_be() {
        for (String kind : new String[] {"row", "legs", "wheel"}) {
            assertThat(after(demo(), Map.of("frame.kind", kind)).frame()).isPresent();
            JobText bare =
                    JobEdit.fields(Map.of("frame.kind", "")).on(demo()).text().orElseThrow();
            assertThat(bare.job().frame()).isEmpty();
            assertThat(after(bare, Map.of("frame.kind", kind)).frame()).isPresent();
        }
    }

    @Test
    void other_units_change_no_size() {
        JobText metric = new UnitsChange(UnitSystem.METRIC).on(demo()).text().orElseThrow();
        assertThat(metric.job().units()).isEqualTo(UnitSystem.METRIC);
        assertThat(metric.job().pattern()).isEqualTo(demo().job().pattern());
        assertThat(metric.job().tolerances()).isEqualTo(demo().job().tolerances());
        assertThat(metric.job().frame()).isEqualTo(demo().job().frame());
        assertThat(metric.job().title()).isEqualTo(demo().job().title());
        JobText back = new UnitsChange(UnitSystem.INCH).on(metric).text().orElseThrow();
        assertThat(back.job()).isEqualTo(demo().job());
    }

    @Test
    void a_run_turned_twice_is_the_run() {
        JobText once = new RunMirrored().on(demo()).text().orElseThrow();
        assertThat(once.job().pattern()).isEqualTo(demo().job().pattern().mirrored());
        JobText twice = new RunMirrored().on(once).text().orElseThrow();
        assertThat(twice.job()).isEqualTo(demo().job());
    }
}
