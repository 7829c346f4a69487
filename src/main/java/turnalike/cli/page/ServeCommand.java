package turnalike.cli.page;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.FaultLogs;
import turnalike.cli.kit.ShutdownHook;
import turnalike.cli.kit.Today;
import turnalike.cli.kit.UserError;
import turnalike.cli.store.DataFolder;
import turnalike.cli.store.Stores;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.StoreException;
import turnalike.reach.Outside;
import turnalike.release.Renewal;
import turnalike.store.OwnerOnly;
import turnalike.store.StoreFile;
import turnalike.store.StoreInFile;
import turnalike.store.StorePlace;
import turnalike.units.Problem;

@Command(
        name = "serve",
        description = {
            "Serves the page: every job of the store in a browser on this machine, and on no other. Runs until you stop it (Ctrl-C);"
                    + " each edit is on disk before the page shows it.",
            "A store that is new begins with the invented demo beside an empty job."
        },
        footer = {"", "Example: turnalike serve --port 8200 --store shop.db"},
        mixinStandardHelpOptions = true)
public final class ServeCommand implements Runnable {
    /** Free on most machines; when taken, and nobody asked for it, any other does. */
    private static final int USUAL_PORT = 8617;

    private static final long LONGEST_CLOSING_S = 3;
    private static final Duration TOLD_FROM = Duration.ofSeconds(1);

    @Option(names = "--port", paramLabel = "N", description = "The port, 0 for any that is free (8617 unless given).")
    private Optional<Integer> port = Optional.empty();

    @Option(
            names = "--store",
            paramLabel = "STORE",
            description = Stores.OPTION + " A file in your own data folder unless given.")
    private Optional<String> named = Optional.empty();

    @Option(
            names = "--lan",
            description =
                    "Also serve phones and tablets on the networks this machine is joined to, at each of its IPv4 addresses; each once it is"
                            + " paired with the code printed here.")
    private boolean lan;

    @Mixin
    private OutsideOptions outside = new OutsideOptions();

    private final FaultLogs faults = new FaultLogs();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** For the bare command line: as if nothing was asked but the page, in a browser where there is one. */
    public static void open(CommandSpec spec) {
        ServeCommand command = new ServeCommand();
        command.spec = spec;
        command.serve(spec.commandLine().getOut(), DesktopBrowser::open);
    }

    @Override
    public void run() {
        // Told before a store is made or opened for nothing.
        outside.read(lan, Today.clock().instant());
        if (port.isPresent() && (port.get() < 0 || port.get() > 65_535)) {
            throw UserError.of("--port", "was %d".formatted(port.get()), "give a number from 0 to 65535");
        }
        serve(spec.commandLine().getOut(), address -> {});
    }

    private PageServer serving() {
        return PageServer.of(spec);
    }

    private interface Opening {
        void open(String address);
    }

    private void serve(PrintWriter console, Opening opening) {
        StorePlace store = named.map(Stores::place).orElseGet(ServeCommand::ownStore);
        boolean isNew = !isMade(store);
        // Whatever is not closed by then loses nothing: each edit was on disk before it was shown.
        ShutdownHook end = ShutdownHook.hooked(LONGEST_CLOSING_S, () -> {});
        try {
            serve(store, isNew, end, console, opening);
        } finally {
            end.closed();
        }
    }

    private void serve(StorePlace store, boolean isNew, ShutdownHook end, PrintWriter console, Opening opening) {
        CompletableFuture<String> looked = new CompletableFuture<>();
        StoreFile.Looked through = (took, unsound) -> looked.complete(words(took, unsound));
        Stores.with(() -> store.openAtOnce(Today.clock(), through), jobs -> {
            if (isNew) {
                serving().begin(jobs);
            }
            Renewal renewal = Renewal.of(
                    store.beside(ServeCommand::ownFolder, ""), new Renewal.Age(isNew, () -> oldest(store, jobs)));
            try (PageServer.Page site = start(jobs, devices(store), renewal)) {
                console.println("Turnalike is at " + site.address() + " and keeps its jobs in " + store
                        + ". Stop it with Ctrl-C.");
                renewal.line()
                        .ifPresent(each -> console.println(each + " What changed: " + site.address() + "changes"));
                site.otherAddresses().forEach(each -> console.println("On another device: " + each));
                outside.notes(lan, Today.clock().instant()).forEach(console::println);
                console.flush();
                CompletableFuture<Void> telling = looked.thenAccept(words -> tell(console, words, jobs));
                opening.open(site.address());
                end.await();
                telling.cancel(false);
            }
            return jobs;
        });
    }

    /** Of a check that nobody had to wait for nothing is said. */
    private static String words(Duration took, Optional<Problem> unsound) {
        if (unsound.isPresent()) {
            return "NOTHING IS WRITTEN, every change is refused; what can be read is shown. "
                    + unsound.get().line();
        }
        return took.compareTo(TOLD_FROM) < 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        "The whole store was looked through in %.1f s and is sound.",
                        took.toMillis() / 1000.0);
    }

    private static void tell(PrintWriter console, String looked, JobStore jobs) {
        if (!looked.isEmpty()) {
            console.println(looked);
        }
        Stores.note(console, jobs.notes());
        console.flush();
    }

    /** The oldest job's day. A machine that joins others' store was served by nothing earlier, however old the jobs in it are. */
    private static Optional<LocalDate> oldest(StorePlace store, JobStore jobs) {
        return store.isShared()
                ? Optional.empty()
                : Stream.concat(jobs.list().stream(), jobs.binned().stream())
                        .map(each -> each.times().made())
                        .min(Comparator.naturalOrder())
                        .map(at -> LocalDate.ofInstant(at, Today.clock().getZone()));
    }

    private static boolean isMade(StorePlace store) {
        try {
            return store.isMade();
        } catch (StoreException trouble) {
            throw new UserError(List.of(trouble.problem()));
        }
    }

    /** Which devices are paired stands beside a file; of a database, each machine that serves it minds its own. */
    static Supplier<Path> devices(StorePlace store) {
        return () -> store.beside(ServeCommand::ownFolder, ".devices");
    }

    private PageServer.Shared shared(Path devices) {
        return new PageServer.Shared(devices, code -> {
            PrintWriter console = spec.commandLine().getOut();
            console.println(
                    "Pairing code for the next device: %s %s".formatted(code.substring(0, 3), code.substring(3)));
            console.flush();
        });
    }

    private void fault(Exception fault) {
        PrintWriter err = spec.commandLine().getErr();
        faults.log(fault)
                .ifPresent(log -> err.println(
                        "turnalike: fault: something went wrong that is not your doing; please report it with " + log));
        err.flush();
    }

    private PageServer.Page start(JobStore jobs, Supplier<Path> devices, Renewal renewal) {
        Outside reached = outside.read(lan, Today.clock().instant());
        Optional<PageServer.Shared> shared =
                lan || reached.behind().isPresent() ? Optional.of(shared(devices.get())) : Optional.empty();
        OptionalInt asked = port.map(OptionalInt::of).orElse(OptionalInt.empty());
        try {
            return serving()
                    .open(
                            new PageServer.Reach(asked.orElse(USUAL_PORT), shared, reached, Optional.of(renewal)),
                            jobs,
                            this::fault);
        } catch (PageServer.PortTaken taken) {
            if (asked.isPresent()) {
                throw UserError.of(
                        "--port",
                        "%d cannot be opened".formatted(asked.getAsInt()),
                        "stop what uses it, or give another");
            }
        }
        try {
            return serving().open(new PageServer.Reach(0, shared, reached, Optional.of(renewal)), jobs, this::fault);
        } catch (PageServer.PortTaken none) {
            throw UserError.of("network", "no port of this machine can be opened", "check what keeps programs from it");
        }
    }

    private static StorePlace ownStore() {
        return new StoreInFile(ownFolder().resolve("turnalike.db"));
    }

    /** Of the store that was named, or of that in the user's own folder. */
    static Supplier<Path> devices(Optional<StorePlace> named) {
        return devices(named.orElseGet(ServeCommand::ownStore));
    }

    /** Where each system keeps what belongs to one user's programs. */
    private static Path ownFolder() {
        Path folder = DataFolder.of(
                System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")), System.getenv());
        try {
            OwnerOnly.makeFolder(folder);
        } catch (IOException trouble) {
            throw UserError.of(folder.toString(), "cannot be made", "give another place with --store");
        }
        return folder;
    }
}
