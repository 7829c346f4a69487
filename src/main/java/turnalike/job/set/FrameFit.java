package turnalike.job.set;

import java.util.List;
import turnalike.units.Working;

/** How the pattern stands in its frame: what touches, what is left between mortises, where each piece goes. */
public sealed interface FrameFit permits WheelFit {
    /** {@return what cannot be built or is thin, what cannot be built first} */
    List<Misfit> misfits();

    /** {@return how its figures were found} */
    List<Working> workings();

    /** {@return whether nothing in it forbids building it} */
    default boolean buildable() {
        return misfits().stream().noneMatch(Misfit::forbids);
    }

    /**
     * {@return what the case for this kind makes of it}
     *
     * @param <R> what becomes of it
     * @param cases one answer for each kind
     */
    <R> R match(Cases<R> cases);

    /**
     * What an outer layer makes of each kind.
     *
     * @param <R> what it makes
     */
    interface Cases<R> {
        /**
         * {@return what a wheel's fit becomes}
         *
         * @param fit the figures
         */
        R wheel(WheelFit fit);
    }
}
