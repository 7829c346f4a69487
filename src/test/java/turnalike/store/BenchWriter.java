package turnalike.store;

import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.StoreException;

/**
 * One of several benches on one database: logs pieces that nobody else logs, each in a job drawn at random, and says each once the store
 * says that it is kept.
 */
final class BenchWriter {
    private static final int MOST_ATTEMPTS = 60;

    private BenchWriter() {}

    /** Arguments: the address, the bench's name, how many edits, and the jobs. Each label that was acknowledged is a line. */
    public static void main(String[] arguments) {
        PostgresAddress address = PostgresAddress.parse(arguments[0]).get();
        List<JobId> jobs = List.of(arguments).subList(3, arguments.length).stream()
                .map(JobId::new)
                .toList();
        write(address, arguments[1], Integer.parseInt(arguments[2]), jobs, label -> {
            System.out.println(label);
            System.out.flush();
        });
    }

    static void write(
            PostgresAddress address, String name, int edits, List<JobId> jobs, Consumer<String> acknowledged) {
        Random random = new Random(name.hashCode());
        try (JobStore store = opened(address)) {
            for (int i = 0; i < edits; i++) {
                String label = "%s-%d".formatted(name, i);
                JobId job = jobs.get(random.nextInt(jobs.size()));
                if (isKept(store, job, label)) {
                    acknowledged.accept(label);
                }
            }
        }
    }

    /** One that begins just while the server is down is told so; whoever stands at the bench tries again. */
    private static JobStore opened(PostgresAddress address) {
        for (int attempt = 1; ; attempt++) {
            try {
                return new StoreInPostgres(address).open(Clock.systemUTC());
            } catch (StoreException down) {
                if (attempt == MOST_ATTEMPTS) {
                    throw down;
                }
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(500));
            }
        }
    }

    private static boolean isKept(JobStore store, JobId job, String label) {
        try {
            return store.edit(job, Folder.log(label, 5)).isPresent();
        } catch (StoreException notKnown) {
            return false;
        }
    }
}
