package turnalike.job.price;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import turnalike.price.Timing;

/** What a job's own log says of times, beside those that were typed. */
public final class LoggedTimes {
    /** What the bench view times: a piece at the lathe. */
    public static final String STAGE = "turning";

    private static final double MS_PER_MINUTE = 60_000;

    private LoggedTimes() {}

    /**
     * {@return the timings of each stage: those typed, and after them what each piece took at the lathe}
     *
     * @param typed by stage
     * @param turned what the log has of pieces at the lathe, in the order they were first logged; above zero
     */
    public static Map<String, List<Timing>> onto(Map<String, List<Timing>> typed, List<Duration> turned) {
        Map<String, List<Timing>> out = new LinkedHashMap<>();
        typed.forEach((stage, timings) -> out.put(stage, new ArrayList<>(timings)));
        for (Duration each : turned) {
            out.computeIfAbsent(STAGE, stage -> new ArrayList<>()).add(new Timing(each.toMillis() / MS_PER_MINUTE, 1));
        }
        return out;
    }
}
