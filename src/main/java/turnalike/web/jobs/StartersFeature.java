package turnalike.web.jobs;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.job.edit.Starter;
import turnalike.job.edit.StarterJob;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** The starter patterns, drawn at the size asked for, each a job at a press. */
public final class StartersFeature implements Feature {
    private static final Length WIDTH = Length.ofMm(150);
    private static final Length TALLEST = Length.ofMm(24);

    private final JobStore store;
    private final Pages pages;

    public StartersFeature(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/starters", this::show);
        routes.post("/starters", this::begin);
        routes.get("/starters/{name}.svg", this::picture);
    }

    /**
     * What the page shows.
     *
     * @param length of the piece, as typed; empty for each one's usual length
     * @param size of the blank, as typed
     * @param units the job's, {@code in} or {@code mm}
     * @param problems what is wrong with them
     * @param offers the patterns
     */
    public record View(String length, String size, String units, List<Problem> problems, List<Offer> offers) {
        public View {
            problems = List.copyOf(problems);
            offers = List.copyOf(offers);
        }

        public boolean isMetric() {
            return units.equals("mm");
        }
    }

    /**
     * One pattern.
     *
     * @param starter the pattern
     * @param picture where its picture is; empty where it cannot be made so
     * @param why it cannot
     */
    public record Offer(Starter starter, String picture, String why) {}

    /** What was asked for, and what is wrong with it. */
    private static final class Asked {
        private final UnitSystem units;
        private final String length;
        private final String size;
        private final List<Problem> problems = new ArrayList<>();

        Asked(String units, String length, String size) {
            this.units = UnitSystem.find(units).orElse(UnitSystem.INCH);
            this.length = length;
            this.size = size.isBlank() ? usualSize(this.units) : size;
        }

        /** @param was the units of the page on which these sizes stood: a size typed without its own is one in those */
        static Asked in(String units, String was, String length, String size) {
            UnitSystem before = UnitSystem.find(was).orElse(UnitSystem.INCH);
            UnitSystem now = UnitSystem.find(units).orElse(UnitSystem.INCH);
            if (was.isEmpty() || before == now) {
                return new Asked(units, length, size);
            }
            String across = size.strip().equals(usualSize(before)) ? "" : carried(size, before, now);
            return new Asked(units, carried(length, before, now), across);
        }

        private static String carried(String typed, UnitSystem before, UnitSystem now) {
            return typed.isBlank()
                    ? typed
                    : Length.parse(typed, before).fold(size -> size.format(now), (what, mend) -> typed);
        }

        private static String usualSize(UnitSystem units) {
            return units == UnitSystem.INCH ? "1 3/4" : "45";
        }

        Length parse(String where, String text) {
            Parsed<Length> parsed = Length.parse(text, units);
            return parsed.fold(found -> found, (what, mend) -> {
                problems.add(new Problem(where, what, mend));
                return Length.ZERO;
            });
        }

        Parsed<JobText> job(Starter starter) {
            Length across = parse("blank", size);
            Length whole = length.isBlank() ? usual(starter, across) : parse("length", length);
            return StarterJob.of(starter, whole, across, units);
        }

        /** To a whole inch or ten millimetres. */
        private Length usual(Starter starter, Length across) {
            double stepMm = units == UnitSystem.INCH ? Length.MM_PER_INCH : 10;
            return Length.ofMm(Math.ceil(starter.usualLength() * across.mm() / stepMm) * stepMm);
        }
    }

    private void show(Context ctx) {
        Asked asked = Asked.in(
                RequestInput.query(ctx, "units").orElse(""),
                RequestInput.query(ctx, "was").orElse(""),
                RequestInput.query(ctx, "length").orElse(""),
                RequestInput.query(ctx, "size").orElse(""));
        if (!asked.length.isBlank()) {
            asked.parse("length", asked.length);
        }
        asked.parse("blank", asked.size);
        List<Problem> problems = List.copyOf(asked.problems);
        List<Offer> offers = new ArrayList<>();
        if (problems.isEmpty()) {
            for (Starter starter : Starter.values()) {
                offers.add(offer(starter, asked));
            }
        }
        View view = new View(asked.length, asked.size, asked.units.symbol(), problems, offers);
        pages.show(ctx, problems.isEmpty() ? 200 : 422, "jobs/starters.jte", "Starter patterns", view);
    }

    /** A picture a file, fetched when it comes into sight. */
    private void picture(Context ctx) {
        Starter starter = Starter.find(ctx.pathParam("name")).orElseThrow(() -> Refusal.notFound("that pattern"));
        Asked asked = new Asked(
                RequestInput.query(ctx, "units").orElse(""),
                RequestInput.query(ctx, "length").orElse(""),
                RequestInput.query(ctx, "size").orElse(""));
        JobText text = asked.job(starter).fold(job -> job, (what, mend) -> {
            throw Refusal.of(422, starter.title(), what, mend);
        });
        if (!asked.problems.isEmpty()) {
            throw new Refusal(422, asked.problems);
        }
        ctx.header("Cache-Control", "max-age=86400")
                .contentType("image/svg+xml")
                .result(ShadedSpindle.small(text.job().pattern(), WIDTH, TALLEST)
                        .file());
    }

    private static String encoded(String typed) {
        return URLEncoder.encode(typed, StandardCharsets.UTF_8);
    }

    private static Offer offer(Starter starter, Asked asked) {
        String query = "length=%s&size=%s&units=%s"
                .formatted(encoded(asked.length), encoded(asked.size), asked.units.symbol());
        return asked.job(starter)
                .fold(
                        text -> new Offer(starter, "/starters/%s.svg?%s".formatted(starter.word(), query), ""),
                        (what, mend) -> new Offer(starter, "", what + "; " + mend));
    }

    private void begin(Context ctx) {
        Starter starter = RequestInput.field(ctx, "starter")
                .flatMap(Starter::find)
                .orElseThrow(() -> Refusal.of(422, "pattern", "is none we know", "take one of the page"));
        Asked asked = new Asked(
                RequestInput.field(ctx, "units").orElse(""),
                RequestInput.field(ctx, "length").orElse(""),
                RequestInput.field(ctx, "size").orElse(""));
        Parsed<JobText> made = asked.job(starter);
        if (!asked.problems.isEmpty()) {
            throw new Refusal(422, asked.problems);
        }
        JobText text = made.fold(job -> job, (what, mend) -> {
            throw Refusal.of(422, starter.title(), what, mend);
        });
        ctx.redirect("/jobs/" + store.keep(text).text(), HttpStatus.SEE_OTHER);
    }
}
