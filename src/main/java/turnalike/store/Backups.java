package turnalike.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.job.kept.StoreException;
import turnalike.units.Problem;

/**
 * Copies of the file in the folder {@code backups} beside it, one a day at most, each opened and checked before it gets its name. None is
 * ever written over; the oldest go when there are more than fourteen, only ever after a new one that was looked through, the whole of it:
 * so the last sound one stays.
 */
final class Backups {
    private static final String FOLDER = "backups";
    private static final String ENDING = ".backup";
    private static final int KEPT = 14;

    private Backups() {}

    /**
     * Today's copy of a file that has jobs and was found sound, unless there is one. What keeps it from being made is told and stops nothing else.
     */
    static Optional<Problem> daily(SqliteConnection db, Schema schema, LocalDate today) {
        Path copy = folder(db.file()).resolve(prefix(db.file()) + today + ENDING);
        if (Files.exists(copy) || db.number("SELECT count(*) FROM job") == 0) {
            return Optional.empty();
        }
        return make(db, schema, copy);
    }

    /** A copy before the schema changes, beside the dated ones and never taken away. */
    static Optional<Problem> beforeMigration(SqliteConnection db, Schema schema, int from, LocalDate today) {
        Path copy = folder(db.file()).resolve("%sschema-%d-%s%s".formatted(prefix(db.file()), from, today, ENDING));
        return Files.exists(copy) ? Optional.empty() : make(db, schema, copy);
    }

    private static Optional<Problem> make(SqliteConnection db, Schema schema, Path copy) {
        try {
            OwnerOnly.makeFolder(AtomicFile.folder(copy));
            Path unfinished = AtomicFile.begin(copy);
            try {
                db.run("VACUUM INTO ?", unfinished.toString());
                verify(db, schema, unfinished);
                AtomicFile.publish(unfinished, copy);
            } finally {
                Files.deleteIfExists(unfinished);
            }
            prune(db.file());
            return Optional.empty();
        } catch (IOException trouble) {
            return Optional.of(untaken(copy, DiskTrouble.reason(trouble)));
        } catch (StoreException trouble) {
            return Optional.of(untaken(copy, trouble.problem().what()));
        }
    }

    private static Problem untaken(Path copy, String why) {
        return new Problem(
                copy.toString(), "no backup was made today: " + why, "see that the folder can be written to");
    }

    private static void verify(SqliteConnection db, Schema schema, Path copy) {
        try (SqliteConnection opened = SqliteConnection.open(copy, SqliteConnection.Use.READ)) {
            new Examination(opened, schema).require();
            for (String table : List.of("job", "document", "step", "change", "standing", "figure")) {
                String count = "SELECT count(*) FROM " + table;
                // Another program may have added to the original since; nothing is ever taken away.
                if (opened.number(count) > db.number(count) || opened.number("SELECT count(*) FROM job") == 0) {
                    throw SqliteErrors.damaged(copy, "the copy is not like the original");
                }
            }
        }
    }

    /** Copies made by an earlier program are the owner's alone from now on. */
    static void tighten(Path file) {
        Path folder = folder(file);
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> all = Files.list(folder)) {
            all.filter(each -> isOf(file, each)).forEach(OwnerOnly::tighten);
        } catch (IOException unreadable) {
            // told when today's copy is made
        }
    }

    private static boolean isOf(Path file, Path copy) {
        String name = String.valueOf(copy.getFileName());
        return name.startsWith(prefix(file)) && name.endsWith(ENDING);
    }

    private static void prune(Path file) throws IOException {
        List<Path> dated = dated(file);
        for (Path old : dated.subList(Math.min(KEPT, dated.size()), dated.size())) {
            Files.deleteIfExists(old);
        }
    }

    /** The dated copies, newest first. */
    static List<Path> dated(Path file) throws IOException {
        Path folder = folder(file);
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(each -> date(file, each).isPresent())
                    .sorted(Comparator.comparing((Path each) -> date(file, each).orElse(LocalDate.MIN))
                            .reversed())
                    .toList();
        }
    }

    private static Optional<LocalDate> date(Path file, Path copy) {
        String name = String.valueOf(copy.getFileName());
        String prefix = prefix(file);
        if (!isOf(file, copy) || name.length() < prefix.length() + ENDING.length()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(name.substring(prefix.length(), name.length() - ENDING.length())));
        } catch (DateTimeParseException another) {
            return Optional.empty();
        }
    }

    /** What to do about a file that cannot be used: the newest backup, if there is one. */
    static String advice(Path file) {
        try {
            return dated(file).stream()
                    .findFirst()
                    .map("the newest backup is %s: copy it to a new name and use that"::formatted)
                    .orElse("there is no backup of it");
        } catch (IOException unreadable) {
            return "look for a backup in " + folder(file);
        }
    }

    private static Path folder(Path file) {
        Path parent = file.getParent();
        return parent == null ? Path.of(FOLDER) : parent.resolve(FOLDER);
    }

    private static String prefix(Path file) {
        return file.getFileName() + "-";
    }
}
