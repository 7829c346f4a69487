package turnalike.web.load;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.store.StoreFile;
import turnalike.web.Site;

/** One life of a server: the page on a store, with one more job in it, until it is killed. Its clock may be set back. */
final class SoakServer {
    private SoakServer() {}

    /**
     * Serves.
     *
     * @param arguments the store's file, and by how many seconds the clock is set back
     */
    public static void main(String[] arguments) throws Exception {
        Clock clock = Clock.offset(Clock.systemUTC(), Duration.ofSeconds(-Long.parseLong(arguments[1])));
        JobStore store = StoreFile.openOrMake(Path.of(arguments[0]), clock);
        try (Site site = Site.start(0, store, fault -> System.out.println("fault " + fault))) {
            JobId id = store.keep(Histories.job("A shift", 22.5));
            System.out.println("job " + id.text());
            System.out.println("at " + site.address());
            System.out.flush();
            new CountDownLatch(1).await();
        }
    }
}
