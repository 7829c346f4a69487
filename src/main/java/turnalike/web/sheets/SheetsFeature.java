package turnalike.web.sheets;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import turnalike.job.Plan;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.sheets.Paper;
import turnalike.sheets.PlanDxf;
import turnalike.sheets.PlanSheet;
import turnalike.sheets.Sheet;
import turnalike.web.job.PlanCache;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;

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
        routes.get(SHEETS + "/{file}.dxf", this::dxf);
        routes.get(SHEETS + "/{file}", this::file);
    }

    /** One sheet on one paper: its files, the PDF first. */
    public record Offer(String title, String use, String paper, int pages, List<String> files) {
        public Offer {
            files = List.copyOf(files);
        }
    }

    /** What the page shows. */
    public record View(String address, String title, List<Offer> offers, List<String> dxf, JobSteps steps) {
        public View {
            dxf = List.copyOf(dxf);
            offers = List.copyOf(offers);
        }
    }

    private void show(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        Plan plan = plans.patient(kept.id(), kept.text());
        List<Offer> offers = PlanSheet.of(plan).stream()
                .flatMap(kind -> PAPERS.stream().map(paper -> offer(kind, plan, paper)))
                .toList();
        pages.show(
                ctx,
                200,
                "sheets/page.jte",
                plan.job().title(),
                new View(
                        JobAddress.address(kept.id()),
                        plan.job().title(),
                        offers,
                        List.copyOf(PlanDxf.files(plan).keySet()),
                        JobSteps.of(kept)));
    }

    private static Offer offer(PlanSheet kind, Plan plan, Paper paper) {
        Sheet sheet = kind.of(plan, paper);
        return new Offer(kind.title(), kind.use(), paper.label(), sheet.pageCount(), sheet.fileNames());
    }

    /** The outlines for a laser or a router. */
    private void dxf(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String name = ctx.pathParam("file") + ".dxf";
        String text = Optional.ofNullable(
                        PlanDxf.files(plans.now(kept.id(), kept.text())).get(name))
                .orElseThrow(() -> Refusal.notFound("that file"));
        Attachment.send(ctx, name, "image/vnd.dxf", text);
    }

    private void file(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String name = ctx.pathParam("file");
        Plan plan = plans.patient(kept.id(), kept.text());
        byte[] bytes = PlanSheet.of(plan).stream()
                .flatMap(kind -> PAPERS.stream().map(paper -> kind.of(plan, paper)))
                .flatMap(sheet -> sheet.file(name).stream())
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("that sheet"));
        Attachment.send(ctx, name, name.endsWith(".pdf") ? "application/pdf" : "image/svg+xml", bytes);
    }
}
