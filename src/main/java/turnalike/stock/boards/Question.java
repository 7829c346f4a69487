package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The question in whole numbers: which boards to open, how to rip each, and what to cut from every strip, so that all is cut at the least
 * cost. Lengths have a kerf added, so that they add up without one.
 *
 * @param weights what each kind of blank takes of a strip, above zero
 * @param demand how many of each kind are wanted
 * @param stretches kinds of clear stretch that a strip may offer
 * @param types boards that are alike
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Question(long[] weights, int[] demand, List<Stretch> stretches, List<Type> types) {
    Question {
        stretches = List.copyOf(stretches);
        types = List.copyOf(types);
    }

    /**
     * One kind of clear stretch along a strip.
     *
     * @param blanks which kinds may be cut from it
     * @param capacity what they may take in all; any one of them, and no second, where it is {@link #ONE}
     */
    record Stretch(BitSet blanks, long capacity) {
        /** The capacity of what stands for a blank that is not cut at all. */
        static final long ONE = -1;

        boolean holdsOne() {
            return capacity == ONE;
        }
    }

    /**
     * Boards that are alike.
     *
     * @param cost of each, zero or more
     * @param count how many there are, at least one
     * @param rips the ways to rip one, each with how many of each stretch it gives
     */
    record Type(long cost, int count, List<int[]> rips) {
        Type {
            rips = List.copyOf(rips);
        }
    }

    /** The greatest cost of a type, at least 1: what a program reckons in, so that its figures are of one size. */
    double costUnit() {
        return Math.max(1, types.stream().mapToLong(Type::cost).max().orElse(1));
    }

    /** No board of any type, for each way to rip it. */
    int[][] noneOpened() {
        return types.stream().map(type -> new int[type.rips().size()]).toArray(int[][]::new);
    }

    int kinds() {
        return weights.length;
    }

    int blanks() {
        return Arrays.stream(demand).sum();
    }

    /** The same with some of its types only, in that order, and the stretches that they give. */
    Part only(List<Integer> some) {
        int[] renamed = new int[stretches.size()];
        Arrays.fill(renamed, -1);
        List<Integer> used = new ArrayList<>();
        for (int type : some) {
            for (int[] rip : types.get(type).rips()) {
                for (int stretch = 0; stretch < rip.length; stretch++) {
                    if (rip[stretch] > 0 && renamed[stretch] < 0) {
                        renamed[stretch] = used.size();
                        used.add(stretch);
                    }
                }
            }
        }
        List<Type> out = new ArrayList<>();
        for (int type : some) {
            List<int[]> rips = types.get(type).rips().stream()
                    .map(rip -> used.stream().mapToInt(stretch -> rip[stretch]).toArray())
                    .toList();
            out.add(new Type(types.get(type).cost(), types.get(type).count(), rips));
        }
        return new Part(
                new Question(weights, demand, used.stream().map(stretches::get).toList(), out), some, used);
    }

    /**
     * Part of a question.
     *
     * @param question that part by itself
     * @param types which of the whole question's its types are
     * @param stretches likewise
     */
    record Part(Question question, List<Integer> types, List<Integer> stretches) {}

    /** The grid on which every cost lies: the greatest common divisor of the types' costs. */
    long costStep() {
        long step = 0;
        for (Type type : types) {
            step = gcd(step, type.cost());
        }
        return Math.max(1, step);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
