package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.web.kit.LongWork;

/** What goes on beside the pages ends with them: nobody can ask for it any more. */
class SearchesEndTest {
    private static final long LONGEST_MS = 60_000;

    /** The threads in the middle of such work that were not so before. */
    private static Set<Thread> atWork(Set<Thread> before) {
        Set<Thread> found = new HashSet<>();
        Thread.getAllStackTraces().forEach((thread, stack) -> {
            if (Stream.of(stack).anyMatch(frame -> frame.getClassName().equals(LongWork.class.getName()))) {
                found.add(thread);
            }
        });
        found.removeAll(before);
        return found;
    }

    /** Sixty pieces of no order, among which nothing is proven in a minute. */
    private static String many() {
        Random random = new Random(11);
        StringBuilder table = new StringBuilder("piece,mass_g\n");
        for (int i = 0; i < 60; i++) {
            table.append(100 + i)
                    .append(',')
                    .append(137 + 6 * random.nextDouble())
                    .append('\n');
        }
        return "sure=yes&cells=" + URLEncoder.encode(table.toString(), StandardCharsets.UTF_8);
    }

    @Test
    void a_search_of_ten_minutes_for_a_set_ends_with_the_site(@TempDir Path folder) throws Exception {
        Set<Thread> before = atWork(Set.of());
        try (Served served = Served.in(folder)) {
            String job = "/jobs/" + served.demo().text();
            served.post(job + "/pieces/table", many());
            served.post(job + "/match", "seconds=600&strict=true");
            assertThat(atWork(before)).isNotEmpty();
        }
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(LONGEST_MS);
        while (!atWork(before).isEmpty() && System.nanoTime() < end) {
            Thread.sleep(50);
        }
        assertThat(atWork(before)).isEmpty();
    }
}
