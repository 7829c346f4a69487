package turnalike.job.kept;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.pieces.BlankLog;
import turnalike.units.Mass;

/**
 * What a job's own log says of its blanks and of the time it takes.
 *
 * @param blanks what the pieces weigh, and which were thrown away
 * @param turned how long each piece took at the lathe that was timed there, in the order they were first logged
 */
public record ShopLog(BlankLog blanks, List<Duration> turned) {
    /** No log. */
    public static final ShopLog NONE = new ShopLog(BlankLog.NONE, List.of());

    public ShopLog {
        turned = List.copyOf(turned);
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
                new BlankLog(weighed, TakenOut.of(done, kept)),
                kept.pieces().stream()
                        .map(KeptPiece::turning)
                        .flatMap(Optional::stream)
                        .toList());
    }
}
