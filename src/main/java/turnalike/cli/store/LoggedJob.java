package turnalike.cli.store;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import turnalike.cli.kit.InputFiles;
import turnalike.job.Job;
import turnalike.job.kept.JobId;
import turnalike.job.kept.ShopLog;

/** A job given as a file, or kept in a store, whose log then counts too; mixed into every command that goes by such a log. */
public final class LoggedJob {
    @Option(
            names = "--store",
            paramLabel = "STORE",
            description = "JOB is the id of a job kept in this store; what its log says counts too.")
    private Optional<String> store = Optional.empty();

    /** A job with what its log says; nothing where it came as a file. */
    public record Found(Job job, ShopLog log) {}

    /** The job of that file, or of that id where a store is named. */
    public Found find(String job) {
        if (store.isEmpty()) {
            return new Found(InputFiles.job(Path.of(job)), ShopLog.NONE);
        }
        JobId id = Stores.id(job);
        return Stores.with(() -> Stores.place(store.get()).openToRead(), kept -> kept.find(id)
                .map(each -> new Found(each.text().job(), ShopLog.of(each, kept.done(id))))
                .orElseThrow(() -> Stores.unknown(id)));
    }
}
