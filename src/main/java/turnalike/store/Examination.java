package turnalike.store;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Replay;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.StoreReport;
import turnalike.units.Problem;

/** Looks through a whole store, and goes on past what is damaged. */
final class Examination {
    private final SqliteConnection db;
    private final Ledger ledger;
    private final List<Problem> faults = new ArrayList<>();
    private int jobs;
    private int pieces;

    Examination(SqliteConnection db) {
        this.db = db;
        this.ledger = new Ledger(db);
    }

    StoreReport report() {
        return db.read(() -> {
            FileIntegrity.faults(db).forEach(each -> fault(db.file().toString(), each));
            ids().forEach(this::examine);
            return new StoreReport(jobs, pieces, faults);
        });
    }

    private void fault(String where, String what) {
        faults.add(new Problem(where, what, "keep what can be given in a new store; " + Backups.advice(db.file())));
    }

    /** A damaged page ends a scan, so the ids are looked for from both ends and in the other tables that name them. */
    private Set<JobId> ids() {
        Set<JobId> ids = new LinkedHashSet<>();
        for (String scan : List.of(
                "SELECT id FROM job ORDER BY rowid",
                "SELECT id FROM job ORDER BY rowid DESC",
                "SELECT job FROM standing ORDER BY rowid",
                "SELECT job FROM standing ORDER BY rowid DESC",
                "SELECT job FROM step ORDER BY rowid",
                "SELECT job FROM step ORDER BY rowid DESC")) {
            try {
                db.list(scan, row -> ids.add(new JobId(row.getString(1))));
            } catch (StoreException | IllegalArgumentException damaged) {
                fault(db.file().toString(), "not every job can be found");
            }
        }
        return ids;
    }

    private void examine(JobId id) {
        try {
            Replay replay = Replay.of(ledger.history().all(id));
            List<KeptPiece> kept = replay.kept(id).pieces();
            boolean stands = replay.standing().equals(ledger.standing(id));
            boolean figured = ledger.figuresAgree(id, kept);
            count(kept);
            if (!stands) {
                fault("job " + id, "what stands is not what its history comes to");
            } else if (!figured) {
                fault("job " + id, "its figures are not those of its pieces");
            }
        } catch (StoreException damaged) {
            asItStands(id, damaged.problem().what());
        } catch (IllegalArgumentException | IllegalStateException damaged) {
            asItStands(id, String.valueOf(damaged.getMessage()));
        }
    }

    private void asItStands(JobId id, String damage) {
        try {
            count(ledger.kept(id).pieces());
            fault("job " + id, "only what stands can be read, not its history: " + damage);
        } catch (StoreException gone) {
            fault("job " + id, "cannot be read: " + damage);
        }
    }

    private void count(List<KeptPiece> kept) {
        jobs++;
        pieces += kept.size();
    }
}
