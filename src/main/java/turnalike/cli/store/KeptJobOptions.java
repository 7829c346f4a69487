package turnalike.cli.store;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import turnalike.job.kept.JobId;
import turnalike.store.StorePlace;

/** Which kept job a command is about, mixed into every command that takes one. */
final class KeptJobOptions {
    @Parameters(paramLabel = "ID", description = "The job's id, as 'keep' printed it.")
    private String job = "";

    @Option(names = "--store", paramLabel = "STORE", required = true, description = Stores.OPTION)
    private String store = "";

    JobId id() {
        return Stores.id(job);
    }

    StorePlace place() {
        return Stores.place(store);
    }
}
