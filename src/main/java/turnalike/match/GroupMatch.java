package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import turnalike.effort.Effort;

/** Puts pieces together in pairs, fours or larger groups, as for legs, so that the pieces of each group look alike. */
public final class GroupMatch {
    /** So many new starts in a row without gain and no more is hoped for. */
    private static final int PATIENCE = 500;

    private GroupMatch() {}

    /**
     * As many groups of {@code size} as the pieces allow; fewer than {@code size} pieces are left over, those that fit least.
     *
     * <p>Exact up to 20 pieces for pairs and 16 for threes and fours; beyond, a good answer. Fewer pieces than one group takes make none.
     *
     * @param pieces how many there are, numbered from 0
     * @param size how many go into a group; at least 2, else {@link IllegalArgumentException}
     * @param unlikeness of any two of the pieces; asked once for each two
     * @param effort what the search may spend where it is not exact
     * @return the groups with the smallest total difference found
     */
    public static Grouping groups(int pieces, int size, Unlikeness unlikeness, Effort effort) {
        return groups(pieces, size, pieces / Math.max(1, size), unlikeness, effort);
    }

    /**
     * The {@code size} pieces that look most alike together, the rest left over: the legs of one table. With fewer pieces there is no
     * group.
     *
     * @param pieces how many there are, numbered from 0
     * @param size how many go into the group; at least 2, else {@link IllegalArgumentException}
     * @param unlikeness of any two of the pieces; asked once for each two
     * @param effort what the search may spend where it is not exact
     * @return one group, or none
     */
    public static Grouping one(int pieces, int size, Unlikeness unlikeness, Effort effort) {
        return groups(pieces, size, Math.min(1, pieces / Math.max(1, size)), unlikeness, effort);
    }

    /**
     * {@code count} groups of {@code size}, the rest left over.
     *
     * @param pieces how many there are, numbered from 0
     * @param size how many go into a group; at least 2
     * @param count how many groups; 0 for none
     * @param unlikeness of any two of the pieces; asked once for each two
     * @param effort what the search may spend where it is not exact
     * @return the groups with the smallest total difference found
     * @throws IllegalArgumentException when there are too few pieces for that, size or count make no sense, or a difference is negative
     *     or not finite
     */
    public static Grouping groups(int pieces, int size, int count, Unlikeness unlikeness, Effort effort) {
        if (size < 2 || count < 0 || pieces < 0 || (long) size * count > pieces) {
            throw new IllegalArgumentException("groups need 2 or more of the pieces there are, were %d of %d from %d"
                    .formatted(count, size, pieces));
        }
        double[][] difference = Unlikeness.table(unlikeness, pieces);
        ExactGroups exact = new ExactGroups(difference, size, count);
        if (exact.fits()) {
            return grouping(exact.solve(), size, count, difference, true);
        }
        int[] best = improved(start(pieces, new SplitMix64(3), false), size, count, difference);
        double bestTotal = total(best, size, count, difference);
        SplitMix64 dice = new SplitMix64(4);
        int nothing = 0;
        while (bestTotal > 0 && nothing < PATIENCE && !effort.spent()) {
            int[] next = improved(start(pieces, dice, true), size, count, difference);
            double total = total(next, size, count, difference);
            nothing++;
            if (total < bestTotal * (1 - 1e-12)) {
                best = next;
                bestTotal = total;
                nothing = 0;
            }
        }
        return grouping(best, size, count, difference, bestTotal == 0);
    }

    /**
     * Groups of which a person settled some or all: places are counted through the first group, then the next. Groups stay in that order.
     *
     * @param pieces how many there are, numbered from 0
     * @param size how many go into a group; at least 2
     * @param count how many groups
     * @param unlikeness of any two of the pieces; asked once for each two
     * @param hand what is settled
     * @param effort what searching the rest may spend
     * @return the groups, and whether no other grouping that keeps what is held has a smaller total
     * @throws IllegalArgumentException when there are too few pieces, or a difference is negative or not finite
     */
    public static ByHand byHand(
            int pieces, int size, int count, Unlikeness unlikeness, HandPlaces hand, Effort effort) {
        if (size < 2 || count < 1 || (long) size * count > pieces) {
            throw new IllegalArgumentException("groups need 2 or more of the pieces there are, were %d of %d from %d"
                    .formatted(count, size, pieces));
        }
        double[][] difference = Unlikeness.table(unlikeness, pieces);
        int[] start = hand.start(size * count, IntStream.range(0, pieces).toArray(), (piece, place) -> true);
        HandSearch search = new HandSearch(
                pieces,
                start,
                hand,
                (piece, place) -> true,
                new HandSearch.Judge(order -> 0, order -> total(order, size, count, difference), order -> 0));
        if (!hand.stands()) {
            search.run(effort);
        }
        int[] order = search.pieceAt();
        List<List<Integer>> groups = new ArrayList<>();
        for (int g = 0; g < count; g++) {
            groups.add(Arrays.stream(order, g * size, (g + 1) * size).boxed().toList());
        }
        List<Integer> placed = Arrays.stream(order).boxed().toList();
        List<Integer> spares = IntStream.range(0, pieces)
                .boxed()
                .filter(piece -> !placed.contains(piece))
                .toList();
        double total = total(order, size, count, difference);
        return new ByHand(new Grouping(groups, spares, total, total == 0), !hand.stands() && search.proven);
    }

    /**
     * Groups that a person had a hand in.
     *
     * @param grouping which stand together, each group in the order of its places
     * @param leastOfRest whether no other grouping that keeps what is held has a smaller total
     */
    public record ByHand(Grouping grouping, boolean leastOfRest) {}

    private static int[] start(int pieces, SplitMix64 dice, boolean mixed) {
        int[] order = IntStream.range(0, pieces).toArray();
        if (mixed) {
            dice.bringForward(order, pieces);
        }
        return order;
    }

    /** Exchanges two pieces of different groups, or of a group and the rest, as long as that helps. */
    private static int[] improved(int[] order, int size, int count, double[][] difference) {
        double least = 1e-12 * (1 + total(order, size, count, difference));
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 0; i < size * count; i++) {
                for (int j = (i / size + 1) * size; j < order.length; j++) {
                    double gain = pull(order, i, i, size, difference) - pull(order, j, i, size, difference);
                    if (j < size * count) {
                        gain += pull(order, j, j, size, difference) - pull(order, i, j, size, difference);
                    }
                    if (gain > least) {
                        int held = order[i];
                        order[i] = order[j];
                        order[j] = held;
                        moved = true;
                    }
                }
            }
        }
        return order;
    }

    /** How much the piece at {@code which} differs from the group that {@code slot} belongs to, were it to stand in that slot. */
    private static double pull(int[] order, int which, int slot, int size, double[][] difference) {
        double sum = 0;
        int first = slot / size * size;
        for (int k = first; k < first + size; k++) {
            if (k != slot) {
                sum += difference[order[which]][order[k]];
            }
        }
        return sum;
    }

    private static double total(int[] order, int size, int count, double[][] difference) {
        double sum = 0;
        for (int i = 0; i < size * count; i++) {
            sum += pull(order, i, i, size, difference) / 2;
        }
        return sum;
    }

    private static Grouping grouping(int[] order, int size, int count, double[][] difference, boolean proven) {
        List<List<Integer>> groups = new ArrayList<>();
        for (int g = 0; g < count; g++) {
            groups.add(sorted(order, g * size, (g + 1) * size));
        }
        groups.sort(Comparator.comparing(group -> group.get(0)));
        return new Grouping(
                groups, sorted(order, size * count, order.length), total(order, size, count, difference), proven);
    }

    private static List<Integer> sorted(int[] order, int from, int to) {
        return Arrays.stream(order, from, to).sorted().boxed().toList();
    }
}
