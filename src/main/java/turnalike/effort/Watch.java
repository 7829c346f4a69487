package turnalike.effort;

/** An effort of which is known afterwards whether it, or a share of it, ever cut a search short, and what did. */
public final class Watch implements Effort {
    private final Effort effort;
    /** Kept together with all shares. */
    private final Cut cut;

    /** What cut a search short; {@link Ending#PROOF} as long as nothing did. */
    private static final class Cut {
        private Ending what = Ending.PROOF;

        synchronized void by(Ending cause) {
            what = what.and(cause);
        }

        synchronized Ending what() {
            return what;
        }
    }

    private Watch(Effort effort, Cut cut) {
        this.effort = effort;
        this.cut = cut;
    }

    /**
     * {@return that effort, watched}
     *
     * @param effort what a search may spend
     */
    public static Watch over(Effort effort) {
        return new Watch(effort, new Cut());
    }

    /**
     * {@return what ended the searches that had this effort} One that the clock cut short never counts as ended by proof, even if what it found
     * was proven afterwards: of several answers equally good, which is found may then hang on the machine.
     *
     * @param proven whether what they found is proven
     */
    public Ending ending(boolean proven) {
        Ending what = cut.what();
        if (what == Ending.PROOF || what == Ending.STEPS) {
            return proven ? Ending.PROOF : Ending.STEPS;
        }
        return what;
    }

    private boolean seen(boolean spent) {
        if (spent) {
            cut.by(effort.cause());
        }
        return spent;
    }

    @Override
    public boolean wantsProofAlone() {
        return effort.wantsProofAlone();
    }

    @Override
    public boolean spent() {
        return seen(effort.spent());
    }

    @Override
    public boolean spentAfter(int asks) {
        return seen(effort.spentAfter(asks));
    }

    @Override
    public Ending cause() {
        return effort.cause();
    }

    @Override
    public Effort share(double share) {
        return new Watch(effort.share(share), cut);
    }

    @Override
    public void report(Progress progress) {
        effort.report(progress);
    }
}
