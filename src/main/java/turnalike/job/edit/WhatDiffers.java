package turnalike.job.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import turnalike.job.kept.JobText;
import turnalike.pattern.PlacedMember;

/** Where two texts of one job say different things, in a turner's order: the job's own fields, then the run from the head end. */
public final class WhatDiffers {
    /**
     * One thing that differs.
     *
     * @param where the field: {@code member 3 (hub bead): crown}
     * @param was as the earlier text has it, in the later one's units; empty where it has none
     * @param now as the later text has it
     */
    public record Difference(String where, String was, String now) {}

    private static final String MEMBERS = "pattern.members";

    private final JobText was;
    private final JobText now;
    private final List<Difference> found = new ArrayList<>();

    private WhatDiffers(JobText was, JobText now) {
        this.was = was;
        this.now = now;
    }

    /**
     * {@return every difference; empty when both say the same}
     *
     * @param was the earlier text
     * @param now the later text, in whose units both are told
     */
    public static List<Difference> between(JobText was, JobText now) {
        WhatDiffers differs = new WhatDiffers(RebasedEdit.inUnitsOf(now, was), now);
        differs.fields("", TypedFields.job(differs.was), TypedFields.job(now));
        differs.members();
        return List.copyOf(differs.found);
    }

    private void fields(String where, Map<String, String> before, Map<String, String> after) {
        Set<String> names = new LinkedHashSet<>(after.keySet());
        names.addAll(before.keySet());
        for (String name : names) {
            String had = before.getOrDefault(name, "");
            String has = after.getOrDefault(name, "");
            if (!had.equals(has) && !name.startsWith(MEMBERS)) {
                found.add(new Difference(where + spoken(name), had, has));
            }
        }
    }

    private static String spoken(String path) {
        return path.replace(".", ": ").replace('_', ' ');
    }

    /** Those that are the same ones are compared size by size; the others came or went. */
    private void members() {
        Alignment same = Alignment.of(JobTree.of(was).members(), JobTree.of(now).members());
        List<PlacedMember> came = new ArrayList<>(now.job().pattern().placed());
        Map<PlacedMember, PlacedMember> stayed = new LinkedHashMap<>();
        List<PlacedMember> gone = new ArrayList<>();
        for (PlacedMember each : was.job().pattern().placed()) {
            OptionalInt later = same.find(each.number());
            if (later.isPresent()) {
                stayed.put(each, now.job().pattern().placed().get(later.getAsInt() - 1));
            } else {
                gone.add(each);
            }
        }
        came.removeAll(stayed.values());
        // Beside members that came or went, a changed one is still known by its name and kind.
        for (PlacedMember each : List.copyOf(gone)) {
            came.stream().filter(other -> isAlike(each, other)).findFirst().ifPresent(other -> {
                stayed.put(each, other);
                gone.remove(each);
                came.remove(other);
            });
        }
        gone.forEach(each -> found.add(new Difference(each.where(), "in the run", "")));
        stayed.forEach((before, after) -> fields(
                after.where() + ": ",
                TypedFields.member(was, before.number()),
                TypedFields.member(now, after.number())));
        came.forEach(each -> found.add(new Difference(each.where(), "", "in the run")));
    }

    private static boolean isAlike(PlacedMember one, PlacedMember other) {
        return one.member().kind().equals(other.member().kind())
                && one.member().title().equals(other.member().title());
    }
}
