package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.MemberEdit;
import turnalike.job.edit.NewJob;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.kept.JobText;
import turnalike.job.keys.KeyPaths;
import turnalike.language.Language;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.units.UnitSystem;
import turnalike.web.kit.PageWords;

/** What was done, as the history tells it, is German as a whole: every field of a job and of every kind of member, set, changed and taken out. */
class HistoryInGermanTest {
    private static final JobText METRIC = NewJob.in(UnitSystem.METRIC);
    private static final JobText INCHES = NewJob.in(UnitSystem.INCH);

    private static Set<String> unknown(List<String> said) {
        Set<String> out = new TreeSet<>();
        for (String each : said) {
            String words = PageWords.of(each);
            if (!Language.GERMAN.knows(words) || !Language.GERMAN.knows("Undo: " + words)) {
                out.add(words);
            }
        }
        return out;
    }

    /** As somebody would type it. */
    private static String value(KeyType type) {
        if (type instanceof KeyType.Mark || type instanceof KeyType.Text) {
            return "7";
        }
        List<String> choices = type.choices(false);
        return choices.isEmpty() ? "12.5" : choices.get(0);
    }

    @Test
    void fields_of_the_job() {
        List<String> said = new ArrayList<>();
        for (String path : KeyPaths.askedAnywhere()) {
            String value = value(KeyPaths.find(path).orElseThrow().type());
            for (JobText job : List.of(METRIC, INCHES)) {
                said.add(JobEdit.fields(Map.of(path, value)).what(job));
                said.add(JobEdit.fields(Map.of(path, "")).what(job));
            }
        }
        said.add(JobEdit.fields(Map.of("count", "11", "wood.moisture_pct", "7")).what(METRIC));
        said.add(JobEdit.fields(Map.of(
                        "count",
                        "11",
                        "wood.moisture_pct",
                        "7",
                        "pattern.stock.size",
                        "40",
                        "pattern.stock.length",
                        "500"))
                .what(METRIC));
        assertThat(unknown(said)).isEmpty();
    }

    /** The page's walk meets the wheel's alone. */
    @Test
    void what_the_form_calls_the_fields_of_every_frame() {
        List<String> said = new ArrayList<>();
        for (KeyPaths.At at : KeyPaths.all()) {
            said.add(at.key().field().label());
            said.add(at.key().field().hint());
            if (at.key().field().section() != KeySection.NONE && at.key().type() instanceof KeyType.Word word) {
                said.addAll(word.choices(false));
            }
        }
        assertThat(unknown(said)).isEmpty();
    }

    @Test
    void sizes_of_every_kind_of_member() {
        List<String> said = new ArrayList<>();
        for (MemberKind kind : MemberKind.all()) {
            for (JobText plain : List.of(METRIC, INCHES)) {
                JobText job = new MemberEdit(1, new MemberEdit.Turn(kind))
                        .on(plain)
                        .text()
                        .orElse(plain);
                for (MemberKey key : kind.keys()) {
                    for (String value : List.of("1.5", "1 1/2", "500", "")) {
                        said.add(sizes(job, Map.of(key.name(), value)));
                    }
                }
                said.add(sizes(job, Map.of(MemberKey.NAME, "7")));
                said.add(sizes(job, Map.of(MemberKey.NAME, "")));
                said.add(sizes(job, Map.of(MemberKey.BY_EYE, "true")));
                said.add(sizes(job, Map.of("length", "3", "diameter", "4")));
                said.add(sizes(job, Map.of("length", "3", "root", "4", "crown", "5", "name", "7")));
                for (MemberEdit.Deed deed : List.of(
                        new MemberEdit.Boundary("12.5"),
                        new MemberEdit.Mirror(),
                        new MemberEdit.Copy(),
                        new MemberEdit.Remove(),
                        new MemberEdit.Move(1),
                        new MemberEdit.Insert(kind, true),
                        new MemberEdit.Insert(kind, false),
                        new MemberEdit.Turn(kind))) {
                    said.add(new MemberEdit(1, deed).what(job));
                }
            }
        }
        assertThat(unknown(said)).isEmpty();
    }

    private static String sizes(JobText job, Map<String, String> values) {
        return new MemberEdit(1, new MemberEdit.Sizes(values)).what(job);
    }
}
