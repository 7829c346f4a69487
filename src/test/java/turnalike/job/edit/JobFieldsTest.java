package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import turnalike.job.CheckPlace;
import turnalike.job.Job;
import turnalike.job.kept.JobText;
import turnalike.job.set.FrameKind;
import turnalike.job.set.PieceLength;
import turnalike.units.Length;
import turnalike.units.Speed;
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
    void lists_are_typed_with_semicolons_and_pairs_a_line_each() {
        Map<String, String> values = Map.of(
                "settings.pin", "1 1/4; 38,5 mm",
                "settings.stick", "5; 7 ring crest",
                "settings.stick_marks", "notches",
                "turning.speeds", "500, 900; 1500",
                "turning.max_rpm", "1500",
                "checks", "upper neck ; 3 1/4\r\nbelly, at its fattest ; 10",
                "likeness.noted", "colour ; 0,5\r\ngrain, at the neck;2",
                "frame.given_moments", "1200 ; 90\n300;45");
        Job job = after(demo(), values);
        assertThat(job.wishes().pinned()).extracting(Length::mm).containsExactly(31.75, 38.5);
        assertThat(job.wishes().onTheStick()).containsExactlyInAnyOrder(5, 9);
        assertThat(job.wishes().notched()).isTrue();
        assertThat(job.lathe().steps()).extracting(Speed::rpm).containsExactly(500.0, 900.0, 1500.0);
        assertThat(job.checks()).extracting(CheckPlace::name).containsExactly("upper neck", "belly, at its fattest");
        assertThat(job.likeness().noted()).isEqualTo(Map.of("colour", 0.5, "grain, at the neck", 2.0));
        JobText text = JobEdit.fields(values).on(demo()).text().orElseThrow();
        assertThat(text.text()).contains("{\"g_mm\": 1200, \"at_deg\": 90}");
        Map<String, String> written = TypedFields.job(text);
        assertThat(written)
                .containsEntry("settings.pin", "1 1/4; 38,5 mm")
                .containsEntry("turning.speeds", "500; 900; 1500")
                .containsEntry("checks", "upper neck ; 3 1/4\nbelly, at its fattest ; 10")
                .containsEntry("likeness.noted", "colour ; 0.5\ngrain, at the neck ; 2")
                .containsEntry("frame.given_moments", "1200 ; 90\n300 ; 45");
        // What a form shows and sends again is no edit.
        assertThat(((JobFields) JobEdit.fields(values).narrowed(text)).values().keySet())
                .isSubsetOf("settings.stick", "turning.speeds", "likeness.noted", "frame.given_moments");
        assertThat(JobEdit.fields(written).narrowed(text)).isEqualTo(JobEdit.fields(Map.of()));
        JobText cleared = JobEdit.fields(Map.of(
                        "settings.pin",
                        "",
                        "settings.stick",
                        "",
                        "settings.stick_marks",
                        "",
                        "frame.given_moments",
                        " "))
                .on(text)
                .text()
                .orElseThrow();
        assertThat(cleared.text()).doesNotContain("settings", "given_moments");
    }

    /** Three values a line, whole in the file and back; a line too short or too long is refused by its place. */
    @Test
    void several_lengths_are_typed_a_line_each() throws IOException {
        JobText row = JobText.read(Files.readString(Path.of("src/test/resources/turnalike/job/good/row.job.json")))
                .text()
                .orElseThrow();
        Map<String, String> values = Map.of(
                "frame.lengths", "2 ; 7 1/2 ; 5\r\n2;8,5;1", "frame.lengths_stand", "in_turn", "frame.places", "6");
        JobText text = JobEdit.fields(values).on(row).text().orElseThrow();
        assertThat(text.job().frame().orElseThrow().lengths())
                .containsExactly(
                        new PieceLength(2, Length.ofInches(7.5), 5), new PieceLength(2, Length.ofInches(8.5), 1));
        Map<String, String> written = TypedFields.job(text);
        assertThat(written)
                .containsEntry("frame.lengths", "2 ; 7 1/2 ; 5\n2 ; 8,5 ; 1")
                .containsEntry("frame.lengths_stand", "in_turn");
        assertThat(JobEdit.fields(written).narrowed(text)).isEqualTo(JobEdit.fields(Map.of()));
        assertThat(JobEdit.fields(Map.of("frame.lengths", "0 ; 3")).on(row).problems())
                .anyMatch(problem -> problem.line().contains("lengths 1: count: is missing"));
        assertThat(JobEdit.fields(Map.of("frame.lengths", "0 ; 3 ; 4 ; 5"))
                        .on(row)
                        .problems())
                .anyMatch(problem -> problem.line().contains("lengths 1: count: was '4 ; 5'"));
        assertThat(ListFields.find("frame.lengths").orElseThrow().withLengths("0 ; 3 ; 4", each -> each + " in"))
                .isEqualTo("0 ; 3 in ; 4");
    }

    @Test
    void a_rocking_test_is_typed_field_by_field_and_goes_with_its_last() {
        Map<String, String> rocking = Map.of(
                "frame.rocking.period_s", "6,4",
                "frame.rocking.rests_at_deg", "120",
                "frame.rocking.inertia_g_mm2", "3.68e8");
        JobText text = JobEdit.fields(rocking).on(demo()).text().orElseThrow();
        assertThat(text.text()).contains("\"period_s\": 6.4");
        Map<String, String> none = new HashMap<>(rocking);
        none.replaceAll((key, value) -> "");
        assertThat(JobEdit.fields(none).on(text).text().orElseThrow().text()).doesNotContain("rocking");
    }

    @Test
    void a_list_with_an_entry_that_is_none_is_told_at_it() {
        JobText.Read read =
                JobEdit.fields(Map.of("settings.pin", "1 1/4; wide")).on(demo());
        assertThat(read.problems()).singleElement().satisfies(problem -> assertThat(problem.where())
                .isEqualTo("settings: pin 2"));
        assertThat(JobEdit.fields(Map.of("turning.speeds", "500; fast"))
                        .on(demo())
                        .problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.where()).isEqualTo("turning: speeds: step 2"));
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
        for (FrameKind each : FrameKind.values()) {
            String kind = each.word();
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

    /** Bare numbers under every key that holds a length. */
    @Test
    void other_units_change_no_length_whatever_key_it_stands_under() {
        JobText inch = JobText.read("""
                {"format": "turnalike-job", "version": 1, "units": "in", "counterweight_radius": 14,
                 "pattern": {"stock": {"section": "square", "size": 2, "length": 9},
                  "members": [{"kind": "tenon", "length": 1, "diameter": 0.75, "hole": 0.76, "chamfer": 0.0625},
                   {"kind": "bead", "length": 1, "root": 1, "crown": 1.5}, {"kind": "cove", "length": 1, "rim": 1.25, "bottom": 1},
                   {"kind": "swell", "length": 2, "from": 1, "middle": 1.5, "to": 1}, {"kind": "square", "length": 1, "side": 1.5},
                   {"kind": "curve", "points": [[0, 1], [1, 1.25], [2, 1]]}]},
                 "wood": {"density_kg_m3": 650}, "checks": [{"name": "neck", "at": 2.5}],
                 "tolerances": {"mark": 0.015625, "mark_limit": 0.0625, "diameter": 0.015625},
                 "allowances": {"sizing": 0.03125, "sanding": 0.01, "milling": 0.0625, "trimming": 0.5},
                 "sawing": {"kerf": 0.125, "edge": 0.25, "end": 0.5}, "settings": {"pin": [1], "forbid": [0.25]},
                 "frame": {"kind": "wheel", "places": 2, "hub_radius": 2.25, "seat_depths": [0, 0.125],
                  "rocking": {"period_s": 6, "rim_mass_g": 2000, "rim_radius": 16, "rests_at_deg": 10}}}
                """).text().orElseThrow();
        Job before = inch.job();
        Job after =
                new UnitsChange(UnitSystem.METRIC).on(inch).text().orElseThrow().job();
        assertThat(after.units()).isEqualTo(UnitSystem.METRIC);
        assertThat(after.pattern()).isEqualTo(before.pattern());
        assertThat(after.checks()).isEqualTo(before.checks());
        assertThat(after.tolerances()).isEqualTo(before.tolerances());
        assertThat(after.cutting()).isEqualTo(before.cutting());
        assertThat(after.wishes()).isEqualTo(before.wishes());
        assertThat(after.frame()).isEqualTo(before.frame());
    }

    @Test
    void a_run_turned_twice_is_the_run() {
        JobText once = new RunMirrored().on(demo()).text().orElseThrow();
        assertThat(once.job().pattern()).isEqualTo(demo().job().pattern().mirrored());
        JobText twice = new RunMirrored().on(once).text().orElseThrow();
        assertThat(twice.job()).isEqualTo(demo().job());
    }
}
