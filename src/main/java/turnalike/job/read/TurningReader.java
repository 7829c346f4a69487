package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.turning.Lathe;
import turnalike.units.Force;
import turnalike.units.Problem;
import turnalike.units.Speed;

/** What the job says of the lathe and the hand that turns, from JSON: {@code turning}. */
final class TurningReader {
    /** A tool is not pushed harder than this: two hundred kilograms' weight. Only to catch a slip. */
    private static final double MOST_CUTTING_N = 2000;

    private static final double MOST_TAILSTOCK_N = 20_000;

    /** No wood lathe turns slower or faster; only to catch a slip. */
    private static final double SLOWEST_RPM = 1;

    private static final double FASTEST_RPM = 20_000;

    private static final int MOST_STEPS = 100;

    private TurningReader() {}

    static Optional<Lathe> read(Fields fields) {
        int before = fields.reading().count();
        Lathe usual = Lathe.USUAL;
        Optional<Double> force = fields.numberOr("force_n", usual.cutting().newtons(), 0.001, MOST_CUTTING_N);
        List<Speed> steps = fields.has("speeds") ? steps(fields) : List.of();
        Optional<Speed> most = fields.has("max_rpm")
                ? fields.number("max_rpm", SLOWEST_RPM, FASTEST_RPM).map(Speed::ofRpm)
                : Optional.empty();
        Optional<Force> tailstock = fields.has("tailstock_force_n")
                ? fields.number("tailstock_force_n", 0.001, MOST_TAILSTOCK_N).map(Force::ofNewtons)
                : Optional.empty();
        fields.refuseUnknown();
        if (fields.reading().count() == before) {
            for (Problem problem : Lathe.problems(fields.at("speeds"), steps, most)) {
                fields.reading().problem(problem);
            }
        }
        return fields.reading().count() == before
                ? force.map(newtons -> new Lathe(Force.ofNewtons(newtons), steps, most, tailstock))
                : Optional.empty();
    }

    private static List<Speed> steps(Fields fields) {
        String mend = "list the lathe's speeds in rpm, like [500, 900, 1500, 2400]";
        List<JsonNode> nodes = fields.list("speeds", mend).orElse(List.of());
        if (fields.has("speeds") && (nodes.isEmpty() || nodes.size() > MOST_STEPS)) {
            fields.reading()
                    .problem(
                            fields.at("speeds"),
                            "has %d steps".formatted(nodes.size()),
                            "list 1 to %d, or leave it out".formatted(MOST_STEPS));
        }
        List<Speed> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            JsonNode node = nodes.get(i);
            double rpm = node.isNumber() ? node.doubleValue() : Double.NaN;
            if (rpm >= SLOWEST_RPM && rpm <= FASTEST_RPM) {
                out.add(Speed.ofRpm(rpm));
            } else {
                fields.reading()
                        .problem(
                                "%s: step %d".formatted(fields.at("speeds"), i + 1),
                                "was " + Fields.excerpt(node),
                                "give a number of rpm from 1 to 20000");
            }
        }
        return out;
    }
}
