package turnalike.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import turnalike.pattern.Tool;
import turnalike.settings.DividerSetting;
import turnalike.settings.DividerStep;
import turnalike.units.Length;

/**
 * Striking the marks: those of the stick first, since others may be stepped off from them, then the dividers round by round, so that each
 * step starts from a mark that stands. Shoulder lines of squares stand since before the blank was mounted and are not struck again.
 */
final class LayoutCuts {
    private final TurningProblem work;

    private LayoutCuts(TurningProblem work) {
        this.work = work;
    }

    /** In order, not yet numbered. */
    static List<Cut> of(TurningProblem work) {
        LayoutCuts layout = new LayoutCuts(work);
        List<Cut> out = new ArrayList<>();
        layout.fromStick().ifPresent(out::add);
        out.addAll(layout.fromDividers());
        return out;
    }

    private Optional<Cut> fromStick() {
        List<Integer> marks = work.dividers().listOnTheStick();
        if (marks.isEmpty()) {
            return Optional.empty();
        }
        List<Length> places = marks.stream()
                .map(mark -> work.marks().get(mark).place())
                .sorted()
                .toList();
        String text = "lay the stick on the rest and strike %s %s from it"
                .formatted(
                        marks.size() == 1 ? "mark" : "marks",
                        marks.stream().map(String::valueOf).collect(Collectors.joining(", ")));
        return Optional.of(cut(Tool.STICK, Optional.empty(), places, places, text, "", List.of()));
    }

    private List<Cut> fromDividers() {
        Map<Integer, List<Cut>> rounds = new TreeMap<>();
        for (DividerSetting setting : work.dividers().settings()) {
            Map<Integer, List<DividerStep>> byRound = setting.steps().stream()
                    .collect(Collectors.groupingBy(DividerStep::round, TreeMap::new, Collectors.toList()));
            byRound.forEach((round, steps) ->
                    rounds.computeIfAbsent(round, key -> new ArrayList<>()).add(strikes(setting, round, steps)));
        }
        return rounds.values().stream().flatMap(List::stream).toList();
    }

    private Cut strikes(DividerSetting setting, int round, List<DividerStep> steps) {
        List<Length> touched = new ArrayList<>();
        TreeSet<Length> struck = new TreeSet<>();
        List<Cut.Stride> strides = new ArrayList<>();
        for (DividerStep step : steps) {
            Length from = work.marks().get(step.from()).place();
            Length to = work.marks().get(step.to()).place();
            touched.addAll(List.of(from, to));
            struck.add(to);
            strides.add(new Cut.Stride(from, to));
        }
        touched.sort(Comparator.naturalOrder());
        String text = "round %d: strike %s"
                .formatted(
                        round,
                        steps.stream()
                                .map(step -> step.from() + " → " + step.to())
                                .collect(Collectors.joining(", ")));
        return cut(
                Tool.DIVIDERS,
                Optional.of(setting.opening()),
                touched,
                List.copyOf(struck),
                text,
                "only the leg on the waste side touches turning wood, point trailing",
                strides);
    }

    /** @param touched the marks it goes between, rising, at least one */
    private static Cut cut(
            Tool tool,
            Optional<Length> setting,
            List<Length> touched,
            List<Length> struck,
            String what,
            String caution,
            List<Cut.Stride> strides) {
        return new Cut(
                0,
                Phase.LAYOUT,
                tool,
                setting,
                touched.get(0),
                touched.get(touched.size() - 1),
                struck,
                List.of(),
                false,
                what,
                caution,
                Optional.empty(),
                Optional.empty(),
                strides);
    }
}
