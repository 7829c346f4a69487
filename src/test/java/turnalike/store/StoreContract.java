package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.FromPhoto;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.PhotoResult;
import turnalike.job.kept.Step;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.StoreReport;
import turnalike.job.kept.Subject;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.units.Length;
import turnalike.units.Mass;

/** What every store must do, whatever it keeps its jobs in. */
abstract class StoreContract {
    /** A store of that name, the same for the same name within one test; another in the next. */
    abstract StorePlace place(String name);

    /** How often what is drawn at random is drawn. */
    abstract int seeds();

    final Folder.SetClock clock = new Folder.SetClock();

    final JobStore open(String name) {
        return place(name).openOrMake(clock);
    }

    final void assertSound(String name) {
        assertThat(place(name).check().faults()).isEmpty();
    }

    @Test
    void what_was_kept_is_there_when_the_store_is_opened_again() {
        JobId id;
        try (JobStore store = open("shop.db")) {
            id = store.keep(Histories.job("Leg", 22.5));
            store.edit(id, Folder.log("7", 243.1));
        }
        try (JobStore store = open("shop.db")) {
            KeptJob kept = store.find(id).orElseThrow();
            assertThat(kept.text()).isEqualTo(Histories.job("Leg", 22.5));
            assertThat(kept.find("7").flatMap(each -> each.piece().mass())).contains(Mass.ofGrams(243.1));
            assertThat(store.list()).singleElement().satisfies(card -> {
                assertThat(card.title()).isEqualTo("Leg");
                assertThat(card.pieces()).isEqualTo(1);
                assertThat(card.times().steps()).isEqualTo(2);
            });
            assertThat(store.find(JobId.parse("0000-0000-0000").get())).isEmpty();
        }
        assertSound("shop.db");
    }

    @Test
    void every_step_has_its_time() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            clock.goOn(Duration.ofHours(5));
            Step step = store.edit(id, Folder.log("7", 243.1)).orElseThrow();
            assertThat(step.at())
                    .isBetween(Instant.parse("2026-03-01T17:00:00Z"), Instant.parse("2026-03-01T17:01:00Z"));
            assertThat(store.find(id).orElseThrow().times().changed()).isEqualTo(step.at());
            assertThat(store.find(id).orElseThrow().times().made())
                    .isBefore(step.at().minusSeconds(17_000));
        }
    }

    @Test
    void a_step_is_found_by_how_its_words_end() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            store.edit(
                    id,
                    kept -> Edit.of(
                            "log piece 7 (50%_a!)",
                            Change.of(KeptPiece.unmeasured("7").with(Measures.ofMass(Mass.ofGrams(243.1))))));
            store.undo(id);
            assertThat(store.hasStepEnding(id, " (50%_a!)")).isTrue();
            assertThat(store.hasStepEnding(id, "_a!)")).isTrue();
            assertThat(store.hasStepEnding(id, "log piece 7")).isFalse();
            assertThat(store.hasStepEnding(id, "_A!)")).isFalse();
            assertThat(store.hasStepEnding(id, "0__a!)")).isFalse();
            assertThat(store.hasStepEnding(id, "5%)")).isFalse();
            assertThat(store.hasStepEnding(store.keep(Histories.job("Other", 22.5)), "a!)"))
                    .isFalse();
        }
    }

    @Test
    void undo_and_redo_outlive_the_program() {
        JobId id;
        try (JobStore store = open("shop.db")) {
            id = store.keep(Histories.job("Leg", 22.5));
            store.edit(id, Folder.log("7", 243.1));
            store.edit(id, Folder.log("7", 241.0));
        }
        try (JobStore store = open("shop.db")) {
            assertThat(store.undo(id)).get().satisfies(step -> assertThat(step.did())
                    .isEqualTo(Step.Did.UNDO));
            assertThat(mass(store, id)).contains(Mass.ofGrams(243.1));
        }
        try (JobStore store = open("shop.db")) {
            assertThat(store.find(id).orElseThrow().redo()).contains("log piece 7");
            store.redo(id);
            assertThat(mass(store, id)).contains(Mass.ofGrams(241.0));
            assertThat(store.redo(id)).isEmpty();
        }
        assertSound("shop.db");
    }

    @Test
    void undo_and_redo_are_made_only_if_meant_of_the_job_as_it_stands_in_their_turn() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            store.edit(id, Folder.log("7", 243.1));
            store.edit(id, Folder.log("7", 241.0));
            int seen = store.find(id).orElseThrow().times().steps();
            store.edit(id, Folder.log("8", 250.0)); // another person's, meanwhile
            List<Integer> asked = new ArrayList<>();
            Predicate<KeptJob> asSeen = kept -> {
                asked.add(kept.times().steps());
                return kept.times().steps() == seen;
            };
            assertThat(store.undo(id, asSeen)).isEmpty();
            assertThat(store.undo(id, kept -> true)).isPresent();
            assertThat(store.redo(id, asSeen)).isEmpty();
            assertThat(asked).containsExactly(seen + 1, seen + 2);
            assertThat(store.find(id).orElseThrow().find("8")).isEmpty();
            assertThat(store.redo(id, kept -> kept.find("8").isEmpty())).isPresent();
            assertThat(store.find(id).orElseThrow().find("8")).isPresent();
        }
    }

    private static Optional<Mass> mass(JobStore store, JobId id) {
        return store.find(id).orElseThrow().find("7").flatMap(each -> each.piece()
                .mass());
    }

    @Test
    void an_edit_that_fails_changes_nothing() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            assertThatThrownBy(() -> store.edit(id, kept -> {
                        throw new IllegalStateException("stop");
                    }))
                    .hasMessage("stop");
            assertThat(store.edit(id, Folder.log("7", 1))).isPresent();
            assertThat(store.find(id).orElseThrow().times().steps()).isEqualTo(2);
        }
        assertSound("shop.db");
    }

    @Test
    void whole_jobs_go_from_store_to_store_unchanged() {
        Seeds.each(seeds(), random -> {
            String here = "here-%d.db".formatted(random.nextInt(1 << 30));
            String there = "there-%d.db".formatted(random.nextInt(1 << 30));
            try (JobStore one = open(here);
                    JobStore other = open(there)) {
                JobId id = one.keep(Histories.job("Leg", 22.5));
                for (int i = 0; i < 40; i++) {
                    Folder.step(one, id, random);
                }
                String text = one.give(id).orElseThrow().format();
                StringWriter streamed = new StringWriter();
                assertThat(one.give(id, streamed)).isTrue();
                assertThat(streamed).hasToString(text);
                JobId same = other.keep(GivenJob.read(text).job().orElseThrow());
                assertThat(same).isEqualTo(id);
                assertThat(other.give(same).orElseThrow().format()).isEqualTo(text);
                assertThat(other.find(same)).isEqualTo(one.find(id));
            }
            assertSound(here);
            assertSound(there);
        });
    }

    @Test
    void a_long_history_is_given_away_in_portions_while_others_write() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keepBeside(
                    new GivenJob(JobId.parse("0000-0000-0000").get(), Histories.draw(new Random(5), 700)));
            String whole = store.give(id).orElseThrow().format();
            StringWriter streamed = new StringWriter();
            List<Integer> written = new ArrayList<>();
            Writer slow = new FilterWriter(streamed) {
                @Override
                public void write(char[] letters, int from, int count) throws IOException {
                    if (written.isEmpty()) {
                        written.add(1);
                        try (JobStore another = open("shop.db")) {
                            assertThat(another.edit(id, Folder.log("meanwhile", 5)))
                                    .isPresent();
                        }
                    }
                    super.write(letters, from, count);
                }
            };
            assertThat(store.give(id, slow)).isTrue();
            assertThat(written).hasSize(1);
            assertThat(streamed).hasToString(whole);
            assertThat(store.give(JobId.parse("0000-0000-0001").get(), streamed))
                    .isFalse();
        }
        assertSound("shop.db");
    }

    @Test
    void a_job_that_went_on_elsewhere_is_brought_up_to_it_and_one_that_parted_is_refused() {
        try (JobStore here = open("here.db");
                JobStore there = open("there.db")) {
            JobId id = here.keep(Histories.job("Leg", 22.5));
            GivenJob early = here.give(id).orElseThrow();
            assertThat(here.keep(early)).as("nothing new").isEqualTo(id);
            there.keep(early);
            there.edit(id, Folder.log("7", 243.1));
            there.undo(id);
            GivenJob late = there.give(id).orElseThrow();
            here.keep(late);
            assertThat(here.give(id)).contains(late);
            assertThatThrownBy(() -> here.keep(early))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("was changed since the file was given");
            here.edit(id, Folder.log("8", 1));
            there.edit(id, Folder.log("9", 1));
            GivenJob parted = there.give(id).orElseThrow();
            assertThatThrownBy(() -> here.keep(parted))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("was changed otherwise")
                    .hasMessageContaining("--beside");
            JobId beside = here.keepBeside(parted);
            assertThat(beside).isNotEqualTo(id);
            assertThat(here.give(beside).orElseThrow().history()).isEqualTo(parted.history());
        }
        assertSound("here.db");
    }

    @Test
    void several_programs_write_at_once_and_none_loses_anything() {
        JobId id;
        try (JobStore store = open("shop.db")) {
            id = store.keep(Histories.job("Leg", 22.5));
        }
        CompletableFuture<?>[] programs = IntStream.range(0, 4)
                .mapToObj(program -> CompletableFuture.runAsync(() -> {
                    try (JobStore store = place("shop.db").open(new Folder.SetClock())) {
                        for (int i = 0; i < 25; i++) {
                            store.edit(id, Folder.log("%d-%d".formatted(program, i), 1 + i));
                        }
                    }
                }))
                .toArray(CompletableFuture[]::new);
        CompletableFuture.allOf(programs).join();
        StoreReport report = place("shop.db").check();
        assertThat(report.faults()).isEmpty();
        assertThat(report.pieces()).isEqualTo(100);
    }

    @Test
    void what_another_program_wrote_is_seen_although_the_job_was_read_before() {
        try (JobStore here = open("shop.db");
                JobStore there = open("shop.db")) {
            JobId id = here.keep(Histories.job("Leg", 22.5));
            assertThat(here.find(id).orElseThrow().text()).isEqualTo(Histories.job("Leg", 22.5));
            there.edit(id, Folder.log("7", 243.1));
            assertThat(here.find(id).orElseThrow().pieces()).hasSize(1);
            here.edit(id, kept -> Edit.of("thicken", Change.of(Histories.job("Leg", 30))));
            KeptJob thick = here.find(id).orElseThrow();
            assertThat(thick.text()).isEqualTo(Histories.job("Leg", 30));
            assertThat(thick.pieces()).hasSize(1);
            assertThat(there.find(id)).contains(thick);
            there.undo(id);
            KeptJob undone = here.find(id).orElseThrow();
            assertThat(undone.text()).isEqualTo(Histories.job("Leg", 22.5));
            assertThat(undone.redo()).contains("thicken");
            here.edit(id, kept -> {
                assertThat(kept).isEqualTo(undone);
                return Edit.of("thin", Change.of(Histories.job("Leg", 20)));
            });
            assertThat(there.find(id)).isEqualTo(here.find(id));
            assertThat(there.find(id).orElseThrow().times().steps()).isEqualTo(5);
        }
        assertSound("shop.db");
    }

    /** Edits go on from what is remembered; another program, which remembers nothing, must find the same job. */
    @Test
    void what_is_remembered_after_each_step_is_what_the_file_holds() {
        Seeds.each(seeds(), random -> {
            String name = "shop-%d.db".formatted(random.nextInt(1 << 30));
            try (JobStore store = open(name)) {
                JobId id = store.keep(Histories.job("Leg", 22.5));
                for (int i = 0; i < 40; i++) {
                    Folder.step(store, id, random);
                    try (KeptJobs another = place(name).openToRead()) {
                        assertThat(store.find(id)).isEqualTo(another.find(id));
                    }
                }
            }
            assertSound(name);
        });
    }

    @Test
    void a_table_keeps_the_order_in_which_its_pieces_first_came() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            List<String> labels = List.of("9", "2", "11");
            store.edit(id, Folder.log("2", 5));
            store.edit(
                    id,
                    kept -> new Edit(
                            "log 3 pieces",
                            labels.stream()
                                    .map(each -> Change.of(KeptPiece.unmeasured(each)))
                                    .toList()));
            store.edit(id, kept -> Edit.of("take out 9", Change.without(new Subject(Subject.Kind.PIECE, "9"))));
            store.edit(id, Folder.log("9", 6));
            assertThat(store.find(id).orElseThrow().pieces())
                    .extracting(KeptPiece::label)
                    .containsExactly("2", "9", "11");
        }
        assertSound("shop.db");
    }

    @Test
    void an_edit_that_is_not_kept_is_not_remembered() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            KeptJob before = store.find(id).orElseThrow();
            assertThatThrownBy(() -> store.edit(id, kept -> {
                        throw new IllegalStateException("given up");
                    }))
                    .hasMessage("given up");
            assertThat(store.find(id)).contains(before);
        }
    }

    /** Keeps what a photograph said of a piece, and sees that it is there. */
    static void readPhotograph(JobStore store, JobId id) {
        PhotoResult result = PhotoResult.of("bench 1.jpg", "{\"d1_mm\": 22.40}");
        KeptPiece piece = KeptPiece.unmeasured("7")
                .with(
                        Measures.NONE.with(Column.diameter(1), Length.ofMm(22.4)),
                        new FromPhoto("bench 1.jpg", Optional.of(Length.ofMm(0.3))))
                .with(Duration.ofMinutes(22));
        store.edit(id, kept -> Edit.of("read bench 1.jpg", Change.of(result), Change.of(piece)));
        assertThat(store.find(id).orElseThrow().photos()).containsExactly(result);
        assertThat(store.find(id).orElseThrow().pieces()).containsExactly(piece);
    }

    @Test
    void a_photographs_result_and_its_measures_are_kept_with_their_accuracy() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            readPhotograph(store, id);
        }
    }

    @Test
    void two_programs_that_make_the_store_at_once_share_it() {
        CompletableFuture<?>[] programs = IntStream.range(0, 4)
                .mapToObj(program -> CompletableFuture.runAsync(() -> {
                    try (JobStore store = open("new.db")) {
                        store.keep(Histories.job("Job " + program, 22.5));
                    }
                }))
                .toArray(CompletableFuture[]::new);
        CompletableFuture.allOf(programs).join();
        assertThat(place("new.db").check()).isEqualTo(new StoreReport(4, 0, List.of()));
    }

    @Test
    void what_is_put_into_the_bin_is_out_of_the_list_until_it_is_taken_out() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            assertThat(store.bin(id)).isTrue();
            assertThat(store.bin(id)).isFalse();
            assertThat(store.list()).isEmpty();
            assertThat(store.binned()).hasSize(1);
            assertThat(store.restore(id)).isTrue();
            assertThat(store.restore(id)).isFalse();
            assertThat(store.list()).hasSize(1);
            store.bin(id);
            assertThat(store.emptyBin()).isEqualTo(1);
            assertThat(store.binned()).isEmpty();
        }
        assertSound("shop.db");
    }

    @Test
    void what_another_bench_writes_is_told_to_who_watches() throws InterruptedException {
        try (JobStore here = open("shop.db");
                JobStore there = open("shop.db")) {
            JobId id = here.keep(Histories.job("Leg", 22.5));
            // Written at once: whether the watching stands by then is a matter of milliseconds, and it is told either
            // way.
            for (int round = 0; round < 8; round++) {
                int steps = here.find(id).orElseThrow().times().steps();
                Semaphore told = new Semaphore(0);
                KeptJobs.Watch watch = here.watch(() -> {
                    if (here.find(id).orElseThrow().times().steps() > steps) {
                        told.release();
                    }
                });
                there.edit(id, Folder.log("early " + round, 243.1));
                assertThat(told.tryAcquire(20, TimeUnit.SECONDS)).isTrue();
                told.drainPermits();
                there.edit(id, Folder.log("late " + round, 243.1));
                assertThat(told.tryAcquire(20, TimeUnit.SECONDS)).isTrue();
                watch.close();
            }
        }
    }

    @Test
    void a_step_says_who_took_it_wherever_the_job_goes() {
        try (JobStore here = open("shop.db");
                JobStore there = open("there.db")) {
            JobId id = here.keep(Histories.job("Leg", 22.5));
            JobStore anna = here.signedBy(() -> Optional.of("Anna's telephone"));
            JobStore ben = here.signedBy(() -> Optional.of("Ben"));
            anna.edit(id, Folder.log("7", 243.1));
            ben.undo(id);
            ben.signedBy(Optional::empty).redo(id);
            List<String> who = here.done(id).stream()
                    .skip(1)
                    .map(step -> step.who().orElse("nobody"))
                    .toList();
            assertThat(who).containsExactly("Anna's telephone", "Ben", "Ben");
            GivenJob given = here.give(id).orElseThrow();
            GivenJob read = GivenJob.read(given.format()).job().orElseThrow();
            assertThat(read).isEqualTo(given);
            there.keep(read);
            assertThat(there.done(id)).isEqualTo(here.done(id));
        }
        assertSound("shop.db");
        assertSound("there.db");
    }
}
