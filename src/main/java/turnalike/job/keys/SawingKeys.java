package turnalike.job.keys;

import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Size;

/** What sawing blanks out of boards takes. */
public final class SawingKeys {
    /** The width of a saw cut. */
    public static final Key<Size> KERF = Key.may(
                    "kerf", KeyType.size(), "the width of a saw cut", "1/8 in or 3 mm (common practice, no source)")
            .asked(KeySection.ALLOWANCES, "A saw cut takes", "left empty: the usual");

    /** Taken off each long edge of a board, once. */
    public static final Key<Size> EDGE = Key.may(
                    "edge",
                    KeyType.size(),
                    "taken off each long edge of a board, once",
                    "1/4 in or 6 mm (common practice, no source)")
            .asked(KeySection.ALLOWANCES, "A board's edge", "left empty: the usual");

    /** Trimmed off each end of a board. */
    public static final Key<Size> END = Key.may(
                    "end",
                    KeyType.size(),
                    "trimmed off each end of a board",
                    "1/2 in or 12 mm (common practice, no source)")
            .asked(KeySection.ALLOWANCES, "A board's end", "left empty: the usual");

    /** All of them, in the order they are told. */
    static final Group GROUP = new Group(List.of(KERF, EDGE, END));

    private SawingKeys() {}
}
