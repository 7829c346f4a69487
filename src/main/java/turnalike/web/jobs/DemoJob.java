package turnalike.web.jobs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptPiece;
import turnalike.pieces.PiecesFile;

/** The shipped order, whose every word and weight is invented, kept as a job with its pieces. */
public final class DemoJob {
    private DemoJob() {}

    /** Keeps it beside whatever is there and returns its id. */
    public static JobId keep(JobStore store) {
        JobText text = text();
        List<Change> pieces = PiecesFile.parse(
                        shipped("fair-wheel-pieces.csv"), text.job().units())
                .pieces()
                .stream()
                .map(KeptPiece::of)
                .map(Change::of)
                .toList();
        JobId id = store.keep(text);
        store.edit(id, kept -> new Edit("log the demo's invented pieces", pieces));
        return id;
    }

    /** Its text as it is shipped. */
    public static JobText text() {
        return JobText.read(shipped("fair-wheel.job.json")).text().orElseThrow();
    }

    private static String shipped(String name) {
        try (InputStream in = DemoJob.class.getResourceAsStream("/turnalike/demo/" + name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
