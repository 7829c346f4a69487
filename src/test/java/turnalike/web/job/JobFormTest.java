package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import turnalike.job.edit.JobEdit;
import turnalike.job.kept.JobText;
import turnalike.job.set.FrameKind;

class JobFormTest {
    private static JobText demo() throws IOException {
        String text = Files.readString(Path.of("src/main/resources/turnalike/demo/fair-wheel.job.json"));
        return JobText.read(text).text().orElseThrow();
    }

    private static List<FieldView> fields(JobText text) {
        return JobForm.of(text, RefusedEdit.NONE).stream()
                .flatMap(group -> group.fields().stream())
                .toList();
    }

    @Test
    void every_number_of_the_form_reaches_the_job_as_a_number() throws IOException {
        Set<String> seen = new HashSet<>();
        for (FrameKind frame : FrameKind.values()) {
            JobText text = JobEdit.fields(Map.of("frame.kind", frame.word()))
                    .on(demo())
                    .text()
                    .orElseThrow();
            for (FieldView field : fields(text)) {
                if (field.look() == FieldView.Look.NUMBER) {
                    seen.add(field.name());
                    assertThat(JobEdit.fields(Map.of(field.name(), "7"))
                                    .on(text)
                                    .problems())
                            .as(field.name())
                            .noneMatch(problem -> problem.what().contains("\"7\"")
                                    || problem.what().contains("'7'"));
                }
            }
        }
        assertThat(seen).contains("count", "turning.max_rpm", "frame.rpm", "frame.groups", "wood.moe_mpa");
    }

    @Test
    void every_field_of_the_form_may_be_sent() throws IOException {
        assertThat(fields(demo())).extracting(FieldView::name).isSubsetOf(JobForm.FIELDS);
    }

    @Test
    void what_is_wrong_with_an_entry_of_a_list_stands_beside_its_field() throws IOException {
        Map<String, String> typed = Map.of("settings.pin", "1 1/4; wide", "turning.speeds", "500; fast");
        RefusedEdit attempt =
                new RefusedEdit("job", typed, JobEdit.fields(typed).on(demo()).problems());
        assertThat(JobForm.of(demo(), attempt).stream()
                        .flatMap(group -> group.fields().stream())
                        .filter(FieldView::isWrong))
                .extracting(FieldView::name)
                .containsExactlyInAnyOrder("settings.pin", "turning.speeds");
        for (String noted : List.of("colour", "mass_g ; 2", "Piece ; 2", "colour ; much", " ; 2")) {
            Map<String, String> judged = Map.of("likeness.noted", noted);
            RefusedEdit wrong = new RefusedEdit(
                    "job", judged, JobEdit.fields(judged).on(demo()).problems());
            assertThat(JobForm.of(demo(), wrong).stream()
                            .flatMap(group -> group.fields().stream())
                            .filter(FieldView::isWrong))
                    .as(noted)
                    .extracting(FieldView::name)
                    .containsExactly("likeness.noted");
        }
    }
}
