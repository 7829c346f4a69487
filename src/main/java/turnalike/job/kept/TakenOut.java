package turnalike.job.kept;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which pieces were taken out of the log and not logged again: what was thrown away. */
public final class TakenOut {
    /** How the edit is called that takes a piece out, its label behind. */
    public static final String WORDS = "take out piece ";

    private TakenOut() {}

    /**
     * {@return the labels of the pieces whose taking out stands; one that was undone, or whose piece was logged again, does not}
     *
     * @param done the job's whole history
     * @param kept the job as it stands
     */
    public static Set<String> of(List<StepSummary> done, KeptJob kept) {
        TreeMap<Integer, String> standing = new TreeMap<>();
        for (StepSummary step : done) {
            switch (step.did()) {
                case EDIT -> standing.put(step.number(), step.what());
                case UNDO -> step.of().ifPresent(standing::remove);
                case REDO -> step.of().ifPresent(number -> standing.put(number, step.what()));
            }
        }
        Set<String> out = new TreeSet<>();
        for (String what : standing.values()) {
            if (what.startsWith(WORDS)) {
                out.add(what.substring(WORDS.length()));
            }
        }
        kept.pieces().forEach(piece -> out.remove(piece.label()));
        return out;
    }
}
