package turnalike.job.keys;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import turnalike.effort.Ending;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Text;
import turnalike.job.fields.KeyType.Whole;
import turnalike.job.fields.KeyType.Word;

/** The keys of how the boards are cut, as a search found it: written by the program, in mm whatever the job's units. */
public final class CutKeys {
    /** More strips than a shop saws for one order. */
    public static final int MOST_STRIPS = 20_000;

    private static final int MOST_BLANKS = 10_000;
    private static final double MOST_MM = 1_000_000;
    private static final Text TEXT = KeyType.text();
    private static final Word YES_NO = new Word(List.of("no", "yes"));
    private static final Whole NUMBER = new Whole(1, MOST_BLANKS, OptionalInt.empty());

    /** What it was found for. */
    public static final Key<Text> ORDER = Key.needed(
            "order",
            TEXT,
            "sign of the blanks, boards and saw it was found for; where they are others it is out of date");

    /** The other jobs whose blanks are sawn along. */
    public static final Key<ListOf<Text>> WITH =
            Key.may("with", new ListOf<>(TEXT, 0, 40), "ids of the kept jobs whose blanks are sawn along", "none");

    /** Which board. */
    public static final Key<Text> BOARD = Key.needed("board", TEXT, "its name, NAME#2 where several are alike");

    /** Which rip. */
    public static final Key<Whole> RIP = Key.needed("rip", NUMBER, "which rip of the board, from 1 at its edge");

    /** Which strip of the rip. */
    public static final Key<Whole> LAYER =
            Key.needed("layer", NUMBER, "which strip of the rip, from 1 at its upper face");

    /** What is cut out of it. */
    public static final Key<ListOf<Whole>> BLANKS = Key.needed(
            "blanks", new ListOf<>(NUMBER, 0, MOST_BLANKS), "which of the wanted blanks, from 1, one after another");

    /** Where each begins. */
    public static final Key<ListOf<Number>> FROM = Key.needed(
            "from_mm",
            new ListOf<>(KeyType.number(0, MOST_MM), 0, MOST_BLANKS),
            "where each begins, from the untrimmed end; as many");

    /** One strip. */
    public static final Group STRIP = new Group(List.of(BOARD, RIP, LAYER, BLANKS, FROM));

    /** All strips. */
    public static final Key<ListOf<Group>> STRIPS =
            Key.needed("strips", new ListOf<>(STRIP, 0, MOST_STRIPS), "what is sawn, strip by strip");

    /** How good it can be. */
    public static final Key<Number> BOUND = Key.needed(
            "bound",
            KeyType.number(0, 1e12),
            "no plan for as many blanks costs less, or without prices takes fewer boards");

    /** Whether it is as good as can be. */
    public static final Key<Word> PROVEN = Key.needed("proven", YES_NO, "whether that is reached");

    /** How long what is left can be. */
    public static final Key<Number> LONGEST =
            Key.needed("longest_mm", KeyType.number(0, MOST_MM), "no such plan leaves a longer piece");

    /** Whether it is as long as can be. */
    public static final Key<Word> LONGEST_PROVEN = Key.needed("longest_proven", YES_NO, "whether that is reached");

    /** What ended the search. */
    public static final Key<Word> ENDED = Key.needed(
            "ended_by",
            new Word(Arrays.stream(Ending.values()).map(Ending::word).toList()),
            "what ended the search");

    /** How the boards are cut. */
    public static final Key<Group> CUT = Key.may(
            "cut",
            new Group(List.of(ORDER, WITH, STRIPS, BOUND, PROVEN, LONGEST, LONGEST_PROVEN, ENDED)),
            "how the boards are cut, written by the program",
            "not searched yet");

    private CutKeys() {}
}
