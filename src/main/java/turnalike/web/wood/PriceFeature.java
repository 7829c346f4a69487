package turnalike.web.wood;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.edit.JobEdit;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.price.InvoiceFile;
import turnalike.job.price.PriceReport;
import turnalike.sheets.QuoteSheet;
import turnalike.stock.boards.CuttingPlan;
import turnalike.units.Problem;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.FiguresIn;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Papers;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** What an order takes, from the times taken so far, and what it comes to at the turner's own rate. */
final class PriceFeature implements Feature {
    private static final String PRICE = JobAddress.JOB + "/price";

    private final JobStore store;
    private final Pages pages;

    PriceFeature(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(PRICE, ctx -> show(ctx, 200, TypedRow.NONE));
        routes.post(PRICE, this::charge);
        routes.get(PRICE + "/invoice.csv", this::invoice);
        routes.get(PRICE + "/{file}.pdf", this::sheet);
    }

    void show(Context ctx, int status, TypedRow typed) {
        show(ctx, status, view(ctx, typed, Map.of(), List.of()));
    }

    private void show(Context ctx, int status, PriceView view) {
        pages.show(ctx, status, "wood/price.jte", view.title() + ", time and price", view);
    }

    private PriceView view(Context ctx, TypedRow typed, Map<String, String> charged, List<Problem> problems) {
        KeptJob kept = JobAddress.job(ctx, store);
        CutState state = CutState.of(store, kept);
        String along = state.along().isEmpty() ? "" : ", sawn together with " + String.join(", ", state.along());
        Optional<String> woodCost = state.plan()
                .filter(plan -> plan.order().isPriced())
                .map(CuttingPlan::cost)
                .map(cost -> cost.toPlainString() + along);
        return new PriceView(kept, typed, charged, problems, woodCost);
    }

    private void charge(Context ctx) {
        Map<String, String> charged = new LinkedHashMap<>();
        Map<String, String> values = new LinkedHashMap<>();
        for (String name : PriceView.names()) {
            RequestInput.field(ctx, name).ifPresent(value -> {
                charged.put(name, value);
                values.put("price." + name, figures(name).kept(plain(name, value)));
            });
        }
        try {
            if (store.edit(JobAddress.id(ctx), kept -> edit(kept, values)).isEmpty()) {
                throw Refusal.notFound("that job");
            }
        } catch (Refusal refused) {
            if (refused.status() != 422) {
                throw refused;
            }
            show(ctx, 422, view(ctx, TypedRow.NONE, charged, refused.problems()));
            return;
        } catch (Unchanged nothingToDo) {
            // What was typed is what is kept: nothing is added to the history.
        }
        ctx.redirect(JobAddress.address(JobAddress.id(ctx)) + "/price#price-h", HttpStatus.SEE_OTHER);
    }

    private static FiguresIn figures(String name) {
        return switch (name) {
            case "others" -> FiguresIn.LINE_ENDS;
            case "currency" -> FiguresIn.NOWHERE;
            default -> FiguresIn.ALL;
        };
    }

    /** A figure without the currency's sign or a percent sign. */
    private static String plain(String name, String value) {
        boolean isFigure = !name.equals("others") && !name.equals("currency");
        return isFigure
                ? value.replaceAll("[\\p{Sc}%]", "").strip()
                : value.replaceAll("(?m)\\p{Sc}\\s*(?=[\\d.,]+\\s*$)", "");
    }

    private static final class Unchanged extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private static Edit edit(KeptJob kept, Map<String, String> values) {
        JobEdit edit = JobEdit.fields(values).narrowed(kept.text());
        JobText text = edit.on(kept.text())
                .text()
                .orElseThrow(() -> new Refusal(422, edit.on(kept.text()).problems()));
        if (edit.isNothing(kept.text(), text)) {
            throw new Unchanged();
        }
        return Edit.of("change what is charged", Change.of(text));
    }

    private PriceReport quoted(Context ctx) {
        return view(ctx, TypedRow.NONE, Map.of(), List.of())
                .report()
                .filter(report -> report.quote().isPresent())
                .orElseThrow(() -> Refusal.notFound("a quote for this job"));
    }

    private void invoice(Context ctx) {
        String text = InvoiceFile.text(quoted(ctx).quote().orElseThrow());
        Attachment.send(ctx, "invoice.csv", "text/csv; charset=utf-8", text);
    }

    private void sheet(Context ctx) {
        PriceReport report = quoted(ctx);
        Attachment.send(ctx, ctx.pathParam("file"), paper -> QuoteSheet.of(report, Papers.today(), paper));
    }
}
