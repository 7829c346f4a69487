package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.StoreReport;

/**
 * Damage of every sort, at random: bits turned, bytes put in place of others, stretches wiped or moved, the end cut off. Whatever it was, the
 * check answers; a file that it does not call sound is not written to, not backed up and left as it is; one that it does call sound holds
 * every job to the letter. A few damages here; {@code ./campaign damage} makes them by the ten thousand.
 */
class FlipIT {
    private static final int DAMAGES = Integer.getInteger("turnalike.damages", 60);
    private static final int JOBS = 3;

    @TempDir
    private Path folder = Path.of("");

    private final Folder.SetClock clock = new Folder.SetClock();
    private final List<GivenJob> before = new ArrayList<>();
    private byte[] whole = {};

    private Path file() {
        return folder.resolve("shop.db");
    }

    @BeforeEach
    void fill() {
        List<JobId> ids = Folder.fill(file(), JOBS, clock);
        whole = Folder.bytes(file());
        try (KeptJobs store = StoreFile.openToRead(file())) {
            ids.forEach(id -> before.add(store.give(id).orElseThrow()));
        }
    }

    private byte[] damaged(Random random) {
        byte[] bytes = whole.clone();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            // Half of all in the first pages, where the tables are described and few bytes are of no consequence.
            int at = random.nextInt(random.nextBoolean() ? bytes.length : Math.min(bytes.length, 8192));
            int length = Math.min(1 + random.nextInt(200), bytes.length - at);
            switch (random.nextInt(8)) {
                case 0 -> bytes[at] = (byte) random.nextInt(256);
                case 1 -> bytes[at] = 0;
                case 2 -> Arrays.fill(bytes, at, at + length, (byte) 0);
                case 3 -> System.arraycopy(whole, random.nextInt(whole.length - length), bytes, at, length);
                default -> bytes[at] ^= (byte) (1 << random.nextInt(8));
            }
        }
        return random.nextInt(20) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
    }

    @Test
    void every_damage_is_answered_and_none_is_written_on() {
        Random random = new Random(20260302);
        int noticed = 0;
        for (int i = 0; i < DAMAGES; i++) {
            byte[] damaged = damaged(random);
            Folder.write(file(), damaged);
            StoreReport report = checked(i);
            if (report.sound()) {
                assertWhole(i);
            } else {
                noticed++;
                assertRefused(i);
            }
            readAsFarAsItGoes(i);
            assertThat(Folder.bytes(file())).as("damage %d: left as it is", i).isEqualTo(damaged);
            assertThat(Folder.names(folder))
                    .as("damage %d: nothing beside it", i)
                    .containsExactly("shop.db");
        }
        assertThat(noticed).as("damages noticed").isGreaterThan(DAMAGES / 2);
    }

    private StoreReport checked(int damage) {
        List<StoreReport> report = new ArrayList<>();
        assertThatCode(() -> report.add(StoreFile.check(file())))
                .as("damage %d", damage)
                .doesNotThrowAnyException();
        assertThat(report.get(0).faults()).as("damage %d", damage).allSatisfy(fault -> assertThat(fault.line())
                .doesNotContain("\n", "\u0000", "Exception", "turnalike.", "null"));
        return report.get(0);
    }

    /** What the check calls sound can differ only in bytes that hold nothing. */
    private void assertWhole(int damage) {
        try (KeptJobs store = StoreFile.openToRead(file())) {
            assertThat(store.list()).as("damage %d", damage).hasSize(JOBS);
            for (GivenJob each : before) {
                assertThat(store.give(each.id())).as("damage %d", damage).contains(each);
            }
        }
    }

    private void assertRefused(int damage) {
        assertThat(catchThrowable(() -> StoreFile.open(file(), clock).close()))
                .as("damage %d", damage)
                .isInstanceOf(StoreException.class);
        try (JobStore store = StoreFile.openAtOnce(file(), clock, (took, unsound) -> {})) {
            assertThat(catchThrowable(() -> store.edit(before.get(0).id(), Folder.log("new", 1))))
                    .as("damage %d", damage)
                    .isInstanceOf(StoreException.class);
        } catch (StoreException notEvenToRead) {
            assertThat(notEvenToRead.problem().mend()).isNotBlank();
        }
    }

    /** Any answer but a fault of ours. */
    private void readAsFarAsItGoes(int damage) {
        answered(damage, () -> {
            try (KeptJobs store = StoreFile.openToRead(file())) {
                answered(damage, store::list);
                for (GivenJob each : before) {
                    answered(damage, () -> store.find(each.id()));
                    answered(damage, () -> store.done(each.id()));
                    answered(damage, () -> store.textAfter(each.id(), 40));
                    answered(damage, () -> store.give(each.id(), new StringWriter()));
                    answered(damage, () -> assertSame(store, each));
                }
            }
        });
    }

    /** The two ways of giving a job away, whole and step by step, give the same of a damaged file too. */
    private static void assertSame(KeptJobs store, GivenJob each) {
        StringWriter streamed = new StringWriter();
        Optional<String> whole = store.give(each.id()).map(GivenJob::format);
        assertThat(store.give(each.id(), streamed)).isEqualTo(whole.isPresent());
        assertThat(streamed).hasToString(whole.orElse(""));
    }

    private interface Reading {
        void read();
    }

    private static void answered(int damage, Reading reading) {
        Optional<Throwable> thrown = Optional.ofNullable(catchThrowable(reading::read));
        if (thrown.isPresent() && !(thrown.get() instanceof StoreException)) {
            throw new AssertionError("damage " + damage, thrown.get());
        }
    }
}
