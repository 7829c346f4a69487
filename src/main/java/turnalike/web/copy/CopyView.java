package turnalike.web.copy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.drawing.piece.AgainstPicture;
import turnalike.drawing.piece.PhotoOverlay;
import turnalike.drawing.piece.TracePicture;
import turnalike.job.kept.KeptJob;
import turnalike.job.original.MemberRow;
import turnalike.job.original.OriginalTrace;
import turnalike.job.pieces.AgainstReport;
import turnalike.photo.PhotoCopy;
import turnalike.photo.PhotoTrace;
import turnalike.photo.PhotoWish;
import turnalike.photo.PixelPoint;
import turnalike.trace.TraceWarnings;
import turnalike.trace.Traced;
import turnalike.trace.TracedRun;
import turnalike.units.Article;
import turnalike.units.Problem;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;

/**
 * Copying as the page shows it: the form, and one original while it is traced and after.
 *
 * @param purpose what for
 * @param job the one it is for; none for a new one
 * @param form what was typed
 * @param run the original; none before one is sent
 * @param refused why nothing was done
 */
public record CopyView(
        CopyPurpose purpose, Optional<KeptJob> job, OriginalForm form, Optional<CopyRun> run, List<Problem> refused) {
    public CopyView {
        refused = List.copyOf(refused);
    }

    static String address(CopyPurpose purpose, Optional<KeptJob> job) {
        return switch (purpose) {
            case NEW_JOB -> "/copy";
            case PATTERN -> job.map(each -> JobAddress.address(each.id())).orElse("") + "/copy";
            case CHECK -> job.map(each -> JobAddress.address(each.id())).orElse("") + "/check";
        };
    }

    public String address() {
        return address(purpose, job);
    }

    public boolean isCheck() {
        return purpose == CopyPurpose.CHECK;
    }

    public boolean isNewJob() {
        return purpose == CopyPurpose.NEW_JOB;
    }

    public String title() {
        String of = job.map(each -> each.text().job().title() + ": ").orElse("");
        return of + (isCheck() ? "check a finished piece" : isNewJob() ? "Copy an original" : "copy an original");
    }

    /** Where the job's tabs are; empty for a new job. */
    public String jobAddress() {
        return job.map(each -> JobAddress.address(each.id())).orElse("");
    }

    public Optional<JobSteps> steps() {
        return job.map(JobSteps::of);
    }

    private CopyRun of() {
        return run.orElseThrow();
    }

    public String here() {
        return address() + "/" + of().id();
    }

    public String name() {
        return of().sent().name();
    }

    public boolean isRunning() {
        return !of().isDone();
    }

    public String progress() {
        return of().progress();
    }

    /** Why nothing was found or nothing was taken; empty where all is well. */
    public List<Problem> problems() {
        return refused.isEmpty()
                ? run.flatMap(CopyRun::trace).map(OriginalTrace::problems).orElse(List.of()).stream()
                        .map(OptionWords::of)
                        .toList()
                : refused;
    }

    /** The same to be read at a lathe. */
    public List<WrongAndMend> told() {
        return problems().stream().map(WrongAndMend::of).toList();
    }

    public Asked asks() {
        return run.map(each -> Asked.of(each.sent().kind())).orElse(Asked.OF_ANY);
    }

    private UnitSystem units() {
        return isCheck() ? job.map(each -> each.text().job().units()).orElse(form.system()) : form.system();
    }

    public boolean isFound() {
        return traced().isPresent();
    }

    private Optional<Traced> traced() {
        return run.flatMap(CopyRun::traced);
    }

    /** What was found, in a sentence. */
    public String found() {
        Traced traced = traced().orElseThrow();
        int count = traced.run().members().size();
        return "%s of a piece %s long; %d %s explain%s it."
                .formatted(
                        SentenceCase.capital(Article.with(traced.source().word())),
                        traced.original().profile().length().formatBoth(units()),
                        count,
                        count == 1 ? "member" : "members",
                        count == 1 ? "s" : "");
    }

    public List<MemberRow> rows() {
        return MemberRow.of(traced().orElseThrow(), units());
    }

    /** How well the members explain what was read. */
    public String fit() {
        TracedRun run = traced().orElseThrow().run();
        return "%s; a radius was taken to be known within %s."
                .formatted(run.miss().words(units()), run.scatter().formatMeasuredBoth(units()));
    }

    /** What to know before relying on it; of a finished piece without what is said of members, which are the pattern's there. */
    public List<String> notes() {
        Traced traced = traced().orElseThrow();
        List<String> ofMembers =
                isCheck() ? TraceWarnings.of(traced.original(), traced.run(), form.system()) : List.<String>of();
        return traced.warnings().stream()
                .filter(each -> !ofMembers.contains(each))
                .map(each -> SentenceCase.sentence(OptionWords.of(each)))
                .toList();
    }

    /** What was read over the members found. */
    public String drawing() {
        return TracePicture.svg(traced().orElseThrow(), units()).inline();
    }

    /** A file that is no picture is none with other words either. */
    public boolean canBeTracedAgain() {
        return hasPicture() || run.filter(each -> !each.sent().isPhotograph()).isPresent();
    }

    // ---- the photograph

    public boolean hasPicture() {
        return run.flatMap(CopyRun::copy).isPresent();
    }

    private PhotoCopy copy() {
        return run.flatMap(CopyRun::copy).orElseThrow();
    }

    /** The photograph with what was found in it. */
    public String picture() {
        Optional<PhotoTrace.Overlay> overlay = run.flatMap(CopyRun::trace).flatMap(OriginalTrace::overlay);
        return PhotoOverlay.svg(here() + "/picture.jpg", copy().fullWidth(), copy().fullHeight(), overlay)
                .inline();
    }

    public int pictureWidth() {
        return copy().fullWidth();
    }

    public int pictureHeight() {
        return copy().fullHeight();
    }

    /** Where its ends are: as found, as pointed at, or where nothing is known yet at two places to begin from. */
    public PhotoWish.Ends ends() {
        return run.flatMap(CopyRun::trace)
                .flatMap(OriginalTrace::overlay)
                .map(found -> new PhotoWish.Ends(found.start(), found.end()))
                .or(form::ends)
                .orElseGet(this::anywhere);
    }

    private PhotoWish.Ends anywhere() {
        double width = pictureWidth();
        double height = pictureHeight();
        boolean lies = width >= height;
        return new PhotoWish.Ends(
                new PixelPoint(lies ? 0.1 * width : width / 2, lies ? height / 2 : 0.1 * height),
                new PixelPoint(lies ? 0.9 * width : width / 2, lies ? height / 2 : 0.9 * height));
    }

    public String pixels(double px) {
        return String.format(Locale.ROOT, "%.1f", px);
    }

    // ---- a finished piece

    private Optional<AgainstReport> report() {
        return run.flatMap(CopyRun::report);
    }

    /** The piece over its pattern, and how far it lies off. */
    public String against() {
        AgainstReport found = report().orElseThrow();
        return AgainstPicture.svg(
                        found.job().pattern(),
                        found.comparison(),
                        found.job().tolerances().diameter(),
                        List.of(),
                        units())
                .inline();
    }

    public List<String> words() {
        return report().orElseThrow().words();
    }

    /** What to know before relying on it: of the piece against its pattern first, then of how it was read. */
    public List<String> allNotes() {
        return Stream.concat(report().orElseThrow().notes().stream().map(OptionWords::of), notes().stream())
                .toList();
    }

    public String likeness() {
        return report().orElseThrow().unlikeness();
    }

    public List<CheckRow> checks() {
        return CheckRow.of(report().orElseThrow(), units());
    }

    /** Whether it can go into the log. */
    public boolean canBeLogged() {
        return report().map(each ->
                        !each.comparison().isHardlyThis() && !each.figures().isEmpty())
                .orElse(false);
    }
}
