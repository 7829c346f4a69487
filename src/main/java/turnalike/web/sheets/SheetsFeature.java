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
import turnalike.units.UnitSystem;
import turnalike.web.job.PlanCache;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
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
     * @param pages how many there are on the paper that is chosen
     * @param files on that paper, the PDF first, then each drawing
     */
    public record Offer(String title, String use, int pages, List<String> files) {
        public Offer {
            files = List.copyOf(files);
        }

        /** The file to print. */
        public String pdf() {
            return files.get(0);
        }

        /** The file of its first drawing, shown small. */
        public String picture() {
            return files.get(1);
        }
    }

    /**
     * A paper that may be chosen.
     *
     * @param word in the page's address
     * @param label as it is called
     * @param chosen whether the sheets are shown on it
     */
    public record PaperChoice(String word, String label, boolean chosen) {}

    /** What the page shows. */
    public record View(
            String address,
            String title,
            List<PaperChoice> papers,
            List<Offer> offers,
            List<String> instead,
            List<PlanFile> exchange,
            JobSteps steps) {
        public View {
            exchange = List.copyOf(exchange);
            papers = List.copyOf(papers);
            offers = List.copyOf(offers);
            instead = List.copyOf(instead);
        }
    }

    private void show(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        Plan plan = plans.patient(kept.id(), kept.text());
        Paper paper = paper(ctx, plan.job().units());
        List<Offer> offers = Speech.in(Spoken.by(ctx), () -> PlanSheet.of(plan).stream()
                .map(kind -> offer(kind, plan, paper))
                .toList());
        pages.show(
                ctx,
                200,
                "sheets/page.jte",
                plan.job().title(),
                new View(
                        JobAddress.address(kept.id()),
                        plan.job().title(),
                        PAPERS.stream()
                                .map(each -> new PaperChoice(word(each), each.label(), each == paper))
                                .toList(),
                        offers,
                        PlanSheet.insteadOf(plan, paper),
                        List.of(PlanFile.values()),
                        JobSteps.of(kept)));
    }

    /** The one that was asked for; else what a shop that works in these units has in its printer, as a rule. */
    private static Paper paper(Context ctx, UnitSystem units) {
        String asked = RequestInput.query(ctx, "paper").orElse("");
        return PAPERS.stream()
                .filter(each -> word(each).equals(asked))
                .findFirst()
                .orElse(units == UnitSystem.INCH ? Paper.LETTER : Paper.A4);
    }

    private static String word(Paper paper) {
        return paper == Paper.A4 ? "a4" : "us-letter";
    }

    private static Offer offer(PlanSheet kind, Plan plan, Paper paper) {
        Sheet sheet = kind.of(plan, paper);
        return new Offer(kind.title(), kind.use(), sheet.pageCount(), sheet.fileNames());
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
        boolean pdf = name.endsWith(".pdf");
        if (pdf && RequestInput.query(ctx, "show").isPresent()) {
            ctx.contentType("application/pdf").result(bytes(ctx, name)); // the browser shows it, and prints
            return;
        }
        Attachment.send(ctx, name, pdf ? "application/pdf" : "image/svg+xml", bytes(ctx, name));
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
