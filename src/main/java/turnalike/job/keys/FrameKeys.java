package turnalike.job.keys;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import turnalike.job.keys.KeyType.Group;
import turnalike.job.keys.KeyType.Kinds;
import turnalike.job.keys.KeyType.ListOf;
import turnalike.job.keys.KeyType.Number;
import turnalike.job.keys.KeyType.Rows;
import turnalike.job.keys.KeyType.Size;
import turnalike.job.keys.KeyType.Whole;
import turnalike.job.keys.KeyType.Word;

/** The keys of each kind of frame. */
public final class FrameKeys {
    /** The word of a wheel. */
    public static final String WHEEL = "wheel";

    /** The word of a row. */
    public static final String ROW = "row";

    /** The word of legs. */
    public static final String LEGS = "legs";

    /** The word of the datum end. */
    public static final String START = "start";

    private static final int MOST_PLACES = 400;
    private static final String PLACES_HINT = "of a wheel, a row, or one group of legs";
    private static final Word ENDS = new Word(List.of(START, "end"));

    public static final Key<Word> KIND = Key.needed(
                    "kind", new Word(List.of(WHEEL, ROW, LEGS)), "of frame; it says which other keys there are")
            .asked(KeySection.FRAME, "Goes into", "left empty: no frame");

    /** Round a hub. */
    public static final class WheelKeys {
        public static final Key<Whole> PLACES = places(2, MOST_PLACES, "how many spokes");

        public static final Key<Size> HUB_RADIUS = Key.needed(
                        "hub_radius", JobKeys.size(), "from the axle to the shoulder of the hub tenon")
                .asked(KeySection.FRAME, "Hub radius", "a wheel's; to the shoulder");

        public static final Key<Word> TENON_AT = Key.may("tenon_at", ENDS, "the end that enters the hub", "start")
                .asked(KeySection.FRAME, "End in the hub", "");

        public static final Key<Size> COUNTERWEIGHT_RADIUS = Key.may(
                        "counterweight_radius",
                        JobKeys.aboveZero(),
                        "where a counterweight could sit, or wood could come off, from the axle",
                        "the job's own, if any")
                .asked(KeySection.FRAME, "Counterweight radius", "");

        public static final Key<Number> RPM = Key.may(
                        "rpm", JobKeys.number(0.1, 100_000), "how fast it will turn; for information only", "not told")
                .asked(KeySection.FRAME, "Will turn at, rpm", "for information");

        public static final Key<ListOf<Size>> SEAT_DEPTHS = Key.may(
                        "seat_depths",
                        new ListOf<>(JobKeys.size(), 0, MOST_PLACES),
                        "one length for each place: how much deeper than meant its seat lies, 0 for the shallowest",
                        "all alike")
                .asked(KeySection.BARE_WHEEL, "Seats too deep by", "one for each place, parted by semicolons");

        public static final Key<Number> GIVEN_G_MM = Key.needed("g_mm", JobKeys.number(0, 1e12), "how strong");

        public static final Key<Number> GIVEN_AT = Key.needed("at_deg", JobKeys.number(-360, 720), "toward where");

        public static final Key<Rows> GIVEN_MOMENTS = Key.may(
                        "given_moments",
                        new Rows(GIVEN_G_MM, GIVEN_AT, MOST_PLACES),
                        "what the hub, the rim or its joint pull by themselves",
                        "nothing")
                .asked(KeySection.BARE_WHEEL, "Bare wheel pulls, g·mm ; at degrees", "a line each: 1200 ; 90");

        public static final Key<Number> PERIOD = Key.needed(
                        "period_s", JobKeys.number(0.05, 3600), "one swing there and back: time ten")
                .asked(KeySection.BARE_WHEEL, "Rocking: there and back in, s", "time ten swings");

        public static final Key<Number> RESTS_AT = Key.needed(
                        "rests_at_deg", JobKeys.number(-360, 720), "which direction of the wheel settles lowest")
                .asked(KeySection.BARE_WHEEL, "Rocking: it rests at, degrees", "");

        public static final Key<Number> AMPLITUDE = Key.may(
                        "amplitude_deg", JobKeys.number(0, 60, 0), "how far it was pushed aside", "0")
                .asked(KeySection.BARE_WHEEL, "Rocking: pushed by, degrees", "left empty: 0");

        public static final Key<Number> RIM_MASS = Key.may(
                        "rim_mass_g",
                        JobKeys.number(0.1, 1e7),
                        "of the rim, taken as a thin ring of `rim_radius`",
                        "`inertia_g_mm2` must stand in their place")
                .asked(KeySection.BARE_WHEEL, "Rocking: the rim weighs, g", "");

        public static final Key<Size> RIM_RADIUS = Key.may(
                        "rim_radius", JobKeys.aboveZero(), "of that ring", "`inertia_g_mm2` must stand in their place")
                .asked(KeySection.BARE_WHEEL, "Rocking: the rim's radius", "");

        public static final Key<Number> INERTIA = Key.may(
                        "inertia_g_mm2",
                        JobKeys.number(1, 1e15),
                        "of the bare wheel about its axle, in place of the rim",
                        "as the ring's, m·r²")
                .asked(KeySection.BARE_WHEEL, "Rocking: or its inertia, g·mm²", "in place of the rim");

        public static final Key<Group> ROCKING = Key.may(
                "rocking",
                new Group(List.of(PERIOD, RESTS_AT, AMPLITUDE, RIM_MASS, RIM_RADIUS, INERTIA)),
                "the same, found by letting the bare wheel rock; added to the given ones",
                "nothing");

        private WheelKeys() {}
    }

    /** Side by side along a rail. */
    public static final class RowKeys {
        public static final Key<Whole> PLACES = places(1, MOST_PLACES, "how many stand in it");

        public static final Key<Word> SEEN_FROM = Key.may(
                        "seen_from", ENDS, "the end that people come from: pieces there are looked at most", "start")
                .asked(KeySection.FRAME, "Seen from", "left empty: the start");

        private RowKeys() {}
    }

    /** Together under a table, or several. */
    public static final class LegsKeys {
        public static final Key<Whole> PLACES = places(2, 8, "how many make one group");

        public static final Key<Whole> GROUPS = Key.may(
                        "groups",
                        new Whole(1, MOST_PLACES, OptionalInt.empty()),
                        "how many groups are wanted",
                        "as many as the pieces allow")
                .asked(KeySection.FRAME, "Groups of legs", "");

        private LegsKeys() {}
    }

    static final Kinds KINDS = new Kinds(KIND, kinds());

    private FrameKeys() {}

    /** All keys of that kind, {@code kind} too. */
    public static Group of(String kind) {
        return KINDS.with(kind);
    }

    private static Key<Whole> places(int least, int most, String meaning) {
        return Key.needed("places", new Whole(least, most, OptionalInt.empty()), meaning)
                .asked(KeySection.FRAME, "Places", PLACES_HINT);
    }

    private static Map<String, Group> kinds() {
        Map<String, Group> out = new LinkedHashMap<>();
        out.put(
                WHEEL,
                new Group(List.of(
                        WheelKeys.PLACES,
                        WheelKeys.HUB_RADIUS,
                        WheelKeys.TENON_AT,
                        WheelKeys.COUNTERWEIGHT_RADIUS,
                        WheelKeys.RPM,
                        WheelKeys.SEAT_DEPTHS,
                        WheelKeys.GIVEN_MOMENTS,
                        WheelKeys.ROCKING)));
        out.put(ROW, new Group(List.of(RowKeys.PLACES, RowKeys.SEEN_FROM)));
        out.put(LEGS, new Group(List.of(LegsKeys.PLACES, LegsKeys.GROUPS)));
        return out;
    }
}
