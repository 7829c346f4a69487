package turnalike.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Supplier;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreReport;

/**
 * A store that is one SQLite file.
 *
 * @param file that is there or will be
 */
public record StoreInFile(Path file) implements StorePlace {
    @Override
    public boolean isMade() {
        return Files.exists(file);
    }

    @Override
    public boolean isShared() {
        return false;
    }

    @Override
    public JobStore open(Clock clock) {
        return StoreFile.open(file, clock);
    }

    @Override
    public JobStore openOrMake(Clock clock) {
        return StoreFile.openOrMake(file, clock);
    }

    @Override
    public JobStore openAtOnce(Clock clock, StoreFile.Looked told) {
        return StoreFile.openAtOnce(file, clock, told);
    }

    @Override
    public KeptJobs openToRead() {
        return StoreFile.openToRead(file);
    }

    @Override
    public StoreReport check() {
        return StoreFile.check(file);
    }

    @Override
    public Path beside(Supplier<Path> folder, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    @Override
    public String toString() {
        return file.toString();
    }
}
