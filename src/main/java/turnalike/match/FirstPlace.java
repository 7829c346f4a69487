package turnalike.match;

/** Of the orders that are one another turned or mirrored, the one that is told: a wheel without a given moment has no first place of its own. */
final class FirstPlace {
    private FirstPlace() {}

    /** The piece listed first stands at the first place, and the wheel goes round toward the earlier listed of its two neighbours. */
    static int[] turned(int[] pieceAt) {
        int n = pieceAt.length;
        int first = 0;
        for (int place = 1; place < n; place++) {
            first = pieceAt[place] < pieceAt[first] ? place : first;
        }
        int step = pieceAt[(first + 1) % n] <= pieceAt[(first + n - 1) % n] ? 1 : n - 1;
        int[] out = new int[n];
        for (int place = 0; place < n; place++) {
            out[place] = pieceAt[(int) ((first + (long) step * place) % n)];
        }
        return out;
    }
}
