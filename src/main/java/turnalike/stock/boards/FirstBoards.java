package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A first answer and a first bound, without any program. */
final class FirstBoards {
    /** How many ways to rip a board are compared for each board that is opened. */
    private static final int MOST_COMPARED = 600;

    private final Question question;
    private final FillOneByOne filling;
    private final int[] left;
    private final int[][] opened;

    FirstBoards(Question question, Optional<CutTables> tables) {
        this.question = question;
        this.filling = new FillOneByOne(question, tables);
        this.left = question.demand().clone();
        this.opened = question.noneOpened();
    }

    /** Again and again the board that gives most for its cost, ripped as suits what is left; empty when the boards do not suffice so. */
    Optional<BoardSearch.Found> find() {
        List<StripCut> out = new ArrayList<>();
        long cost = 0;
        while (Arrays.stream(left).anyMatch(each -> each > 0)) {
            Optional<int[]> next = next();
            if (next.isEmpty()) {
                return Optional.empty();
            }
            Question.Type type = question.types().get(next.get()[0]);
            out.addAll(filling.partial(left, type.rips().get(next.get()[1])));
            opened[next.get()[0]][next.get()[1]]++;
            cost += type.cost();
        }
        return Optional.of(new BoardSearch.Found(cost, opened, out));
    }

    /** A type and a way to rip it. */
    private Optional<int[]> next() {
        Optional<int[]> best = Optional.empty();
        double bestGain = 0;
        int compared = 0;
        for (int type = 0; type < opened.length && compared < MOST_COMPARED; type++) {
            Question.Type of = question.types().get(type);
            if (Arrays.stream(opened[type]).sum() == of.count()) {
                continue;
            }
            for (int rip = 0; rip < of.rips().size() && compared < MOST_COMPARED; rip++) {
                compared++;
                double gain = gain(of.rips().get(rip)) / Math.max(0.5, (double) of.cost());
                if (gain > bestGain) {
                    bestGain = gain;
                    best = Optional.of(new int[] {type, rip});
                }
            }
        }
        return best;
    }

    private double gain(int[] stretches) {
        int[] after = left.clone();
        filling.partial(after, stretches);
        double gain = 0;
        for (int kind = 0; kind < after.length; kind++) {
            gain += (double) (left[kind] - after[kind]) * question.weights()[kind];
        }
        return gain;
    }

    /** A bound without a program: every blank costs at least what its length costs where length is cheapest. */
    static long byContent(Question question) {
        double cheapest = Double.POSITIVE_INFINITY;
        for (Question.Type type : question.types()) {
            double most = 0;
            for (int[] rip : type.rips()) {
                double sum = 0;
                for (int stretch = 0; stretch < rip.length; stretch++) {
                    sum += rip[stretch]
                            * (double) Math.max(
                                    0, question.stretches().get(stretch).capacity());
                }
                most = Math.max(most, sum);
            }
            cheapest = Math.min(cheapest, most > 0 ? (double) type.cost() / most : 0);
        }
        double need = 0;
        for (int kind = 0; kind < question.kinds(); kind++) {
            need += (double) question.weights()[kind] * question.demand()[kind];
        }
        return Double.isInfinite(cheapest)
                ? 0
                : ((long) Math.ceil(need * cheapest / question.costStep() - 1e-6)) * question.costStep();
    }
}
