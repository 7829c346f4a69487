package turnalike.job.keys;

import java.util.List;
import turnalike.job.Tolerances;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Size;

/** What may differ. */
public final class ToleranceKeys {
    /** How far one pencil line may be off, each time it is stepped. */
    public static final Key<Size> MARK = Key.may(
                    "mark",
                    KeyType.aboveZero(Tolerances.USUAL.mark()),
                    "how far one pencil line may be off, each time it is stepped",
                    "0.25 mm")
            .asked(KeySection.TOLERANCES, "A mark, each step", "left empty: 0.25 mm");

    /** How far a finished diameter may be off, either way. */
    public static final Key<Size> DIAMETER = Key.may(
                    "diameter",
                    KeyType.aboveZero(Tolerances.USUAL.diameter()),
                    "how far a finished diameter may be off",
                    "0.4 mm")
            .asked(KeySection.TOLERANCES, "A diameter", "left empty: 0.4 mm");

    /** A set's heaviest less its lightest, per hundred of their mean; 0 asks for equal masses. */
    public static final Key<Number> MASS = Key.may(
                    "mass_pct",
                    KeyType.number(0, 100, Tolerances.USUAL.massPct()),
                    "a set's heaviest less its lightest, per hundred of their mean",
                    "2")
            .asked(KeySection.TOLERANCES, "Weights of a set, %", "left empty: 2");

    /** The smallest step the scale shows, in grams; 0 for one that shows every step. */
    public static final Key<Number> SCALE = Key.may(
                    "scale_g",
                    KeyType.number(0, 1000, Tolerances.USUAL.scale().grams()),
                    "the smallest step the scale shows",
                    "0.1")
            .asked(KeySection.TOLERANCES, "The scale shows, g", "left empty: 0.1");

    /** The smallest step that a scale shows which shows ounces; masses are told and typed in them then. */
    public static final Key<Number> SCALE_OZ = Key.may(
                    "scale_oz",
                    KeyType.number(0, 32),
                    "in place of `scale_g`: the smallest step of a scale that shows ounces, in which weights are told and typed then",
                    "the scale shows grams")
            .asked(KeySection.TOLERANCES, "The scale shows, oz", "in place of grams: 0.1");

    /** The greatest worst-case error a mark may collect over several steps. */
    public static final Key<Size> MARK_LIMIT = Key.may(
                    "mark_limit",
                    KeyType.aboveZero(),
                    "the greatest worst-case error a mark may collect, what the openings miss included",
                    "no limit: at most three steps in a row")
            .asked(KeySection.TOLERANCES, "What a mark may collect", "left empty: three steps");

    /** How far a seat's depth may be off from what is told of it, either way. */
    public static final Key<Size> SEAT = Key.may(
                    "seat",
                    KeyType.size(Tolerances.USUAL.seat()),
                    "how far a seat's depth may be off from what is told of it",
                    "0.25 mm")
            .asked(KeySection.TOLERANCES, "A seat's depth", "a wheel's; left empty: 0.25 mm");

    /** How far the direction of a seat's hole may be off round the axle, either way, in degrees. */
    public static final Key<Number> HOLE_ANGLE = Key.may(
                    "hole_angle_deg",
                    KeyType.number(0, 10, Tolerances.USUAL.holeAngle().degrees()),
                    "how far a seat's hole may point beside its place, round the axle",
                    "0.25")
            .asked(KeySection.TOLERANCES, "A hole's direction, degrees", "a wheel's; left empty: 0.25");

    /** All of them, in the order they are told. */
    static final Group GROUP = new Group(List.of(MARK, DIAMETER, MASS, SCALE, SCALE_OZ, MARK_LIMIT, SEAT, HOLE_ANGLE));

    private ToleranceKeys() {}
}
