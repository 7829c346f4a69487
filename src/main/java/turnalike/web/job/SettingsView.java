package turnalike.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import turnalike.drawing.gauge.SettingBars;
import turnalike.job.ByEyeSizes;
import turnalike.job.FinishedSizes;
import turnalike.job.GivenWords;
import turnalike.job.Plan;
import turnalike.settings.DividerSetting;
import turnalike.settings.DividerStep;
import turnalike.units.Length;

/**
 * The settings of the dividers and calipers, drawn and in words.
 *
 * @param plan whose they are
 * @param isFinal whether no longer search will find better ones
 * @param widthMm of the room for the drawing of the piece, which the bars take no more of
 */
public record SettingsView(Plan plan, boolean isFinal, double widthMm) {
    private static final double DIVIDERS_MM = 170;
    private static final double CALIPERS_MM = 84;

    /** What stands before any step of the dividers, a sentence each. */
    public List<String> given() {
        return Stream.concat(GivenWords.stickAlone(plan).stream(), GivenWords.list(plan).stream())
                .toList();
    }

    /** The dividers' openings, as bars of true length. */
    public String dividerBars() {
        List<SettingBars.Bar> bars = plan.settings().dividers().settings().stream()
                .map(each -> new SettingBars.Bar(each.opening(), use(each)))
                .toList();
        return bars("Dividers", bars);
    }

    private static String use(DividerSetting setting) {
        Map<Integer, List<String>> rounds = new TreeMap<>();
        for (DividerStep step : setting.steps()) {
            rounds.computeIfAbsent(step.round(), round -> new ArrayList<>()).add(step.from() + " → " + step.to());
        }
        List<String> out = new ArrayList<>();
        rounds.forEach((round, steps) -> out.add("round %d: %s".formatted(round, String.join(", ", steps))));
        return String.join("; ", out);
    }

    /** The calipers' openings, as bars of true length. */
    public String caliperBars() {
        List<SettingBars.Bar> bars = plan.settings().calipers().stream()
                .map(each -> new SettingBars.Bar(
                        each.opening(),
                        "finished " + FinishedSizes.text(plan, each) + ": "
                                + String.join(
                                        ", ",
                                        each.members().stream()
                                                .map(index -> plan.job()
                                                        .pattern()
                                                        .placed()
                                                        .get(index)
                                                        .caption())
                                                .toList())))
                .toList();
        return bars("Calipers", bars);
    }

    /** What is too thin for calipers, in a sentence. */
    public Optional<String> byEye() {
        return ByEyeSizes.sentence(plan);
    }

    /** As narrow as the longest opening lets them be, so that the calipers find room beside the dividers. */
    private String bars(String title, List<SettingBars.Bar> bars) {
        double longest =
                bars.stream().mapToDouble(bar -> bar.opening().mm()).max().orElse(0) + 8;
        double barsMm = Math.min(Math.min(DIVIDERS_MM, widthMm), Math.max(longest, CALIPERS_MM));
        return bars.isEmpty()
                ? ""
                : SettingBars.svg(title, bars, plan.job().units(), Length.ofMm(barsMm))
                        .inline();
    }

    /** The settings in a sentence: how many, how sure, how far off a mark may be. */
    public String summary() {
        return SettingsWords.of(plan, isFinal);
    }

    public boolean hasDividers() {
        return !plan.settings().dividers().settings().isEmpty();
    }
}
