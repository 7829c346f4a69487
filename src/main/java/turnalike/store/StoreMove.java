package turnalike.store;

import java.time.Clock;
import java.util.List;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.StoreReport;
import turnalike.units.Article;
import turnalike.units.Problem;

/** Carries a whole store to another place, of the same kind or of the other; every row, so that both are alike afterwards. */
public final class StoreMove {
    private StoreMove() {}

    /**
     * What was carried.
     *
     * @param jobs how many, those in the bin too
     * @param rows of all tables
     * @param digest over all rows, SHA-256 in hexadecimal; the same at both places
     */
    public record Moved(int jobs, long rows, String digest) {}

    /**
     * Looks through the one store, writes all of it to the other in one transaction, and reads that back before it is kept. The one stays as it
     * is, but for being brought up to this program's schema.
     *
     * @param from the store that is there; refused when it is not sound
     * @param to refused when any job is there
     * @param clock dates what is copied beside a file before it is brought up
     * @return what was carried
     */
    public static Moved move(StorePlace from, StorePlace to, Clock clock) {
        if (from.equals(to)) {
            throw new StoreException(
                    new Problem(to.toString(), "is the store itself", "name another place to move it to"));
        }
        from.open(clock).close();
        StoreReport report = from.check();
        if (!report.sound()) {
            throw new StoreException(report.faults().get(0));
        }
        to.openOrMake(clock).close();
        List<KeptTable> tables = KeptTable.all(Schema.SHIPPED);
        try (Database source = connect(from, false);
                Database target = connect(to, true)) {
            return source.read(() -> target.write(() -> copy(source, target, tables)));
        }
    }

    private static Database connect(StorePlace place, boolean write) {
        if (place instanceof StoreInFile kept) {
            return SqliteConnection.open(kept.file(), write ? SqliteConnection.Use.WRITE : SqliteConnection.Use.READ);
        }
        return PostgresConnection.open(
                ((StoreInPostgres) place).address(),
                write ? PostgresConnection.Use.WRITE : PostgresConnection.Use.READ);
    }

    private static Moved copy(Database source, Database target, List<KeptTable> tables) {
        int there = target.number("SELECT count(*) FROM job");
        if (there > 0) {
            throw new StoreException(new Problem(
                    target.place(),
                    "holds %s already".formatted(Article.count(there, "job")),
                    "move to a new file or an empty database; single jobs go with 'give' and 'keep'"));
        }
        RowsDigest sent = new RowsDigest();
        tables.forEach(table -> table.each(source, row -> {
            sent.add(table, row);
            table.insert(target, row);
        }));
        RowsDigest arrived = RowsDigest.of(target, tables);
        String digest = sent.end();
        if (arrived.rows() != sent.rows() || !arrived.end().equals(digest)) {
            throw new StoreException(new Problem(
                    target.place(),
                    "does not keep every letter as it was; nothing was moved",
                    "have the database made with the encoding UTF8"));
        }
        return new Moved(target.number("SELECT count(*) FROM job"), sent.rows(), digest);
    }
}
