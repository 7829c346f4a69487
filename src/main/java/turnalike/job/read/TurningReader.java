package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.fields.Fields;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.Values;
import turnalike.job.keys.JobKeys;
import turnalike.job.keys.RuleKeys;
import turnalike.job.keys.TurningKeys;
import turnalike.turning.Held;
import turnalike.turning.Lathe;
import turnalike.turning.ShopRules;
import turnalike.units.Force;
import turnalike.units.PlainNumber;
import turnalike.units.Problem;
import turnalike.units.Speed;

/** What the job says of the lathe and the hand that turns, from JSON: {@code turning}. */
final class TurningReader {
    private TurningReader() {}

    static Optional<Lathe> read(Fields fields) {
        int before = fields.reading().count();
        Optional<Double> force = fields.number(TurningKeys.FORCE);
        List<Speed> steps = fields.has(TurningKeys.SPEEDS) ? steps(fields) : List.of();
        Optional<Speed> most = fields.number(TurningKeys.MAX_RPM).map(Speed::ofRpm);
        Optional<Force> tailstock = fields.number(TurningKeys.TAILSTOCK_FORCE).map(Force::ofNewtons);
        Optional<Held> held = held(fields);
        Optional<ShopRules> rules = fields.objectOrEmpty(RuleKeys.RULES).flatMap(RulesReader::read);
        fields.refuseUnknown(JobKeys.TURNING.type());
        if (fields.reading().count() == before) {
            for (Problem problem : Lathe.problems(fields.at(TurningKeys.SPEEDS.name()), steps, most)) {
                fields.reading().problem(problem);
            }
        }
        return fields.reading().count() == before
                ? Optional.of(new Lathe(
                        Force.ofNewtons(force.orElseThrow()),
                        steps,
                        most,
                        tailstock,
                        held.orElseThrow(),
                        rules.orElseThrow()))
                : Optional.empty();
    }

    private static Optional<Held> held(Fields fields) {
        Optional<Held.By> by = fields.word(TurningKeys.HELD).flatMap(Held::findBy);
        Optional<Held.At> at = fields.word(TurningKeys.HELD_AT).flatMap(Held::findAt);
        Optional<Boolean> up = fields.word(TurningKeys.TAILSTOCK)
                .map(word -> word.equals(TurningKeys.TAILSTOCK.type().words().get(0)));
        Optional<Problem> problem = by.flatMap(
                hold -> up.flatMap(there -> Held.problem(fields.at(TurningKeys.TAILSTOCK.name()), hold, there)));
        problem.ifPresent(fields.reading()::problem);
        return problem.isPresent()
                ? Optional.empty()
                : by.flatMap(hold -> at.flatMap(end -> up.map(there -> new Held(hold, end, there))));
    }

    private static List<Speed> steps(Fields fields) {
        String mend = "list the lathe's speeds in rpm, like [500, 900, 1500, 2400]";
        KeyType.ListOf<KeyType.Number> range = TurningKeys.SPEEDS.type();
        String where = fields.at(TurningKeys.SPEEDS.name());
        List<JsonNode> nodes = fields.list(TurningKeys.SPEEDS, mend).orElse(List.of());
        if (nodes.size() < range.least() || nodes.size() > range.most()) {
            fields.reading()
                    .problem(
                            where,
                            "has %d steps".formatted(nodes.size()),
                            "list %d to %d, or leave it out".formatted(range.least(), range.most()));
        }
        List<Speed> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            JsonNode node = nodes.get(i);
            if (Values.isIn(range.item(), node)) {
                out.add(Speed.ofRpm(node.doubleValue()));
            } else {
                fields.reading()
                        .problem(
                                "%s: step %d".formatted(where, i + 1),
                                "was " + Values.excerpt(node),
                                "give a number of rpm from %s to %s"
                                        .formatted(
                                                PlainNumber.exact(range.item().least()),
                                                PlainNumber.exact(range.item().most())));
            }
        }
        return out;
    }
}
