package turnalike.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.frame.Moment;
import turnalike.frame.Row;
import turnalike.frame.Wheel;
import turnalike.units.Angle;
import turnalike.units.Length;

/** The frame from JSON. A new frame is one case in {@link #read} and one method. */
final class FrameReader {
    private static final int MOST_PLACES = 400;

    private FrameReader() {}

    static Optional<JobFrame> read(Fields fields) {
        Optional<String> kind = fields.choice("kind", "\"wheel\" or \"row\"", word -> switch (word) {
            case "wheel", "row" -> Optional.of(word);
            default -> Optional.empty();
        });
        return kind.flatMap(word -> word.equals("wheel") ? wheel(fields) : row(fields));
    }

    private static Optional<JobFrame> wheel(Fields fields) {
        Optional<Integer> places = fields.wholeNumber("places", 2, MOST_PLACES);
        Optional<Length> hubRadius = fields.length("hub_radius");
        Optional<JobFrame.HubEnd> hubEnd = fields.has("tenon_at")
                ? fields.choice("tenon_at", "\"start\" or \"end\"", word -> switch (word) {
                    case "start" -> Optional.of(JobFrame.HubEnd.START);
                    case "end" -> Optional.of(JobFrame.HubEnd.END);
                    default -> Optional.empty();
                })
                : Optional.of(JobFrame.HubEnd.START);
        Optional<Length> radius =
                fields.has("counterweight_radius") ? fields.positive("counterweight_radius") : Optional.empty();
        List<Moment> moments = moments(fields);
        fields.refuseUnknown();
        return places.flatMap(n ->
                hubRadius.flatMap(r -> hubEnd.map(end -> new JobFrame.OnWheel(new Wheel(n, r), end, moments, radius))));
    }

    private static List<Moment> moments(Fields fields) {
        if (!fields.has("given_moments")) {
            return List.of();
        }
        String mend = "write it like [{\"g_mm\": 1200, \"at_deg\": 90}]";
        List<Moment> out = new ArrayList<>();
        List<JsonNode> nodes = fields.list("given_moments", mend).orElse(List.of());
        for (int i = 0; i < nodes.size(); i++) {
            String where = fields.at("given_moments %d".formatted(i + 1));
            if (nodes.get(i) instanceof ObjectNode object) {
                Fields each = new Fields(where, object, fields.reading());
                Optional<Double> size = each.number("g_mm", 0, 1e12);
                Optional<Double> at = each.number("at_deg", -360, 720);
                each.refuseUnknown();
                size.ifPresent(gMm -> at.ifPresent(deg -> out.add(new Moment(gMm, Angle.ofDegrees(deg)))));
            } else {
                fields.reading().problem(where, "is no object, was " + Fields.excerpt(nodes.get(i)), mend);
            }
        }
        return out;
    }

    private static Optional<JobFrame> row(Fields fields) {
        Optional<Integer> places = fields.wholeNumber("places", 1, MOST_PLACES);
        fields.refuseUnknown();
        return places.map(n -> new JobFrame.InRow(new Row(n)));
    }
}
