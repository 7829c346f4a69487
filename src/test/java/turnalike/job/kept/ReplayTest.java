package turnalike.job.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class ReplayTest {
    private static final Instant AT = Instant.parse("2026-03-01T08:00:00Z");
    private static final JobId ID = JobId.parse("7K3M-2x9q-ht4d").get();

    private static Replay started() {
        Replay replay = new Replay();
        replay.edit(AT, Edit.of("keep the job", Change.of(Histories.job("Leg", 22))));
        return replay;
    }

    private static Edit log(String label) {
        return Edit.of("log piece " + label, Change.of(KeptPiece.unmeasured(label)));
    }

    private static List<String> labels(Replay replay) {
        return replay.kept(ID).pieces().stream().map(KeptPiece::label).toList();
    }

    @Test
    void an_undo_takes_back_all_of_an_edit_and_a_redo_brings_all_of_it_again() {
        Replay replay = started();
        JobText before = replay.kept(ID).text();
        replay.edit(AT, Edit.of("both", Change.of(KeptPiece.unmeasured("1")), Change.of(Histories.job("Leg", 25))));
        replay.undo(AT);
        assertThat(replay.kept(ID).pieces()).isEmpty();
        assertThat(replay.kept(ID).text()).isEqualTo(before);
        assertThat(replay.kept(ID).redo()).contains("both");
        replay.redo(AT);
        assertThat(labels(replay)).containsExactly("1");
        assertThat(replay.kept(ID).text()).isEqualTo(Histories.job("Leg", 25));
    }

    @Test
    void the_step_that_made_the_job_is_not_undone() {
        Replay replay = started();
        assertThat(replay.undo(AT)).isEmpty();
        assertThat(replay.kept(ID).undo()).isEmpty();
    }

    @Test
    void an_edit_after_an_undo_ends_the_way_forward_and_loses_nothing() {
        Replay replay = started();
        replay.edit(AT, log("1"));
        replay.undo(AT);
        replay.edit(AT, log("2"));
        assertThat(replay.redo(AT)).isEmpty();
        assertThat(replay.history()).hasSize(4).anySatisfy(step -> assertThat(step.what())
                .isEqualTo("log piece 1"));
        replay.undo(AT);
        assertThat(replay.undo(AT)).as("what was undone is not undone again").isEmpty();
    }

    @Test
    void a_piece_brought_again_keeps_its_place() {
        Replay replay = started();
        replay.edit(AT, log("b"));
        replay.edit(AT, log("a"));
        replay.edit(AT, Edit.of("out", Change.without(new Subject(Subject.Kind.PIECE, "b"))));
        assertThat(labels(replay)).containsExactly("a");
        replay.undo(AT);
        assertThat(labels(replay)).containsExactly("b", "a");
    }

    /** Against the plainest model there is: a copy of everything after every edit. */
    @Test
    void any_run_of_edits_undos_and_redos_ends_where_copies_say() {
        Seeds.each(60, random -> {
            Replay replay = started();
            Deque<String> back = new ArrayDeque<>();
            Deque<String> forth = new ArrayDeque<>();
            String now = state(replay);
            for (int i = 0; i < 40; i++) {
                int what = random.nextInt(3);
                if (what == 0) {
                    assertThat(replay.undo(AT).isPresent()).isEqualTo(!back.isEmpty());
                    if (!back.isEmpty()) {
                        forth.push(now);
                        now = back.pop();
                    }
                } else if (what == 1) {
                    assertThat(replay.redo(AT).isPresent()).isEqualTo(!forth.isEmpty());
                    if (!forth.isEmpty()) {
                        back.push(now);
                        now = forth.pop();
                    }
                } else {
                    back.push(now);
                    forth.clear();
                    replay.edit(AT, Histories.edit(random, replay.kept(ID)));
                    now = state(replay);
                }
                assertThat(state(replay)).isEqualTo(now);
            }
            assertThat(Replay.of(replay.history()).standing()).isEqualTo(replay.standing());
        });
    }

    private static String state(Replay replay) {
        KeptJob kept = replay.kept(ID);
        return kept.text() + "\n" + Histories.byLabel(kept) + "\n" + kept.photos();
    }

    @Test
    void a_history_with_a_step_lost_exchanged_or_altered_does_not_follow() {
        List<Step> history = Histories.draw(new Random(1), 30);
        for (int i = 0; i < history.size() - 1; i++) {
            List<Step> lost = new ArrayList<>(history);
            lost.remove(i);
            assertThatThrownBy(() -> Replay.of(lost)).isInstanceOf(IllegalArgumentException.class);
        }
        for (Step step : history) {
            if (step.did() != Step.Did.EDIT) {
                List<Step> altered = new ArrayList<>(history);
                List<Change> other = List.of(Change.of(KeptPiece.unmeasured("another")));
                altered.set(
                        step.number() - 1,
                        new Step(step.number(), step.at(), step.did(), step.of(), step.what(), other));
                assertThatThrownBy(() -> Replay.of(altered)).isInstanceOf(IllegalArgumentException.class);
            }
        }
    }

    @Test
    void without_a_text_there_is_no_job() {
        assertThatThrownBy(() -> new Replay().edit(AT, log("1"))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Change.without(Subject.JOB)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Replay().kept(ID)).isInstanceOf(IllegalStateException.class);
    }
}
