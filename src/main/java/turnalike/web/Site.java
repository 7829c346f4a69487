package turnalike.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.StoreException;
import turnalike.language.Language;
import turnalike.reach.Outside;
import turnalike.release.Renewal;
import turnalike.units.Problem;
import turnalike.web.api.ApiFeature;
import turnalike.web.bench.BenchFeature;
import turnalike.web.copy.CopyFeature;
import turnalike.web.copy.PhotoFeature;
import turnalike.web.help.HelpFeature;
import turnalike.web.help.LanguageFeature;
import turnalike.web.job.DragFeature;
import turnalike.web.job.EditFeature;
import turnalike.web.job.FileFeature;
import turnalike.web.job.HistoryFeature;
import turnalike.web.job.JobFeature;
import turnalike.web.job.PageWarmUp;
import turnalike.web.job.PlanCache;
import turnalike.web.job.ResizeFeature;
import turnalike.web.job.StepsFeature;
import turnalike.web.jobs.DemoJob;
import turnalike.web.jobs.JobsFeature;
import turnalike.web.jobs.StartersFeature;
import turnalike.web.jobs.TourFeature;
import turnalike.web.kit.Abandoned;
import turnalike.web.kit.Asker;
import turnalike.web.kit.Assets;
import turnalike.web.kit.BodyLimits;
import turnalike.web.kit.Feature;
import turnalike.web.kit.ForPrograms;
import turnalike.web.kit.Gate;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.Shell;
import turnalike.web.lan.LanFeature;
import turnalike.web.lan.Sharing;
import turnalike.web.match.MatchFeature;
import turnalike.web.news.NewsFeature;
import turnalike.web.pieces.PiecesFeature;
import turnalike.web.sheets.SheetsFeature;
import turnalike.web.turning.TurningFeature;
import turnalike.web.wood.WoodFeature;

/** The pages, served on this machine alone until closed. */
public final class Site implements AutoCloseable {
    private static final long LONGEST_SEARCH_MS = 15 * 60_000;

    private static final String LOOPBACK = "127.0.0.1";
    private static final String EVERYWHERE = "0.0.0.0";

    /** Enough for the compilers, and done while a person is still looking at the first page. */
    private static final int REHEARSED_EDITS = 800;

    private final Javalin server;
    private final Origins origins;
    private final Pages pages;
    private final Assets assets;
    private final List<Feature> features;

    private Site(Javalin server, Origins origins, Pages pages, Assets assets, List<Feature> features) {
        this.server = server;
        this.origins = origins;
        this.pages = pages;
        this.assets = assets;
        this.features = List.copyOf(features);
    }

    /** Thrown when nobody can be served at that port. */
    public static final class PortTaken extends Exception {
        private static final long serialVersionUID = 1L;

        PortTaken(Throwable cause) {
            super(cause);
        }
    }

    /** Starts serving this machine alone, at a port or, with 0, at any that is free. */
    public static Site start(int port, JobStore store, Consumer<Exception> faults) throws PortTaken {
        return start(new Reach(port, Optional.empty()), store, faults);
    }

    /**
     * Who is served where.
     *
     * @param port 0 for any that is free
     * @param sharing with whom; without it this machine alone is served
     * @param outside by which addresses, and whether encrypted
     * @param renewal what its user is to read of this release, if the store has a place to remember it
     */
    public record Reach(int port, Optional<Sharing> sharing, Outside outside, Optional<Renewal> renewal) {
        /** Without news. */
        public Reach(int port, Optional<Sharing> sharing, Outside outside) {
            this(port, sharing, outside, Optional.empty());
        }

        /** Not encrypted, and if it is shared, on the networks this machine is joined to. */
        public Reach(int port, Optional<Sharing> sharing) {
            this(port, sharing, Outside.plain(sharing.isPresent()));
        }
    }

    /**
     * Starts serving the store's jobs.
     *
     * @param faults told of each fault of ours, so that it can be logged
     */
    public static Site start(Reach reach, JobStore unsigned, Consumer<Exception> faults) throws PortTaken {
        JobStore store = unsigned.signedBy(Asker::name);
        Assets assets = new Assets();
        Pages pages = new Pages(assets, () -> reach.renewal().flatMap(Renewal::unread));
        PlanCache plans = new PlanCache(pages.work());
        Origins origins = new Origins(reach.outside());
        List<Feature> features = new ArrayList<>(List.of(
                assets,
                new JobsFeature(store, pages),
                new StartersFeature(store, pages),
                new TourFeature(store),
                new JobFeature(store, pages, plans),
                new TurningFeature(store, pages, plans),
                new EditFeature(store, pages, plans),
                new ResizeFeature(store, pages),
                new StepsFeature(store),
                new HistoryFeature(store, pages, plans),
                new DragFeature(store, pages, plans),
                new FileFeature(store, pages),
                new PiecesFeature(store, pages),
                new CopyFeature(store, pages),
                new PhotoFeature(store),
                new MatchFeature(store, pages),
                new WoodFeature(store, pages, plans),
                new SheetsFeature(store, pages, plans),
                new HelpFeature(pages),
                new LanguageFeature(),
                new NewsFeature(reach.renewal(), pages),
                new BenchFeature(store, pages, plans)));
        reach.sharing().ifPresent(sharing -> features.add(new LanFeature(sharing, pages, origins::others)));
        Gate gate = new Gate(origins::all);
        String host = reach.outside().lan() ? EVERYWHERE : LOOPBACK;
        features.add(new ApiFeature(store, reach.sharing()));
        Javalin server = Javalin.create(config -> {
            config.jetty.host = host;
            config.jetty.port = reach.port();
            configure(config);
            Doorway.arrange(config, reach.sharing());
            reach.outside().certificate().ifPresent(each -> {
                config.jetty.addConnector((jetty, http) -> SecureDoor.connector(jetty, http, each, host, reach.port()));
                config.jetty.modifyServer(jetty -> jetty.insertHandler(new SecureDoor.Plain(origins::all)));
            });
            config.routes.before(gate::check);
            reach.sharing().ifPresent(sharing -> config.routes.before(sharing::check));
            config.routes.before(gate::token);
            features.forEach(feature -> feature.addTo(config.routes));
            edges(config, pages, faults);
        });
        try {
            server.start();
        } catch (JavalinBindException taken) {
            throw new PortTaken(taken);
        }
        origins.opened(server.port());
        return new Site(server, origins, pages, assets, features);
    }

    /** Begins to make the first edits as quick as later ones, beside whatever else goes on; in the end, how many it made. */
    public CompletableFuture<Integer> rehearse() {
        return rehearse(REHEARSED_EDITS);
    }

    CompletableFuture<Integer> rehearse(int edits) {
        return PageWarmUp.begin(
                pages, new Shell("", "", assets, Language.ENGLISH, Optional.empty()), DemoJob.text(), edits);
    }

    private static void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        // On one machine packing costs more time than it saves.
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.http.asyncTimeout = LONGEST_SEARCH_MS;
        config.http.defaultContentType = "text/plain; charset=utf-8";
    }

    private static void edges(JavalinConfig config, Pages pages, Consumer<Exception> faults) {
        config.routes.exception(
                Refusal.class, (refusal, ctx) -> pages.problems(ctx, refusal.status(), refusal.problems()));
        config.routes.exception(
                StoreException.class, (trouble, ctx) -> pages.problems(ctx, 503, List.of(trouble.problem())));
        config.routes.exception(HttpResponseException.class, (plain, ctx) -> told(ctx, pages, plain.getStatus()));
        config.routes.exception(
                HttpException.RuntimeException.class, (broken, ctx) -> told(ctx, pages, broken.getCode()));
        config.routes.exception(EofException.class, (broken, ctx) -> told(ctx, pages, 400));
        config.routes.exception(Exception.class, (fault, ctx) -> {
            if (Abandoned.is(ctx)) {
                return;
            }
            faults.accept(fault);
            Problem told = new Problem(
                    "fault",
                    "something went wrong that is not your doing",
                    "load the page again; nothing kept is lost");
            pages.problems(ctx, 500, List.of(told));
        });
    }

    /** What the server itself refused: too large, cut short, nowhere. */
    private static void told(Context ctx, Pages pages, int status) {
        Problem told =
                switch (status) {
                    case 413 -> BodyLimits.tooLarge(ctx.path());
                    case 404 ->
                        ForPrograms.asks(ctx)
                                ? ForPrograms.nowhere()
                                : new Problem("address", "there is nothing here", "go back to the list of jobs");
                    default -> new Problem("request", "it cannot be read", "load the page again");
                };
        pages.problems(ctx, status, List.of(told));
    }

    /** The port that is open. */
    public int port() {
        return server.port();
    }

    /** What to open in a browser. */
    public String address() {
        return origins.own();
    }

    /** What to open on other devices; empty when it is not shared. */
    public List<String> otherAddresses() {
        return origins.others();
    }

    @Override
    public void close() {
        features.forEach(Feature::close);
        server.stop();
    }
}
