package turnalike.stock.boards;

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
}
