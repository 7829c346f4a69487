package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is cut from one stretch.
 *
 * @param stretch which of the question's stretches
 * @param blanks how many of each kind
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record StripCut(int stretch, int[] blanks) {
    int count() {
        int sum = 0;
        for (int each : blanks) {
            sum += each;
        }
        return sum;
    }

    /** What tells it from others: its stretch, then the kind of each blank. */
    List<Integer> key() {
        List<Integer> out = new ArrayList<>(List.of(stretch));
        for (int kind = 0; kind < blanks.length; kind++) {
            for (int copy = 0; copy < blanks[kind]; copy++) {
                out.add(kind);
            }
        }
        return out;
    }

    /** Its column in a program with a row for each kind of blank, then one for each stretch: it gives blanks and takes one stretch. */
    MasterProgram.Column column(double cost) {
        int filled = (int) Arrays.stream(blanks).filter(each -> each > 0).count();
        int[] rows = new int[filled + 1];
        double[] entries = new double[filled + 1];
        int at = 0;
        for (int kind = 0; kind < blanks.length; kind++) {
            if (blanks[kind] > 0) {
                rows[at] = kind;
                entries[at++] = blanks[kind];
            }
        }
        rows[at] = blanks.length + stretch;
        entries[at] = -1;
        return new MasterProgram.Column(rows, entries, cost);
    }
}
