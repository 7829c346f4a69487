package turnalike.web.job;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import turnalike.job.edit.MemberEdit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.pattern.Member;
import turnalike.web.Pages;
import turnalike.web.Shell;

/**
 * Edits and shows a job that nobody sees, again and again, so that Java's compilers have done their work before a person's first edit:
 * without it the first edits after a start take about twice as long as later ones. Keeps nothing.
 */
public final class Rehearsal {
    /** What is typed may differ by little; it must only be another text each time. */
    private static final double STEP = 0.002;

    private static final JobId NOBODYS = JobId.of(new int[12]);

    private final Shell shell;
    private final JobShow show;

    /** @param shell of a page that is sent to nobody */
    public Rehearsal(Pages pages, Shell shell) {
        this.shell = shell;
        this.show = new JobShow(pages, new Plans()); // its own, so that no search for a person is ended early
    }

    /** Plays so many edits of the text beside whatever else goes on; in the end, how many were shown. */
    public CompletableFuture<Integer> begin(JobText text, int edits) {
        return CompletableFuture.supplyAsync(
                () -> (int) IntStream.rangeClosed(1, edits)
                        .mapToObj(turn -> play(text, turn))
                        .filter(part -> !part.isEmpty())
                        .count(),
                Rehearsal::beside);
    }

    private static void beside(Runnable work) {
        Thread thread = new Thread(work, "turnalike-rehearsal");
        thread.setDaemon(true);
        thread.start();
    }

    /** One edit, and the part of the page it changes, as a script would be sent it. */
    private String play(JobText text, int turn) {
        int members = text.job().pattern().members().size();
        int number = 1 + turn % members;
        JobText edited = longer(text, number, 1 + turn * STEP);
        KeptJob.Times times = new KeptJob.Times(Instant.EPOCH, Instant.EPOCH, turn);
        KeptJob kept = new KeptJob(NOBODYS, edited, List.of(), List.of(), times, Optional.empty(), Optional.empty());
        return show.part(shell, kept, number);
    }

    private static JobText longer(JobText text, int number, double times) {
        Member member = text.job().pattern().members().get(number - 1);
        double one = text.job().units().length(1).mm();
        String length = String.format(Locale.ROOT, "%.4f", member.length().mm() / one * times);
        // An edit that cannot be made has still been read and judged.
        return new MemberEdit(number, new MemberEdit.Sizes(Map.of("length", length)))
                .on(text)
                .text()
                .orElse(text);
    }
}
