package turnalike.release;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Which release served a store last and up to which its user has read what changed: two lines in a small file beside the store, whose own
 * file knows nothing of it. Where that file cannot be read or written, the user is told once more, and no more comes of it. May be used by several
 * threads.
 */
public final class Renewal {
    private final Path file;
    private final Release now;
    private final Optional<Release> served;
    private Optional<Release> read;

    private Renewal(Path file, Release now, Optional<Release> served, Optional<Release> read) {
        this.file = file;
        this.now = now;
        this.served = served;
        this.read = read;
    }

    /**
     * How old a store can be for whoever serves it here.
     *
     * @param isNew whether it was made just now: then there is nothing to tell, whatever an earlier one of its name left
     * @param oldest the day of the oldest in it that an earlier release may have served here; nothing where no earlier one can have; asked only
     *     where no line tells
     */
    public record Age(boolean isNew, Supplier<Optional<LocalDate>> oldest) {
        private boolean isSince(Release release) {
            return oldest.get().map(day -> !day.isBefore(release.day())).orElse(true);
        }
    }

    /**
     * {@return the store's, now that this release serves it}
     *
     * @param store its file
     * @param age what is known of its age where no line tells which release served it last
     */
    public static Renewal of(Path store, Age age) {
        return of(store, age, Release.now());
    }

    static Renewal of(Path store, Age age, Release now) {
        Path file = store.resolveSibling(store.getFileName() + ".release");
        List<String> lines = lines(file);
        Optional<Release> served = lines.stream().findFirst().flatMap(Release::parse);
        boolean isNew = age.isNew() || (served.isEmpty() && age.isSince(now));
        Optional<Release> read =
                isNew ? Optional.of(now) : lines.stream().skip(1).findFirst().flatMap(Release::parse);
        Renewal renewal = new Renewal(file, now, isNew ? Optional.of(now) : served, read);
        // An earlier program that serves it for a while takes nothing back.
        if (served.isEmpty() || !served.get().day().isAfter(now.day())) {
            renewal.write();
        }
        return renewal;
    }

    private static List<String> lines(Path file) {
        try {
            return Files.isRegularFile(file) && Files.size(file) < 1_000 ? Files.readAllLines(file) : List.of();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    /** {@return one line for whoever starts the program, when another release served the store before} */
    public Optional<String> line() {
        if (!isLaterThan(served)) {
            return Optional.empty();
        }
        String before =
                served.map(each -> "; it was %s before".formatted(each.text())).orElse("");
        return Optional.of(
                "Renewed: this is Turnalike %s%s. Your jobs are as they were.".formatted(now.text(), before));
    }

    /** {@return this release, when its user has not closed the note of it yet} */
    public synchronized Optional<Release> unread() {
        return isLaterThan(read) ? Optional.of(now) : Optional.empty();
    }

    private boolean isLaterThan(Optional<Release> other) {
        return other.isEmpty()
                || now.day().isAfter(other.get().day())
                || (now.day().equals(other.get().day())
                        && !now.version().equals(other.get().version()));
    }

    /** {@return what changed since what was read last; the newest where that is not known or nothing did} */
    public synchronized List<Changes> changes() {
        return read.map(each -> Changes.since(each.day())).orElseGet(() -> Changes.since(now.day()));
    }

    /** Closes the note. */
    public synchronized void read() {
        read = Optional.of(now);
        write();
    }

    private synchronized void write() {
        String text = now.text() + "\n" + read.map(each -> each.text() + "\n").orElse("");
        try {
            Files.writeString(file, text);
        } catch (IOException unwritable) {
            return; // told once more at the next start
        }
    }
}
