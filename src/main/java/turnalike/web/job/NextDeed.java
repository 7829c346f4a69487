package turnalike.web.job;

import turnalike.job.Plan;
import turnalike.job.kept.KeptJob;

/**
 * What a turner does next with a job: the one thing at the head of its page that is told apart from all others.
 *
 * @param words on the button
 * @param to where it leads, after the job's address or within the page
 * @param local whether it stays on the page
 */
public record NextDeed(String words, String to, boolean local) {
    static NextDeed of(KeptJob kept, Plan plan, boolean canBeBuilt) {
        if (!canBeBuilt) {
            return new NextDeed("Mend the frame", "#panel-frame", true);
        }
        if (plan.job().pattern().members().size() == 1) {
            return new NextDeed("Insert the first detail", "#insert", true);
        }
        int wanted = plan.job().count();
        int done = kept.pieces().size();
        if (done == 0) {
            return new NextDeed("Next: print stick and card", "/sheets", false);
        }
        return done < wanted
                ? new NextDeed("Next: piece %d of %d at the bench".formatted(done + 1, wanted), "/bench", false)
                : new NextDeed("Next: choose the set", "/match", false);
    }
}
