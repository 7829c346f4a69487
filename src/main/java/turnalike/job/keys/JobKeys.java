package turnalike.job.keys;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.job.Tolerances;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Kinds;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Mark;
import turnalike.job.fields.KeyType.Members;
import turnalike.job.fields.KeyType.Named;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Rows;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Text;
import turnalike.job.fields.KeyType.Whole;
import turnalike.job.fields.KeyType.Word;
import turnalike.job.set.FrameKind;
import turnalike.job.wood.HomeKeys;
import turnalike.job.wood.WoodKeys;
import turnalike.pieces.LikenessWeights;
import turnalike.stock.Spares;
import turnalike.turning.Held;
import turnalike.turning.Lathe;
import turnalike.units.Length;

/**
 * Every key of the job file outside its members, described once. Within a section of the form the fields stand in the order of
 * {@link #ROOT}. Bounds whose reason is not told only catch slips.
 */
public final class JobKeys {
    private static final String PARTED = "parted by semicolons";

    /** The first thing asked: a file of another kind is not picked apart. */
    public static final Key<Word> FORMAT = Key.needed("format", new Word(List.of("turnalike-job")), "what the file is");

    /** Of the format; 1 is the only one there is. */
    public static final Key<Whole> VERSION =
            Key.needed("version", new Whole(1, 1, OptionalInt.empty()), "of the format");

    /** The turner's own name for the job. */
    public static final Key<Text> TITLE =
            Key.may("title", text(), "the turner's own", "\"Untitled\"").asked(KeySection.ORDER, "Title", "");

    /** In which bare numbers are read and everything is printed: {@code in} or {@code mm}. */
    public static final Key<Word> UNITS =
            Key.needed("units", new Word(List.of("in", "mm")), "the units of bare numbers, and of what is printed");

    /** The spindle. */
    public static final class PatternKeys {
        /** The spindle's own name; the job's title where there is none. */
        public static final Key<Text> NAME = Key.may("name", text(), "the spindle's own", "the title")
                .asked(KeySection.ORDER, "Pattern", "left empty: the title");

        /** Of the milled blank as it goes on the lathe. */
        public static final Key<Word> SECTION = Key.needed(
                        "section", new Word(List.of("square", "round")), "of the milled blank as it goes on the lathe")
                .asked(KeySection.STOCK, "Section", "");

        /** A square blank's side, a round one's diameter. */
        public static final Key<Size> SIZE = Key.needed(
                        "size", aboveZero(), "across the blank's flats, or its diameter")
                .asked(KeySection.STOCK, "Across", "");

        /** Of the blank along the grain; the run may be shorter. */
        public static final Key<Size> LENGTH =
                Key.needed("length", aboveZero(), "of the blank").asked(KeySection.STOCK, "Length", "");

        /** The blank that the spindle is turned from. */
        public static final Key<Group> STOCK =
                Key.needed("stock", new Group(List.of(SECTION, SIZE, LENGTH)), "what it is turned from");

        /** The run from the start end. Above 200 a slip or a machine wrote the file: nobody turns it by hand. */
        public static final Key<Members> MEMBERS =
                Key.needed("members", new Members(200), "the run from the start end, see below");

        private PatternKeys() {}
    }

    /** The master spindle that every piece copies. */
    public static final Key<Group> PATTERN = Key.needed(
            "pattern",
            new Group(List.of(PatternKeys.NAME, PatternKeys.STOCK, PatternKeys.MEMBERS)),
            "the master spindle");

    /** What the job says of the lathe and the hand that turns. */
    public static final class TurningKeys {
        /** The lathe's steps in rpm; left out, any speed can be set. */
        public static final Key<ListOf<Number>> SPEEDS = Key.may(
                        "speeds",
                        new ListOf<>(number(RuleKeys.SLOWEST_RPM, RuleKeys.FASTEST_RPM), 1, 100),
                        "the steps of your lathe, in rpm; those within the range are named",
                        "any speed")
                .asked(KeySection.TURNING, "Your lathe's speeds, rpm", PARTED + ": 500; 900; 1500");

        /** The fastest the lathe is to run, in rpm. */
        public static final Key<Number> MAX_RPM = Key.may(
                        "max_rpm",
                        number(RuleKeys.SLOWEST_RPM, RuleKeys.FASTEST_RPM),
                        "no faster than this; a step above it is an error",
                        "the fastest step")
                .asked(KeySection.TURNING, "Lathe's fastest, rpm", "left empty: any");

        /** How hard the tool pushes the piece aside, in newtons; none is pushed harder than two hundred kilograms' weight. */
        public static final Key<Number> FORCE = Key.may(
                        "force_n",
                        number(0.001, 2000, Lathe.USUAL_CUTTING.newtons()),
                        "how hard the tool pushes the piece aside, for its sag",
                        "20 N, a light finishing cut (common practice, no source)")
                .asked(KeySection.TURNING, "Tool pushes with, N", "left empty: 20, a light cut");

        /** How hard the tailstock is wound up, in newtons, held against what bows the piece out; left out, that is not looked at. */
        public static final Key<Number> TAILSTOCK_FORCE = Key.may(
                        "tailstock_force_n",
                        number(0.001, 20_000),
                        "how hard the tailstock is wound up, held against what bows the piece out",
                        "not looked at")
                .asked(KeySection.TURNING, "Tailstock presses with, N", "");

        /** How the piece is held, {@link Held.By}. */
        public static final Key<Word> HELD = Key.may(
                        "held",
                        new Word(Arrays.stream(Held.By.values())
                                .map(Held.By::word)
                                .toList()),
                        "how the piece is held; by one end it is turned from the other end back",
                        "centres")
                .asked(KeySection.TURNING, "Held", "left empty: centres");

        /** Which end is at the headstock, {@link Held.At}. */
        public static final Key<Word> HELD_AT = Key.may(
                        "held_at",
                        new Word(Arrays.stream(Held.At.values())
                                .map(Held.At::word)
                                .toList()),
                        "which of its ends stands at the headstock",
                        "start")
                .asked(KeySection.TURNING, "Held at its", "left empty: start");

        /** Whether the tailstock is up; between centres it always is. */
        public static final Key<Word> TAILSTOCK = Key.may(
                        "tailstock",
                        new Word(List.of("up", "away")),
                        "whether the tailstock bears the other end until the last cuts",
                        "up")
                .asked(KeySection.TURNING, "Tailstock", "left empty: up");

        private TurningKeys() {}
    }

    /** The lathe and the hand that turns; left out, any lathe and a light cut. */
    public static final Key<Group> TURNING = Key.may(
            "turning",
            new Group(List.of(
                    TurningKeys.SPEEDS,
                    TurningKeys.MAX_RPM,
                    TurningKeys.FORCE,
                    TurningKeys.TAILSTOCK_FORCE,
                    TurningKeys.HELD,
                    TurningKeys.HELD_AT,
                    TurningKeys.TAILSTOCK,
                    RuleKeys.RULES)),
            "the lathe and the hand that turns",
            "a light cut, any lathe");

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
                    number(0, 90, 100 * Spares.USUAL_LOSS_RATE),
                    "blanks that come to nothing, per hundred",
                    "5")
            .asked(KeySection.ORDER, "Blanks lost, %", "left empty: the usual share");

    /** What may differ. */
    public static final class ToleranceKeys {
        /** How far one pencil line may be off, each time it is stepped. */
        public static final Key<Size> MARK = Key.may(
                        "mark",
                        aboveZero(Tolerances.USUAL.mark()),
                        "how far one pencil line may be off, each time it is stepped",
                        "0.25 mm")
                .asked(KeySection.TOLERANCES, "A mark, each step", "left empty: 0.25 mm");

        /** How far a finished diameter may be off, either way. */
        public static final Key<Size> DIAMETER = Key.may(
                        "diameter",
                        aboveZero(Tolerances.USUAL.diameter()),
                        "how far a finished diameter may be off",
                        "0.4 mm")
                .asked(KeySection.TOLERANCES, "A diameter", "left empty: 0.4 mm");

        /** A set's heaviest less its lightest, per hundred of their mean; 0 asks for equal masses. */
        public static final Key<Number> MASS = Key.may(
                        "mass_pct",
                        number(0, 100, Tolerances.USUAL.massPct()),
                        "a set's heaviest less its lightest, per hundred of their mean",
                        "2")
                .asked(KeySection.TOLERANCES, "Weights of a set, %", "left empty: 2");

        /** The smallest step the scale shows, in grams; 0 for one that shows every step. */
        public static final Key<Number> SCALE = Key.may(
                        "scale_g",
                        number(0, 1000, Tolerances.USUAL.scale().grams()),
                        "the smallest step the scale shows",
                        "0.1")
                .asked(KeySection.TOLERANCES, "The scale shows, g", "left empty: 0.1");

        /** The greatest worst-case error a mark may collect over several steps. */
        public static final Key<Size> MARK_LIMIT = Key.may(
                        "mark_limit",
                        aboveZero(),
                        "the greatest worst-case error a mark may collect, what the openings miss included",
                        "no limit: at most three steps in a row")
                .asked(KeySection.TOLERANCES, "What a mark may collect", "left empty: three steps");

        /** How far a seat's depth may be off from what is told of it, either way. */
        public static final Key<Size> SEAT = Key.may(
                        "seat",
                        size(Tolerances.USUAL.seat()),
                        "how far a seat's depth may be off from what is told of it",
                        "0.25 mm")
                .asked(KeySection.TOLERANCES, "A seat's depth", "a wheel's; left empty: 0.25 mm");

        /** How far the direction of a seat's hole may be off round the axle, either way, in degrees. */
        public static final Key<Number> HOLE_ANGLE = Key.may(
                        "hole_angle_deg",
                        number(0, 10, Tolerances.USUAL.holeAngle().degrees()),
                        "how far a seat's hole may point beside its place, round the axle",
                        "0.25")
                .asked(KeySection.TOLERANCES, "A hole's direction, degrees", "a wheel's; left empty: 0.25");

        private ToleranceKeys() {}
    }

    /** How near is near enough; each has a usual value. */
    public static final Key<Group> TOLERANCES = Key.may(
            "tolerances",
            new Group(List.of(
                    ToleranceKeys.MARK,
                    ToleranceKeys.DIAMETER,
                    ToleranceKeys.MASS,
                    ToleranceKeys.SCALE,
                    ToleranceKeys.MARK_LIMIT,
                    ToleranceKeys.SEAT,
                    ToleranceKeys.HOLE_ANGLE)),
            "what may differ",
            "each its own");

    /** What is left on for the next step. */
    public static final class AllowanceKeys {
        /** How much over the finished diameter a sizing cut stops. */
        public static final Key<Size> SIZING = Key.may(
                        "sizing", size(Length.ZERO), "over the finished diameter when sized", "0")
                .asked(KeySection.ALLOWANCES, "Sized over by", "left empty: none");

        /** The part of the sizing allowance that sanding takes. */
        public static final Key<Size> SANDING = Key.may(
                        "sanding", size(Length.ZERO), "the part of `sizing` that sanding takes", "0")
                .asked(KeySection.ALLOWANCES, "Sanding takes", "left empty: none");

        /** Taken off each face of the rough blank. */
        public static final Key<Size> MILLING = Key.may(
                        "milling", size(), "taken off each face of the rough blank", "1/16 in or 1.5 mm")
                .asked(KeySection.ALLOWANCES, "Milling, each face", "left empty: the usual");

        /** Cut off each end of the rough blank. */
        public static final Key<Size> TRIMMING = Key.may(
                        "trimming", size(), "cut off each end of the rough blank", "1/2 in or 12 mm")
                .asked(KeySection.ALLOWANCES, "Trimming, each end", "left empty: the usual");

        private AllowanceKeys() {}
    }

    /** What is left on for the next step of the work; each has a usual value. */
    public static final Key<Group> ALLOWANCES = Key.may(
            "allowances",
            new Group(List.of(
                    AllowanceKeys.SIZING, AllowanceKeys.SANDING, AllowanceKeys.MILLING, AllowanceKeys.TRIMMING)),
            "what is left on for the next step",
            "each its own");

    /** What sawing blanks out of boards takes. */
    public static final class SawingKeys {
        /** The width of a saw cut. */
        public static final Key<Size> KERF = Key.may(
                        "kerf", size(), "the width of a saw cut", "1/8 in or 3 mm (common practice, no source)")
                .asked(KeySection.ALLOWANCES, "A saw cut takes", "left empty: the usual");

        /** Taken off each long edge of a board, once. */
        public static final Key<Size> EDGE = Key.may(
                        "edge",
                        size(),
                        "taken off each long edge of a board, once",
                        "1/4 in or 6 mm (common practice, no source)")
                .asked(KeySection.ALLOWANCES, "A board's edge", "left empty: the usual");

        /** Trimmed off each end of a board. */
        public static final Key<Size> END = Key.may(
                        "end",
                        size(),
                        "trimmed off each end of a board",
                        "1/2 in or 12 mm (common practice, no source)")
                .asked(KeySection.ALLOWANCES, "A board's end", "left empty: the usual");

        private SawingKeys() {}
    }

    /** What sawing blanks out of boards takes; each has a usual value. */
    public static final Key<Group> SAWING = Key.may(
            "sawing",
            new Group(List.of(SawingKeys.KERF, SawingKeys.EDGE, SawingKeys.END)),
            "what sawing blanks out of boards takes",
            "each its own");

    /** The turner's choice of settings. */
    public static final class SettingKeys {
        private static final int MOST = 100;

        /** Divider openings that stand in every plan, counted even when they serve no mark. */
        public static final Key<ListOf<Size>> PIN = Key.may(
                        "pin",
                        new ListOf<>(aboveZero(), 0, MOST),
                        "divider openings that must be used, counted even if they serve no mark",
                        "none")
                .asked(KeySection.SETTINGS, "Openings you have set", PARTED + ": 1 1/4; 3");

        /** Divider openings that no plan may use. */
        public static final Key<ListOf<Size>> FORBID = Key.may(
                        "forbid", new ListOf<>(aboveZero(), 0, MOST), "divider openings that must not be used", "none")
                .asked(KeySection.SETTINGS, "Openings not to use", PARTED);

        /** How wide the turner's dividers open; left out, what common ones do. */
        public static final Key<Size> LARGEST = Key.may(
                        "largest",
                        aboveZero(),
                        "no other divider opening is wider; a mark that none reaches is taken from the stick",
                        "8 in, in a job in mm 200 mm (common practice, no source)")
                .asked(KeySection.SETTINGS, "Your dividers open to", "left empty: 8 in or 200 mm");

        /** Marks laid out from the marking stick, by number from 0 at the start end or by label. */
        public static final Key<ListOf<Mark>> STICK = Key.may(
                        "stick",
                        new ListOf<>(new Mark(), 0, MOST),
                        "marks, by number or label, taken from the stick",
                        "none")
                .asked(KeySection.SETTINGS, "Marks from the stick", "numbers of marks, " + PARTED);

        /** Whether the marking stick is drawn with lines or cut with notches. */
        public static final Key<Word> STICK_MARKS = Key.may(
                        "stick_marks", new Word(List.of("lines", "notches")), "how the stick is marked", "lines")
                .asked(KeySection.SETTINGS, "The stick is marked by", "left empty: lines");

        private SettingKeys() {}
    }

    /** The turner's own choices for laying out; left out, dividers as they commonly open, and every mark that they reach. */
    public static final Key<Group> SETTINGS = Key.may(
            "settings",
            new Group(List.of(
                    SettingKeys.PIN,
                    SettingKeys.FORBID,
                    SettingKeys.LARGEST,
                    SettingKeys.STICK,
                    SettingKeys.STICK_MARKS)),
            "your choice of settings",
            "none; lines");

    /** What the turner calls a check place; its number where it has no name. */
    public static final Key<Text> CHECK_NAME = Key.may("name", text(), "of the place", "its number");

    /** A check place's distance from the start end, within the pattern. */
    public static final Key<Size> CHECK_AT = Key.needed("at", size(), "from the start end");

    /** Where a caliper is laid on every piece, in the order of the columns {@code d1}, {@code d2}, … */
    public static final Key<Rows> CHECKS = Key.may(
                    "checks",
                    new Rows(CHECK_NAME, CHECK_AT, 99),
                    "where a caliper is laid on every piece; `d1` of a pieces file is the first",
                    "none")
            .asked(KeySection.ALIKE, "Where a caliper is laid", "a line each: name ; place from the head end");

    /** How much measures count to the eye. */
    public static final class LikenessKeys {
        private static final double MOST = 1000;

        /** What a length, mark or balance point counts that is one tolerance off; 0 for not at all. */
        public static final Key<Number> LENGTH = Key.may(
                        "length",
                        number(0, MOST, LikenessWeights.USUAL.length()),
                        "what lengths, marks and balance points count",
                        "3")
                .asked(KeySection.ALIKE, "Lengths and marks count", "left empty: 3");

        /** What a diameter counts that is one tolerance off; 0 for not at all. */
        public static final Key<Number> DIAMETER = Key.may(
                        "diameter", number(0, MOST, LikenessWeights.USUAL.diameter()), "what diameters count", "2")
                .asked(KeySection.ALIKE, "Diameters count", "left empty: 2");

        /** What a weight counts that is one tolerance off; 0 for not at all. */
        public static final Key<Number> MASS = Key.may(
                        "mass", number(0, MOST, LikenessWeights.USUAL.mass()), "what weights count", "1")
                .asked(KeySection.ALIKE, "Weights count", "left empty: 1");

        /** Further columns of the pieces judged by eye, each with what one grade counts. */
        public static final Key<Named> NOTED = Key.may(
                        "noted",
                        new Named(number(0, MOST)),
                        "further columns judged by eye, each with what a grade counts",
                        "none")
                .asked(KeySection.ALIKE, "Judged by eye, and what a grade counts", "a line each: colour ; 0.5");

        private LikenessKeys() {}
    }

    /** How much each kind of measure counts to the eye; each has a usual value. */
    public static final Key<Group> LIKENESS = Key.may(
            "likeness",
            new Group(List.of(LikenessKeys.LENGTH, LikenessKeys.DIAMETER, LikenessKeys.MASS, LikenessKeys.NOTED)),
            "how much measures count to the eye",
            "each its own");

    /** From the axle to where a counterweight could sit, for a wheel that does not say its own. */
    public static final Key<Size> COUNTERWEIGHT_RADIUS = Key.may(
            "counterweight_radius", aboveZero(), "as in the frame, for a wheel that has none of its own", "none");

    /** Where the pieces will live; left out, nothing is said of the year. */
    public static final Key<Group> HOME = Key.may(
            "home",
            HomeKeys.GROUP,
            "where the pieces will live: how their joints stand through the year",
            "nothing is said of the year");

    /** What the set goes into; left out, nothing is placed. */
    public static final Key<Kinds> FRAME =
            Key.may("frame", FrameKind.KINDS, "what the set goes into, see below", "no placing");

    /** Which piece stands where by hand. */
    public static final class ByHandKeys {
        /** More than any frame takes pieces from. */
        private static final int MOST = 2000;

        /** The label of the piece of every place; {@code match} tells that order as it stands. */
        public static final Key<ListOf<Text>> ORDER = Key.may(
                "order",
                new ListOf<>(text(), 0, MOST),
                "label of the piece at every place: the set is told as it stands, without a search",
                "searched");

        /** A held piece's place, from 1. */
        public static final Key<Whole> PLACE =
                Key.needed("place", new Whole(1, MOST, OptionalInt.empty()), "from 1, through all groups of legs");

        /** A held piece's label. */
        public static final Key<Text> PIECE = Key.needed("piece", text(), "its label");

        /** The pieces that keep their places while the rest is searched. */
        public static final Key<Rows> HELD = Key.may(
                "held",
                new Rows(PLACE, PIECE, MOST),
                "pieces that keep their places while the rest is searched",
                "none");

        private static final Group GROUP = new Group(List.of(ORDER, HELD));

        private ByHandKeys() {}
    }

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

    private static Size size() {
        return KeyType.size();
    }

    private static Size size(Length otherwise) {
        return new Size(false, Optional.of(otherwise));
    }

    private static Size aboveZero() {
        return KeyType.aboveZero();
    }

    private static Size aboveZero(Length otherwise) {
        return new Size(true, Optional.of(otherwise));
    }

    private static Number number(double least, double most) {
        return KeyType.number(least, most);
    }

    private static Number number(double least, double most, double otherwise) {
        return KeyType.number(least, most, otherwise);
    }

    private static Text text() {
        return new Text(List.of());
    }
}
