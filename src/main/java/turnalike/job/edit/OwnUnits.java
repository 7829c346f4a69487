package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.function.Function;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.keys.JobKeys;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A value of the job file with every length in it that carries no unit given the one it was written in. Which values are lengths, the
 * description of the keys says.
 *
 * @param value what stands in the file; objects and lists are changed in place
 * @param old the units that bare numbers were written in
 */
record OwnUnits(JsonNode value, UnitSystem old) implements KeyType.Cases<JsonNode> {
    /** The whole job. */
    static void give(ObjectNode job, UnitSystem old) {
        new OwnUnits(job, old).group(JobKeys.ROOT);
    }

    private JsonNode of(JsonNode inner, KeyType type) {
        return type.match(new OwnUnits(inner, old));
    }

    /** Each entry of a list put in the place of what it was; anything else as it is. */
    private JsonNode each(Function<JsonNode, JsonNode> change) {
        if (value instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                list.set(i, change.apply(list.get(i)));
            }
        }
        return value;
    }

    @Override
    public JsonNode size(KeyType.Size size) {
        return isBare(value) ? TextNode.valueOf(TypedFields.spelled(value) + " " + old.symbol()) : value;
    }

    /** A number, or a text that is a length and another length in other units. */
    private boolean isBare(JsonNode node) {
        if (node.isNumber()) {
            return true;
        }
        return node.isTextual()
                && Length.parse(node.textValue(), old).isValue()
                && !Length.parse(node.textValue(), old).equals(Length.parse(node.textValue(), old.other()));
    }

    @Override
    public JsonNode list(KeyType.ListOf<?> list) {
        return each(entry -> of(entry, list.item()));
    }

    @Override
    public JsonNode rows(KeyType.Rows rows) {
        return each(entry -> of(entry, rows.row()));
    }

    @Override
    public JsonNode group(KeyType.Group group) {
        if (value instanceof ObjectNode object) {
            for (Key<?> key : group.keys()) {
                if (object.has(key.name())) {
                    object.set(key.name(), of(object.get(key.name()), key.type()));
                }
            }
        }
        return value;
    }

    @Override
    public JsonNode kinds(KeyType.Kinds kinds) {
        return group(kinds.with(value.path(kinds.kind().name()).asText()));
    }

    @Override
    public JsonNode members(KeyType.Members members) {
        return each(entry -> {
            if (entry instanceof ObjectNode member) {
                MemberKind.find(member.path("kind").asText()).ifPresent(kind -> member(member, kind));
            }
            return entry;
        });
    }

    private void member(ObjectNode member, MemberKind kind) {
        KeyType length = JobKeys.CHECK_AT.type();
        for (MemberKey key : kind.keys()) {
            if (member.has(key.name())) {
                JsonNode was = member.get(key.name());
                member.set(
                        key.name(),
                        switch (key.type()) {
                            case LENGTH -> of(was, length);
                            case POINTS ->
                                new OwnUnits(was, old)
                                        .each(pair -> new OwnUnits(pair, old).each(each -> of(each, length)));
                        });
            }
        }
    }

    @Override
    public JsonNode number(KeyType.Number number) {
        return value;
    }

    @Override
    public JsonNode whole(KeyType.Whole whole) {
        return value;
    }

    @Override
    public JsonNode text(KeyType.Text text) {
        return value;
    }

    @Override
    public JsonNode word(KeyType.Word word) {
        return value;
    }

    @Override
    public JsonNode mark(KeyType.Mark mark) {
        return value;
    }

    @Override
    public JsonNode named(KeyType.Named named) {
        return value;
    }
}
