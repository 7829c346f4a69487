package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.job.kept.JobText;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The job read and printed in other units. Every length that carries no unit is given the one it was written in, so that nothing changes
 * its size.
 *
 * @param units from now on
 */
public record UnitsChange(UnitSystem units) implements JobEdit {
    /**
     * Keys outside the members that hold lengths, alone or in lists; a new one is added here, or its bare numbers change their meaning with
     * the units.
     */
    private static final Set<String> LENGTHS = Set.of(
            "size",
            "mark",
            "sizing",
            "sanding",
            "milling",
            "trimming",
            "hub_radius",
            "counterweight_radius",
            "rim_radius",
            "seat_depths",
            "mark_limit",
            "pin",
            "forbid",
            "at",
            "length");

    private static final Set<String> OF_MEMBERS = MemberKind.all().stream()
            .flatMap(kind -> kind.keys().stream())
            .map(MemberKey::name)
            .collect(Collectors.toUnmodifiableSet());

    static boolean isLength(String key) {
        return LENGTHS.contains(key) || OF_MEMBERS.contains(key);
    }

    /** Its {@code length} and {@code diameter} are weights, not lengths. */
    private static final String LIKENESS = "likeness";

    @Override
    public String what(JobText before) {
        return "work in " + (units == UnitSystem.INCH ? "inches" : "millimetres");
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        UnitSystem old = text.job().units();
        if (old != units) {
            spell(tree.root(), old);
            tree.root().put("units", units.symbol());
        }
        return tree.read();
    }

    private static void spell(ObjectNode object, UnitSystem old) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        for (String key : keys) {
            JsonNode value = object.get(key);
            if (value instanceof ObjectNode inner && !key.equals(LIKENESS)) {
                spell(inner, old);
            } else if (value instanceof ArrayNode array) {
                spell(array, isLength(key), old);
            } else if (isLength(key) && isBare(value, old)) {
                object.put(key, spelled(value) + " " + old.symbol());
            }
        }
    }

    private static void spell(ArrayNode array, boolean lengths, UnitSystem old) {
        for (int i = 0; i < array.size(); i++) {
            if (array.get(i) instanceof ObjectNode inner) {
                spell(inner, old);
            } else if (array.get(i) instanceof ArrayNode inner) {
                spell(inner, lengths, old);
            } else if (lengths && isBare(array.get(i), old)) {
                array.set(i, array.textNode(spelled(array.get(i)) + " " + old.symbol()));
            }
        }
    }

    private static String spelled(JsonNode value) {
        return value.isNumber() ? value.decimalValue().toPlainString() : value.asText();
    }

    /** A number, or a text that is a length and another length in other units. */
    private static boolean isBare(JsonNode value, UnitSystem old) {
        if (value.isNumber()) {
            return true;
        }
        return value.isTextual()
                && Length.parse(value.textValue(), old).isValue()
                && !Length.parse(value.textValue(), old).equals(Length.parse(value.textValue(), old.other()));
    }
}
