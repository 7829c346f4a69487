package turnalike.cli.trace;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.Today;
import turnalike.cli.kit.UserError;
import turnalike.cli.store.Stores;
import turnalike.job.Job;
import turnalike.job.edit.AgainstEntry;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.pieces.AgainstReport;
import turnalike.pieces.Piece;
import turnalike.trace.Traced;
import turnalike.trace.against.Against;
import turnalike.trace.against.Comparison;
import turnalike.units.UnitSystem;

/** A finished piece held against its job, and kept in the job's log if wished. */
final class AgainstOptions {
    @Option(
            names = "--against",
            paramLabel = "JOB",
            description =
                    "Hold a finished piece against this job's pattern: a job file, or with --store the id of a kept job.")
    private Optional<String> job = Optional.empty();

    @Option(
            names = "--held",
            paramLabel = "END",
            description = "start or end: which ends of piece and pattern are laid together (default start).")
    private Optional<String> held = Optional.empty();

    @Option(names = "--store", paramLabel = "STORE", description = "The store that the job is kept in.")
    private Optional<String> store = Optional.empty();

    @Option(
            names = "--log",
            paramLabel = "LABEL",
            description = "Keep what was seen in the kept job's log, as that piece's; undo takes it back.")
    private Optional<String> label = Optional.empty();

    /** The job that a piece is held against, if one was named; whatever does not belong together is refused. */
    Optional<Job> findJob() {
        if (job.isEmpty()) {
            if (held.isPresent() || store.isPresent() || label.isPresent()) {
                throw UserError.of(
                        "--held, --store, --log",
                        "say how a piece is held against a job",
                        "name the job with --against");
            }
            return Optional.empty();
        }
        if (store.isEmpty()) {
            if (label.isPresent()) {
                throw UserError.of(
                        "--log", "needs a kept job", "name its store with --store, and its id with --against");
            }
            return Optional.of(InputFiles.job(Path.of(job.get())));
        }
        label();
        JobId id = id();
        return Optional.of(Stores.with(
                () -> Stores.place(store.get()).openToRead(),
                kept -> kept.find(id).map(each -> each.text().job()).orElseThrow(() -> Stores.unknown(id))));
    }

    AgainstReport report(Job found, Traced traced, boolean lengthMeasured, UnitSystem units) {
        boolean photograph = traced.source() == Traced.Source.PHOTOGRAPH;
        Against.Manner manner = new Against.Manner(held(), photograph, !photograph);
        return AgainstReport.of(found, traced.original(), manner, label().orElse("1"), lengthMeasured, units);
    }

    /** Whether what was seen is now in the log; {@code source} is the file it came from. */
    boolean log(AgainstReport report, Traced traced, String source) {
        Optional<String> piece = label();
        if (piece.isEmpty() || store.isEmpty()) {
            return false;
        }
        report.unlike().ifPresent(why -> {
            throw UserError.of("--log", why, "leave --log out to look, or hold it against its own job");
        });
        if (report.figures().isEmpty()) {
            throw UserError.of("--log", "nothing was seen surely enough to keep", "measure the piece closer");
        }
        Optional<String> photo = traced.source() == Traced.Source.PHOTOGRAPH ? Optional.of(source) : Optional.empty();
        JobId id = id();
        Stores.with(() -> Stores.place(store.get()).open(Today.clock()), into -> into.edit(
                        id, (KeptJob kept) -> AgainstEntry.log(kept, piece.get(), report, photo))
                .orElseThrow(() -> Stores.unknown(id)));
        return true;
    }

    String logged() {
        return "Kept: what was seen of piece %s, in job %s; 'undo' takes it back.%n"
                .formatted(label().orElse(""), id());
    }

    private JobId id() {
        return Stores.id(job.orElse(""));
    }

    private Optional<String> label() {
        return label.map(text -> Piece.label(text).fold(each -> each, (what, mend) -> {
            throw UserError.of("--log", what, mend);
        }));
    }

    private Comparison.Held held() {
        String word = held.orElse("start").toLowerCase(Locale.ROOT);
        return switch (word) {
            case "start" -> Comparison.Held.START;
            case "end" -> Comparison.Held.END;
            default -> throw UserError.of("--held", "was '%s'".formatted(word), "give start or end");
        };
    }
}
