package turnalike.web.job;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import turnalike.job.edit.MemberEdit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.pattern.Member;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Shell;

/**
 * Edits and shows a job that nobody sees, again and again, so that Java's compilers have done their work before a person's first edit:
 * without it the first edits after a start take about twice as long as later ones. Keeps nothing.
 */
public final class PageWarmUp {
    /** What is typed may differ by little; it must only be another text each time. */
    private static final double STEP = 0.002;

    private static final JobId NOBODYS = JobId.of(new int[12]);

    private final Shell shell;
    private final JobShow show;
    private final JobText text;

    private PageWarmUp(JobShow show, Shell shell, JobText text) {
        this.show = show;
        this.shell = shell;
        this.text = text;
    }

    /**
     * Plays so many edits beside whatever else goes on.
     *
     * @param shell of a page that is sent to nobody
     * @return in the end, how many were made and shown; when it is cancelled, no more are
     */
    public static CompletableFuture<Integer> begin(Pages pages, Shell shell, JobText text, int edits) {
        // Plans of its own, so that no search for a person is ended early, and forgotten with it.
        PageWarmUp rehearsal = new PageWarmUp(new JobShow(pages, new PlanCache(pages.work())), shell, text);
        CompletableFuture<Integer> shown = new CompletableFuture<>();
        Thread thread = new Thread(() -> rehearsal.play(edits, shown), "turnalike-rehearsal");
        thread.setDaemon(true);
        thread.start();
        return shown;
    }

    private void play(int edits, CompletableFuture<Integer> shown) {
        try {
            int made = 0;
            for (int turn = 0; turn < edits && !shown.isCancelled(); turn++) {
                made += play(turn).length == 0 ? 0 : 1;
            }
            shown.complete(made);
        } catch (RuntimeException fault) {
            shown.completeExceptionally(fault);
        }
    }

    /** One edit, and the part of the page it changes, as a script would be sent it. */
    private byte[] play(int turn) {
        int members = text.job().pattern().members().size();
        int number = 1 + turn % members;
        JobText edited = longer(number, 1 + (1 + turn / members) * STEP);
        KeptJob.Times times = new KeptJob.Times(Instant.EPOCH, Instant.EPOCH, turn);
        KeptJob kept = new KeptJob(NOBODYS, edited, List.of(), List.of(), times, Optional.empty(), Optional.empty());
        return show.part(shell, kept, number);
    }

    private JobText longer(int number, double times) {
        Member member = text.job().pattern().members().get(number - 1);
        double one = text.job().units().length(1).mm();
        String length = String.format(Locale.ROOT, "%.4f", member.length().mm() / one * times);
        return new MemberEdit(number, new MemberEdit.Sizes(Map.of("length", length)))
                .on(text)
                .text()
                .orElseThrow();
    }
}
