package turnalike.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import turnalike.units.UnitSystem;

/** Why members of a table are not sure, and which reading would tell, as sentences. */
public final class DoubtWarnings {
    private DoubtWarnings() {}

    /**
     * {@return the warnings}
     *
     * @param doubts of the members found
     * @param run the members found
     * @param units to print in
     */
    public static List<String> of(List<Doubt> doubts, TracedRun run, UnitSystem units) {
        List<String> out = new ArrayList<>();
        for (Doubt each : doubts) {
            each.rival().ifPresent(rival -> {
                String word =
                        run.members().get(each.member() - 1).member().kind().word();
                String rows = rival.rows() + (rival.rows() == 1 ? " row" : " rows");
                out.add("Member %d (%s) may as well be a %s, by its %s: one more reading tells, best at %s."
                        .formatted(
                                each.member(),
                                word,
                                rival.word(),
                                rows,
                                rival.at().formatBoth(units)));
            });
        }
        List<Integer> few = numbers(doubts, Doubt.Why.FEW);
        if (!few.isEmpty()) {
            out.add("%s hardly more rows than sizes: measure at more places there."
                    .formatted(few.size() == 1 ? "Member " + few.get(0) + " has" : "Members " + listed(few) + " have"));
        }
        List<Integer> ends = numbers(doubts, Doubt.Why.ENDS);
        if (!ends.isEmpty()) {
            out.add("%s begin or end anywhere between two rows far apart: measure right there, twice where it steps."
                    .formatted(
                            ends.size() == 1 ? "Member " + ends.get(0) + " may" : "Members " + listed(ends) + " may"));
        }
        return out;
    }

    private static List<Integer> numbers(List<Doubt> doubts, Doubt.Why why) {
        return doubts.stream()
                .filter(each -> each.why() == why)
                .map(Doubt::member)
                .toList();
    }

    /** {@return numbers as a sentence has them: 3, 4 and 9} */
    static String listed(List<Integer> numbers) {
        String all = numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
        int last = all.lastIndexOf(", ");
        return all.substring(0, last) + " and" + all.substring(last + 1);
    }
}
