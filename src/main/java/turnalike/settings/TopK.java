package turnalike.settings;

/** The greatest few of the values offered, and what they are the values of. */
final class TopK {
    private final int most;
    private final int[] index;
    private final int[] value;
    private int size;

    /** @param most how many are kept, at least 1 */
    TopK(int most) {
        this.most = most;
        this.index = new int[most];
        this.value = new int[most];
    }

    void clear() {
        size = 0;
    }

    void offer(int offered, int itsValue) {
        if (size == most && itsValue <= value[size - 1]) {
            return;
        }
        int at = size < most ? size++ : size - 1;
        while (at > 0 && value[at - 1] < itsValue) {
            index[at] = index[at - 1];
            value[at] = value[at - 1];
            at--;
        }
        index[at] = offered;
        value[at] = itsValue;
    }

    int size() {
        return size;
    }

    /** The one of that rank, 0 for the best. */
    int index(int rank) {
        return index[rank];
    }

    /** The least value kept; 0 when none was offered. */
    int least() {
        return size == 0 ? 0 : value[size - 1];
    }

    int sum() {
        int sum = 0;
        for (int i = 0; i < size; i++) {
            sum += value[i];
        }
        return sum;
    }

    /** The greatest sum of one fewer than are to be kept. */
    int sumButOne() {
        return size < most ? sum() : sum() - value[size - 1];
    }
}
