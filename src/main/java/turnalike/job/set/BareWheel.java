package turnalike.job.set;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.frame.Moment;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Rows;
import turnalike.units.Angle;

/**
 * What a wheel pulls before any spoke is in it: hub, rim, rim joint.
 *
 * @param moments as the job gives them, in g·mm each with its direction; may be none
 * @param rocking as found by letting it rock, if it was; adds to the given ones
 */
public record BareWheel(List<Moment> moments, Optional<Rocking> rocking) {
    private static final Key<Number> GIVEN_G_MM = Key.needed("g_mm", KeyType.number(0, 1e12), "how strong");

    private static final Key<Number> GIVEN_AT = Key.needed("at_deg", KeyType.number(-360, 720), "toward where");

    static final Key<Rows> GIVEN_MOMENTS = Key.may(
                    "given_moments",
                    new Rows(GIVEN_G_MM, GIVEN_AT, FrameKind.MOST_PLACES),
                    "what the hub, the rim or its joint pull by themselves",
                    "nothing")
            .asked(KeySection.BARE_WHEEL, "Bare wheel pulls, g·mm ; at degrees", "a line each: 1200 ; 90");

    static final Key<Group> ROCKING = Key.may(
            "rocking",
            Rocking.KEYS,
            "the same, found by letting the bare wheel rock; added to the given ones",
            "nothing");

    public BareWheel {
        moments = List.copyOf(moments);
    }

    static BareWheel read(Fields fields) {
        List<Moment> moments = moments(fields);
        Optional<Rocking> rocking =
                fields.has(ROCKING) ? fields.object(ROCKING, Rocking.MEND).flatMap(Rocking::read) : Optional.empty();
        return new BareWheel(moments, rocking);
    }

    private static List<Moment> moments(Fields fields) {
        if (!fields.has(GIVEN_MOMENTS)) {
            return List.of();
        }
        String mend = "write it like [{\"g_mm\": 1200, \"at_deg\": 90}]";
        List<Moment> out = new ArrayList<>();
        List<JsonNode> nodes = fields.list(GIVEN_MOMENTS, mend).orElse(List.of());
        for (int i = 0; i < nodes.size(); i++) {
            String place = "%s %d".formatted(GIVEN_MOMENTS.name(), i + 1);
            fields.objectAt(place, nodes.get(i), mend)
                    .flatMap(BareWheel::moment)
                    .ifPresent(out::add);
        }
        return out;
    }

    private static Optional<Moment> moment(Fields fields) {
        Optional<Double> size = fields.number(GIVEN_G_MM);
        Optional<Double> at = fields.number(GIVEN_AT);
        fields.refuseUnknown(GIVEN_MOMENTS.type().row());
        return size.flatMap(gMm -> at.map(deg -> new Moment(gMm, Angle.ofDegrees(deg))));
    }

    /** {@return given and found together, those given first} */
    public List<Moment> all() {
        List<Moment> all = new ArrayList<>(moments);
        rocking.map(Rocking::unbalance).ifPresent(all::add);
        return List.copyOf(all);
    }
}
