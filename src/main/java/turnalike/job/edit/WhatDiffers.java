package turnalike.job.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import turnalike.job.kept.JobText;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.pattern.PlacedMember;

/** Where two texts of one job say different things, in a turner's order: the job's own fields, then the run from the head end. */
public final class WhatDiffers {
    /**
     * One thing that differs.
     *
     * @param where the member, {@code member 3 (hub bead)}, or the part of the form; empty for what stands in none
     * @param field as the form calls it: {@code Diameter at its crown}; empty for a member that came or went
     * @param was as the earlier text has it, in the later one's units; empty where it has none
     * @param now as the later text has it
     * @param isTyped whether these are a person's own words
     */
    public record Difference(String where, String field, String was, String now, boolean isTyped) {}

    private static final String MEMBERS = "pattern.members";
    private static final int MOST_ROWS = 3;
    private static final Pattern FIGURE = Pattern.compile("[0-9][0-9 ./,]*");

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
        differs.fields();
        differs.members();
        return List.copyOf(differs.found);
    }

    private void fields() {
        FieldWords words = FieldWords.of(now, was);
        Set<String> told = new LinkedHashSet<>();
        Map<String, Values> changed = changed(TypedFields.job(was), TypedFields.job(now));
        changed.forEach((path, values) -> {
            Optional<String> one = FieldWords.asOne(path);
            if (one.isPresent()) {
                if (told.add(one.get())) {
                    settled(one.get());
                }
            } else if (values.was().contains("\n") || values.now().contains("\n")) {
                rows(words.section(path), words.label(path), values);
            } else if (!path.startsWith(MEMBERS)) {
                add(words.section(path), words.label(path), words.unit(path), values, words.isTyped(path));
            }
        });
    }

    /** What is not typed is told in a word. */
    private void settled(String what) {
        boolean before = TypedFields.job(was).keySet().stream().anyMatch(path -> isOf(path, what));
        boolean after = TypedFields.job(now).keySet().stream().anyMatch(path -> isOf(path, what));
        String then = after ? before ? "otherwise" : "settled" : "";
        found.add(new Difference("", what, before ? "settled" : "", then, false));
    }

    private static boolean isOf(String path, String what) {
        return FieldWords.asOne(path).filter(what::equals).isPresent();
    }

    /** Of a table, the rows that the other has not; of more than a few, how many. */
    private void rows(String where, String field, Values values) {
        List<String> before = rows(values.was());
        List<String> after = rows(values.now());
        List<String> gone = new ArrayList<>(before);
        gone.removeAll(after);
        List<String> came = new ArrayList<>(after);
        came.removeAll(before);
        boolean few = gone.size() <= MOST_ROWS && came.size() <= MOST_ROWS && gone.size() + came.size() > 0;
        found.add(
                few
                        ? new Difference(where, field, String.join("; ", gone), String.join("; ", came), true)
                        : new Difference(where, field, count(before), count(after), false));
    }

    private static List<String> rows(String value) {
        return value.lines()
                .map(line -> Stream.of(line.split(";", -1))
                        .map(String::strip)
                        .filter(cell -> !cell.isEmpty())
                        .collect(Collectors.joining(", ")))
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static String count(List<String> rows) {
        return rows.isEmpty() ? "" : rows.size() == 1 ? "1 row" : rows.size() + " rows";
    }

    private void sizes(PlacedMember before, PlacedMember after) {
        MemberKind kind = after.member().kind();
        String unit = now.job().units().symbol();
        changed(TypedFields.member(was, before.number()), TypedFields.member(now, after.number()))
                .forEach((key, values) -> {
                    boolean isLength = kind.find(MemberKey.Type.LENGTH, key).isPresent();
                    boolean isTick = key.equals(MemberKey.BY_EYE);
                    add(
                            after.where(),
                            FieldWords.ofMember(kind, key),
                            isLength ? unit : "",
                            values,
                            !isLength && !isTick);
                });
    }

    private record Values(String was, String now) {}

    private static Map<String, Values> changed(Map<String, String> before, Map<String, String> after) {
        Set<String> names = new LinkedHashSet<>(after.keySet());
        names.addAll(before.keySet());
        Map<String, Values> out = new LinkedHashMap<>();
        for (String name : names) {
            Values values = new Values(before.getOrDefault(name, ""), after.getOrDefault(name, ""));
            if (!values.was().equals(values.now())) {
                out.put(name, values);
            }
        }
        return out;
    }

    private void add(String where, String field, String unit, Values values, boolean isTyped) {
        found.add(new Difference(where, field, told(values.was(), unit), told(values.now(), unit), isTyped));
    }

    /** A figure with its unit, unless it was typed with one; a tick in a word. */
    private static String told(String value, String unit) {
        if (value.equals("true")) {
            return "yes";
        }
        if (value.equals("false")) {
            return "";
        }
        return !unit.isEmpty() && FIGURE.matcher(value).matches() ? value + " " + unit : value;
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
        gone.forEach(each -> found.add(new Difference(each.where(), "", "in the run", "", false)));
        stayed.forEach(this::sizes);
        came.forEach(each -> found.add(new Difference(each.where(), "", "", "in the run", false)));
    }

    private static boolean isAlike(PlacedMember one, PlacedMember other) {
        return one.member().kind().equals(other.member().kind())
                && one.member().title().equals(other.member().title());
    }
}
