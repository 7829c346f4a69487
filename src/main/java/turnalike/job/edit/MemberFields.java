package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.pattern.MemberKind;
import turnalike.pattern.Room;
import turnalike.pattern.Sizes;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The fields of one member in the tree. */
final class MemberFields {
    private MemberFields() {}

    /** A member of that kind that can exist in that room. */
    static ObjectNode blank(MemberKind kind, Room room) {
        ObjectNode out = JobTree.object().put("kind", kind.word());
        Sizes sizes = kind.blank(room);
        for (MemberKey key : kind.keys()) {
            switch (key.type()) {
                case LENGTH ->
                    sizes.find(key.name())
                            .ifPresent(size -> out.put(key.name(), LengthSpelling.of(size, room.units())));
                case POINTS -> write(out.putArray(key.name()), sizes.points(), room.units());
            }
        }
        return out;
    }

    private static void write(ArrayNode out, List<FreeCurve.Point> points, UnitSystem units) {
        points.forEach(point -> out.addArray()
                .add(LengthSpelling.of(point.place(), units))
                .add(LengthSpelling.of(point.diameter(), units)));
    }

    /** Whether a member of that kind is given by a length of its own, not by points. */
    static boolean hasLength(MemberKind kind) {
        return kind.find(MemberKey.Type.LENGTH, MemberKey.LENGTH).isPresent();
    }

    /** Sets what was typed, to the letter: the reader says what is wrong with it. */
    static void set(ObjectNode member, Map<String, String> values) {
        values.forEach((key, value) -> {
            String typed = value.strip();
            if (typed.isEmpty()) {
                member.remove(key);
            } else if (key.equals(MemberKey.BY_EYE)) {
                member.put(key, typed.equals("true"));
            } else if (kind(member).find(MemberKey.Type.POINTS, key).isPresent()) {
                member.set(key, points(typed));
            } else {
                member.put(key, typed);
            }
        });
    }

    private static MemberKind kind(ObjectNode member) {
        String word = member.path("kind").asText();
        return MemberKind.find(word).orElseThrow(() -> new IllegalStateException("a member that was read has no kind"));
    }

    /** What was typed for a key of that kind, each of its lengths changed. */
    static String withLengths(MemberKind kind, String key, String typed, UnaryOperator<String> change) {
        if (kind.find(MemberKey.Type.LENGTH, key).isPresent()) {
            return change.apply(typed);
        }
        if (kind.find(MemberKey.Type.POINTS, key).isEmpty()) {
            return typed;
        }
        List<String> lines = new ArrayList<>();
        points(typed).forEach(pair -> {
            List<String> changed = new ArrayList<>();
            pair.forEach(length -> changed.add(change.apply(length.asText())));
            lines.add(String.join(" ; ", changed));
        });
        return String.join("\n", lines);
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

    /** Makes the member so long; points keep their share of the length. */
    static void length(ObjectNode tree, Member member, Length length, UnitSystem units) {
        for (MemberKey key : member.kind().keys()) {
            switch (key.type()) {
                case LENGTH -> {
                    if (key.name().equals(MemberKey.LENGTH)) {
                        tree.put(key.name(), LengthSpelling.of(length, units));
                    }
                }
                case POINTS ->
                    stretch(
                            (ArrayNode) tree.get(key.name()),
                            member,
                            length.mm() / member.length().mm(),
                            units);
            }
        }
    }

    private static void stretch(ArrayNode pairs, Member member, double share, UnitSystem units) {
        List<FreeCurve.Point> points = member.sizes().points();
        for (int i = 0; i < points.size(); i++) {
            String place = LengthSpelling.of(points.get(i).place().times(share), units);
            ((ArrayNode) pairs.get(i)).set(0, pairs.textNode(place));
        }
    }

    /** Turned end for end: a size that moves to another key takes what was typed with it, points run the other way, the rest stays. */
    static void mirror(ObjectNode tree, Member member, UnitSystem units) {
        ObjectNode typed = tree.deepCopy();
        Sizes was = member.sizes();
        Sizes is = member.mirrored().sizes();
        for (MemberKey key : member.kind().keys()) {
            switch (key.type()) {
                case LENGTH -> {
                    if (!is.find(key.name()).equals(was.find(key.name()))) {
                        is.find(key.name()).ifPresent(size -> tree.set(key.name(), moved(size, was, typed, units)));
                    }
                }
                case POINTS -> write(tree.putArray(key.name()), is.points(), units);
            }
        }
    }

    private static JsonNode moved(Length size, Sizes was, ObjectNode typed, UnitSystem units) {
        return was.lengths().entrySet().stream()
                .filter(each -> each.getValue().equals(size) && typed.has(each.getKey()))
                .findFirst()
                .map(each -> typed.get(each.getKey()))
                .orElseGet(() -> typed.textNode(LengthSpelling.of(size, units)));
    }
}
