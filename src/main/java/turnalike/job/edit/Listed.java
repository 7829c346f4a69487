package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Fields of the job that hold several values, as they are typed into one field: entries parted by semicolons, such as {@code 1 1/4; 3}, or a pair
 * a line, such as {@code upper neck ; 3 1/4}.
 */
enum Listed {
    TEXTS,
    /** Marks by number or label, speeds: what reads as a number is one. */
    NUMBERS,
    CHECKS("name", "at"),
    MOMENTS("g_mm", "at_deg"),
    /** Not a list in the job file but an object: what is judged by eye, and what a grade of it counts. */
    NOTED("column", "counts");

    private static final Map<String, Listed> BY_PATH = Map.of(
            "settings.pin", TEXTS,
            "settings.forbid", TEXTS,
            "settings.stick", NUMBERS,
            "turning.speeds", NUMBERS,
            "frame.seat_depths", TEXTS,
            "frame.given_moments", MOMENTS,
            "likeness.noted", NOTED,
            "checks", CHECKS);

    /** The keys of a pair; empty where entries stand alone. */
    private final String first;

    private final String second;

    Listed() {
        this("", "");
    }

    Listed(String first, String second) {
        this.first = first;
        this.second = second;
    }

    static Optional<Listed> find(String path) {
        return Optional.ofNullable(BY_PATH.get(path));
    }

    private boolean isOfPairs() {
        return !first.isEmpty();
    }

    JsonNode read(String typed) {
        if (this == NOTED) {
            return noted(typed);
        }
        ArrayNode out = JobTree.array();
        for (String entry : entries(typed)) {
            out.add(isOfPairs() ? pair(entry) : value(entry));
        }
        return out;
    }

    /** A line without a weight keeps its name with an empty one, which the reader of the job then asks for. */
    private ObjectNode noted(String typed) {
        ObjectNode out = JobTree.object();
        for (String line : entries(typed)) {
            int semicolon = line.lastIndexOf(';');
            String name = semicolon < 0 ? line : line.substring(0, semicolon);
            out.set(
                    name.strip(),
                    JobTree.number(
                            semicolon < 0 ? "" : line.substring(semicolon + 1).strip()));
        }
        return out;
    }

    /** A comma may be a decimal one, so alone it parts nothing. */
    private List<String> entries(String typed) {
        List<String> out = new ArrayList<>();
        for (String entry : typed.split(isOfPairs() ? "\\R" : ";|,\\s|\\R", -1)) {
            if (!entry.isBlank()) {
                out.add(entry.strip());
            }
        }
        return out;
    }

    /** The last semicolon parts a pair, since a name may hold others; a line without one is all its second part. */
    private ObjectNode pair(String line) {
        ObjectNode out = JobTree.object();
        int semicolon = line.lastIndexOf(';');
        String before = line.substring(0, Math.max(0, semicolon)).strip();
        if (!before.isEmpty()) {
            out.set(first, value(before));
        }
        out.set(second, value(line.substring(semicolon + 1).strip()));
        return out;
    }

    private JsonNode value(String typed) {
        return this == MOMENTS || this == NUMBERS
                ? JobTree.number(typed)
                : JobTree.object().textNode(typed);
    }

    String spelled(JsonNode list) {
        List<String> out = new ArrayList<>();
        if (this == NOTED) {
            list.properties().forEach(each -> out.add(each.getKey() + " ; " + Written.spelled(each.getValue())));
            return String.join("\n", out);
        }
        for (JsonNode entry : list) {
            out.add(
                    isOfPairs()
                            ? Stream.of(first, second)
                                    .filter(entry::has)
                                    .map(key -> Written.spelled(entry.get(key)))
                                    .collect(Collectors.joining(" ; "))
                            : Written.spelled(entry));
        }
        return String.join(isOfPairs() ? "\n" : "; ", out);
    }

    /** The same typed anew, each of its lengths changed. */
    String withLengths(String typed, UnaryOperator<String> change) {
        return switch (this) {
            case TEXTS -> entries(typed).stream().map(change).collect(Collectors.joining("; "));
            case CHECKS ->
                entries(typed).stream()
                        .map(line -> {
                            int at = line.lastIndexOf(';') + 1;
                            return line.substring(0, at) + " "
                                    + change.apply(line.substring(at).strip());
                        })
                        .collect(Collectors.joining("\n"));
            case NUMBERS, MOMENTS, NOTED -> typed;
        };
    }
}
