package turnalike.job.wood;

import java.util.Optional;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Number;
import turnalike.wood.Air;
import turnalike.wood.Equilibrium;
import turnalike.wood.Moisture;
import turnalike.year.Home;
import turnalike.year.Season;

/** Where the pieces will live, from JSON. */
public final class HomeReader {
    private static final String MEND =
            "give the air of both seasons, {\"dry\": {\"temperature_c\": 21, \"humidity_pct\": 30}, \"damp\": {…}}, or what wood comes to"
                    + " there, {\"dry_pct\": 6, \"damp_pct\": 12}";
    private static final String TABLE =
            "; Wood Handbook Table 4-2 ends there, and nothing beyond was seen: for other air give dry_pct and damp_pct";
    private static final String CELSIUS_MEND = "give degrees Celsius from -1 to 54 (30 to 130 Fahrenheit)" + TABLE;
    private static final String HUMID_MEND = "give 5 to 95 percent" + TABLE;
    private static final String PCT_MEND =
            "give 0 to 30 percent: above fibre saturation, about 30 %, wood does not move and the formula ends (Wood Handbook, chapters 4 and 13)";

    private HomeReader() {}

    /**
     * {@return the home; empty when a problem was told}
     *
     * @param fields the keys of its object, none of them taken
     */
    public static Optional<Home> read(Fields fields) {
        int before = fields.reading().count();
        boolean byAir = any(fields, HomeKeys.DRY, HomeKeys.DAMP);
        boolean byMoisture = any(fields, HomeKeys.DRY_PCT, HomeKeys.DAMP_PCT);
        Optional<Season> dry = Optional.empty();
        Optional<Season> damp = Optional.empty();
        if (byAir && byMoisture) {
            fields.reading().problem(fields.where(), "gives the air and the wood's moisture", "keep one of the two");
        } else if (byAir) {
            dry = air(fields, HomeKeys.DRY, HomeKeys.DRY_TEMPERATURE, HomeKeys.DRY_HUMIDITY);
            damp = air(fields, HomeKeys.DAMP, HomeKeys.DAMP_TEMPERATURE, HomeKeys.DAMP_HUMIDITY);
        } else if (byMoisture) {
            dry = moisture(fields, HomeKeys.DRY_PCT);
            damp = moisture(fields, HomeKeys.DAMP_PCT);
        } else {
            fields.reading().problem(fields.where(), "names no season", MEND);
        }
        fields.refuseUnknown(HomeKeys.GROUP);
        if (fields.reading().count() > before) {
            return Optional.empty();
        }
        return home(fields, dry.orElseThrow(), damp.orElseThrow());
    }

    /** Whether either is there; both are asked for, since what nobody asks for is unknown. */
    private static boolean any(Fields fields, Key<?> one, Key<?> other) {
        boolean first = fields.has(one);
        return fields.has(other) || first;
    }

    private static Optional<Home> home(Fields fields, Season dry, Season damp) {
        if (dry.moisture().compareTo(damp.moisture()) <= 0) {
            return Optional.of(new Home(dry, damp));
        }
        fields.reading()
                .problem(
                        fields.where(),
                        "is drier when damp than when dry: wood comes to %s in the dry season and %s in the damp one"
                                .formatted(
                                        dry.moisture().text(), damp.moisture().text()),
                        "check both seasons, or change them over");
        return Optional.empty();
    }

    private static Optional<Season> air(Fields fields, Key<Group> key, Key<Number> temperature, Key<Number> humidity) {
        return fields.object(key, MEND).flatMap(air -> {
            Optional<Double> celsius = air.number(temperature.name(), temperature.type(), CELSIUS_MEND);
            Optional<Double> pct = air.number(humidity.name(), humidity.type(), HUMID_MEND);
            air.refuseUnknown(key.type());
            return celsius.flatMap(warm -> pct.map(damp -> Season.in(new Equilibrium(Air.ofCelsius(warm, damp)))));
        });
    }

    private static Optional<Season> moisture(Fields fields, Key<Number> key) {
        return fields.number(key.name(), key.type(), PCT_MEND).map(pct -> Season.of(Moisture.ofPct(pct)));
    }
}
