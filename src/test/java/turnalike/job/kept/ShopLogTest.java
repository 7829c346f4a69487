package turnalike.job.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.edit.NewJob;
import turnalike.job.pieces.BlankLog;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.blanks.WeighedBlank;
import turnalike.stock.LossRecord;
import turnalike.store.StoreFile;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;

/** What a kept job's log says of its blanks: weights, times, and what was thrown away. */
class ShopLogTest {
    @TempDir
    private Path folder;

    private static KeptPiece weighed(String label, double grams) {
        return KeptPiece.of(Piece.of(label, Measures.NONE.with(Mass.ofGrams(grams))));
    }

    private static Edit out(String words, String label) {
        return Edit.of(words + label, Change.without(new Subject(Subject.Kind.PIECE, label)));
    }

    private static WeighedBlank blank(String label, double grams, boolean lost) {
        return new WeighedBlank(
                label,
                Mass.ofGrams(grams),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                lost);
    }

    @Test
    void a_piece_is_lost_once_it_is_called_spoiled_unless_that_is_undone_or_it_is_logged_again() {
        try (JobStore store = StoreFile.openOrMake(folder.resolve("shop.db"), Clock.systemUTC())) {
            JobId id = store.keep(NewJob.in(UnitSystem.METRIC));
            for (String label : List.of("1", "2", "3")) {
                store.edit(id, kept -> Edit.of("log piece " + label, Change.of(weighed(label, 200))));
            }
            store.edit(id, kept -> out(TakenOut.SPOILED, "1"));
            store.edit(id, kept -> out(TakenOut.SPOILED, "2"));
            store.edit(id, kept -> out(TakenOut.SPOILED, "3"));
            store.undo(id);
            store.edit(id, kept -> Edit.of("log piece 2", Change.of(weighed("2", 201))));
            KeptJob kept = store.find(id).orElseThrow();
            ShopLog log = ShopLog.of(kept, store.done(id));
            assertThat(log.blanks().spoiled()).containsExactly("1");
            assertThat(log.blanks().weighed().keySet()).containsExactlyInAnyOrder("2", "3");

            store.undo(id);
            store.redo(id);
            store.edit(
                    id, now -> Edit.of("log piece 4", Change.of(weighed("4", 1).with(Duration.ofMinutes(9)))));
            store.undo(id);
            store.redo(id);
            log = ShopLog.of(store.find(id).orElseThrow(), store.done(id));
            assertThat(log.turned()).containsExactly(Map.entry("4", Duration.ofMinutes(9)));
            assertThat(log.blanks().spoiled()).containsExactly("1");
        }
    }

    @Test
    void a_slip_taken_out_is_no_loss_until_it_is_called_spoiled() {
        try (JobStore store = StoreFile.openOrMake(folder.resolve("shop.db"), Clock.systemUTC())) {
            JobId id = store.keep(NewJob.in(UnitSystem.METRIC));
            store.edit(id, kept -> Edit.of("log piece 1", Change.of(weighed("1", 200))));
            store.edit(id, kept -> out(TakenOut.WORDS, "1"));
            ShopLog log = ShopLog.of(store.find(id).orElseThrow(), store.done(id));
            assertThat(log.blanks().spoiled()).isEmpty();
            assertThat(log.blanks().slips()).containsExactly("1");
            assertThat(log.blanks().losses(0.05, List.of()).lost()).isZero();

            store.edit(id, kept -> out(TakenOut.SPOILED, "1"));
            log = ShopLog.of(store.find(id).orElseThrow(), store.done(id));
            assertThat(log.blanks().losses(0.05, List.of()).lost()).isEqualTo(1);
            assertThat(log.blanks().slips()).isEmpty();

            store.undo(id);
            log = ShopLog.of(store.find(id).orElseThrow(), store.done(id));
            assertThat(log.blanks().losses(0.05, List.of()).lost()).isZero();
            store.undo(id);
            assertThat(store.find(id).orElseThrow().find("1")).isPresent();
        }
    }

    @Test
    void the_log_finishes_blanks_and_counts_each_loss_once() {
        BlankLog log = new BlankLog(
                Map.of("1", Mass.ofGrams(200), "2", Mass.ofGrams(700), "9", Mass.ofGrams(190)),
                Set.of("3", "4"),
                Set.of("6"));
        List<WeighedBlank> blanks =
                List.of(blank("1", 500, false), blank("2", 510, false), blank("3", 505, true), blank("5", 505, true));
        List<WeighedBlank> then = log.onto(blanks);
        assertThat(then.get(0).finished()).contains(Mass.ofGrams(200));
        assertThat(then.get(1).finished()).as("heavier than its blank").isEmpty();
        assertThat(then.get(2).lost()).isTrue();
        LossRecord losses = log.losses(0.05, blanks);
        assertThat(losses.lost()).as("3 and 4 by the log, 3 and 5 by the table").isEqualTo(3);
        assertThat(losses.good()).isEqualTo(3);
    }
}
