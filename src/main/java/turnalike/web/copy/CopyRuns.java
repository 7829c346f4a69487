package turnalike.web.copy;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import turnalike.job.kept.KeptJob;
import turnalike.web.kit.Refusal;

/**
 * The originals traced lately. One is traced at a time, since a photograph of 50 megapixels takes hundreds of megabytes; a few wait. Those
 * longest ago are forgotten: nobody is to find in memory what was sent yesterday.
 */
final class CopyRuns {
    private static final int KEPT = 12;
    private static final int MOST_WAITING = 6;
    private static final long MOST_BYTES = 96L << 20;

    private final SecureRandom dice = new SecureRandom();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "copy");
        thread.setDaemon(true); // an unfinished tracing must not keep the program from ending
        return thread;
    });
    private final Map<String, CopyRun> runs = new LinkedHashMap<>();

    synchronized CopyRun begin(SentOriginal sent, OriginalForm form, Optional<KeptJob> against) {
        if (runs.values().stream().filter(run -> !run.isDone()).count() >= MOST_WAITING) {
            throw Refusal.of(503, "tracing", "too many originals wait already", "try again in a minute");
        }
        byte[] drawn = new byte[16];
        dice.nextBytes(drawn);
        CopyRun run = new CopyRun(HexFormat.of().formatHex(drawn), sent, form, against);
        runs.put(run.id(), run);
        while (runs.size() > KEPT || (runs.size() > 1 && bytes() > MOST_BYTES)) {
            runs.remove(runs.keySet().iterator().next()).stop();
        }
        worker.execute(run::run);
        return run;
    }

    private long bytes() {
        return runs.values().stream()
                .mapToLong(run -> run.sent().bytes().length)
                .sum();
    }

    synchronized Optional<CopyRun> find(String id) {
        return Optional.ofNullable(runs.get(id));
    }

    /** Stops all that run or wait. */
    synchronized void close() {
        runs.values().forEach(CopyRun::stop);
    }
}
