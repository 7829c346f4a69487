package turnalike.job.keys;

import java.util.List;
import java.util.OptionalInt;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Kinds;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Rows;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Text;
import turnalike.job.fields.KeyType.Whole;
import turnalike.job.fields.KeyType.Word;
import turnalike.job.set.FrameKind;
import turnalike.job.wood.HomeKeys;
import turnalike.job.wood.WoodKeys;
import turnalike.stock.Spares;

/**
 * The keys of the job file itself, and from {@link #ROOT} on all outside its members, each described once. Within a section of the form the
 * fields stand in that order. Bounds whose reason is not told only catch slips.
 */
public final class JobKeys {
    /** The first thing asked: a file of another kind is not picked apart. */
    public static final Key<Word> FORMAT = Key.needed("format", new Word(List.of("turnalike-job")), "what the file is");

    /** Of the format; 1 is the only one there is. */
    public static final Key<Whole> VERSION =
            Key.needed("version", new Whole(1, 1, OptionalInt.empty()), "of the format");

    /** The turner's own name for the job. */
    public static final Key<Text> TITLE =
            Key.may("title", KeyType.text(), "the turner's own", "\"Untitled\"").asked(KeySection.ORDER, "Title", "");

    /** In which bare numbers are read and everything is printed: {@code in} or {@code mm}. */
    public static final Key<Word> UNITS =
            Key.needed("units", new Word(List.of("in", "mm")), "the units of bare numbers, and of what is printed");

    /** The master spindle that every piece copies. */
    public static final Key<Group> PATTERN = Key.needed("pattern", PatternKeys.GROUP, "the master spindle");

    /** The lathe and the hand that turns; left out, any lathe and a light cut. */
    public static final Key<Group> TURNING =
            Key.may("turning", TurningKeys.GROUP, "the lathe and the hand that turns", "a light cut, any lathe");

    /** What it is turned from: a species or a density, never both. */
    public static final Key<Group> WOOD = Key.needed("wood", WoodKeys.GROUP, "what it is turned from");

    /** Good pieces wanted; left out, the frame's places, and one without a frame. */
    public static final Key<Whole> COUNT = Key.may(
                    "count",
                    new Whole(1, 10_000, OptionalInt.empty()),
                    "good pieces wanted",
                    "the frame's places, else 1")
            .asked(KeySection.ORDER, "Good pieces wanted", "");

    /** Blanks that come to nothing, per hundred. */
    public static final Key<Number> LOSS = Key.may(
                    "loss_pct",
                    KeyType.number(0, 90, 100 * Spares.USUAL_LOSS_RATE),
                    "blanks that come to nothing, per hundred",
                    "5")
            .asked(KeySection.ORDER, "Blanks lost, %", "left empty: the usual share");

    /** How near is near enough; each has a usual value. */
    public static final Key<Group> TOLERANCES =
            Key.may("tolerances", ToleranceKeys.GROUP, "what may differ", "each its own");

    /** What is left on for the next step of the work; each has a usual value. */
    public static final Key<Group> ALLOWANCES =
            Key.may("allowances", AllowanceKeys.GROUP, "what is left on for the next step", "each its own");

    /** What sawing blanks out of boards takes; each has a usual value. */
    public static final Key<Group> SAWING =
            Key.may("sawing", SawingKeys.GROUP, "what sawing blanks out of boards takes", "each its own");

    /** The turner's own choices for laying out; left out, dividers as they commonly open, and every mark that they reach. */
    public static final Key<Group> SETTINGS =
            Key.may("settings", SettingKeys.GROUP, "your choice of settings", "none; lines");

    /** What the turner calls a check place; its number where it has no name. */
    public static final Key<Text> CHECK_NAME = Key.may("name", KeyType.text(), "of the place", "its number");

    /** A check place's distance from the start end, within the pattern. */
    public static final Key<Size> CHECK_AT = Key.needed("at", KeyType.size(), "from the start end");

    /** Where a caliper is laid on every piece, in the order of the columns {@code d1}, {@code d2}, … */
    public static final Key<Rows> CHECKS = Key.may(
                    "checks",
                    new Rows(CHECK_NAME, CHECK_AT, 99),
                    "where a caliper is laid on every piece; `d1` of a pieces file is the first",
                    "none")
            .asked(KeySection.ALIKE, "Where a caliper is laid", "a line each: name ; place from the head end");

    /** How much each kind of measure counts to the eye; each has a usual value. */
    public static final Key<Group> LIKENESS =
            Key.may("likeness", LikenessKeys.GROUP, "how much measures count to the eye", "each its own");

    /** From the axle to where a counterweight could sit, for a wheel that does not say its own. */
    public static final Key<Size> COUNTERWEIGHT_RADIUS = Key.may(
            "counterweight_radius",
            KeyType.aboveZero(),
            "as in the frame, for a wheel that has none of its own",
            "none");

    /** Where the pieces will live; left out, nothing is said of the year. */
    public static final Key<Group> HOME = Key.may(
            "home",
            HomeKeys.GROUP,
            "where the pieces will live: how their joints stand through the year",
            "nothing is said of the year");

    /** What the set goes into; left out, nothing is placed. */
    public static final Key<Kinds> FRAME =
            Key.may("frame", FrameKind.KINDS, "what the set goes into, see below", "no placing");

    /** Which piece stands where by the turner's own choice. */
    public static final Key<Group> BY_HAND =
            Key.may("by_hand", ByHandKeys.GROUP, "which piece stands where by your own choice", "all is searched");

    /** The whole job file. */
    public static final Group ROOT = new Group(List.of(
            FORMAT,
            VERSION,
            TITLE,
            UNITS,
            PATTERN,
            TURNING,
            WOOD,
            COUNT,
            LOSS,
            TOLERANCES,
            ALLOWANCES,
            SAWING,
            SETTINGS,
            CHECKS,
            LIKENESS,
            COUNTERWEIGHT_RADIUS,
            HOME,
            ShopKeys.BOARDS,
            CutKeys.CUT,
            ShopKeys.BLANKS,
            ShopKeys.TIMES,
            ShopKeys.PRICE,
            FRAME,
            BY_HAND));

    private JobKeys() {}
}
