package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.frame.Moment;
import turnalike.frame.Wheel;
import turnalike.job.BareWheel;
import turnalike.job.JobFrame;
import turnalike.job.Rocking;
import turnalike.units.Angle;
import turnalike.units.Length;

/** A wheel from JSON. */
final class WheelReader {
    private WheelReader() {}

    static Optional<JobFrame> read(Fields fields) {
        Optional<Integer> places = fields.wholeNumber("places", 2, FrameReader.MOST_PLACES);
        Optional<Length> hubRadius = fields.length("hub_radius");
        Optional<JobFrame.HubEnd> hubEnd = hubEnd(fields);
        Optional<Length> radius =
                fields.has("counterweight_radius") ? fields.positive("counterweight_radius") : Optional.empty();
        List<Moment> moments = moments(fields);
        Optional<Rocking> rocking = fields.has("rocking")
                ? fields.object("rocking", RockingReader.MEND).flatMap(RockingReader::read)
                : Optional.empty();
        Optional<List<Length>> depths = seatDepths(fields, places);
        OptionalDouble revPerMin = fields.has("rpm")
                ? fields.number("rpm", 0.1, 100_000).map(OptionalDouble::of).orElse(OptionalDouble.empty())
                : OptionalDouble.empty();
        fields.refuseUnknown();
        BareWheel bare = new BareWheel(moments, rocking);
        return places.flatMap(n -> hubRadius.flatMap(r -> hubEnd.flatMap(
                end -> depths.map(each -> new JobFrame.OnWheel(new Wheel(n, r), end, bare, each, radius, revPerMin)))));
    }

    private static Optional<JobFrame.HubEnd> hubEnd(Fields fields) {
        return fields.has("tenon_at")
                ? fields.choice("tenon_at", "\"start\" or \"end\"", word -> switch (word) {
                    case "start" -> Optional.of(JobFrame.HubEnd.START);
                    case "end" -> Optional.of(JobFrame.HubEnd.END);
                    default -> Optional.empty();
                })
                : Optional.of(JobFrame.HubEnd.START);
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

    /** One depth for each place, or none at all. */
    private static Optional<List<Length>> seatDepths(Fields fields, Optional<Integer> wanted) {
        if (!fields.has("seat_depths") || wanted.isEmpty()) {
            return Optional.of(List.of()); // without places nobody knows how many depths belong
        }
        int places = wanted.get();
        String mend = "give one depth for each of the %d places, 0 for the shallowest seat".formatted(places);
        Optional<List<JsonNode>> nodes = fields.list("seat_depths", mend);
        if (nodes.isPresent() && nodes.get().size() != places) {
            fields.reading()
                    .problem(
                            fields.at("seat_depths"),
                            "has %d depths for %d places".formatted(nodes.get().size(), places),
                            mend);
            return Optional.empty();
        }
        return nodes.flatMap(each -> depths(fields, each));
    }

    private static Optional<List<Length>> depths(Fields fields, List<JsonNode> nodes) {
        List<Length> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            fields.lengthAt("seat_depths %d".formatted(i + 1), nodes.get(i)).ifPresent(out::add);
        }
        return out.size() == nodes.size() ? Optional.of(out) : Optional.empty();
    }
}
