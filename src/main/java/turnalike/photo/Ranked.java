package turnalike.photo;

/** The value of a rank among many, without putting all of them in order. */
final class Ranked {
    private Ranked() {}

    /**
     * Finds what would stand at a place if the values were in order.
     *
     * @param values mixed up afterwards; no NaN among them
     * @param count how many of them, from the first on
     * @param rank the place, from 0 to below that count
     */
    static float of(float[] values, int count, int rank) {
        int low = 0;
        int high = count - 1;
        while (low < high) {
            float pivot = middle(values[low], values[(low + high) >>> 1], values[high]);
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    float held = values[i];
                    values[i++] = values[j];
                    values[j--] = held;
                }
            }
            // Between j and i all are the pivot.
            if (rank <= j) {
                high = j;
            } else if (rank >= i) {
                low = i;
            } else {
                return pivot;
            }
        }
        return values[rank];
    }

    /**
     * Finds the same among very many, which are left as they are: first by half of their digits, then among those that share them.
     *
     * @param values zero and more
     * @param rank the place, from 0 to below their count
     */
    static float ofMany(float[] values, int rank) {
        // Of numbers that are not negative the bits stand in the numbers' order; adding 0 turns a negative 0.
        int[] counts = new int[1 << 15];
        for (float value : values) {
            counts[Float.floatToRawIntBits(value + 0f) >>> 16]++;
        }
        int half = 0;
        int below = 0;
        while (below + counts[half] <= rank) {
            below += counts[half++];
        }
        float[] alike = new float[counts[half]];
        int count = 0;
        for (float value : values) {
            if (Float.floatToRawIntBits(value + 0f) >>> 16 == half) {
                alike[count++] = value;
            }
        }
        return of(alike, count, rank - below);
    }

    private static float middle(float a, float b, float c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
