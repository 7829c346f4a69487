package turnalike.price;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an order takes, stage by stage.
 *
 * @param wanted how many pieces are turned, those that will be lost counted
 * @param stages in the order they were told
 * @param total minutes together: as likely more as less where something is learned
 * @param range of the total, where something still to be done has one
 */
public record WorkForecast(int wanted, List<StageForecast> stages, double total, Optional<Range> range) {
    private static final int DRAWS = 2_000;

    public WorkForecast {
        stages = List.copyOf(stages);
    }

    /**
     * {@return what the order takes}
     *
     * @param timings of each stage, in the order they were taken; a stage has one or more
     * @param wanted how many pieces are turned, 1 or more, those that will be lost counted
     */
    public static WorkForecast of(Map<String, List<Timing>> timings, int wanted) {
        List<StageForecast> stages = new ArrayList<>();
        double[] together = new double[DRAWS];
        for (Map.Entry<String, List<Timing>> stage : timings.entrySet()) {
            Optional<TimesFit> fit = fit(stage.getValue());
            double[] toCome = toCome(stage.getValue(), fit, wanted, stages.size());
            for (int i = 0; i < DRAWS; i++) {
                together[i] += toCome[i];
            }
            Arrays.sort(toCome);
            stages.add(StageForecast.of(stage.getKey(), stage.getValue(), wanted, toCome, fit.map(TimesFit::curve)));
        }
        double done = stages.stream().mapToDouble(StageForecast::done).sum();
        Arrays.sort(together);
        Range range = Range.of(together);
        boolean open = stages.stream().anyMatch(stage -> stage.range().isPresent());
        return new WorkForecast(
                wanted,
                stages,
                done + Range.middle(together),
                open ? Optional.of(new Range(done + range.from(), done + range.to())) : Optional.empty());
    }

    /** Pieces done in one go tell nothing of how the single piece is learned. */
    private static Optional<TimesFit> fit(List<Timing> timings) {
        boolean single = timings.stream().allMatch(timing -> timing.pieces() == 1);
        return single && timings.size() >= TimesFit.LEAST
                ? Optional.of(TimesFit.of(timings.stream().map(Timing::minutes).toList()))
                : Optional.empty();
    }

    private static double[] toCome(List<Timing> timings, Optional<TimesFit> fit, int wanted, int stage) {
        if (fit.isPresent()) {
            return fit.get().toCome(wanted, DRAWS, stage);
        }
        double[] out = new double[DRAWS];
        List<Timing> counted =
                timings.stream().filter(timing -> timing.pieces() > 0).toList();
        int pieces = counted.stream().mapToInt(Timing::pieces).sum();
        if (pieces > 0 && pieces < wanted) {
            double each = counted.stream().mapToDouble(Timing::minutes).sum() / pieces;
            Arrays.fill(out, each * (wanted - pieces));
        }
        return out;
    }
}
