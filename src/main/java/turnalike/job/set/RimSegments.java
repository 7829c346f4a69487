package turnalike.job.set;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.Values;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;

/**
 * What a rim's segments weigh, each by itself before it is glued and bored: where they differ, the rim pulls by itself.
 *
 * @param masses one for each segment, the first from the joint after place 1, the others anticlockwise; none when they were not weighed
 */
public record RimSegments(List<Mass> masses) {
    static final Key<ListOf<Number>> MASSES = Key.may(
                    "rim_segments_g",
                    new ListOf<>(KeyType.number(0.01, 1e6), 0, FrameKind.MOST_PLACES),
                    "what each segment of the rim weighs in g, cut and not yet bored, from the joint after place 1 anticlockwise; needs"
                            + " segments and rim_width",
                    "all alike")
            .asked(KeySection.BARE_WHEEL, "Rim segments weigh, g", "one for each segment, parted by semicolons");

    public RimSegments {
        masses = List.copyOf(masses);
    }

    /** {@return what all of them weigh; empty when they were not weighed} */
    public Optional<Mass> total() {
        return masses.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Mass.ofGrams(masses.stream().mapToDouble(Mass::grams).sum()));
    }

    static Optional<RimSegments> read(Fields fields, OptionalInt segments, Optional<Length> rimWidth) {
        if (!fields.has(MASSES)) {
            return Optional.of(new RimSegments(List.of()));
        }
        int before = fields.reading().count();
        String mend = "give the mass in g of each segment of the rim, such as [412.5, 409.0, 411.5]";
        List<JsonNode> nodes = fields.list(MASSES, mend).orElse(List.of());
        List<Mass> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            if (Values.isIn(MASSES.type().item(), nodes.get(i))) {
                out.add(Mass.ofGrams(nodes.get(i).doubleValue()));
            } else {
                tell(fields, i + 1, nodes.get(i));
            }
        }
        if (!nodes.isEmpty()) {
            fitsRim(fields, nodes.size(), segments, rimWidth);
        }
        return fields.reading().count() > before ? Optional.empty() : Optional.of(new RimSegments(out));
    }

    private static void tell(Fields fields, int number, JsonNode value) {
        Number range = MASSES.type().item();
        fields.reading()
                .problem(
                        fields.at("%s %d".formatted(MASSES.name(), number)),
                        "was " + Values.excerpt(value),
                        "give a number of grams from %s to %s"
                                .formatted(PlainNumber.exact(range.least()), PlainNumber.exact(range.most())));
    }

    private static void fitsRim(Fields fields, int count, OptionalInt segments, Optional<Length> rimWidth) {
        String where = fields.at(MASSES.name());
        if (segments.isEmpty() || rimWidth.isEmpty()) {
            fields.reading()
                    .problem(
                            where,
                            "tells what segments weigh, but not where they lie",
                            "give segments and rim_width, or leave the masses out");
        } else if (segments.getAsInt() != count) {
            fields.reading()
                    .problem(
                            where,
                            "has %d masses for %d segments".formatted(count, segments.getAsInt()),
                            "give one mass for each segment");
        }
        if (fields.has(BareWheel.ROCKING)) {
            fields.reading()
                    .problem(
                            where,
                            "stands beside rocking, which has felt the whole rim already",
                            "leave one of the two out, else the rim counts twice");
        }
    }
}
