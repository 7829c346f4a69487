package turnalike.web.sheets;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.job.Plan;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.language.Speech;
import turnalike.sheets.Paper;
import turnalike.sheets.PlanFile;
import turnalike.sheets.PlanSheet;
import turnalike.sheets.Sheet;
import turnalike.web.job.PlanCache;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.Spoken;

/** The sheets of a plan, as PDF and SVG. */
public final class SheetsFeature implements Feature {
    private static final String SHEETS = JobAddress.JOB + "/sheets";

    private static final List<Paper> PAPERS = List.of(Paper.A4, Paper.LETTER);

    private final JobStore store;
    private final Pages pages;
    private final PlanCache plans;

    public SheetsFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.pages = pages;
        this.plans = plans;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(SHEETS, this::show);
        routes.get(SHEETS + "/pictures/{file}", this::picture);
        routes.get(SHEETS + "/{file}", this::file);
    }

    /**
     * One kind of sheet.
     *
     * @param title what it is
     * @param use what it is for
     * @param picture the file of its first drawing, shown small
     * @param papers it on each paper, A4 first
     */
    public record Offer(String title, String use, String picture, List<OnPaper> papers) {
        public Offer {
            papers = List.copyOf(papers);
        }
    }

    /** One sheet on one paper: its files, the PDF first. */
    public record OnPaper(String paper, int pages, List<String> files) {
        public OnPaper {
            files = List.copyOf(files);
        }

        /** The file to print. */
        public String pdf() {
            return files.get(0);
        }
    }

    /** What the page shows. */
    public record View(
            String address,
            String title,
            List<Offer> offers,
            List<String> instead,
            List<PlanFile> exchange,
            JobSteps steps) {
        public View {
            exchange = List.copyOf(exchange);
            offers = List.copyOf(offers);
            instead = List.copyOf(instead);
        }
    }

    private void show(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        Plan plan = plans.patient(kept.id(), kept.text());
        List<Offer> offers = Speech.in(
                Spoken.by(ctx),
                () -> PlanSheet.of(plan).stream().map(kind -> offer(kind, plan)).toList());
        pages.show(
                ctx,
                200,
                "sheets/page.jte",
                plan.job().title(),
                new View(
                        JobAddress.address(kept.id()),
                        plan.job().title(),
                        offers,
                        PlanSheet.insteadOf(plan, PAPERS.get(0)),
                        List.of(PlanFile.values()),
                        JobSteps.of(kept)));
    }

    private static Offer offer(PlanSheet kind, Plan plan) {
        List<OnPaper> papers = PAPERS.stream()
                .map(paper -> {
                    Sheet sheet = kind.of(plan, paper);
                    return new OnPaper(paper.label(), sheet.pageCount(), sheet.fileNames());
                })
                .toList();
        return new Offer(kind.title(), kind.use(), papers.get(0).files().get(1), papers);
    }

    /** A drawing as it stands in its sheet, to be looked at. */
    private void picture(Context ctx) {
        String name = ctx.pathParam("file");
        if (!name.endsWith(".svg")) {
            throw Refusal.notFound("that picture");
        }
        ctx.contentType("image/svg+xml").result(bytes(ctx, name));
    }

    private void file(Context ctx) {
        String name = ctx.pathParam("file");
        Optional<PlanFile> exchange = Stream.of(PlanFile.values())
                .filter(each -> each.fileName().equals(name))
                .findFirst();
        if (exchange.isPresent()) {
            KeptJob kept = JobAddress.job(ctx, store);
            Plan plan = plans.now(kept.id(), kept.text());
            Attachment.send(
                    ctx, name, exchange.get().mediaType(), exchange.get().of(plan.job()));
            return;
        }
        Attachment.send(ctx, name, name.endsWith(".pdf") ? "application/pdf" : "image/svg+xml", bytes(ctx, name));
    }

    private byte[] bytes(Context ctx, String name) {
        KeptJob kept = JobAddress.job(ctx, store);
        Plan plan = plans.patient(kept.id(), kept.text());
        return Speech.in(Spoken.by(ctx), () -> bytes(plan, name));
    }

    private static byte[] bytes(Plan plan, String name) {
        return PlanSheet.of(plan).stream()
                .flatMap(kind -> PAPERS.stream().map(paper -> kind.of(plan, paper)))
                .flatMap(sheet -> sheet.file(name).stream())
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("that sheet"));
    }
}
