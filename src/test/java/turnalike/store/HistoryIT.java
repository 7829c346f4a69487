package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Edit;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.Replay;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepSummary;

class HistoryIT {
    @TempDir
    private Path folder;

    /** The store reads one step to undo it; played from the first step on, the same must come of it. */
    @Test
    void what_is_undone_and_redone_is_what_a_replay_of_everything_undoes_and_redoes() {
        Random random = new Random(4);
        try (JobStore store = StoreFile.openOrMake(folder.resolve("shop.db"), Clock.systemUTC())) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            Replay replay = Replay.of(store.give(id).orElseThrow().history());
            List<Step.Did> done = new ArrayList<>();
            for (int i = 0; i < 300; i++) {
                int drawn = random.nextInt(5);
                Optional<Step> step = drawn < 2
                        ? store.undo(id)
                        : drawn < 3 ? store.redo(id) : store.edit(id, kept -> Histories.edit(random, kept));
                Optional<Step> played = step.isEmpty()
                        ? drawn < 2
                                ? replay.undo(Clock.systemUTC().instant())
                                : replay.redo(Clock.systemUTC().instant())
                        : play(replay, step.orElseThrow());
                assertThat(step).isEqualTo(played);
                step.ifPresent(each -> done.add(each.did()));
            }
            assertThat(done).contains(Step.Did.EDIT, Step.Did.UNDO, Step.Did.REDO);
            assertThat(store.find(id)).contains(replay.kept(id));
            assertThat(store.done(id)).hasSameSizeAs(replay.history());
            Replay early = new Replay();
            for (Step step : replay.history()) {
                play(early, step);
                assertThat(store.done(id))
                        .element(step.number() - 1)
                        .isEqualTo(new StepSummary(
                                step.number(), step.at(), step.did(), step.of(), step.what(), step.who()));
                assertThat(store.textAfter(id, step.number()))
                        .contains(early.kept(id).text());
            }
            assertThat(store.textAfter(id, 0)).isEmpty();
            assertThat(store.textAfter(id, replay.history().size() + 1)).isEmpty();
        }
    }

    private static Optional<Step> play(Replay replay, Step step) {
        return switch (step.did()) {
            case EDIT -> Optional.of(replay.edit(step.at(), new Edit(step.what(), step.changes())));
            case UNDO -> replay.undo(step.at());
            case REDO -> replay.redo(step.at());
        };
    }
}
