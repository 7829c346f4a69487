package turnalike.job.keys;

import java.util.List;
import java.util.OptionalInt;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Rows;
import turnalike.job.fields.KeyType.Text;
import turnalike.job.fields.KeyType.Whole;

/** Which piece stands where by hand. */
public final class ByHandKeys {
    /** More than any frame takes pieces from. */
    private static final int MOST = 2000;

    /** The label of the piece of every place; {@code match} tells that order as it stands. */
    public static final Key<ListOf<Text>> ORDER = Key.may(
            "order",
            new ListOf<>(KeyType.text(), 0, MOST),
            "label of the piece at every place: the set is told as it stands, without a search",
            "searched");

    /** A held piece's place, from 1. */
    public static final Key<Whole> PLACE =
            Key.needed("place", new Whole(1, MOST, OptionalInt.empty()), "from 1, through all groups of legs");

    /** A held piece's label. */
    public static final Key<Text> PIECE = Key.needed("piece", KeyType.text(), "its label");

    /** The pieces that keep their places while the rest is searched. */
    public static final Key<Rows> HELD = Key.may(
            "held", new Rows(PLACE, PIECE, MOST), "pieces that keep their places while the rest is searched", "none");

    /** All of them, in the order they are told. */
    static final Group GROUP = new Group(List.of(ORDER, HELD));

    private ByHandKeys() {}
}
