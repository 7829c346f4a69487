package turnalike.job.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import turnalike.job.fields.KeyType;
import turnalike.job.kept.JobText;
import turnalike.job.keys.KeyPaths;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What an edit of fields did, as a turner would tell it afterwards: {@code hub bead 3 thicker at the crown: 38 → 40 mm}. */
final class SaidChange {
    private static final int LONGEST = 28;
    private static final int MOST = 3;

    /** Parts of a job whose fields' labels do not say what they belong to. */
    private static final Set<String> LEANED_ON = Set.of("stock", "wood", "frame", "tolerances");

    private SaidChange() {}

    /** {@return a member by what it is and its number: {@code hub bead 3}} */
    static String named(JobText text, int number) {
        List<PlacedMember> run = text.job().pattern().placed();
        if (number < 1 || number > run.size()) {
            return "member " + number;
        }
        String title = plain(run.get(number - 1).member().title());
        boolean figure = !title.isEmpty() && Character.isDigit(title.charAt(title.length() - 1));
        return title + (figure ? ", member " : " ") + number;
    }

    /**
     * {@return what came of fields outside the run: {@code good pieces wanted: 10 → 12}}
     *
     * @param values as typed, by path; an empty one was taken out
     */
    static String ofJob(Map<String, String> values, JobText before) {
        Map<String, String> had = TypedFields.job(before);
        List<String> out = new ArrayList<>();
        new TreeMap<>(values).forEach((path, value) -> {
            String was = had.getOrDefault(path, "");
            out.add(group(path)
                    + label(path)
                    + ":"
                    + fromTo(was, value, isLength(path) ? Optional.of(units(before)) : Optional.empty()));
        });
        return together(out, values.size() + " of the job's fields");
    }

    private static boolean isLength(String path) {
        return KeyPaths.find(path)
                .filter(key -> key.type() instanceof KeyType.Size)
                .isPresent();
    }

    /** What it is a field of, where its label leans on that: {@code stock, }. */
    private static String group(String path) {
        String[] names = plain(path).split("\\.", -1);
        return names.length > 1 && LEANED_ON.contains(names[names.length - 2]) ? names[names.length - 2] + ", " : "";
    }

    private static String label(String path) {
        String label = KeyPaths.find(path)
                .map(key -> key.field().label())
                .filter(each -> !each.isEmpty())
                .orElse("");
        if (label.isEmpty()) {
            return plain(path.substring(path.lastIndexOf('.') + 1)).replace('_', ' ');
        }
        boolean word = label.length() > 1 && Character.isLowerCase(label.charAt(1));
        return word ? label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1) : label;
    }

    /**
     * {@return what came of a member's sizes}
     *
     * @param values as typed, by key
     */
    static String ofMember(int number, Map<String, String> values, JobText before) {
        String named = named(before, number);
        boolean there =
                number >= 1 && number <= before.job().pattern().members().size();
        Map<String, String> had = there ? TypedFields.member(before, number) : Map.of();
        if (values.size() == 1) {
            Map.Entry<String, String> only = values.entrySet().iterator().next();
            String was = had.getOrDefault(only.getKey(), "");
            Optional<String> grown = there
                    ? grown(before.job().pattern().members().get(number - 1), only, was, units(before))
                    : Optional.empty();
            return grown.map(
                            each -> named + " " + each + ":" + fromTo(was, only.getValue(), Optional.of(units(before))))
                    .orElseGet(() -> named + ", " + set(only.getKey(), was, only.getValue()));
        }
        List<String> out = new ArrayList<>();
        new TreeMap<>(values).forEach((key, value) -> out.add(set(key, had.getOrDefault(key, ""), value)));
        return named + ", " + together(out, values.size() + " of its sizes");
    }

    /** A curve's points are a table, which no line of the history holds. */
    private static String set(String key, String was, String now) {
        return MemberKind.all().stream()
                        .anyMatch(kind -> kind.find(MemberKey.Type.POINTS, key).isPresent())
                ? "another curve"
                : key(key) + ":" + fromTo(was, now, Optional.empty());
    }

    /** {@return its length as it was and is, for when its end was moved} */
    static String ofEnd(int number, String length, JobText before) {
        boolean there =
                number >= 1 && number <= before.job().pattern().members().size();
        String was = there
                ? before.job()
                        .pattern()
                        .members()
                        .get(number - 1)
                        .length()
                        .format(units(before))
                        .replace(" " + units(before).symbol(), "")
                : "";
        return "end of " + named(before, number) + " moved:" + fromTo(was, length, Optional.of(units(before)));
    }

    /** Longer, shorter, thicker or thinner, and where; empty for what is neither. */
    private static Optional<String> grown(
            Member member, Map.Entry<String, String> typed, String was, UnitSystem units) {
        double change = mm(typed.getValue(), units) - mm(was, units);
        if (!(Math.abs(change) > 0)) {
            return Optional.empty();
        }
        String key = typed.getKey();
        if (key.equals(MemberKey.LENGTH)) {
            return Optional.of(change > 0 ? "longer" : "shorter");
        }
        List<String> across =
                member.diameters().stream().map(Member.Diameter::key).distinct().toList();
        if (!across.contains(key)) {
            return Optional.empty();
        }
        String where =
                switch (key) {
                    case "from" -> " at its start";
                    case "to" -> " at its end";
                    default -> across.size() == 1 ? "" : " at the " + key(key);
                };
        return Optional.of((change > 0 ? "thicker" : "thinner") + where);
    }

    /** Not a number where it is no length. */
    private static double mm(String typed, UnitSystem units) {
        return Length.parse(typed, units).fold(Length::mm, (what, mend) -> Double.NaN);
    }

    private static UnitSystem units(JobText text) {
        return text.job().units();
    }

    private static String key(String key) {
        return switch (key) {
            case "from" -> "diameter at its start";
            case "to" -> "diameter at its end";
            case MemberKey.BY_EYE -> "cut by eye, not measured";
            default -> plain(key).replace('_', ' ');
        };
    }

    private static String fromTo(String was, String now, Optional<UnitSystem> units) {
        String before = shortly(was);
        String after = shortly(now);
        String unit = units.filter(each -> after.matches("[0-9][0-9 ./,]*"))
                .map(each -> " " + each.symbol())
                .orElse("");
        if (after.equals("true")) {
            return " yes";
        }
        if (after.isEmpty() && before.equals("true")) {
            return " no";
        }
        if (after.isEmpty()) {
            return before.isEmpty() ? " left out" : " left out (was " + before + ")";
        }
        return (before.isEmpty() ? " " : " " + before + " → ") + after + unit;
    }

    private static String shortly(String value) {
        String line = plain(value.strip().replaceAll("\\s*\\R\\s*", "; "));
        int end = line.offsetByCodePoints(0, Math.min(LONGEST, line.codePointCount(0, line.length())));
        return line.length() > end ? line.substring(0, end).stripTrailing() + "…" : line;
    }

    private static String together(List<String> said, String many) {
        return said.size() > MOST ? "change " + many : said.stream().collect(Collectors.joining(", "));
    }

    private static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }
}
