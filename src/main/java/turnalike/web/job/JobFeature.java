package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import turnalike.job.Plan;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;

/** One job's page, and what of it can be looked at or carried away. */
public final class JobFeature implements Feature {
    private static final String JOB = JobAddress.JOB;

    private final JobStore store;
    private final Pages pages;
    private final PlanCache plans;
    private final JobShow show;

    public JobFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.pages = pages;
        this.plans = plans;
        this.show = new JobShow(pages, plans);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(JOB, ctx -> show.page(ctx, 200, kept(ctx), RefusedEdit.NONE, JobShow.member(ctx)));
        routes.get(JOB + "/settings", this::settings);
        routes.get(JOB + "/nudges", this::nudges);
        routes.get(JOB + "/look", this::look);
        routes.get(JOB + "/job.json", this::jobFile);
        routes.get(JOB + "/whole.json", this::wholeJob);
    }

    /** The settings after a longer search and how they were found, to take the place of the first ones. */
    private void settings(Context ctx) {
        KeptJob kept = kept(ctx);
        Plan plan = plans.patient(kept.id(), kept.text());
        JobView view = show.view(ctx, kept, plan);
        pages.show(ctx, 200, "job/settled.jte", view.title(), view);
    }

    /** What would save an opening; searched only when somebody asks. */
    private void nudges(Context ctx) {
        KeptJob kept = kept(ctx);
        Plan plan = plans.patient(kept.id(), kept.text());
        NudgeView view = new NudgeView(show.view(ctx, kept, plan), plans.nudges(kept.id(), kept.text(), plan));
        String template = Pages.isPart(ctx) ? "job/nudges.jte" : "job/nudgepage.jte";
        pages.show(ctx, 200, template, view.job().title(), view);
    }

    private void look(Context ctx) {
        KeptJob kept = kept(ctx);
        JobView view = show.view(ctx, kept, plans.now(kept.id(), kept.text()));
        pages.show(ctx, 200, Pages.isPart(ctx) ? "job/look.jte" : "job/lookpage.jte", view.title(), view);
    }

    private void jobFile(Context ctx) {
        attachment(ctx, "job.job.json", kept(ctx).text().text());
    }

    /** By way of a file of our own: a long history neither fills the memory nor holds others up while a slow device takes it. */
    private void wholeJob(Context ctx) throws IOException {
        Path given = Files.createTempFile("turnalike-", ".json");
        boolean begun = false;
        try {
            try (Writer out = Files.newBufferedWriter(given)) {
                if (!store.give(JobAddress.id(ctx), out)) {
                    throw Refusal.notFound("that job");
                }
            }
            InputStream in = Files.newInputStream(given, StandardOpenOption.DELETE_ON_CLOSE);
            Attachment.send(ctx, "whole.json", "application/json; charset=utf-8", in);
            begun = true;
        } finally {
            if (!begun) {
                Files.deleteIfExists(given);
            }
        }
    }

    private static void attachment(Context ctx, String name, String text) {
        Attachment.send(ctx, name, "application/json; charset=utf-8", text);
    }

    private KeptJob kept(Context ctx) {
        return JobAddress.job(ctx, store);
    }
}
