package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import turnalike.job.LayoutWishes;
import turnalike.job.Tolerances;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.Reading;
import turnalike.job.fields.Values;
import turnalike.job.keys.JobKeys;
import turnalike.job.keys.SettingKeys;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.settings.DividerProblem;
import turnalike.settings.Dividers;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** The turner's choices from JSON, and whether any plan can keep them. */
final class SettingsReader {
    private static final String LENGTHS_MEND = "give lengths like [\"3/4\", \"38 mm\"]";
    private static final String MARKS_MEND =
            "name marks by number, as the plan numbers them from 0 at the start end, or by label";

    private SettingsReader() {}

    /** @param pattern whose marks are named; when it could not be read, marks are not looked at */
    static Optional<LayoutWishes> read(Fields fields, Optional<Pattern> pattern) {
        int before = fields.reading().count();
        List<Length> pinned = lengths(fields, SettingKeys.PIN);
        List<Length> forbidden = lengths(fields, SettingKeys.FORBID);
        Optional<Length> smallest = fields.size(SettingKeys.SMALLEST);
        Optional<Length> largest = fields.size(SettingKeys.LARGEST);
        checkRange(fields, smallest, largest);
        largest.ifPresent(most -> checkPins(fields, pinned, most));
        Set<Integer> onTheStick = marks(fields, pattern);
        boolean notched =
                fields.word(SettingKeys.STICK_MARKS).filter("notches"::equals).isPresent();
        fields.refuseUnknown(JobKeys.SETTINGS.type());
        return fields.reading().count() == before
                ? Optional.of(new LayoutWishes(pinned, forbidden, smallest, largest, onTheStick, notched))
                : Optional.empty();
    }

    private static void checkRange(Fields fields, Optional<Length> smallest, Optional<Length> largest) {
        UnitSystem units = fields.reading().units();
        Length least = smallest.orElse(DividerProblem.usualSmallest(units));
        Length most = largest.orElse(DividerProblem.usualLargest(units));
        if (smallest.isPresent() && least.compareTo(most) > 0) {
            fields.reading()
                    .problem(
                            fields.at(SettingKeys.SMALLEST.name()),
                            "%s is wider than the largest opening, %s"
                                    .formatted(least.format(units), most.format(units)),
                            "give the narrowest that your dividers close to");
        }
    }

    /** A pinned opening is used whatever dividers usually open to, but not against what the turner says of them. */
    private static void checkPins(Fields fields, List<Length> pinned, Length largest) {
        UnitSystem units = fields.reading().units();
        for (int i = 0; i < pinned.size(); i++) {
            if (pinned.get(i).compareTo(largest) > 0) {
                fields.reading()
                        .problem(
                                fields.at(SettingKeys.PIN.name() + " " + (i + 1)),
                                "%s is wider than the largest opening, %s"
                                        .formatted(pinned.get(i).format(units), largest.format(units)),
                                "raise `%s` or take the opening back".formatted(SettingKeys.LARGEST.name()));
            }
        }
    }

    /** Tells each wish that contradicts another, and each mark that no plan can reach, with what would free it. */
    static void obstacles(Pattern pattern, LayoutWishes wishes, Tolerances tolerances, Reading reading) {
        boolean anyOpening = wishes.pinned().isEmpty() && wishes.forbidden().isEmpty();
        if (anyOpening && tolerances.markLimit().orElse(tolerances.mark()).compareTo(tolerances.mark()) >= 0) {
            return; // each mark can be stepped from an end, so there is nothing to look for; a page reads its job at
            // every edit
        }
        for (Problem problem : Dividers.obstacles(wishes.dividers(pattern, tolerances, reading.units()))) {
            reading.problem(problem);
        }
    }

    private static List<JsonNode> list(Fields fields, Key<? extends KeyType.ListOf<?>> key, String mend) {
        List<JsonNode> nodes = fields.has(key) ? fields.list(key, mend).orElse(List.of()) : List.of();
        if (nodes.size() > key.type().most()) {
            fields.reading()
                    .problem(
                            fields.at(key.name()),
                            "has %d entries".formatted(nodes.size()),
                            "use %d at most".formatted(key.type().most()));
            return List.of();
        }
        return nodes;
    }

    private static List<Length> lengths(Fields fields, Key<KeyType.ListOf<KeyType.Size>> key) {
        List<Length> out = new ArrayList<>();
        List<JsonNode> nodes = list(fields, key, LENGTHS_MEND);
        for (int i = 0; i < nodes.size(); i++) {
            fields.lengthAt(key.name() + " " + (i + 1), nodes.get(i)).ifPresent(out::add);
        }
        return out;
    }

    private static Set<Integer> marks(Fields fields, Optional<Pattern> pattern) {
        Set<Integer> out = new TreeSet<>();
        List<JsonNode> nodes = list(fields, SettingKeys.STICK, MARKS_MEND);
        List<Mark> marks = pattern.map(Pattern::marks).orElse(List.of());
        for (int i = 0; i < nodes.size() && !marks.isEmpty(); i++) {
            String where = fields.at(SettingKeys.STICK.name() + " " + (i + 1));
            find(nodes.get(i), marks, where, fields.reading()).ifPresent(out::add);
        }
        return out;
    }

    private static Optional<Integer> find(JsonNode node, List<Mark> marks, String where, Reading reading) {
        List<Integer> named = node.isTextual() ? labelled(node.textValue(), marks) : numbered(node, marks);
        if (named.size() != 1) {
            String what = named.isEmpty()
                    ? "names no mark, was " + Values.excerpt(node)
                    : "names %d marks, was %s".formatted(named.size(), Values.excerpt(node));
            reading.problem(where, what, MARKS_MEND + "; the last is " + (marks.size() - 1));
            return Optional.empty();
        }
        int mark = named.get(0);
        if (marks.get(mark).kind() == Mark.Kind.END) {
            reading.problem(where, "is an end of the piece, which is given", "leave it out");
            return Optional.empty();
        }
        return Optional.of(mark);
    }

    private static List<Integer> labelled(String label, List<Mark> marks) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i).label().equalsIgnoreCase(label.strip())) {
                out.add(i);
            }
        }
        return out;
    }

    private static List<Integer> numbered(JsonNode node, List<Mark> marks) {
        double number = node.isNumber() ? node.doubleValue() : Double.NaN;
        boolean known = number == Math.rint(number) && number >= 0 && number < marks.size();
        return known ? List.of((int) number) : List.of();
    }
}
