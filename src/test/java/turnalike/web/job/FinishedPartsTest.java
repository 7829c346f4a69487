package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.Seeds;
import turnalike.job.Plan;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.MemberEdit;
import turnalike.job.edit.UnitsChange;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.language.Language;
import turnalike.store.StoreFile;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.web.Served;
import turnalike.web.job.FinishedParts.Finished;
import turnalike.web.job.FinishedParts.Shown;
import turnalike.web.job.FinishedParts.Worked;
import turnalike.web.jobs.DemoJob;
import turnalike.web.kit.Assets;
import turnalike.web.kit.PageWork;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Shell;

class FinishedPartsTest {
    private static final int PAGES = 80;

    private final Assets assets = new Assets();
    private final Pages pages = new Pages(assets);

    /** What somebody asks for: a state of a job and how he looks at it. */
    private record Asked(KeptJob kept, int selected, double widthMm, Shell shell, RefusedEdit attempt, boolean whole) {}

    private String page(Asked asked, PlanCache plans) {
        Plan plan = plans.now(asked.kept().id(), asked.kept().text());
        Parts parts = Parts.lackedBy(asked.whole() ? Optional.empty() : Optional.of("figures=1"), plans.parts());
        JobView.Glance glance = new JobView.Glance(asked.selected(), asked.widthMm(), OptionalDouble.empty(), parts);
        JobView view = new JobView(asked.kept(), plan, plans.isFinal(plan), glance, asked.attempt());
        byte[] page = pages.made(asked.shell(), asked.whole() ? "job/page.jte" : "job/work.jte", view);
        return new String(page, StandardCharsets.UTF_8);
    }

    /** The demo's text after each of many edits, among them such as change a spelling alone, and the text before an edit again. */
    private static List<JobText> texts() {
        List<JobEdit> edits = List.of(
                JobEdit.fields(Map.of("title", "Another <!--title--> & \"more\"")),
                JobEdit.fields(Map.of("count", "17")),
                JobEdit.fields(Map.of("count", "17.0")),
                JobEdit.fields(Map.of("wood.species", "", "wood.density_kg_m3", "640")),
                JobEdit.fields(Map.of("wood.density_kg_m3", "640.00")),
                new MemberEdit(3, new MemberEdit.Sizes(Map.of("length", "5/8"))),
                new MemberEdit(3, new MemberEdit.Sizes(Map.of("length", "0.625"))),
                new MemberEdit(3, new MemberEdit.Sizes(Map.of("crown", "1 3/8"))),
                new MemberEdit(2, new MemberEdit.Sizes(Map.of("name", "the upper one"))),
                new MemberEdit(2, new MemberEdit.Copy()),
                new UnitsChange(UnitSystem.METRIC),
                JobEdit.fields(Map.of("frame.kind", "")),
                JobEdit.fields(Map.of("title", "Third title")));
        List<JobText> texts = new ArrayList<>(List.of(DemoJob.text()));
        for (JobEdit edit : edits) {
            JobText last = texts.get(texts.size() - 1);
            JobText.Read read = edit.on(last);
            texts.add(read.text().orElseThrow(() -> new AssertionError(read.problems())));
        }
        assertThat(texts).doesNotHaveDuplicates();
        return texts;
    }

    private Asked drawn(Random random, List<JobText> texts) {
        JobText text = texts.get(random.nextInt(texts.size()));
        List<KeptPiece> pieces = random.nextBoolean() ? List.of() : List.of(KeptPiece.unmeasured("7"));
        KeptJob.Times times = new KeptJob.Times(Instant.EPOCH, Instant.EPOCH, 1 + random.nextInt(30));
        JobId id = JobId.of(new int[] {random.nextInt(2), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0});
        Optional<String> undo = random.nextBoolean() ? Optional.empty() : Optional.of("this & that");
        KeptJob kept = new KeptJob(id, text, pieces, List.of(), times, undo, Optional.empty());
        Language language = random.nextInt(3) == 0 ? Language.GERMAN : Language.ENGLISH;
        String token = "%022d".formatted(random.nextInt(3));
        Shell shell = new Shell(text.job().title(), token, assets, language, Optional.empty());
        return new Asked(
                kept,
                1 + random.nextInt(3),
                200 + 40 * random.nextInt(2),
                shell,
                attempt(random),
                random.nextBoolean());
    }

    private static RefusedEdit attempt(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> RefusedEdit.keeping("job", "count");
            case 1 ->
                new RefusedEdit(
                        "job", Map.of("count", "none"), List.of(new Problem("count", "is no number", "type one")));
            case 2 ->
                new RefusedEdit(
                        "member", Map.of("length", "-1"), List.of(new Problem("member 1: length", "is none", "mend")));
            default -> RefusedEdit.NONE;
        };
    }

    @Test
    void a_page_of_parts_written_before_is_to_the_letter_the_one_written_anew() {
        List<JobText> texts = texts();
        Seeds.each(1, random -> {
            PlanCache plans = new PlanCache(PageWork.onThisMachine());
            for (int i = 0; i < PAGES; i++) {
                Asked asked = drawn(random, texts);
                assertThat(page(asked, plans))
                        .as("page %d", i)
                        .isEqualTo(page(asked, new PlanCache(PageWork.onThisMachine())));
            }
        });
    }

    /** By another program on the same store, which tells this one nothing. */
    @Test
    void what_another_program_changed_is_on_the_page_that_is_asked_for_next(@TempDir Path folder) throws Exception {
        try (Served served = Served.in(folder);
                JobStore other = StoreFile.open(folder.resolve("jobs.db"), Clock.systemUTC())) {
            JobId id = served.demo();
            String address = "/jobs/" + id.text();
            String before = served.get(address).body();
            JobText text = other.find(id).orElseThrow().text();
            JobText more = JobEdit.fields(Map.of("count", "37")).on(text).text().orElseThrow();
            other.edit(id, kept -> Edit.of("want 37", Change.of(more)));
            assertThat(served.get(address).body()).contains("37 wanted", "value=\"37\"", "Undo: want 37");
            other.undo(id);
            String after = served.get(address).body();
            assertThat(after).contains("Redo: want 37").doesNotContain("37 wanted", "value=\"37\"");
            assertThat(figures(after)).isEqualTo(figures(before));
            String german = served.client()
                    .send(
                            served.request(address)
                                    .header("Accept-Language", "de")
                                    .build(),
                            java.net.http.HttpResponse.BodyHandlers.ofString())
                    .body();
            assertThat(german).contains("<html lang=\"de\"").doesNotContain("Balance point");
            assertThat(served.get(address).body()).contains("Balance point");
        }
    }

    private static String figures(String page) {
        return page.substring(page.indexOf("id=\"figures\""), page.indexOf("class=\"beneath"));
    }

    @Test
    void a_page_bears_the_token_and_the_version_of_who_asks_in_each_of_its_forms(@TempDir Path folder)
            throws Exception {
        try (Served served = Served.in(folder)) {
            String address = "/jobs/" + served.demo().text();
            for (int i = 0; i < 2; i++) {
                String page = served.get(address).body(); // each asks without a cookie and gets a token of his own
                String token = page.replaceAll("(?s).*name=\"token\" content=\"([^\"]+)\".*", "$1");
                int forms = page.split("<form method=\"post\"", -1).length - 1;
                assertThat(page.split("name=\"token\" value=\"" + token + "\"", -1).length - 1)
                        .isEqualTo(forms)
                        .isGreaterThan(10);
                assertThat(page).doesNotContain("<!--");
            }
        }
    }

    @Test
    void no_more_bytes_are_kept_than_allowed_and_the_oldest_go_first() {
        FinishedParts parts = new FinishedParts(100);
        Worked plan = Worked.of(new PlanCache(PageWork.onThisMachine()).glimpse(DemoJob.text()));
        for (int i = 0; i < 30; i++) {
            Shown shown = new Shown("run", true, Language.ENGLISH, plan, List.of(i));
            parts.get(shown, () -> Finished.of("0123456789", "|"));
            assertThat(parts.bytes()).isEqualTo(Math.min(100, 10 * (i + 1)));
        }
        List<Integer> written = new ArrayList<>();
        for (int i : new int[] {29, 20, 19}) {
            parts.get(new Shown("run", true, Language.ENGLISH, plan, List.of(i)), () -> {
                written.add(i);
                return Finished.of("0123456789", "|");
            });
        }
        assertThat(written).containsExactly(19);
    }

    /** Nothing that follows hangs on the title, so nothing is worked out for another one. */
    @Test
    void another_title_keeps_what_was_worked_out() {
        PlanCache plans = new PlanCache(PageWork.onThisMachine());
        JobId id = JobId.of(new int[12]);
        JobText text = DemoJob.text();
        Plan before = plans.now(id, text);
        JobText titled =
                JobEdit.fields(Map.of("title", "Another")).on(text).text().orElseThrow();
        Plan after = plans.now(id, titled);
        assertThat(after.job().title()).isEqualTo("Another");
        assertThat(after.settings()).isSameAs(before.settings());
        JobText more = JobEdit.fields(Map.of("count", "37")).on(titled).text().orElseThrow();
        assertThat(plans.now(id, more).settings()).isNotSameAs(before.settings());
    }
}
