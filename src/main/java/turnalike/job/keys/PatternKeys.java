package turnalike.job.keys;

import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Members;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Text;
import turnalike.job.fields.KeyType.Word;

/** The spindle: its name, the blank it is turned from, the run. */
public final class PatternKeys {
    /** The spindle's own name; the job's title where there is none. */
    public static final Key<Text> NAME = Key.may("name", KeyType.text(), "the spindle's own", "the title")
            .asked(KeySection.ORDER, "Pattern", "left empty: the title");

    /** Of the milled blank as it goes on the lathe. */
    public static final Key<Word> SECTION = Key.needed(
                    "section", new Word(List.of("square", "round")), "of the milled blank as it goes on the lathe")
            .asked(KeySection.STOCK, "Section", "");

    /** A square blank's side, a round one's diameter. */
    public static final Key<Size> SIZE = Key.needed(
                    "size", KeyType.aboveZero(), "across the blank's flats, or its diameter")
            .asked(KeySection.STOCK, "Across", "");

    /** Of the blank along the grain; the run may be shorter. */
    public static final Key<Size> LENGTH =
            Key.needed("length", KeyType.aboveZero(), "of the blank").asked(KeySection.STOCK, "Length", "");

    /** The blank that the spindle is turned from. */
    public static final Key<Group> STOCK =
            Key.needed("stock", new Group(List.of(SECTION, SIZE, LENGTH)), "what it is turned from");

    /** The run from the start end. Above 200 a slip or a machine wrote the file: nobody turns it by hand. */
    public static final Key<Members> MEMBERS =
            Key.needed("members", new Members(200), "the run from the start end, see below");

    /** All of them, in the order they are told. */
    static final Group GROUP = new Group(List.of(NAME, STOCK, MEMBERS));

    private PatternKeys() {}
}
