package turnalike.web.job;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepSummary;
import turnalike.web.kit.JobSteps;

/** Everything done to one job, the newest first. */
public final class HistoryView {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final KeptJob kept;
    private final List<StepSummary> done;
    private final ZoneId zone;

    /** @param zone in which its times are told */
    HistoryView(KeptJob kept, List<StepSummary> done, ZoneId zone) {
        this.kept = kept;
        this.done = List.copyOf(done);
        this.zone = zone;
    }

    /**
     * One thing that was done.
     *
     * @param number of the step
     * @param time of day
     * @param words what it was
     * @param note who did it where that is known, and that it was taken back since, or that it stands now
     */
    public record Line(int number, String time, String words, String note) {}

    /**
     * What was done on one day.
     *
     * @param name of the day
     * @param lines the newest first
     */
    public record Day(String name, List<Line> lines) {
        public Day {
            lines = List.copyOf(lines);
        }
    }

    public String address() {
        return JobSteps.of(kept).address();
    }

    public String title() {
        return kept.text().job().title();
    }

    public JobSteps steps() {
        return JobSteps.of(kept);
    }

    /** The newest day first. */
    public List<Day> days() {
        Set<Integer> gone = takenBack();
        Map<String, List<Line>> days = new LinkedHashMap<>();
        List<StepSummary> newest = new ArrayList<>(done);
        Collections.reverse(newest);
        for (StepSummary step : newest) {
            String day = DAY.format(step.at().atZone(zone));
            days.computeIfAbsent(day, first -> new ArrayList<>()).add(line(step, gone));
        }
        return days.entrySet().stream()
                .map(day -> new Day(day.getKey(), day.getValue()))
                .toList();
    }

    /** The step of that number, as the list has it. */
    Optional<Line> line(int number) {
        return done.stream().filter(step -> step.number() == number).findFirst().map(step -> line(step, takenBack()));
    }

    /** Every step as a choice, the newest first. */
    List<Line> lines() {
        return days().stream().flatMap(day -> day.lines().stream()).toList();
    }

    int last() {
        return kept.times().steps();
    }

    private Line line(StepSummary step, Set<Integer> gone) {
        String note =
                step.number() == last() ? "as it stands now" : gone.contains(step.number()) ? "taken back since" : "";
        return new Line(
                step.number(),
                TIME.format(step.at().atZone(zone)),
                words(step),
                Stream.of(by(step), note).filter(each -> !each.isEmpty()).collect(Collectors.joining("; ")));
    }

    private static String by(StepSummary step) {
        return step.who().map(who -> "by " + who).orElse("");
    }

    private static String words(StepSummary step) {
        return switch (step.did()) {
            case EDIT -> step.what();
            case UNDO -> "took back: " + step.what();
            case REDO -> "brought again: " + step.what();
        };
    }

    private Set<Integer> takenBack() {
        Set<Integer> out = new HashSet<>();
        for (StepSummary step : done) {
            if (step.did() == Step.Did.UNDO) {
                out.add(step.of().orElseThrow());
            } else if (step.did() == Step.Did.REDO) {
                out.remove(step.of().orElseThrow());
            }
        }
        return out;
    }
}
