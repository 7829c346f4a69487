package turnalike.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.settings.Calipers;
import turnalike.settings.SizedDiameter;
import turnalike.units.UnitSystem;

/** How what is too thin for calipers is brought to size. */
public final class ByEyeSizes {
    private ByEyeSizes() {}

    /**
     * {@return which members end thinner than calipers are set to, and by what they are judged; empty when none does}
     *
     * @param plan of the job
     */
    public static Optional<String> find(Plan plan) {
        UnitSystem units = plan.job().units();
        Map<String, String> sizes = plan.settings().tooThin().stream()
                .collect(Collectors.groupingBy(
                        each -> plan.job().pattern().placed().get(each.member()).caption(),
                        LinkedHashMap::new,
                        Collectors.mapping(each -> size(each, units), Collectors.joining(" and "))));
        return sizes.isEmpty()
                ? Optional.empty()
                : Optional.of(sizes.entrySet().stream()
                                .map(each -> each.getKey() + " to " + each.getValue())
                                .collect(Collectors.joining(", "))
                        + ", held against the checking template: no caliper is set to less than "
                        + Calipers.LEAST.format(units));
    }

    /**
     * {@return the same as a sentence of its own}
     *
     * @param plan of the job
     */
    public static Optional<String> sentence(Plan plan) {
        return find(plan).map(text -> "By eye: " + text + ".");
    }

    private static String size(SizedDiameter each, UnitSystem units) {
        return each.finished().format(units);
    }
}
