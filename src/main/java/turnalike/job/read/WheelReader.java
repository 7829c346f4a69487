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
import turnalike.job.keys.FrameKeys;
import turnalike.job.keys.FrameKeys.WheelKeys;
import turnalike.units.Angle;
import turnalike.units.Length;

/** A wheel from JSON. */
final class WheelReader {
    private WheelReader() {}

    static Optional<JobFrame> read(Fields fields) {
        Optional<Integer> places = fields.whole(WheelKeys.PLACES);
        Optional<Length> hubRadius = fields.size(WheelKeys.HUB_RADIUS);
        Optional<JobFrame.HubEnd> hubEnd = hubEnd(fields);
        Optional<Length> radius = fields.size(WheelKeys.COUNTERWEIGHT_RADIUS);
        List<Moment> moments = moments(fields);
        Optional<Rocking> rocking = fields.has(WheelKeys.ROCKING)
                ? fields.object(WheelKeys.ROCKING, RockingReader.MEND).flatMap(RockingReader::read)
                : Optional.empty();
        Optional<List<Length>> depths = seatDepths(fields, places);
        OptionalDouble revPerMin =
                fields.number(WheelKeys.RPM).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        fields.refuseUnknown(FrameKeys.of(FrameKeys.WHEEL));
        BareWheel bare = new BareWheel(moments, rocking);
        return places.flatMap(n -> hubRadius.flatMap(r -> hubEnd.flatMap(
                end -> depths.map(each -> new JobFrame.OnWheel(new Wheel(n, r), end, bare, each, radius, revPerMin)))));
    }

    private static Optional<JobFrame.HubEnd> hubEnd(Fields fields) {
        return fields.word(WheelKeys.TENON_AT)
                .map(word -> word.equals(FrameKeys.START) ? JobFrame.HubEnd.START : JobFrame.HubEnd.END);
    }

    private static List<Moment> moments(Fields fields) {
        if (!fields.has(WheelKeys.GIVEN_MOMENTS)) {
            return List.of();
        }
        String mend = "write it like [{\"g_mm\": 1200, \"at_deg\": 90}]";
        List<Moment> out = new ArrayList<>();
        List<JsonNode> nodes = fields.list(WheelKeys.GIVEN_MOMENTS, mend).orElse(List.of());
        for (int i = 0; i < nodes.size(); i++) {
            String where = fields.at("%s %d".formatted(WheelKeys.GIVEN_MOMENTS.name(), i + 1));
            if (nodes.get(i) instanceof ObjectNode object) {
                Fields each = new Fields(where, object, fields.reading());
                Optional<Double> size = each.number(WheelKeys.GIVEN_G_MM);
                Optional<Double> at = each.number(WheelKeys.GIVEN_AT);
                each.refuseUnknown(WheelKeys.GIVEN_MOMENTS.type().row());
                size.ifPresent(gMm -> at.ifPresent(deg -> out.add(new Moment(gMm, Angle.ofDegrees(deg)))));
            } else {
                fields.reading().problem(where, "is no object, was " + Fields.excerpt(nodes.get(i)), mend);
            }
        }
        return out;
    }

    /** One depth for each place, or none at all. */
    private static Optional<List<Length>> seatDepths(Fields fields, Optional<Integer> wanted) {
        if (!fields.has(WheelKeys.SEAT_DEPTHS) || wanted.isEmpty()) {
            return Optional.of(List.of()); // without places nobody knows how many depths belong
        }
        int places = wanted.get();
        String mend = "give one depth for each of the %d places, 0 for the shallowest seat".formatted(places);
        Optional<List<JsonNode>> nodes = fields.list(WheelKeys.SEAT_DEPTHS, mend);
        if (nodes.isPresent() && nodes.get().size() != places) {
            fields.reading()
                    .problem(
                            fields.at(WheelKeys.SEAT_DEPTHS.name()),
                            "has %d depths for %d places".formatted(nodes.get().size(), places),
                            mend);
            return Optional.empty();
        }
        return nodes.flatMap(each -> depths(fields, each));
    }

    private static Optional<List<Length>> depths(Fields fields, List<JsonNode> nodes) {
        List<Length> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            fields.lengthAt("%s %d".formatted(WheelKeys.SEAT_DEPTHS.name(), i + 1), nodes.get(i))
                    .ifPresent(out::add);
        }
        return out.size() == nodes.size() ? Optional.of(out) : Optional.empty();
    }
}
