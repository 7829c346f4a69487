package turnalike.job.edit;

import static turnalike.job.edit.StarterPart.bead;
import static turnalike.job.edit.StarterPart.block;
import static turnalike.job.edit.StarterPart.cove;
import static turnalike.job.edit.StarterPart.fillet;
import static turnalike.job.edit.StarterPart.hollow;
import static turnalike.job.edit.StarterPart.longBlock;
import static turnalike.job.edit.StarterPart.ogee;
import static turnalike.job.edit.StarterPart.round;
import static turnalike.job.edit.StarterPart.swell;
import static turnalike.job.edit.StarterPart.taper;
import static turnalike.job.edit.StarterPart.tenon;
import static turnalike.job.edit.StarterPart.vase;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Patterns to start from, of our own design; their proportions are common practice, no source. Details keep their shape at any length, the
 * long stretches between take up what is left: a longer baluster has longer tapers and the same beads. A long stretch is slenderest where
 * a piece of its use may be, and no tenon is thinner than half of what it joins.
 */
public enum Starter {
    /** A swelled spoke between two tenons. */
    PLAIN_SPOKE("Plain spoke", "a wheel's", tenon(0.6, 0.5), swell("body", 1, 0.62, 0.9, 0.58), tenon(0.5, 0.45)),
    /** A spoke with a turned head and a ring. */
    BEADED_SPOKE(
            "Beaded spoke",
            "a wheel's",
            tenon(0.6, 0.5),
            fillet(0.68),
            bead(0.42, 0.68, 0.9),
            cove(0.42, 0.76, 0.56),
            fillet(0.72),
            taper("long taper", 5, 0.68, 0.5),
            bead(0.3, 0.5, 0.74),
            swell("belly", 3.5, 0.5, 0.66, 0.5),
            fillet(0.64),
            bead(0.42, 0.64, 0.9),
            tenon(0.5, 0.44)),
    /** Square ends, a vase low down, a long neck. */
    VASE_BALUSTER(
            "Vase baluster",
            "a stair's or a balcony's",
            block("foot", 1.8),
            fillet(0.72),
            bead(0.36, 0.66, 0.92),
            cove(0.3, 0.7, 0.5),
            vase("swelling", 2, 0.5, 0.92),
            vase("neck", 4, 0.92, 0.48),
            fillet(0.62),
            bead(0.3, 0.56, 0.84),
            taper("shaft", 3, 0.48, 0.56),
            bead(0.36, 0.64, 0.92),
            fillet(0.74),
            block("head", 1.8)),
    /** Square ends and a shaft that tapers. */
    COLUMN_BALUSTER(
            "Column baluster",
            "a stair's or a balcony's",
            block("foot", 2),
            round(0.16, 0.8, 0.94),
            cove(0.3, 0.78, 0.62),
            bead(0.28, 0.7, 0.9),
            taper("shaft", 1, 0.78, 0.58),
            fillet(0.68),
            bead(0.28, 0.64, 0.88),
            hollow(0.3, 0.64, 0.86),
            block("head", 1.6)),
    /** The same from the middle to both ends. */
    TWIN_BALUSTER(
            "Twin baluster",
            "a balcony's: alike from either end",
            block("foot", 1.6),
            fillet(0.74),
            taper("lower shaft", 2, 0.56, 0.86),
            hollow(0.24, 0.86, 0.6),
            bead(0.46, 0.6, 0.92),
            hollow(0.24, 0.6, 0.86),
            taper("upper shaft", 2, 0.86, 0.56),
            fillet(0.74),
            block("head", 1.6)),
    /** A chair's rung. */
    PLAIN_RUNG(
            "Plain rung",
            "a chair's or a stool's",
            tenon(0.9, 0.62),
            swell("body", 1, 0.66, 0.94, 0.66),
            tenon(0.9, 0.62)),
    /** A rung with a ring in its middle. */
    RINGED_RUNG(
            "Ringed rung",
            "a chair's or a stool's",
            tenon(0.9, 0.56),
            taper("left half", 1, 0.58, 0.76),
            fillet(0.66),
            bead(0.44, 0.7, 0.94),
            fillet(0.66),
            taper("right half", 1, 0.76, 0.58),
            tenon(0.9, 0.56)),
    /** A chair back's spindle, thickest at a third. */
    BACK_SPINDLE(
            "Back spindle",
            "a chair's back",
            tenon(0.9, 0.6),
            taper("foot", 1, 0.66, 0.94),
            taper("shaft", 2, 0.94, 0.54),
            tenon(0.7, 0.5)),
    /** A stool's leg. */
    STOOL_LEG(
            "Stool leg",
            "a stool's",
            tenon(0.8, 0.56),
            taper("upper taper", 3, 0.62, 0.9),
            fillet(0.74),
            bead(0.4, 0.72, 0.94),
            cove(0.36, 0.78, 0.6),
            swell("calf", 3, 0.66, 0.86, 0.6),
            bead(0.26, 0.6, 0.78),
            taper("foot", 1, 0.66, 0.5)),
    /** A chair's front leg with a square head. */
    CHAIR_LEG(
            "Chair front leg",
            "a chair's",
            longBlock("head", 2),
            fillet(0.76),
            bead(0.34, 0.68, 0.92),
            cove(0.3, 0.74, 0.58),
            vase("vase", 2, 0.62, 0.92),
            taper("shaft", 4, 0.88, 0.6),
            bead(0.3, 0.6, 0.84),
            fillet(0.58),
            round(0.3, 0.6, 0.9),
            round(0.36, 0.9, 0.56)),
    /** A table's leg with a square head for the rails. */
    TABLE_LEG(
            "Table leg",
            "a table's",
            longBlock("head", 2),
            round(0.14, 0.84, 0.94),
            cove(0.28, 0.8, 0.66),
            bead(0.34, 0.72, 0.94),
            fillet(0.7),
            swell("body", 5, 0.66, 0.92, 0.58),
            fillet(0.66),
            bead(0.3, 0.62, 0.84),
            cove(0.24, 0.68, 0.56),
            ogee(0.5, 0.58, 0.84),
            taper("foot", 0.8, 0.78, 0.54)),
    /** A post with two square stretches. */
    POST(
            "Post",
            "a stair's or a bed's",
            longBlock("foot", 3),
            fillet(0.8),
            bead(0.3, 0.74, 0.94),
            cove(0.3, 0.8, 0.64),
            taper("shaft", 4, 0.84, 0.68),
            fillet(0.76),
            bead(0.3, 0.72, 0.94),
            longBlock("rail block", 1.4),
            fillet(0.78),
            cove(0.24, 0.76, 0.6),
            round(0.34, 0.62, 0.92),
            round(0.34, 0.92, 0.4)),
    /** An urn with a cone. */
    URN_FINIAL(
            "Urn finial",
            "on a post or a case",
            tenon(0.6, 0.4),
            bead(0.18, 0.66, 0.92),
            cove(0.26, 0.7, 0.44),
            fillet(0.5),
            vase("bowl", 2, 0.44, 0.94),
            fillet(0.82),
            hollow(0.22, 0.76, 0.44),
            bead(0.2, 0.44, 0.62),
            taper("cone", 1.6, 0.46, 0.2)),
    /** A ball on a neck. */
    BALL_FINIAL(
            "Ball finial",
            "on a post or a case",
            tenon(0.6, 0.4),
            bead(0.18, 0.68, 0.92),
            fillet(0.7),
            swell("neck", 1, 0.58, 0.42, 0.4),
            bead(0.9, 0.34, 0.94),
            fillet(0.3),
            round(0.2, 0.34, 0.18));

    private final String title;
    private final String use;
    // A copied list of records, which nobody can change; the checker knows no such list.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<StarterPart> parts;

    Starter(String title, String use, StarterPart... parts) {
        this.title = title;
        this.use = use;
        this.parts = List.of(parts);
    }

    /** {@return the word it is asked for by: {@code vase-baluster}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return what it is called, with a capital} */
    public String title() {
        return title;
    }

    /** {@return what it is for, in a few words} */
    public String use() {
        return use;
    }

    /** {@return how many times as long as its blank is thick such a piece is apt to be: a place to start from} */
    public double usualLength() {
        return switch (this) {
            case PLAIN_SPOKE, BEADED_SPOKE -> 9;
            case VASE_BALUSTER, COLUMN_BALUSTER, TWIN_BALUSTER -> 18;
            case PLAIN_RUNG, RINGED_RUNG -> 14;
            case BACK_SPINDLE -> 20;
            case STOOL_LEG, CHAIR_LEG -> 11;
            case TABLE_LEG -> 12;
            case POST -> 15;
            case URN_FINIAL -> 5;
            case BALL_FINIAL -> 3.6;
        };
    }

    List<StarterPart> parts() {
        return parts;
    }

    /**
     * {@return the starter of that word; empty when there is none}
     *
     * @param word as {@link #word} has it
     */
    public static Optional<Starter> find(String word) {
        return Arrays.stream(values()).filter(each -> each.word().equals(word)).findFirst();
    }
}
