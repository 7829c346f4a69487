package turnalike.stock.boards;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The knapsack tables of a question: one for each choice of blanks, up to the longest stretch that offers it. */
final class CutTables {
    private final Question question;
    private final Map<BitSet, KnapsackTable> tables;

    private CutTables(Question question, Map<BitSet, KnapsackTable> tables) {
        this.question = question;
        this.tables = tables;
    }

    /** Empty when one of them would be too large. */
    static Optional<CutTables> of(Question question) {
        Map<BitSet, Long> longest = new LinkedHashMap<>();
        for (Question.Stretch each : question.stretches()) {
            if (!each.holdsOne()) {
                longest.merge(each.blanks(), each.capacity(), Math::max);
            }
        }
        Map<BitSet, KnapsackTable> tables = new LinkedHashMap<>();
        for (Map.Entry<BitSet, Long> each : longest.entrySet()) {
            Optional<KnapsackTable> table = KnapsackTable.of(question, each.getKey(), each.getValue());
            if (table.isEmpty()) {
                return Optional.empty();
            }
            tables.put(each.getKey(), table.get());
        }
        return Optional.of(new CutTables(question, tables));
    }

    int asks() {
        return tables.values().stream().mapToInt(KnapsackTable::asks).sum();
    }

    /** Works all of them out for blanks worth so much. */
    void fill(double[] worth, int[] most) {
        tables.values().forEach(table -> table.fill(worth, most));
    }

    /** The most that a stretch can give, by the last {@link #fill} with the same worths and bounds. */
    double best(int stretch, double[] worth, int[] most) {
        Question.Stretch of = question.stretches().get(stretch);
        if (of.holdsOne()) {
            int kind = bestOne(of, worth, most);
            return kind < 0 ? 0 : worth[kind];
        }
        return table(of).best(of.capacity());
    }

    /** What to cut for it. */
    StripCut cut(int stretch, double[] worth, int[] most) {
        Question.Stretch of = question.stretches().get(stretch);
        if (of.holdsOne()) {
            int[] one = new int[question.kinds()];
            int kind = bestOne(of, worth, most);
            if (kind >= 0) {
                one[kind] = 1;
            }
            return new StripCut(stretch, one);
        }
        return new StripCut(stretch, table(of).blanks(of.capacity(), question.kinds()));
    }

    /** The most that blanks can take of a stretch. */
    long reached(int stretch) {
        Question.Stretch of = question.stretches().get(stretch);
        return table(of).reached(of.capacity());
    }

    /** What to cut where part of a stretch that holds more than one is taken already. */
    StripCut cutBeside(int stretch, long taken) {
        Question.Stretch of = question.stretches().get(stretch);
        return new StripCut(stretch, table(of).blanks(of.capacity() - taken, question.kinds()));
    }

    private KnapsackTable table(Question.Stretch stretch) {
        return Optional.ofNullable(tables.get(stretch.blanks())).orElseThrow();
    }

    private static int bestOne(Question.Stretch stretch, double[] worth, int[] most) {
        int out = -1;
        for (int kind = stretch.blanks().nextSetBit(0);
                kind >= 0;
                kind = stretch.blanks().nextSetBit(kind + 1)) {
            if (most[kind] > 0 && worth[kind] > 0 && (out < 0 || worth[kind] > worth[out])) {
                out = kind;
            }
        }
        return out;
    }
}
