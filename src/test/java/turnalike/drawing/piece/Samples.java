package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Details;
import turnalike.pattern.Fillet;
import turnalike.pattern.Groove;
import turnalike.pattern.HalfBead;
import turnalike.pattern.HalfCove;
import turnalike.pattern.Member;
import turnalike.pattern.Ogee;
import turnalike.pattern.Pattern;
import turnalike.pattern.ReverseOgee;
import turnalike.pattern.Square;
import turnalike.pattern.Stock;
import turnalike.pattern.Swell;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.pattern.Vee;
import turnalike.units.Length;

/** Invented patterns for looking at drawings of every shape and size. */
public final class Samples {
    private Samples() {}

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    /** Three members, 150 mm. */
    public static Pattern three() {
        return new Pattern(
                "short knob",
                new Stock(Section.ROUND, mm(60), mm(150)),
                List.of(
                        new Tenon(mm(30), mm(20), mm(3), Details.NONE),
                        new Cove(mm(40), mm(50), mm(24), Details.NONE),
                        new Swell(mm(80), mm(30), mm(58), mm(26), Details.NONE)));
    }

    /** A wheel spoke of fifteen members, 20 in, with a square and one of most kinds. */
    public static Pattern spoke() {
        return new Pattern(
                "great wheel spoke",
                new Stock(Section.SQUARE, in(1.75), in(20)),
                List.of(
                        new Tenon(in(0.75), in(0.625), in(0.0625), Details.NONE),
                        new Square(in(2.5), in(1.75), Details.named("hub block")),
                        new HalfBead(in(0.375), in(1.625), in(1.125), Details.NONE),
                        new Fillet(in(0.125), in(1.125), Details.NONE),
                        new Cove(in(0.75), in(1.125), in(0.75), Details.NONE),
                        new Fillet(in(0.125), in(1.125), Details.NONE),
                        new Bead(in(0.5), in(1.125), in(1.5), Details.named("upper bead")),
                        new Vee(in(0.1875), in(1.125), in(0.875), Details.NONE),
                        new Ogee(in(1.5), in(1.125), in(1.625), Details.NONE),
                        new Taper(in(7), in(1.25), in(0.875), Details.named("long taper")),
                        new Groove(in(0.125), in(0.875), in(0.75), Details.NONE),
                        new ReverseOgee(in(1.25), in(0.875), in(1.375), Details.NONE),
                        new Bead(in(0.5), in(1.0), in(1.375), Details.NONE),
                        new HalfCove(in(0.8125), in(1.25), in(0.75), Details.NONE),
                        new Tenon(in(1.0), in(0.625), in(0.125), Details.NONE)));
    }

    /** Forty members in a length: beads, fillets and coves as close as they come. */
    public static Pattern forty(double lengthMm) {
        List<Member> members = new ArrayList<>();
        double part = lengthMm / 40;
        for (int i = 0; i < 10; i++) {
            double d = 30 + 2.5 * (i % 5);
            members.add(new Fillet(mm(part / 2), mm(d), Details.NONE));
            members.add(
                    new Bead(mm(1.2 * part), mm(d), mm(d + 9), Details.named("Zier-Wulst <" + i + "> & \"Kehle\" 木")));
            members.add(new Fillet(mm(part / 2), mm(d - 1), Details.NONE));
            members.add(new Cove(mm(1.8 * part), mm(d - 1), mm(d - 10), Details.NONE));
        }
        return new Pattern("forty <members> & more", new Stock(Section.SQUARE, mm(60), mm(lengthMm + 1)), members);
    }

    /** A newel of 2 m. */
    public static Pattern newel() {
        return new Pattern(
                "Geländer-Anfangspfosten des Treppenhauses",
                new Stock(Section.SQUARE, mm(95), mm(2000)),
                List.of(
                        new Square(mm(420), mm(90), Details.NONE),
                        new HalfBead(mm(25), mm(88), mm(60), Details.NONE),
                        new Cove(mm(60), mm(60), mm(40), Details.NONE),
                        new Bead(mm(30), mm(56), mm(80), Details.NONE),
                        new Swell(mm(900), mm(60), mm(84), mm(52), Details.NONE),
                        new Bead(mm(25), mm(52), mm(70), Details.NONE),
                        new Square(mm(480), mm(90), Details.NONE),
                        new Tenon(mm(60), mm(38), mm(4), Details.NONE)));
    }
}
