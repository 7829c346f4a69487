package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.keys.KeyPaths;

/**
 * Fields of the job that hold several values, as they are typed into one field: entries parted by semicolons, such as {@code 1 1/4; 3}, or a pair
 * a line, such as {@code upper neck ; 3 1/4}.
 */
interface ListFields {
    /** How the field of that path is typed, when it holds several values. */
    static Optional<ListFields> find(String path) {
        return KeyPaths.find(path).map(Key::type).flatMap(ListFields::of);
    }

    private static Optional<ListFields> of(KeyType type) {
        if (type instanceof KeyType.ListOf<?> list) {
            return Optional.of(
                    list.item() instanceof KeyType.Group group ? new Lines(group.keys()) : new Entries(list.item()));
        }
        if (type instanceof KeyType.Rows rows) {
            return Optional.of(new Pairs(rows.first(), rows.second()));
        }
        return type instanceof KeyType.Named ? Optional.of(new Named()) : Optional.empty();
    }

    /** What was typed, as it stands in the job file. */
    JsonNode read(String typed);

    /** What stands in the job file, as it would be typed. */
    String spelled(JsonNode written);

    /** The same typed anew, each of its lengths changed. */
    default String withLengths(String typed, UnaryOperator<String> change) {
        return typed;
    }

    private static JsonNode value(KeyType type, String typed) {
        return type.isNumber() ? JobTree.number(typed) : JobTree.object().textNode(typed);
    }

    private static List<String> parts(String typed, String border) {
        return Stream.of(typed.split(border, -1))
                .filter(entry -> !entry.isBlank())
                .map(String::strip)
                .toList();
    }

    /** Values of one type, parted by semicolons. */
    record Entries(KeyType item) implements ListFields {
        /** A comma may be a decimal one, so alone it parts nothing. */
        private static List<String> of(String typed) {
            return parts(typed, ";|,\\s|\\R");
        }

        @Override
        public JsonNode read(String typed) {
            ArrayNode out = JobTree.array();
            of(typed).forEach(entry -> out.add(value(item, entry)));
            return out;
        }

        @Override
        public String spelled(JsonNode written) {
            List<String> out = new ArrayList<>();
            written.forEach(entry -> out.add(TypedFields.spelled(entry)));
            return String.join("; ", out);
        }

        @Override
        public String withLengths(String typed, UnaryOperator<String> change) {
            return item.isLength() ? of(typed).stream().map(change).collect(Collectors.joining("; ")) : typed;
        }
    }

    /** Objects of two keys, a line each; the last semicolon parts them, since a name may hold others. A line without one is all its second part. */
    record Pairs(Key<?> first, Key<?> second) implements ListFields {
        @Override
        public JsonNode read(String typed) {
            ArrayNode out = JobTree.array();
            for (String line : parts(typed, "\\R")) {
                int semicolon = line.lastIndexOf(';');
                ObjectNode pair = out.addObject();
                String before = line.substring(0, Math.max(0, semicolon)).strip();
                if (!before.isEmpty()) {
                    pair.set(first.name(), value(first.type(), before));
                }
                pair.set(
                        second.name(),
                        value(second.type(), line.substring(semicolon + 1).strip()));
            }
            return out;
        }

        @Override
        public String spelled(JsonNode written) {
            List<String> out = new ArrayList<>();
            for (JsonNode entry : written) {
                out.add(Stream.of(first.name(), second.name())
                        .filter(entry::has)
                        .map(key -> TypedFields.spelled(entry.get(key)))
                        .collect(Collectors.joining(" ; ")));
            }
            return String.join("\n", out);
        }

        @Override
        public String withLengths(String typed, UnaryOperator<String> change) {
            if (!second.type().isLength()) {
                return typed;
            }
            return parts(typed, "\\R").stream()
                    .map(line -> {
                        int at = line.lastIndexOf(';') + 1;
                        return line.substring(0, at) + " "
                                + change.apply(line.substring(at).strip());
                    })
                    .collect(Collectors.joining("\n"));
        }
    }

    /** Objects of several keys, a line each, their values parted by semicolons in the order of the keys; what a line lacks at its end is left out. */
    record Lines(List<Key<?>> keys) implements ListFields {
        public Lines {
            keys = List.copyOf(keys);
        }

        /** A line's values; what stands beyond the last key belongs to that one, whose reader then refuses it. */
        private List<String> values(String line) {
            return Stream.of(line.split(";", keys.size())).map(String::strip).toList();
        }

        @Override
        public JsonNode read(String typed) {
            ArrayNode out = JobTree.array();
            for (String line : parts(typed, "\\R")) {
                ObjectNode object = out.addObject();
                List<String> values = values(line);
                for (int i = 0; i < values.size(); i++) {
                    if (!values.get(i).isEmpty()) {
                        object.set(keys.get(i).name(), value(keys.get(i).type(), values.get(i)));
                    }
                }
            }
            return out;
        }

        @Override
        public String spelled(JsonNode written) {
            List<String> out = new ArrayList<>();
            for (JsonNode entry : written) {
                out.add(keys.stream()
                        .map(key -> entry.has(key.name()) ? TypedFields.spelled(entry.get(key.name())) : "")
                        .collect(Collectors.joining(" ; ")));
            }
            return String.join("\n", out);
        }

        @Override
        public String withLengths(String typed, UnaryOperator<String> change) {
            return parts(typed, "\\R").stream()
                    .map(line -> {
                        List<String> values = new ArrayList<>(values(line));
                        for (int i = 0; i < values.size(); i++) {
                            if (keys.get(i).type().isLength() && !values.get(i).isEmpty()) {
                                values.set(i, change.apply(values.get(i)));
                            }
                        }
                        return String.join(" ; ", values);
                    })
                    .collect(Collectors.joining("\n"));
        }
    }

    /** Not a list in the job file but an object whose keys the user names, each with a number: a line each. */
    record Named() implements ListFields {
        /** A line without a number keeps its name with an empty one, which the reader of the job then asks for. */
        @Override
        public JsonNode read(String typed) {
            ObjectNode out = JobTree.object();
            for (String line : parts(typed, "\\R")) {
                int semicolon = line.lastIndexOf(';');
                String name = semicolon < 0 ? line : line.substring(0, semicolon);
                String number = semicolon < 0 ? "" : line.substring(semicolon + 1);
                out.set(name.strip(), JobTree.number(number.strip()));
            }
            return out;
        }

        @Override
        public String spelled(JsonNode written) {
            return written.properties().stream()
                    .map(each -> each.getKey() + " ; " + TypedFields.spelled(each.getValue()))
                    .collect(Collectors.joining("\n"));
        }
    }
}
