package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Every cut that holds one given blank, to which no other blank that is left could be added, and which wastes no more than there is to waste
 * in all.
 */
final class Completions {
    private final Question question;
    private final int[] left;
    private final int[] supply;
    private final List<StripCut> out = new ArrayList<>();
    private final long waste;
    private int most;

    Completions(Question question, int[] left, int[] supply) {
        this.question = question;
        this.left = left;
        this.supply = supply;
        this.waste = waste();
    }

    /** What all stretches together hold more than what is left to cut; a blank that may be left out makes that unknown. */
    private long waste() {
        long sum = 0;
        for (int stretch = 0; stretch < supply.length; stretch++) {
            Question.Stretch each = question.stretches().get(stretch);
            if (each.holdsOne() && supply[stretch] > 0) {
                return Long.MAX_VALUE;
            }
            sum += supply[stretch] * Math.max(0, each.capacity());
        }
        for (int kind = 0; kind < left.length; kind++) {
            sum -= left[kind] * question.weights()[kind];
        }
        return sum;
    }

    /** At most so many; as many as that means that there may be more. */
    List<StripCut> with(int kind, int atMost) {
        most = atMost;
        for (int stretch = 0; stretch < supply.length; stretch++) {
            Question.Stretch each = question.stretches().get(stretch);
            if (supply[stretch] == 0 || !each.blanks().get(kind)) {
                continue;
            }
            int[] cut = new int[question.kinds()];
            cut[kind] = 1;
            if (each.holdsOne()) {
                out.add(new StripCut(stretch, cut));
            } else if (question.weights()[kind] <= each.capacity()) {
                fill(stretch, each.blanks(), cut, 0, each.capacity() - question.weights()[kind]);
            }
        }
        return out;
    }

    private void fill(int stretch, BitSet blanks, int[] cut, int from, long room) {
        if (out.size() >= most) {
            return;
        }
        int kind = blanks.nextSetBit(from);
        if (kind < 0) {
            if (room <= waste && isFull(blanks, cut, room)) {
                out.add(new StripCut(stretch, cut.clone()));
            }
            return;
        }
        int has = cut[kind];
        long weight = question.weights()[kind];
        int more = (int) Math.min(left[kind] - has, room / weight);
        for (int copies = Math.max(0, more); copies >= 0; copies--) {
            cut[kind] = has + copies;
            fill(stretch, blanks, cut, kind + 1, room - copies * weight);
        }
        cut[kind] = has;
    }

    private boolean isFull(BitSet blanks, int[] cut, long room) {
        for (int kind = blanks.nextSetBit(0); kind >= 0; kind = blanks.nextSetBit(kind + 1)) {
            if (cut[kind] < left[kind] && question.weights()[kind] <= room) {
                return false;
            }
        }
        return true;
    }
}
