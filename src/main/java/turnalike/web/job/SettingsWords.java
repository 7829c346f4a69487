package turnalike.web.job;

import java.util.ArrayList;
import java.util.List;
import turnalike.job.FinishedSizes;
import turnalike.job.GivenWords;
import turnalike.job.Plan;
import turnalike.units.UnitSystem;

/** The settings in words. */
final class SettingsWords {
    private SettingsWords() {}

    /**
     * In a sentence: how many, how sure, how far off a mark may be.
     *
     * @param isFinal whether no longer search will find better ones
     */
    static String of(Plan plan, boolean isFinal) {
        List<String> given = GivenWords.list(plan);
        var dividers = plan.settings().dividers();
        int count = dividers.settings().size();
        if (count == 0 && given.isEmpty()) {
            return "No divider opening is needed: there is no mark between the two ends.";
        }
        String openings = count == 1 ? "One divider opening reaches" : count + " divider openings reach";
        String sure = dividers.fewestProven()
                ? "no plan has fewer"
                : isFinal
                        ? "at least %d are needed".formatted(dividers.lowerBound())
                        : "whether fewer would do is still being tried";
        boolean onlyEnds = given.isEmpty();
        return "%s %s; %s. The worst mark may be off by %s."
                .formatted(
                        openings,
                        onlyEnds ? "every mark" : "all other marks",
                        sure,
                        dividers.worst().formatFineUpBoth(plan.job().units()));
    }

    /** Each opening of the dividers, then each of the calipers, a line each. */
    static List<String> openings(Plan plan) {
        UnitSystem units = plan.job().units();
        List<String> out = new ArrayList<>();
        plan.settings()
                .dividers()
                .settings()
                .forEach(each -> out.add("Dividers " + each.opening().formatBoth(units)));
        plan.settings()
                .calipers()
                .forEach(each -> out.add("Calipers %s, finished %s"
                        .formatted(each.opening().formatBoth(units), FinishedSizes.text(plan, each))));
        return out;
    }
}
