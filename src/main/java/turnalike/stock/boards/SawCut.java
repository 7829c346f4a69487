package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.stock.boards.CuttingPlan.CutBlank;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.Rip;
import turnalike.stock.boards.CuttingPlan.Strip;
import turnalike.units.Length;

/**
 * One cut of the saw.
 *
 * @param number from 1, in the order of sawing: along the board first, then through its thickness, then across
 * @param kind which way it goes
 * @param rip which rip it makes or goes through, from 0; the first edge makes the first
 * @param layer which strip of the rip, from 0 at the upper face; 0 where all are one still
 * @param at where the wood that is kept begins or ends: across the board from its edge, down from its upper face, or along it from its untrimmed
 *     end
 */
public record SawCut(int number, Kind kind, int rip, int layer, Length at) {
    /** Which way a cut goes. */
    public enum Kind {
        /** Along the board, to straighten its first edge. */
        EDGE,
        /** Along the board, past a rip. */
        RIP,
        /** Along a rip, through its width, so that one strip comes off the next. */
        SPLIT,
        /** Across a strip. */
        CROSS;

        /** {@return the word an answer uses: {@code rip}} */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * {@return every cut of a board in the order of sawing}
     *
     * @param cut the board
     * @param sawing what sawing takes
     */
    public static List<SawCut> of(CutBoard cut, Sawing sawing) {
        List<SawCut> out = new ArrayList<>();
        out.add(new SawCut(1, Kind.EDGE, 0, 0, sawing.edge()));
        for (int rip = 0; rip < cut.rips().size(); rip++) {
            Length end = cut.rips().get(rip).from().plus(cut.rips().get(rip).size());
            if (isBeyond(cut.board().width(), end)) {
                out.add(new SawCut(out.size() + 1, Kind.RIP, rip, 0, end));
            }
        }
        for (int rip = 0; rip < cut.rips().size(); rip++) {
            Length depth = Length.ZERO;
            Rip of = cut.rips().get(rip);
            for (int layer = 0; layer < of.strips().size(); layer++) {
                depth = depth.plus(of.size());
                if (isBeyond(cut.board().thickness(), depth)) {
                    out.add(new SawCut(out.size() + 1, Kind.SPLIT, rip, layer, depth));
                }
                depth = depth.plus(sawing.kerf());
            }
        }
        for (int rip = 0; rip < cut.rips().size(); rip++) {
            for (int layer = 0; layer < cut.rips().get(rip).strips().size(); layer++) {
                across(cut, sawing, rip, layer, out);
            }
        }
        return out;
    }

    private static void across(CutBoard cut, Sawing sawing, int rip, int layer, List<SawCut> out) {
        Strip strip = cut.rips().get(rip).strips().get(layer);
        Length done = Length.ofMm(-1);
        for (CutBlank blank : strip.blanks()) {
            boolean joins =
                    Math.abs(blank.from().minus(done).mm() - sawing.kerf().mm()) < 1e-6;
            if (!joins && blank.from().isPositive()) {
                out.add(new SawCut(out.size() + 1, Kind.CROSS, rip, layer, blank.from()));
            }
            done = blank.from().plus(blank.of().length());
            if (isBeyond(cut.board().length(), done)) {
                out.add(new SawCut(out.size() + 1, Kind.CROSS, rip, layer, done));
            }
        }
    }

    private static boolean isBeyond(Length end, Length at) {
        return end.mm() > at.mm() + 1e-6;
    }
}
