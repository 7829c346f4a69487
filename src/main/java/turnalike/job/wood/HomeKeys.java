package turnalike.job.wood;

import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Number;

/** Where the pieces will live: the air of its two seasons, or the moisture that wood comes to there. */
public final class HomeKeys {
    /** In degrees Celsius: what Wood Handbook Table 4-2 was seen to cover, 30 to 130 °F within a tenth (VERIFIED, S10). */
    static final Number CELSIUS = KeyType.number(-1, 54);

    /** In percent, as a hygrometer shows it: the rows of the same table. */
    static final Number HUMID = KeyType.number(5, 95);

    /** In percent of dry wood: no wetter than fibre saturation, where movement ends (Wood Handbook, chapters 4 and 13; VERIFIED, S3, S9). */
    static final Number PCT = KeyType.number(0, 30);

    static final Key<Number> DRY_TEMPERATURE = temperature("dry");
    static final Key<Number> DRY_HUMIDITY = humidity("dry");
    static final Key<Number> DAMP_TEMPERATURE = temperature("damp");
    static final Key<Number> DAMP_HUMIDITY = humidity("damp");

    /** The air of the driest weeks. */
    static final Key<Group> DRY = Key.may(
            "dry",
            new Group(List.of(DRY_TEMPERATURE, DRY_HUMIDITY)),
            "the air of the driest weeks: a heated room in winter",
            "`dry_pct` must stand in its place");

    /** The air of the dampest weeks. */
    static final Key<Group> DAMP = Key.may(
            "damp",
            new Group(List.of(DAMP_TEMPERATURE, DAMP_HUMIDITY)),
            "the air of the dampest weeks",
            "`damp_pct` must stand in its place");

    /** The moisture that wood comes to in the driest weeks. */
    static final Key<Number> DRY_PCT = Key.may(
                    "dry_pct",
                    PCT,
                    "in place of the air: the moisture that wood comes to when it is driest",
                    "by the air")
            .asked(KeySection.HOME, "Or wood at its driest, %", "in place of the air");

    /** The moisture that wood comes to in the dampest weeks. */
    static final Key<Number> DAMP_PCT = Key.may(
                    "damp_pct",
                    PCT,
                    "in place of the air: the moisture that wood comes to when it is dampest",
                    "by the air")
            .asked(KeySection.HOME, "Or wood at its dampest, %", "in place of the air");

    /** Both seasons, one way or the other. */
    public static final Group GROUP = new Group(
            List.of(DRY, DAMP, DRY_PCT, DAMP_PCT), List.of(List.of("dry", "damp"), List.of("dry_pct", "damp_pct")));

    private HomeKeys() {}

    private static Key<Number> temperature(String season) {
        return Key.needed("temperature_c", CELSIUS, "of the air, in degrees Celsius")
                .asked(KeySection.HOME, "Air when " + season + ", °C", "");
    }

    private static Key<Number> humidity(String season) {
        return Key.needed("humidity_pct", HUMID, "relative humidity of the air")
                .asked(KeySection.HOME, "Humidity when " + season + ", %", "as a hygrometer shows it");
    }
}
