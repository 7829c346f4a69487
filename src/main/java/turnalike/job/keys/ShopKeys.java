package turnalike.job.keys;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Rows;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Text;
import turnalike.job.fields.KeyType.Whole;
import turnalike.job.fields.KeyType.Word;
import turnalike.job.wood.WoodKeys;

/** The keys of what stands in the shop for an order: boards, weighed blanks, times taken, what is charged. */
public final class ShopKeys {
    /** More rows than a shop has of one order: a slip or a machine wrote them. */
    public static final int MOST_ROWS = 1_000;

    /** As many faults as a board is typed with; a table of boards given by itself may have more. */
    public static final int MOST_FAULTS = 4;

    private static final double MOST_MONEY = 999_999_999;
    private static final double LEAST_MASS_G = 0.001;
    private static final double MOST_MASS_G = 100_000;
    private static final double LEAST_MINUTES = 0.001;
    private static final double MOST_MINUTES = 43_200;
    private static final Text TEXT = KeyType.text();
    private static final Number MASS = KeyType.number(LEAST_MASS_G, MOST_MASS_G);
    private static final Number MONEY = KeyType.number(0, MOST_MONEY);

    private static final Group BOARD = new Group(board());

    private static final Group BLANK = new Group(List.of(
            Key.needed("blank", TEXT, "what is written on it; the piece turned of it bears the same in the log"),
            Key.needed("mass_g", MASS, "its weight, milled and cut to length"),
            Key.<Size>may("length", KeyType.aboveZero(), "its own length", "the stock's"),
            Key.<Size>may("size", KeyType.aboveZero(), "its own square", "the stock's"),
            Key.may("moisture_pct", KeyType.number(0, 300), "its moisture", "not known"),
            Key.may(
                    "finished_g",
                    MASS,
                    "what its finished piece weighs",
                    "what the log says of the piece of that label, else not turned yet"),
            Key.may("lost", new Word(List.of("no", "yes")), "whether it came to nothing", "no")));

    private static final Group TIME = new Group(List.of(
            Key.needed("stage", TEXT, "the part of the work, as you name it"),
            Key.needed("minutes", KeyType.number(LEAST_MINUTES, MOST_MINUTES), "what it took"),
            Key.may(
                    "pieces",
                    new Whole(0, 10_000, OptionalInt.of(1)),
                    "how many pieces the time was for; 0 for what is done once for the order",
                    "1"),
            Key.may("piece", TEXT, "which piece it was", "not told")));

    /** The boards in hand. */
    public static final Key<ListOf<Group>> BOARDS = Key.may(
            "boards", new ListOf<>(BOARD, 0, MOST_ROWS), "the boards in hand, sawn into this order's blanks", "none");

    /** Blanks weighed before they are turned. */
    public static final Key<ListOf<Group>> BLANKS =
            Key.may("blanks", new ListOf<>(BLANK, 0, MOST_ROWS), "blanks weighed before they are turned", "none");

    /** Times taken, besides those that the bench view takes at the lathe. */
    public static final Key<ListOf<Group>> TIMES = Key.may(
            "times",
            new ListOf<>(TIME, 0, MOST_ROWS),
            "times taken, in the order of the work, besides those that the bench view takes at the lathe",
            "none");

    /** What is charged. */
    public static final class PriceKeys {
        /** For an hour's work. */
        public static final Key<Number> RATE = Key.may("rate", MONEY, "your rate for an hour", "no price is made");

        /** What is charged besides, for the whole order. */
        public static final Key<Rows> OTHERS = Key.may(
                "others",
                new Rows(
                        Key.may("item", TEXT, "what it is", "other"),
                        Key.needed("amount", MONEY, "what it costs, for the whole order"),
                        40),
                "what you charge besides the work",
                "nothing");

        /** Per hundred on all of it, spread into the prices that a customer sees. */
        public static final Key<Number> MARKUP = Key.may(
                "markup_pct", KeyType.number(0, 500, 0), "per hundred on all of it, spread into the prices", "0");

        /** Per hundred of the sum. */
        public static final Key<Number> TAX =
                Key.may("tax_pct", KeyType.number(0, 500, 0), "per hundred of the sum, as you have to charge it", "0");

        /** Stands beside the figures. */
        public static final Key<Text> CURRENCY = Key.may("currency", TEXT, "stands beside the figures", "nothing");

        private PriceKeys() {}
    }

    /** What is charged; left out, nothing of a price is said. */
    public static final Key<Group> PRICE = Key.may(
            "price",
            new Group(List.of(PriceKeys.RATE, PriceKeys.OTHERS, PriceKeys.MARKUP, PriceKeys.TAX, PriceKeys.CURRENCY)),
            "what you charge",
            "no price is made");

    private ShopKeys() {}

    private static List<Key<?>> board() {
        List<Key<?>> out = new ArrayList<>(List.of(
                Key.needed("board", TEXT, "its name or number, its own"),
                Key.needed("thickness", KeyType.aboveZero(), "as it lies there"),
                Key.needed("width", KeyType.aboveZero(), "as it lies there"),
                Key.needed("length", KeyType.aboveZero(), "along the grain"),
                Key.may("count", new Whole(1, 10_000, OptionalInt.of(1)), "how many are alike", "1"),
                Key.may("price", MONEY, "what one costs", "not known"),
                Key.may("species", WoodKeys.SPECIES.type(), "its wood", "right for any job")));
        for (int number = 1; number <= MOST_FAULTS; number++) {
            out.add(Key.<Size>may(
                    "from" + number, KeyType.size(), "where a fault begins, from the untrimmed end", "none"));
            out.add(Key.<Size>may("to" + number, KeyType.size(), "where it ends", "none"));
        }
        return out;
    }
}
