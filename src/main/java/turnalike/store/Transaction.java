package turnalike.store;

/** How a database is told where a transaction begins and ends. */
interface Transaction {
    /** What is to be thought of a write that broke off. */
    enum Ending {
        /** It did not come about, and will not. */
        REFUSED,
        /** A server was lost, and the write with it: it may be made again. */
        TO_BE_MADE_AGAIN,
        /** A server was lost, but had kept it before. */
        KEPT
    }

    /** Runs one statement that gives nothing back. */
    void say(String sql);

    void begin();

    /** When this returns, all since the beginning is kept for good. */
    void commit();

    /** Takes everything back since the beginning; also where nothing is left to take back. */
    void rollBack();

    /** From here on may be taken back by itself. */
    default void mark() {
        say("SAVEPOINT one");
    }

    /** Takes back what came after the mark. */
    default void backToMark() {
        say("ROLLBACK TO one");
    }

    default void forgetMark() {
        say("RELEASE one");
    }

    /** Looks what became of a write that broke off with this. */
    default Ending ending(RuntimeException trouble) {
        return Ending.REFUSED;
    }
}
