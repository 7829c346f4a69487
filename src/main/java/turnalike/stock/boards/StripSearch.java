package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import turnalike.effort.Effort;

/**
 * Whether the blanks can all be cut from stretches that are given, and how. The {@link StripProgram} tells where it cannot be and, by its
 * answer, what to cut first; what is left is searched through, one blank after another put into every cut that can hold it (bin
 * completion; from memory).
 *
 * <p>Exact: {@link Answer#NO} is a proof, by the program's bound or by going through all. First the program's own choice is followed down with
 * few departures from it (limited discrepancy search; Harvey and Ginsberg 1995, from memory), since that finds an answer soonest.
 */
final class StripSearch {
    /** What came of a search. */
    enum Answer {
        YES,
        NO,
        /** The effort was spent first. */
        UNKNOWN
    }

    private static final double WHOLE = 1e-6;

    private static final int MOST_DEPARTURES = 4;
    private static final int MOST_BRANCHES = 20_000;

    private final Question question;
    private final StripProgram program;
    private final FillOneByOne filling;
    private List<StripCut> found = List.of();
    private boolean complete;

    StripSearch(Question question, CutTables tables) {
        this.question = question;
        this.program = new StripProgram(question, tables);
        this.filling = new FillOneByOne(question, Optional.of(tables));
    }

    /** What {@link #solve} found, when it answered yes. */
    List<StripCut> found() {
        return found;
    }

    /** @param supply how many of each stretch there are */
    Answer solve(int[] supply, Effort most) {
        program.spendFrom(most);
        Optional<List<StripCut>> simple = filling.fill(question.demand(), supply, most);
        if (simple.isPresent()) {
            found = simple.get();
            return Answer.YES;
        }
        for (int departures = 0; departures <= MOST_DEPARTURES; departures++) {
            Answer answer = down(question.demand().clone(), supply.clone(), departures, 0);
            if (answer == Answer.YES) {
                return answer;
            }
            if (program.isSpent()) {
                return Answer.UNKNOWN;
            }
            if (answer == Answer.NO) {
                return answer;
            }
        }
        complete = true;
        return down(question.demand().clone(), supply.clone(), Integer.MAX_VALUE, 0);
    }

    /** Below the root a no counts only where all was gone through. */
    private Answer down(int[] left, int[] supply, int departures, int depth) {
        if (depth == 0) {
            found = new ArrayList<>();
            complete = departures == Integer.MAX_VALUE;
        }
        if (Arrays.stream(left).allMatch(each -> each == 0)) {
            return Answer.YES;
        }
        if (!program.bounded(left, supply)) {
            return program.isSpent() ? Answer.UNKNOWN : Answer.NO;
        }
        double[] amounts = program.amounts();
        if (program.lack() < WHOLE && takeWhole(left, supply, amounts)) {
            return Answer.YES;
        }
        if (depth > 0 && depth % 4 == 0) {
            Optional<List<StripCut>> simple = filling.simple(left, supply);
            if (simple.isPresent()) {
                found.addAll(simple.get());
                return Answer.YES;
            }
        }
        return branch(left, supply, departures, depth, amounts);
    }

    private Answer branch(int[] left, int[] supply, int departures, int depth, double[] amounts) {
        List<Integer> order = inOrder(amounts);
        if (order.isEmpty()) {
            return Answer.UNKNOWN;
        }
        StripCut first = trimmed(program.cut(order.get(0)), left);
        int kind = largest(first);
        if (kind < 0) {
            return Answer.UNKNOWN;
        }
        StripProgram.Shadow shadow = program.shadow();
        boolean through = complete;
        int tried = 0;
        Set<List<Integer>> done = new HashSet<>();
        for (int column : order) {
            StripCut cut = trimmed(program.cut(column), left);
            boolean isOpen = cut.blanks()[kind] > 0 && supply[cut.stretch()] > 0 && !shadow.rulesOut(cut);
            if (!isOpen || !done.add(cut.key())) {
                continue;
            }
            if (tried > departures) {
                return Answer.UNKNOWN;
            }
            int copies = complete ? 1 : Math.max(1, (int) (amounts[column] + WHOLE));
            Answer answer = take(cut, copies, left, supply, departures - tried, depth);
            if (answer == Answer.YES || program.isSpent()) {
                return answer;
            }
            through &= answer == Answer.NO;
            tried++;
        }
        if (!complete) {
            return Answer.UNKNOWN;
        }
        List<StripCut> others = new Completions(question, left, supply).with(kind, MOST_BRANCHES);
        through &= others.size() < MOST_BRANCHES;
        for (StripCut cut : others) {
            if (!shadow.rulesOut(cut) && done.add(cut.key())) {
                Answer answer = take(cut, 1, left, supply, departures, depth);
                if (answer == Answer.YES || program.isSpent()) {
                    return answer;
                }
                through &= answer == Answer.NO;
            }
        }
        return through ? Answer.NO : Answer.UNKNOWN;
    }

    private Answer take(StripCut cut, int copies, int[] left, int[] supply, int departures, int depth) {
        int[] lessLeft = left.clone();
        int[] lessSupply = supply.clone();
        int taken = 0;
        int before = found.size();
        while (taken < copies && lessSupply[cut.stretch()] > 0 && fits(cut, lessLeft)) {
            for (int kind = 0; kind < lessLeft.length; kind++) {
                lessLeft[kind] -= cut.blanks()[kind];
            }
            lessSupply[cut.stretch()]--;
            found.add(cut);
            taken++;
        }
        Answer answer = down(lessLeft, lessSupply, departures, depth + 1);
        if (answer != Answer.YES) {
            found.subList(before, found.size()).clear();
        }
        return answer;
    }

    private static boolean fits(StripCut cut, int[] left) {
        for (int kind = 0; kind < left.length; kind++) {
            if (cut.blanks()[kind] > left[kind]) {
                return false;
            }
        }
        return true;
    }

    /** Columns in use, the surest first; of equals the fullest. */
    private List<Integer> inOrder(double[] amounts) {
        List<Integer> out = new ArrayList<>();
        for (int column = 0; column < amounts.length; column++) {
            if (amounts[column] > WHOLE) {
                out.add(column);
            }
        }
        out.sort(Comparator.<Integer>comparingDouble(column -> -Math.floor(amounts[column] + WHOLE))
                .thenComparingDouble(column -> -Math.rint(amounts[column] * 1e6))
                .thenComparingDouble(column -> -weight(program.cut(column))));
        return out;
    }

    private double weight(StripCut cut) {
        double sum = 0;
        for (int kind = 0; kind < cut.blanks().length; kind++) {
            sum += (double) cut.blanks()[kind] * question.weights()[kind];
        }
        return sum;
    }

    private int largest(StripCut cut) {
        int out = -1;
        for (int kind = 0; kind < cut.blanks().length; kind++) {
            if (cut.blanks()[kind] > 0 && (out < 0 || question.weights()[kind] > question.weights()[out])) {
                out = kind;
            }
        }
        return out;
    }

    private static StripCut trimmed(StripCut cut, int[] left) {
        int[] blanks = new int[left.length];
        for (int kind = 0; kind < left.length; kind++) {
            blanks[kind] = Math.min(cut.blanks()[kind], left[kind]);
        }
        return new StripCut(cut.stretch(), blanks);
    }

    /** The program's answer where it is in whole cuts. */
    private boolean takeWhole(int[] left, int[] supply, double[] amounts) {
        int[] stillLeft = left.clone();
        int[] stillThere = supply.clone();
        List<StripCut> out = new ArrayList<>();
        for (int column = 0; column < amounts.length; column++) {
            int copies = (int) Math.rint(amounts[column]);
            if (Math.abs(amounts[column] - copies) > WHOLE) {
                return false;
            }
            for (int copy = 0; copy < copies; copy++) {
                StripCut cut = trimmed(program.cut(column), stillLeft);
                if (--stillThere[cut.stretch()] < 0) {
                    return false;
                }
                for (int kind = 0; kind < left.length; kind++) {
                    stillLeft[kind] -= cut.blanks()[kind];
                }
                out.add(cut);
            }
        }
        if (Arrays.stream(stillLeft).anyMatch(each -> each > 0)) {
            return false;
        }
        found.addAll(out);
        return true;
    }
}
