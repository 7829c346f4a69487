package turnalike.job.keys;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.units.Length;

/**
 * The job file as a JSON Schema, for editors and other programs: draft 2020-12 (json-schema.org). It says what each key may hold; what hangs on
 * two values at once, such as a crown above its root, only reading tells. Reading takes
 * {@code null} for a key that is left out; the schema asks that it be left out.
 */
public final class JobSchema {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private JobSchema() {}

    /** {@return the whole schema as a tree; the same every time, and the caller's own} */
    public static ObjectNode write() {
        ObjectNode out = NODES.objectNode()
                .put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("$id", "urn:turnalike:job:1")
                .put("title", "Turnalike job file")
                .put("description", "One order of matched spindles; docs/job-file.md tells each key.");
        out.setAll(object(JobKeys.ROOT));
        ObjectNode definitions = out.putObject("$defs");
        definitions.set("length", length(false));
        definitions.set("lengthAboveZero", length(true));
        for (MemberKind kind : MemberKind.all()) {
            definitions.set(kind.word(), member(kind));
        }
        return out;
    }

    /** {@return the whole schema as docs/job-file.schema.json has it, ended by a line end} */
    public static String print() {
        return write().toPrettyString() + "\n";
    }

    private static ObjectNode length(boolean aboveZero) {
        ObjectNode out = NODES.objectNode()
                .put(
                        "description",
                        "a number in the job's units, or text that may carry its own: 22, \"1 1/2\", \"38 mm\", \"1' 10\\\"\"");
        ArrayNode either = out.putArray("anyOf");
        ObjectNode number = either.addObject().put("type", "number");
        number.put(aboveZero ? "exclusiveMinimum" : "minimum", 0).put("maximum", Length.LONGEST.mm());
        either.addObject().put("type", "string").put("pattern", LengthPattern.of(aboveZero));
        return out;
    }

    private static ObjectNode object(KeyType.Group group) {
        ObjectNode out = NODES.objectNode().put("type", "object").put("additionalProperties", false);
        ObjectNode properties = out.putObject("properties");
        ArrayNode required = NODES.arrayNode();
        for (Key<?> key : group.keys()) {
            ObjectNode value = key.type().match(new Values());
            properties.set(key.name(), value.put("description", described(key)));
            if (key.isNeeded()) {
                required.add(key.name());
            }
        }
        out.set("required", required);
        if (!group.either().isEmpty()) {
            ArrayNode either = out.putArray("oneOf");
            group.either().forEach(names -> either.add(only(names, group.either())));
        }
        return out;
    }

    /** These keys are there and those that could stand in their place are not. */
    private static ObjectNode only(List<String> names, List<List<String>> either) {
        ObjectNode out = NODES.objectNode();
        names.forEach(out.putArray("required")::add);
        ObjectNode none = out.putObject("properties");
        either.stream()
                .flatMap(List::stream)
                .filter(name -> !names.contains(name))
                .forEach(name -> none.put(name, false));
        return out;
    }

    private static String described(Key<?> key) {
        return key.isNeeded() ? key.meaning() : key.meaning() + "; if left out: " + key.leftOut();
    }

    private static ObjectNode member(MemberKind kind) {
        ObjectNode out = NODES.objectNode()
                .put("description", kind.words())
                .put("type", "object")
                .put("additionalProperties", false);
        ObjectNode properties = out.putObject("properties");
        ArrayNode required = NODES.arrayNode().add("kind");
        properties.putObject("kind").put("const", kind.word());
        properties.putObject(MemberKey.NAME).put("type", "string").put("maxLength", KeyType.Text.LONGEST);
        properties.putObject(MemberKey.BY_EYE).put("type", "boolean");
        for (MemberKey key : kind.keys()) {
            properties.set(key.name(), value(key).put("description", key.label()));
            if (key.isNeeded()) {
                required.add(key.name());
            }
        }
        out.set("required", required);
        return out;
    }

    private static ObjectNode value(MemberKey key) {
        return switch (key.type()) {
            case LENGTH -> reference(mayBeZero(key) ? "length" : "lengthAboveZero");
            case POINTS -> {
                ObjectNode points = NODES.objectNode().put("type", "array").put("minItems", 2);
                ObjectNode pair = points.putObject("items")
                        .put("type", "array")
                        .put("minItems", 2)
                        .put("maxItems", 2);
                pair.putArray("prefixItems").add(reference("length")).add(reference("lengthAboveZero"));
                yield points;
            }
        };
    }

    /** A size may be none where none is what counts when it is left out, as of a chamfer. */
    private static boolean mayBeZero(MemberKey key) {
        return key.otherwise()
                .apply(Length.ofMm(1))
                .filter(length -> !length.isPositive())
                .isPresent();
    }

    private static ObjectNode reference(String definition) {
        return NODES.objectNode().put("$ref", "#/$defs/" + definition);
    }

    private static ObjectNode oneOf(List<ObjectNode> values) {
        ObjectNode out = NODES.objectNode();
        out.putArray("oneOf").addAll(values);
        return out;
    }

    /** The schema of one value. */
    private static final class Values implements KeyType.Cases<ObjectNode> {
        @Override
        public ObjectNode size(KeyType.Size size) {
            return reference(size.aboveZero() ? "lengthAboveZero" : "length");
        }

        @Override
        public ObjectNode number(KeyType.Number number) {
            ObjectNode out = NODES.objectNode().put("type", "number");
            out.put("minimum", number.least()).put("maximum", number.most());
            number.otherwise().ifPresent(value -> out.put("default", value));
            return out;
        }

        @Override
        public ObjectNode whole(KeyType.Whole whole) {
            ObjectNode out = NODES.objectNode().put("type", "integer");
            out.put("minimum", whole.least()).put("maximum", whole.most());
            whole.otherwise().ifPresent(value -> out.put("default", value));
            return out;
        }

        @Override
        public ObjectNode text(KeyType.Text text) {
            ObjectNode out = NODES.objectNode().put("type", "string").put("maxLength", KeyType.Text.LONGEST);
            if (!text.names().isEmpty()) {
                // The reader takes a part of a name too, so they are what an editor offers and not all there is.
                text.names().forEach(out.putArray("examples")::add);
            }
            return out;
        }

        @Override
        public ObjectNode word(KeyType.Word word) {
            ObjectNode out = NODES.objectNode();
            word.words().forEach(out.putArray("enum")::add);
            return out;
        }

        @Override
        public ObjectNode mark(KeyType.Mark mark) {
            ObjectNode number = NODES.objectNode().put("type", "integer").put("minimum", 0);
            ObjectNode label = NODES.objectNode().put("type", "string").put("minLength", 1);
            return oneOf(List.of(number, label));
        }

        @Override
        public ObjectNode list(KeyType.ListOf<?> list) {
            ObjectNode out = NODES.objectNode().put("type", "array");
            out.put("minItems", list.least()).put("maxItems", list.most());
            out.set("items", list.item().match(this));
            return out;
        }

        @Override
        public ObjectNode rows(KeyType.Rows rows) {
            ObjectNode out = NODES.objectNode().put("type", "array").put("maxItems", rows.most());
            out.set("items", object(rows.row()));
            return out;
        }

        @Override
        public ObjectNode named(KeyType.Named named) {
            ObjectNode out = NODES.objectNode().put("type", "object");
            out.putObject("propertyNames").put("pattern", "\\S");
            out.set("additionalProperties", number(named.number()));
            return out;
        }

        @Override
        public ObjectNode group(KeyType.Group group) {
            return object(group);
        }

        @Override
        public ObjectNode kinds(KeyType.Kinds kinds) {
            return oneOf(kinds.keys().keySet().stream()
                    .map(word -> {
                        ObjectNode out = object(kinds.with(word));
                        ObjectNode kind = (ObjectNode)
                                out.get("properties").get(kinds.kind().name());
                        kind.remove("enum");
                        kind.put("const", word);
                        return out;
                    })
                    .toList());
        }

        @Override
        public ObjectNode members(KeyType.Members members) {
            ObjectNode out = NODES.objectNode().put("type", "array");
            out.put("minItems", 1).put("maxItems", members.most());
            out.set(
                    "items",
                    oneOf(MemberKind.all().stream()
                            .map(kind -> reference(kind.word()))
                            .toList()));
            return out;
        }
    }
}
