package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Values;
import turnalike.job.keys.ByHandKeys;
import turnalike.job.keys.JobKeys;
import turnalike.job.set.ByHand;

/** Which piece stands where by hand: {@code {"order": ["7", "3"], "held": [{"place": 1, "piece": "7"}]}}. */
final class ByHandReader {
    private static final String ORDER_MEND = "list the pieces' labels, one for each place: [\"7\", \"3\"]";
    private static final String HELD_MEND = "write it like [{\"place\": 1, \"piece\": \"7\"}]";

    private ByHandReader() {}

    static Optional<ByHand> read(Fields fields) {
        int before = fields.reading().count();
        List<String> order = order(fields);
        SortedMap<Integer, String> held = held(fields);
        fields.refuseUnknown(JobKeys.BY_HAND.type());
        return fields.reading().count() == before ? Optional.of(new ByHand(order, held, false)) : Optional.empty();
    }

    private static List<String> order(Fields fields) {
        if (!fields.has(ByHandKeys.ORDER)) {
            return List.of();
        }
        List<JsonNode> nodes = fields.list(ByHandKeys.ORDER, ORDER_MEND).orElse(List.of());
        few(
                fields,
                ByHandKeys.ORDER.name(),
                nodes.size(),
                ByHandKeys.ORDER.type().most());
        List<String> out = new ArrayList<>();
        for (JsonNode node : nodes) {
            if (!node.isTextual() || node.textValue().isBlank()) {
                fields.reading()
                        .problem(
                                fields.at(ByHandKeys.ORDER.name()),
                                "names no piece, was " + Values.excerpt(node),
                                ORDER_MEND);
            } else if (out.contains(node.textValue())) {
                fields.reading()
                        .problem(
                                fields.at(ByHandKeys.ORDER.name()),
                                "names piece %s twice".formatted(Values.excerpt(node)),
                                "a piece stands at one place only");
            } else {
                out.add(node.textValue());
            }
        }
        return out;
    }

    private static void few(Fields fields, String key, int count, int most) {
        if (count > most) {
            fields.reading()
                    .problem(fields.at(key), "has %d entries".formatted(count), "give %d at most".formatted(most));
        }
    }

    private static SortedMap<Integer, String> held(Fields fields) {
        SortedMap<Integer, String> out = new TreeMap<>();
        if (!fields.has(ByHandKeys.HELD)) {
            return out;
        }
        List<JsonNode> nodes = fields.list(ByHandKeys.HELD, HELD_MEND).orElse(List.of());
        few(fields, ByHandKeys.HELD.name(), nodes.size(), ByHandKeys.HELD.type().most());
        Set<String> labels = new HashSet<>();
        for (int i = 0; i < nodes.size(); i++) {
            fields.objectAt("held %d".formatted(i + 1), nodes.get(i), HELD_MEND)
                    .ifPresent(each -> held(each, labels, out));
        }
        return out;
    }

    private static void held(Fields fields, Set<String> labels, SortedMap<Integer, String> out) {
        Optional<Integer> place = fields.whole(ByHandKeys.PLACE);
        Optional<String> piece = fields.findText(ByHandKeys.PIECE);
        fields.refuseUnknown(ByHandKeys.HELD.type().row());
        if (piece.isEmpty()) {
            fields.reading().problem(fields.at(ByHandKeys.PIECE.name()), "is missing", HELD_MEND);
        } else if (place.isPresent() && (!labels.add(piece.get()) || out.containsKey(place.get()))) {
            fields.reading().problem(fields.where(), "holds a piece or a place twice", "take one of the two out");
        } else {
            place.ifPresent(at -> out.put(at, piece.get()));
        }
    }
}
