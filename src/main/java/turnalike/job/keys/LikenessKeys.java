package turnalike.job.keys;

import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Named;
import turnalike.job.fields.KeyType.Number;
import turnalike.pieces.LikenessWeights;

/** How much measures count to the eye. */
public final class LikenessKeys {
    private static final double MOST = 1000;

    /** What a length, mark or balance point counts that is one tolerance off; 0 for not at all. */
    public static final Key<Number> LENGTH = Key.may(
                    "length",
                    KeyType.number(0, MOST, LikenessWeights.USUAL.length()),
                    "what lengths, marks and balance points count",
                    "3")
            .asked(KeySection.ALIKE, "Lengths and marks count", "left empty: 3");

    /** What a diameter counts that is one tolerance off; 0 for not at all. */
    public static final Key<Number> DIAMETER = Key.may(
                    "diameter", KeyType.number(0, MOST, LikenessWeights.USUAL.diameter()), "what diameters count", "2")
            .asked(KeySection.ALIKE, "Diameters count", "left empty: 2");

    /** What a weight counts that is one tolerance off; 0 for not at all. */
    public static final Key<Number> MASS = Key.may(
                    "mass", KeyType.number(0, MOST, LikenessWeights.USUAL.mass()), "what weights count", "1")
            .asked(KeySection.ALIKE, "Weights count", "left empty: 1");

    /** Further columns of the pieces judged by eye, each with what one grade counts. */
    public static final Key<Named> NOTED = Key.may(
                    "noted",
                    new Named(KeyType.number(0, MOST)),
                    "further columns judged by eye, each with what a grade counts",
                    "none")
            .asked(KeySection.ALIKE, "Judged by eye, and what a grade counts", "a line each: colour ; 0.5");

    /** All of them, in the order they are told. */
    static final Group GROUP = new Group(List.of(LENGTH, DIAMETER, MASS, NOTED));

    private LikenessKeys() {}
}
