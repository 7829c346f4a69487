package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobCard;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.PhotoResult;
import turnalike.job.kept.StoreException;

/** Whole stores carried from a file to a database and back. */
class StoreMoveIT {
    @TempDir
    private Path folder = Path.of("");

    private final Folder.SetClock clock = new Folder.SetClock();

    private StorePlace file(String name) {
        return new StoreInFile(folder.resolve(name));
    }

    private static StorePlace database() {
        return new StoreInPostgres(PostgresServer.shared().makeDatabase());
    }

    /** Everything anybody can ask a store for. */
    private record Told(List<JobCard> list, List<JobCard> bin, TreeMap<String, String> given) {
        static Told of(StorePlace place) {
            try (KeptJobs store = place.openToRead()) {
                TreeMap<String, String> given = new TreeMap<>();
                List<JobCard> all = new ArrayList<>(store.list());
                all.addAll(store.binned());
                all.forEach(card -> given.put(
                        card.id().text(), store.give(card.id()).orElseThrow().format()));
                return new Told(store.list(), store.binned(), given);
            }
        }
    }

    private StorePlace filled() {
        StorePlace place = file("shop.db");
        List<JobId> ids = Folder.fill(folder.resolve("shop.db"), 4, clock);
        try (JobStore store = place.open(clock)) {
            store.bin(ids.get(1));
            store.edit(
                    ids.get(2),
                    kept -> Edit.of(
                            "read Blatt übergroß 🪵.jpg",
                            Change.of(PhotoResult.of("Blatt übergroß 🪵.jpg", "{\"d1_mm\": 22.4000000000000021}"))));
            store.keep(Histories.job("Äste, „krumm“ und gerade", 22.5));
        }
        return place;
    }

    @Test
    void a_whole_store_goes_to_a_database_and_back_unchanged() {
        StorePlace here = filled();
        StorePlace database = database();
        StorePlace back = file("back.db");
        Told before = Told.of(here);
        assertThat(before.given()).hasSize(5);
        StoreMove.Moved there = StoreMove.move(here, database, clock);
        assertThat(Told.of(database)).isEqualTo(before);
        assertThat(database.check().faults()).isEmpty();
        StoreMove.Moved again = StoreMove.move(database, back, clock);
        assertThat(again).isEqualTo(there);
        assertThat(there.jobs()).isEqualTo(5);
        assertThat(Told.of(back)).isEqualTo(before);
        assertThat(back.check().faults()).isEmpty();
        assertThat(Told.of(here)).as("the store it came from").isEqualTo(before);
    }

    @Test
    void nothing_is_moved_onto_other_jobs_or_out_of_a_damaged_store() {
        StorePlace here = filled();
        StorePlace taken = database();
        try (JobStore store = taken.openOrMake(clock)) {
            store.keep(Histories.job("Leg", 22.5));
        }
        Told before = Told.of(taken);
        assertThatThrownBy(() -> StoreMove.move(here, taken, clock))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("holds 1 job already");
        assertThat(Told.of(taken)).isEqualTo(before);
        assertThatThrownBy(() -> StoreMove.move(here, here, clock)).hasMessageContaining("is the store itself");
        PostgresServer.shared()
                .sql(
                        ((StoreInPostgres) taken).address().database(),
                        "SET search_path = turnalike",
                        "UPDATE job SET title = 'Arm'");
        StorePlace empty = file("empty.db");
        assertThatThrownBy(() -> StoreMove.move(taken, empty, clock)).hasMessageContaining("its title in the list");
        assertThat(empty.isMade()).isFalse();
    }

    /** A digest that took two cells for one, or nothing for an empty text, would find stores alike that are not. */
    @Test
    void rows_that_differ_have_another_digest() {
        KeptTable table = KeptTable.all(Schema.SHIPPED).get(0);
        List<String> digests = new ArrayList<>();
        for (List<Optional<Object>> row : List.<List<Optional<Object>>>of(
                List.of(Optional.of("ab"), Optional.of("c")),
                List.of(Optional.of("a"), Optional.of("bc")),
                List.of(Optional.of(""), Optional.of("abc")),
                List.of(Optional.empty(), Optional.of("abc")),
                List.of(Optional.of("1"), Optional.of("c")),
                List.of(Optional.of(1), Optional.of("c")))) {
            RowsDigest digest = new RowsDigest();
            digest.add(table, row);
            digests.add(digest.end());
        }
        assertThat(Collections.frequency(digests, digests.get(0))).isEqualTo(1);
        assertThat(digests).doesNotHaveDuplicates();
    }
}
