package turnalike.photo;

/** Something made of a whole picture by blocks of pixels, line of blocks by line; the lines in any order, by any thread. */
interface BlockLines {
    /** How many lines of pixels one of blocks is. */
    int block();

    /** How many lines of blocks there are. */
    int count();

    /** Makes some lines, from one to before another. */
    void make(int from, int end);

    /** Makes all of them. */
    default void makeAll() {
        Cores.parts(count(), this::make);
    }
}
