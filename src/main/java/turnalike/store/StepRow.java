package turnalike.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One step as its rows have it; its texts are not read any further, so that a long history costs what its bytes cost.
 *
 * @param at its time, to the letter
 * @param did the word of what sort of step it is
 * @param of the step it undoes or redoes
 * @param changes in order
 * @param who took it; empty where nobody was named
 */
record StepRow(
        int number,
        String at,
        String did,
        OptionalInt of,
        String what,
        String seal,
        List<ChangeRow> changes,
        Optional<String> who) {

    /**
     * One change.
     *
     * @param before the digest of what the subject was; empty: was not there
     * @param after the digest of what it is; empty: is taken out
     * @param body the text of that digest, where it was asked for
     */
    record ChangeRow(String kind, String name, Optional<String> before, Optional<String> after, Optional<String> body) {
        /** Of a row whose columns from 7 on are these. */
        private static ChangeRow of(ResultSet row) throws SQLException {
            return new ChangeRow(
                    Database.text(row, 7),
                    Database.text(row, 8),
                    Optional.ofNullable(row.getString(9)),
                    Optional.ofNullable(row.getString(10)),
                    Optional.ofNullable(row.getString(11)));
        }
    }

    private static final String QUERY = "SELECT s.number, s.at, s.did, s.of_step, s.what, s.seal,"
            + " c.kind, c.name, c.before, c.after, %s, %s FROM step AS s"
            + " LEFT JOIN change AS c ON c.job = s.job AND c.step = s.number%s"
            + " WHERE s.job = ? AND s.number > ? AND s.number <= ? ORDER BY s.number, c.place";

    /** From this version of the schema on a step says who took it. */
    private static final int NAMED_FROM = 3;

    /** Asks for the steps of a job after one and up to another, with the texts that they made or without. */
    static String query(Database db, boolean withTexts) {
        String who = who(db, "s.who");
        return withTexts
                ? QUERY.formatted("d.body", who, " LEFT JOIN document AS d ON d.digest = c.after")
                : QUERY.formatted("NULL", who, "");
    }

    /** The column, in a store that has it. */
    static String who(Database db, String column) {
        return hasWho(db) ? column : "NULL";
    }

    static boolean hasWho(Database db) {
        return db.version() >= NAMED_FROM;
    }

    StepRow {
        changes = List.copyOf(changes);
    }

    /** What is sealed, in order; none of it holds a line end. */
    List<String> parts() {
        List<String> parts = new ArrayList<>(List.of(String.valueOf(number), at, did, of.toString(), what));
        for (ChangeRow each : changes) {
            parts.add(each.kind());
            parts.add(each.name());
            parts.add(each.before().orElse(""));
            parts.add(each.after().orElse(""));
        }
        who.ifPresent(parts::add); // after groups of four, so that it cannot be taken for one of them
        return parts;
    }

    /** Whether this is the step that was sealed after the one with that seal. */
    boolean isSealedAfter(String sealBefore) {
        return Digest.seal(sealBefore, parts()).equals(seal);
    }

    /** Whether each text that was asked for is the one that was written. */
    boolean hasItsTexts() {
        return changes.stream().allMatch(each -> each.body().map(Digest::of).equals(each.after()));
    }

    /** Takes steps. */
    interface Taker {
        void take(StepRow step);
    }

    /** Rows of a query above made into steps and handed on one by one. */
    static final class Reader implements Database.EachRow {
        private final Taker taker;
        private final List<ChangeRow> changes = new ArrayList<>();
        private Optional<StepRow> begun = Optional.empty();

        Reader(Taker taker) {
            this.taker = taker;
        }

        @Override
        public void take(ResultSet row) throws SQLException {
            int number = row.getInt(1);
            if (begun.isPresent() && begun.get().number() != number) {
                end();
            }
            if (begun.isEmpty()) {
                begun = Optional.of(bare(row, number));
            }
            if (Optional.ofNullable(row.getString(7)).isPresent()) {
                changes.add(ChangeRow.of(row));
            }
        }

        private static StepRow bare(ResultSet row, int number) throws SQLException {
            int another = row.getInt(4);
            OptionalInt of = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(another);
            return new StepRow(
                    number,
                    Database.text(row, 2),
                    Database.text(row, 3),
                    of,
                    Database.text(row, 5),
                    Database.text(row, 6),
                    List.of(),
                    Optional.ofNullable(row.getString(12)));
        }

        /** After the last row. */
        void end() {
            begun.ifPresent(step -> taker.take(new StepRow(
                    step.number(), step.at(), step.did(), step.of(), step.what(), step.seal(), changes, step.who())));
            begun = Optional.empty();
            changes.clear();
        }
    }
}
