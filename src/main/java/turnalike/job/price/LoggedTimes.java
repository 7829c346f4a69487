package turnalike.job.price;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.price.Timing;
import turnalike.units.Article;

/**
 * A job's times: those that were typed, and what the bench view timed at the lathe.
 *
 * <p>The bench view's clock is the stage {@value #STAGE}. A time typed for that stage may be the same minutes once more, so beside the clock
 * only these are counted of them: what is done once for the order, and a piece named in its row that the clock did not time. The clock is
 * taken, since it stands with the piece it timed; a typed time without a piece cannot be told from it.
 *
 * @param stages the timings of each, in the order they were taken
 * @param aside how many typed times are not counted
 */
public record LoggedTimes(Map<String, List<Timing>> stages, int aside) {
    /** What the bench view times: a piece at the lathe. */
    public static final String STAGE = "turning";

    private static final double MS_PER_MINUTE = 60_000;

    public LoggedTimes {
        stages = new LinkedHashMap<>(stages);
    }

    /**
     * {@return the timings of each stage: those typed, and after them what each piece took at the lathe}
     *
     * @param typed by stage
     * @param turned what the log has of pieces at the lathe, by their labels, in the order they were first logged; above zero
     */
    public static LoggedTimes of(Map<String, List<Timing>> typed, Map<String, Duration> turned) {
        Map<String, List<Timing>> out = new LinkedHashMap<>();
        String clocked = STAGE;
        int aside = 0;
        for (Map.Entry<String, List<Timing>> each : typed.entrySet()) {
            boolean sameStage = each.getKey().strip().equalsIgnoreCase(STAGE);
            List<Timing> counted = each.getValue().stream()
                    .filter(timing -> !sameStage || turned.isEmpty() || isAnother(timing, turned))
                    .toList();
            aside += each.getValue().size() - counted.size();
            clocked = sameStage ? each.getKey() : clocked;
            if (!counted.isEmpty()) {
                out.put(each.getKey(), new ArrayList<>(counted));
            }
        }
        for (Map.Entry<String, Duration> each : turned.entrySet()) {
            double minutes = each.getValue().toMillis() / MS_PER_MINUTE;
            out.computeIfAbsent(clocked, stage -> new ArrayList<>())
                    .add(new Timing(minutes, 1, Optional.of(each.getKey())));
        }
        return new LoggedTimes(out, aside);
    }

    private static boolean isAnother(Timing typed, Map<String, Duration> turned) {
        return typed.pieces() == 0
                || typed.piece().filter(piece -> !turned.containsKey(piece)).isPresent();
    }

    /** {@return what is not counted and why, in a sentence; empty where all is} */
    public Optional<String> note() {
        return aside == 0
                ? Optional.empty()
                : Optional.of(
                        "Not counted: %s typed for “%s”, where the bench view’s own clock counts. Name the piece it was for, or another"
                                        .formatted(Article.count(aside, "time"), STAGE)
                                + " stage, if it is other work.");
    }
}
