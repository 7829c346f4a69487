package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.fields.Fields;
import turnalike.job.keys.RuleKeys;
import turnalike.pattern.CurveRules;
import turnalike.pattern.ShapeRules;
import turnalike.turning.ShopRules;
import turnalike.turning.SlenderRules;
import turnalike.turning.SpeedChart;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;

/** The rules of thumb that a job sets, from JSON: {@code turning.rules}. */
final class RulesReader {
    private static final String MEND = "write it like [{\"rpm\": 2800, \"diameter\": \"1\"}]";

    private RulesReader() {}

    static Optional<ShopRules> read(Fields fields) {
        int before = fields.reading().count();
        SpeedChart chart = fields.has(RuleKeys.CHART) ? chart(fields) : SpeedChart.USUAL;
        Optional<Double> ceiling = fields.number(RuleKeys.CEILING);
        Optional<Double> longWork = fields.number(RuleKeys.LONG);
        Optional<Double> outOfRound = fields.number(RuleKeys.OUT_OF_ROUND);
        Optional<Double> whip = fields.number(RuleKeys.WHIP);
        Optional<Double> steady = fields.number(RuleKeys.STEADY);
        Optional<Length> roughingGouge = fields.size(RuleKeys.ROUGHING_GOUGE);
        Optional<Length> pencil = fields.size(RuleKeys.PENCIL);
        Optional<Length> parting = fields.size(RuleKeys.PARTING);
        Optional<Double> overhang = fields.number(RuleKeys.OVERHANG);
        Optional<Length> centring = fields.size(RuleKeys.CENTRING);
        Optional<Double> strength = fields.number(RuleKeys.STRENGTH);
        Optional<Double> thrust = fields.number(RuleKeys.THRUST);
        Optional<Double> thrustMost = fields.number(RuleKeys.THRUST_MOST);
        Optional<ShapeRules> shapes = shapes(fields);
        Optional<Double> slender = fields.number(RuleKeys.SLENDER);
        Optional<Double> notThick = fields.number(RuleKeys.NOT_THICK);
        Optional<Double> limber = fields.number(RuleKeys.LIMBER);
        Optional<Length> longLevel = fields.size(RuleKeys.LONG_LEVEL);
        Optional<Double> stepSlope = fields.number(RuleKeys.STEP_SLOPE);
        Optional<Length> line = fields.size(RuleKeys.LINE);
        fields.refuseUnknown(RuleKeys.RULES.type());
        if (fields.reading().count() > before) {
            return Optional.empty();
        }
        return Optional.of(new ShopRules(
                chart,
                Speed.ofRpm(ceiling.orElseThrow()),
                outOfRound.orElseThrow() / 100,
                Speed.ofRpm(longWork.orElseThrow()),
                whip.orElseThrow() / 100,
                steady.orElseThrow(),
                roughingGouge.orElseThrow(),
                pencil.orElseThrow(),
                parting.orElseThrow(),
                overhang.orElseThrow(),
                centring.orElseThrow(),
                strength.orElseThrow(),
                thrust.orElseThrow() / 100,
                Force.ofNewtons(thrustMost.orElseThrow()),
                shapes.orElseThrow(),
                new SlenderRules(slender.orElseThrow() / 100, notThick.orElseThrow() / 100, limber.orElseThrow() / 100),
                new CurveRules(longLevel.orElseThrow(), stepSlope.orElseThrow(), line.orElseThrow())));
    }

    /** What is warned of in the drawing; empty where something in it was wrong and told. */
    private static Optional<ShapeRules> shapes(Fields fields) {
        Optional<Double> thin = fields.number(RuleKeys.THIN);
        Optional<Double> heavy = fields.number(RuleKeys.HEAVY_PART);
        Optional<Double> cove = fields.number(RuleKeys.COVE);
        Optional<Double> vee = fields.number(RuleKeys.VEE);
        Optional<Double> bead = fields.number(RuleKeys.BEAD);
        Optional<Length> groove = fields.size(RuleKeys.GROOVE);
        Optional<Length> play = fields.size(RuleKeys.PLAY);
        Optional<Length> snug = fields.size(RuleKeys.SNUG);
        boolean whole = thin.isPresent()
                && heavy.isPresent()
                && cove.isPresent()
                && vee.isPresent()
                && bead.isPresent()
                && groove.isPresent()
                && play.isPresent()
                && snug.isPresent();
        return whole
                ? Optional.of(new ShapeRules(
                        thin.get() / 100,
                        heavy.get() / 100,
                        cove.get() / 100,
                        vee.get() / 100,
                        bead.get() / 100,
                        groove.get(),
                        play.get(),
                        snug.get()))
                : Optional.empty();
    }

    /** The chart; the usual one where something in it was wrong and told. */
    private static SpeedChart chart(Fields fields) {
        String where = fields.at(RuleKeys.CHART.name());
        List<JsonNode> nodes = fields.list(RuleKeys.CHART, MEND).orElse(List.of());
        int most = RuleKeys.CHART.type().most();
        if (nodes.isEmpty() || nodes.size() > most) {
            fields.reading()
                    .problem(
                            where,
                            "has %d rows".formatted(nodes.size()),
                            "list 1 to %d, or leave it out".formatted(most));
        }
        int before = fields.reading().count();
        List<SpeedChart.Row> rows = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            String place = "%s %d".formatted(RuleKeys.CHART.name(), i + 1);
            fields.objectAt(place, nodes.get(i), MEND).flatMap(RulesReader::row).ifPresent(rows::add);
        }
        if (fields.reading().count() == before) {
            SpeedChart.problems(where, rows).forEach(fields.reading()::problem);
        }
        return rows.isEmpty() ? SpeedChart.USUAL : new SpeedChart(rows);
    }

    private static Optional<SpeedChart.Row> row(Fields fields) {
        Optional<Double> rpm = fields.number(RuleKeys.CHART_RPM);
        Optional<Length> diameter = fields.size(RuleKeys.CHART_DIAMETER);
        fields.refuseUnknown(RuleKeys.CHART.type().row());
        return rpm.flatMap(speed -> diameter.map(width -> SpeedChart.Row.fastest(width, Speed.ofRpm(speed))));
    }
}
