package turnalike.job.kept;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Pieces that left the log and were not logged again: taken out, because they were a slip of the hand, or spoiled. Only a spoiled one is a
 * loss, since a wrong label typed and taken out cost no wood.
 */
public final class TakenOut {
    /** How the edit is called that takes a slip out, its label behind. */
    public static final String WORDS = "take out piece ";

    /** How the edit is called that says a piece was spoiled, its label behind. */
    public static final String SPOILED = "count as spoiled piece ";

    private TakenOut() {}

    /**
     * {@return the labels of the pieces that were spoiled; one whose spoiling was undone, or whose piece was logged again, is not}
     *
     * @param done the job's whole history
     * @param kept the job as it stands
     */
    public static Set<String> spoiled(List<StepSummary> done, KeptJob kept) {
        return standing(done, kept, SPOILED);
    }

    /**
     * {@return the labels of the pieces that were taken out and neither spoiled nor logged again}
     *
     * @param done the job's whole history
     * @param kept the job as it stands
     */
    public static Set<String> slips(List<StepSummary> done, KeptJob kept) {
        Set<String> out = standing(done, kept, WORDS);
        out.removeAll(spoiled(done, kept));
        return out;
    }

    private static Set<String> standing(List<StepSummary> done, KeptJob kept, String words) {
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
            if (what.startsWith(words)) {
                out.add(what.substring(words.length()));
            }
        }
        kept.pieces().forEach(piece -> out.remove(piece.label()));
        return out;
    }
}
