package turnalike.job.keys;

import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Mark;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Word;

/** The turner's choice of settings. */
public final class SettingKeys {
    private static final int MOST = 100;

    /** Divider openings that stand in every plan, counted even when they serve no mark. */
    public static final Key<ListOf<Size>> PIN = Key.may(
                    "pin",
                    new ListOf<>(KeyType.aboveZero(), 0, MOST),
                    "divider openings that must be used, counted even if they serve no mark",
                    "none")
            .asked(KeySection.SETTINGS, "Openings you have set", "parted by semicolons: 1 1/4; 3");

    /** Divider openings that no plan may use. */
    public static final Key<ListOf<Size>> FORBID = Key.may(
                    "forbid",
                    new ListOf<>(KeyType.aboveZero(), 0, MOST),
                    "divider openings that must not be used",
                    "none")
            .asked(KeySection.SETTINGS, "Openings not to use", "parted by semicolons");

    /** How narrow the turner's dividers close; left out, what common ones do. */
    public static final Key<Size> SMALLEST = Key.may(
                    "smallest",
                    KeyType.size(),
                    "no other divider opening is narrower; a mark that none reaches is taken from the stick",
                    "1/16 in, in a job in mm 1.5 mm (common practice, no source)")
            .asked(KeySection.SETTINGS, "Your dividers close to", "left empty: 1/16 in or 1.5 mm");

    /** How wide the turner's dividers open; left out, what common ones do. */
    public static final Key<Size> LARGEST = Key.may(
                    "largest",
                    KeyType.aboveZero(),
                    "no other divider opening is wider; a mark that none reaches is taken from the stick",
                    "8 in, in a job in mm 200 mm (common practice, no source)")
            .asked(KeySection.SETTINGS, "Your dividers open to", "left empty: 8 in or 200 mm");

    /** Marks laid out from the marking stick, by number from 0 at the start end or by label. */
    public static final Key<ListOf<Mark>> STICK = Key.may(
                    "stick",
                    new ListOf<>(new Mark(), 0, MOST),
                    "marks, by number or label, taken from the stick",
                    "none")
            .asked(KeySection.SETTINGS, "Marks from the stick", "numbers of marks, parted by semicolons");

    /** Whether the marking stick is drawn with lines or cut with notches. */
    public static final Key<Word> STICK_MARKS = Key.may(
                    "stick_marks", new Word(List.of("lines", "notches")), "how the stick is marked", "lines")
            .asked(KeySection.SETTINGS, "The stick is marked by", "left empty: lines");

    /** All of them, in the order they are told. */
    static final Group GROUP = new Group(List.of(PIN, FORBID, SMALLEST, LARGEST, STICK, STICK_MARKS));

    private SettingKeys() {}
}
