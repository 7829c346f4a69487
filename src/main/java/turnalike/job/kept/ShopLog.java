package turnalike.job.kept;

import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import turnalike.job.pieces.BlankLog;
import turnalike.units.Mass;

/**
 * What a job's own log says of its blanks and of the time it takes.
 *
 * @param blanks what the pieces weigh, and which were spoiled
 * @param turned how long each piece took at the lathe that was timed there, by its label, in the order they were first logged
 */
public record ShopLog(BlankLog blanks, Map<String, Duration> turned) {
    /** No log. */
    public static final ShopLog NONE = new ShopLog(BlankLog.NONE, Map.of());

    public ShopLog {
        turned = Collections.unmodifiableMap(new LinkedHashMap<>(turned));
    }

    /**
     * {@return what the log of a job says}
     *
     * @param kept the job as it stands
     * @param done its whole history
     */
    public static ShopLog of(KeptJob kept, List<StepSummary> done) {
        Map<String, Mass> weighed = new LinkedHashMap<>();
        kept.pieces().forEach(piece -> piece.piece().mass().ifPresent(mass -> weighed.put(piece.label(), mass)));
        return new ShopLog(
                new BlankLog(weighed, TakenOut.spoiled(done, kept), TakenOut.slips(done, kept)), turned(kept));
    }

    /**
     * {@return how long each piece took at the lathe that was timed there, by its label}
     *
     * @param kept the job as it stands
     */
    public static Map<String, Duration> turned(KeptJob kept) {
        Map<String, Duration> out = new LinkedHashMap<>();
        kept.pieces().forEach(piece -> piece.turning().ifPresent(time -> out.put(piece.label(), time)));
        return out;
    }
}
