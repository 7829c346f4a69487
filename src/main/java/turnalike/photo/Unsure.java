package turnalike.photo;

/** Ends the way through the stages at once: what was to be traced cannot be, and why. Never leaves the package. */
final class Unsure extends Exception {
    private static final long serialVersionUID = 1;

    private final PhotoTrace.Reason reason;

    private final String mend;

    /**
     * Says what and why.
     *
     * @param reason which kind of trouble
     * @param what what is wrong
     * @param mend what to do about it
     */
    Unsure(PhotoTrace.Reason reason, String what, String mend) {
        super(what, null, false, false);
        this.reason = reason;
        this.mend = mend;
    }

    PhotoTrace.NotSure answer() {
        return new PhotoTrace.NotSure(reason, String.valueOf(getMessage()), mend);
    }
}
