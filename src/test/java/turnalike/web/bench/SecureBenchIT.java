package turnalike.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobStore;
import turnalike.reach.Certificates;
import turnalike.reach.Outside;
import turnalike.reach.PemFiles;
import turnalike.store.StoreFile;
import turnalike.web.Browser;
import turnalike.web.Site;
import turnalike.web.jobs.FirstJobs;

/**
 * What a phone's browser allows only where nobody can listen: opening the bench view without a connection, and keeping the screen awake. It
 * is asked for by a name that is not this machine's own, as from a phone, with a certificate.
 */
class SecureBenchIT {
    private static final String[] AS_FROM_A_PHONE = {
        "--ignore-certificate-errors", "--host-resolver-rules=MAP bench.test 127.0.0.1"
    };

    @TempDir
    private Path folder;

    @Test
    void with_a_certificate_a_phone_opens_the_bench_view_without_a_connection() throws Exception {
        Certificates.Pair files = Certificates.of(folder, "own", "EC", "dns:bench.test");
        Outside outside = new Outside(
                false, Optional.of(PemFiles.read(files.certificate(), files.key(), Instant.now())), Optional.empty());
        List<Exception> faults = new ArrayList<>();
        try (JobStore store = StoreFile.openOrMake(folder.resolve("jobs.db"), Clock.systemUTC())) {
            FirstJobs.keep(store);
            String job = store.list().stream()
                    .filter(each -> each.title().startsWith("Harrowmead"))
                    .findFirst()
                    .orElseThrow()
                    .id()
                    .text();
            try (Site site = Site.start(new Site.Reach(0, Optional.empty(), outside), store, faults::add);
                    Browser browser = Browser.whole(AS_FROM_A_PHONE)) {
                Page page = browser.page(360, 740);
                page.navigate("https://bench.test:%d/jobs/%s/bench".formatted(site.port(), job));
                assertThat(page.evaluate("window.isSecureContext && 'wakeLock' in navigator"))
                        .isEqualTo(true);
                awaitTrue(page, "navigator.serviceWorker.controller !== null");
                awaitTrue(page, "caches.has('turnalike-bench')");
                awaitTrue(
                        page,
                        "caches.open('turnalike-bench').then(shelf => shelf.keys()).then(keys => keys.length >= 4)");
                page.context().setOffline(true);
                page.reload();
                assertThat(page.locator(".step.now .tool").textContent()).isNotBlank();
                assertThat(page.locator("#awake").textContent()).isNotBlank();
            }
        }
        assertThat(faults).isEmpty();
    }

    /** Asked from outside again and again: the page's own policy forbids evaluating within it. */
    private static void awaitTrue(Page page, String asked) {
        long last = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (!Boolean.TRUE.equals(page.evaluate(asked))) {
            assertThat(System.nanoTime()).as(asked).isLessThan(last);
            page.waitForTimeout(50);
        }
    }
}
