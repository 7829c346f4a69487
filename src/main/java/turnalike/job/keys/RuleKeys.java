package turnalike.job.keys;

import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Rows;
import turnalike.job.fields.KeyType.Size;
import turnalike.pattern.CurveRules;
import turnalike.pattern.ShapeRules;
import turnalike.turning.ShopRules;
import turnalike.turning.SlenderRules;
import turnalike.units.PlainNumber;

/** The rules of thumb of the lathe that a job may set: {@code turning.rules}. Their usual values stand in {@link ShopRules}. */
public final class RuleKeys {
    private static final ShopRules USUAL = ShopRules.USUAL;

    /** No wood lathe turns slower or faster; only to catch a slip. */
    static final double SLOWEST_RPM = 1;

    static final double FASTEST_RPM = 20_000;

    /** The fastest speed of one row of the chart, in rpm; two thirds of it is where its range begins. */
    public static final Key<Number> CHART_RPM =
            Key.needed("rpm", KeyType.number(SLOWEST_RPM, FASTEST_RPM), "the fastest for round work of that diameter");

    /** The diameter of that row; no two rows share one. */
    public static final Key<Size> CHART_DIAMETER =
            Key.needed("diameter", KeyType.aboveZero(), "of the work; between two the speed goes by a power of it");

    /** The turner's own chart of speeds, {@link ShopRules#chart}. */
    public static final Key<Rows> CHART = Key.may(
                    "chart",
                    new Rows(CHART_RPM, CHART_DIAMETER, 50),
                    "your own chart of speeds; a range begins at two thirds of its fastest",
                    "3,500 rpm under 1/2 in, 2,800 at 1 in, 1,800 at 2 in and beyond by diameter × speed")
            .asked(KeySection.TURNING, "Your chart of speeds", "a line each: rpm ; diameter");

    /** The fastest of any speed offered, in rpm, {@link ShopRules#ceiling}. */
    public static final Key<Number> CEILING = rule(
                    "ceiling_rpm",
                    KeyType.number(SLOWEST_RPM, FASTEST_RPM, USUAL.ceiling().rpm()),
                    "no faster than this, whatever the diameter")
            .asked(KeySection.TURNING, "You never go above, rpm", "left empty: 3500");

    /** The fastest for a blank seven feet long, in rpm, {@link ShopRules#longWork}. */
    public static final Key<Number> LONG = rule(
            "long_rpm",
            KeyType.number(SLOWEST_RPM, FASTEST_RPM, USUAL.longWork().rpm()),
            "no faster than this for a blank 7 ft (2133.6 mm) long, others in inverse proportion to their length");

    /** The share of the chart's speed while out of round, per hundred, {@link ShopRules#outOfRound}. */
    public static final Key<Number> OUT_OF_ROUND = rule(
            "out_of_round_pct",
            KeyType.number(1, 100, 100 * USUAL.outOfRound()),
            "of the chart's speed, while out of round or with square parts left");

    /** The share of a natural speed that is not passed, per hundred, {@link ShopRules#whipShare}. */
    public static final Key<Number> WHIP =
            rule("whip_pct", KeyType.number(1, 100, 100 * USUAL.whipShare()), "of a natural speed that is not passed");

    /** From how many diameters on a steady rest is spoken of, {@link ShopRules#steadyFrom}. */
    public static final Key<Number> STEADY = rule(
            "steady_diameters",
            KeyType.number(0, 1000, USUAL.steadyFrom()),
            "a piece shorter than so many of its greatest diameters wants no steady rest");

    /** The thinnest blank that a roughing gouge is for, {@link ShopRules#roughingGouge}. */
    public static final Key<Size> ROUGHING_GOUGE = Key.may(
            "roughing_gouge",
            KeyType.aboveZero(USUAL.roughingGouge()),
            "a thinner blank is roughed with a spindle gouge",
            "20 mm");

    /** The least diameter that is parted down to, {@link ShopRules#pencil}. */
    public static final Key<Size> PENCIL =
            Key.may("pencil", KeyType.aboveZero(USUAL.pencil()), "nothing thinner is parted down to", "7 mm");

    /** The width of a sizing cut, {@link ShopRules#parting}. */
    public static final Key<Size> PARTING =
            Key.may("parting", KeyType.aboveZero(USUAL.parting()), "how wide the tool for sizing cuts is", "3 mm");

    /** What counts as thin for its distance from a support, per hundred, {@link ShapeRules#thin}. */
    public static final Key<Number> THIN = rule(
            "thin_pct",
            KeyType.number(1, 100, 100 * USUAL.shapes().thin()),
            "a part thinner than this share of its distance to the nearer support is warned of and cut last");

    /** How many diameters stand out of a hold without a tailstock, {@link ShopRules#overhang}. */
    public static final Key<Number> OVERHANG = rule(
            "overhang_diameters",
            KeyType.number(0, 1000, USUAL.overhang()),
            "without a tailstock it stands out of its hold by no more of its greatest diameters");

    /** How far off its middle a blank runs, {@link ShopRules#centring}. */
    public static final Key<Size> CENTRING = Key.may(
            "centring",
            KeyType.size(USUAL.centring()),
            "how far off its middle a blank runs; twice of it is lost of the largest round",
            "0.396875 mm, 1/64 in");

    /** What the wood's strength is divided by. */
    public static final Key<Number> STRENGTH = rule(
            "strength_margin",
            KeyType.number(1, 100, USUAL.strengthMargin()),
            "the plain cut bends the wood with no more than its strength over this; a dig is several times as hard");

    /** The share of what bows a piece that a tailstock presses with, per hundred, {@link ShopRules#thrustShare}. */
    public static final Key<Number> THRUST = rule(
            "thrust_pct",
            KeyType.number(1, 100, 100 * USUAL.thrustShare()),
            "of what bows the piece, pressed by a tailstock that turning.tailstock_force_n says nothing of");

    /** And no more than so many newtons, {@link ShopRules#thrustMost}. */
    public static final Key<Number> THRUST_MOST = rule(
            "thrust_n", KeyType.number(1, 100_000, USUAL.thrustMost().newtons()), "and no more than so many newtons");

    /** The least share of the heaviest part inboard that a neck may have unwarned, per hundred, {@link ShapeRules#heavyPart}. */
    public static final Key<Number> HEAVY_PART = rule(
            "heavy_part_pct",
            KeyType.number(1, 100, 100 * USUAL.shapes().heavyPart()),
            "a neck below this share of the thickest part inboard is warned of");

    /** How deep a cove may be for its width, per hundred, {@link ShapeRules#coveDepth}. */
    public static final Key<Number> COVE = rule(
            "cove_depth_pct",
            KeyType.number(1, 1000, 100 * USUAL.shapes().coveDepth()),
            "of its width; a deeper cove is warned of");

    /** How deep a vee may be for its width, per hundred, {@link ShapeRules#veeDepth}. */
    public static final Key<Number> VEE = rule(
            "vee_depth_pct",
            KeyType.number(1, 1000, 100 * USUAL.shapes().veeDepth()),
            "of its width; a deeper vee is warned of");

    /** How high a bead may stand for its width, per hundred, {@link ShapeRules#beadRise}. */
    public static final Key<Number> BEAD = rule(
            "bead_rise_pct",
            KeyType.number(1, 1000, 100 * USUAL.shapes().beadRise()),
            "of its width; a bead that stands higher is warned of");

    /** How narrow a groove may be, {@link ShapeRules#narrowestGroove}. */
    public static final Key<Size> GROOVE = Key.may(
            "groove_width",
            KeyType.aboveZero(USUAL.shapes().narrowestGroove()),
            "a narrower groove is warned of",
            "1.5 mm");

    /** How loose a tenon may be, {@link ShapeRules#tenonPlay}. */
    public static final Key<Size> PLAY = Key.may(
            "tenon_play",
            KeyType.size(USUAL.shapes().tenonPlay()),
            "a tenon thinner than its hole by more is warned of",
            "0.5 mm");

    /** How thin a slender stretch is, per hundred of the thickest turned part, {@link SlenderRules#thin}. */
    public static final Key<Number> SLENDER = rule(
            "slender_pct",
            KeyType.number(1, 100, 100 * USUAL.slender().thin()),
            "of the thickest turned part; what is thinner is cut after the rest");

    /** How thin a stretch that gives much of the limberness may be, per hundred, {@link SlenderRules#notThick}. */
    public static final Key<Number> NOT_THICK = rule(
            "not_thick_pct",
            KeyType.number(1, 100, 100 * USUAL.slender().notThick()),
            "of the thickest turned part; what is thinner and makes the piece limber is cut after the rest too");

    /** How much of the limberness that is, per hundred, {@link SlenderRules#limber}. */
    public static final Key<Number> LIMBER = rule(
            "limber_pct",
            KeyType.number(1, 100, 100 * USUAL.slender().limber()),
            "of all the limberness that cutting adds; so much makes the piece limber");

    /** How long a level peak is marked at both ends, {@link CurveRules#longLevel}. */
    public static final Key<Size> LONG_LEVEL = Key.may(
            "long_level",
            KeyType.size(USUAL.curves().longLevel()),
            "a level peak or hollow of a curve is marked at both ends where it is longer, else in its middle",
            "3 mm");

    /** How steep a step of a curve is, {@link CurveRules#stepSlope}. */
    public static final Key<Number> STEP_SLOPE = rule(
            "step_slope",
            KeyType.number(0.1, 100, USUAL.curves().stepSlope()),
            "up for one along, of a curve through points; what is steeper is a step");

    /** How near two pencil lines are one, {@link CurveRules#line}. */
    public static final Key<Size> LINE = Key.may(
            "line", KeyType.size(USUAL.curves().line()), "two lines on a curve nearer than this are one", "0.5 mm");
    /** How snug a tenon may be, {@link ShapeRules#tenonSnug}. */
    public static final Key<Size> SNUG = Key.may(
            "tenon_snug",
            KeyType.aboveZero(USUAL.shapes().tenonSnug()),
            "a tenon thicker than its hole by so much is asked about",
            "0.3 mm");

    /** The rules of thumb as one object. */
    public static final Key<Group> RULES = Key.may(
            "rules",
            new Group(List.of(
                    CHART,
                    CEILING,
                    LONG,
                    OUT_OF_ROUND,
                    WHIP,
                    STEADY,
                    ROUGHING_GOUGE,
                    PENCIL,
                    PARTING,
                    OVERHANG,
                    CENTRING,
                    STRENGTH,
                    THRUST,
                    THRUST_MOST,
                    THIN,
                    HEAVY_PART,
                    COVE,
                    VEE,
                    BEAD,
                    GROOVE,
                    PLAY,
                    SLENDER,
                    NOT_THICK,
                    LIMBER,
                    LONG_LEVEL,
                    STEP_SLOPE,
                    LINE,
                    SNUG)),
            "rules of thumb that the advice goes by (common practice, no source, each)",
            "each its own");

    private RuleKeys() {}

    /** A number that a job may set; what counts when it is left out is told as it stands in {@link ShopRules}. */
    private static Key<Number> rule(String name, Number type, String meaning) {
        double usual = type.otherwise().orElseThrow();
        return Key.may(name, type, meaning, PlainNumber.exact(usual));
    }
}
