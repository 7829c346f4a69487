package turnalike.job.nudge;

import java.util.List;

/**
 * What was found for a job.
 *
 * @param nudges the cheapest to the eye first; each stands for itself and may be taken alone
 * @param tried how many changes were tried with the divider search
 * @param left how many were not tried, since the effort was spent or enough were found
 * @param stopped whether the effort was spent before all were tried
 * @param fewestProven whether no plan of the job as it stands has fewer divider openings than each saving is counted from
 */
public record Nudges(List<Nudge> nudges, int tried, int left, boolean stopped, boolean fewestProven) {
    /** What was looked for, in a sentence: three boundaries at once are too many changes to try each. */
    public static final String LOOKED_FOR =
            "For the dividers, moves of one line or of two at once were looked for, and of three and four those that promised"
                    + " most; others may save where these do not.";

    public Nudges {
        nudges = List.copyOf(nudges);
    }
}
