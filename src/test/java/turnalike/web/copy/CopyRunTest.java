package turnalike.web.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.job.original.OriginalKind;
import turnalike.job.original.OriginalWish;
import turnalike.language.Language;
import turnalike.trace.Snap;
import turnalike.units.UnitSystem;
import turnalike.web.kit.Assets;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.Shell;

/** An original on its way, without a server. */
class CopyRunTest {
    private static final OriginalForm FORM = OriginalForm.blank(UnitSystem.METRIC, "");

    private static SentOriginal sent(OriginalKind kind, String text) {
        OriginalWish wish = OriginalWish.of(UnitSystem.METRIC, Optional.empty(), Optional.empty(), Snap.NONE);
        return new SentOriginal("knob", kind, text.getBytes(StandardCharsets.UTF_8), wish);
    }

    private static CopyRun run() {
        return new CopyRun("1", sent(OriginalKind.TABLE, Originals.TABLE), FORM, Optional.empty());
    }

    private static String page(CopyRun run) {
        Assets assets = new Assets();
        CopyView view = new CopyView(CopyPurpose.NEW_JOB, Optional.empty(), FORM, Optional.of(run), List.of());
        byte[] page = new Pages(assets)
                .made(new Shell("", "", assets, Language.ENGLISH, Optional.empty()), "copy/run.jte", view);
        return new String(page, StandardCharsets.UTF_8);
    }

    @Test
    void while_it_is_traced_the_page_says_so_and_can_be_stopped() {
        assertThat(page(run()))
                .contains("data-running=\"yes\"")
                .contains("waiting for its turn")
                .contains("/copy/1/stop");
    }

    @Test
    void one_that_was_stopped_gives_nothing_and_says_so() {
        CopyRun run = run();
        run.stop();
        run.run();
        assertThat(run.traced()).isEmpty();
        assertThat(page(run)).contains("data-running=\"no\"").contains("it was stopped before the end");
    }

    @Test
    void one_that_was_let_go_on_gives_its_members() {
        CopyRun run = run();
        run.run();
        assertThat(run.traced()).isPresent();
        assertThat(page(run)).contains("Take it as pattern");
    }

    @Test
    void only_a_few_wait_and_those_longest_ago_are_forgotten() {
        CopyRuns runs = new CopyRuns();
        CopyRun first = runs.begin(sent(OriginalKind.TABLE, Originals.TABLE), FORM, Optional.empty());
        assertThat(first.await(60_000)).isTrue();
        assertThat(runs.find(first.id())).contains(first);
        for (int i = 0; i < 12; i++) {
            assertThat(runs.begin(sent(OriginalKind.TABLE, "x,diameter"), FORM, Optional.empty())
                            .await(60_000))
                    .isTrue();
        }
        assertThat(runs.find(first.id())).isEmpty();
        assertThatThrownBy(() -> {
                    for (int i = 0; i < 200; i++) {
                        runs.begin(sent(OriginalKind.TABLE, Originals.TABLE), FORM, Optional.empty());
                    }
                })
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("too many originals wait");
    }
}
