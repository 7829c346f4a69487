package turnalike.match;

import java.util.Arrays;

/** Orders worth starting from: no search, only construction. Each takes a set in ascending moments and says which stands where. */
final class ConstructedOrders {
    private ConstructedOrders() {}

    /**
     * Where n = a·b without common factor, the k-th lightest of the pieces stands so that its rank is f(place mod a) + g(place mod b). Each
     * part of such a sum is the same all round a regular polygon and cancels, so pieces in even steps balance exactly. This is the known
     * construction behind "weights 1 … n can balance exactly unless n is a prime power" (OEIS A118887).
     *
     * @return empty for a prime power, where there is no such split
     */
    static int[] polygons(int[] ascending) {
        int n = ascending.length;
        int a = coprimePart(n);
        if (a == 1 || a == n) {
            return new int[0];
        }
        int[] pieceAt = new int[n];
        for (int place = 0; place < n; place++) {
            pieceAt[place] = ascending[place % a + a * (place % (n / a))];
        }
        return pieceAt;
    }

    /** The full power of n's smallest prime factor. */
    private static int coprimePart(int n) {
        int part = 1;
        int prime = 2;
        while (prime <= n && n % prime != 0) {
            prime++;
        }
        int rest = n;
        while (rest > 1 && rest % prime == 0) {
            rest /= prime;
            part *= prime;
        }
        return part;
    }

    /** Heavy against heavy: pieces next in weight face one another, and the pairs' differences are dealt round in turn. */
    static int[] facing(int[] ascending) {
        int n = ascending.length;
        int[] pieceAt = new int[n];
        boolean[] taken = new boolean[n];
        int place = 0;
        for (int rank = 0; rank < n; rank++) {
            while (taken[place]) {
                place = (place + 1) % n;
            }
            pieceAt[place] = ascending[rank];
            taken[place] = true;
            place = (place + (rank % 2 == 0 ? n / 2 : n / 2 + Math.max(1, n / 3))) % n;
        }
        return pieceAt;
    }

    static int[] random(int[] set, SplitMix64 dice) {
        int[] pieceAt = Arrays.copyOf(set, set.length);
        dice.bringForward(pieceAt, pieceAt.length);
        return pieceAt;
    }
}
