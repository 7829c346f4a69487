package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The fields of one member in the tree. */
final class MemberFields {
    private static final String POINTS = "points";

    private MemberFields() {}

    /** Sets what was typed, to the letter: the reader says what is wrong with it. */
    static void set(ObjectNode member, Map<String, String> values) {
        values.forEach((key, value) -> {
            String typed = value.strip();
            if (typed.isEmpty()) {
                member.remove(key);
            } else if (key.equals("by_eye")) {
                member.put(key, typed.equals("true"));
            } else if (key.equals(POINTS)) {
                member.set(key, points(typed));
            } else {
                member.put(key, typed);
            }
        });
    }

    /** A pair a line, place and diameter parted by a semicolon, a tab or two spaces. */
    private static ArrayNode points(String typed) {
        ArrayNode out = JobTree.array();
        typed.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(line -> {
            ArrayNode pair = out.addArray();
            List.of(line.split("\\s*;\\s*|\\t+|\\s{2,}")).forEach(pair::add);
        });
        return out;
    }

    /** Makes the member so long; a curve's points keep their share of the length. */
    static void length(ObjectNode member, Length length, Length before, UnitSystem units) {
        if (!member.path("kind").asText().equals("curve")) {
            member.put("length", Spelling.of(length, units));
            return;
        }
        for (JsonNode pair : member.path(POINTS)) {
            if (pair instanceof ArrayNode array) {
                Length at = Length.parse(array.get(0).asText(), units).orElse(refused -> Length.ZERO);
                array.set(0, array.textNode(Spelling.of(at.times(length.mm() / before.mm()), units)));
            }
        }
    }

    /** Turned end for end: from and to change places, a curve's points run the other way; what is alike from both ends stays. */
    static void mirror(ObjectNode tree, Member member, UnitSystem units) {
        if (tree.has("from") && tree.has("to")) {
            JsonNode from = tree.get("from");
            tree.set("from", tree.get("to"));
            tree.set("to", from);
        }
        if (member.mirrored() instanceof FreeCurve curve) {
            ArrayNode out = tree.putArray(POINTS);
            curve.points().forEach(point -> out.addArray()
                    .add(Spelling.of(point.place(), units))
                    .add(Spelling.of(point.diameter(), units)));
        }
    }
}
