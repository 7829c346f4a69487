package turnalike.web.load;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.store.StoreFile;
import turnalike.web.job.FileFeature;
import turnalike.web.kit.Assets;
import turnalike.web.kit.Pages;

/**
 * The server, the store and one template, with nothing between: what the pages would cost if nothing had to be worked out for them. A text is
 * read, an edit is kept as ours are, and each answer is as long as ours.
 */
final class BareServer {
    private final JobStore store;
    private final Pages pages = new Pages(new Assets());
    private final String page;
    private final String part;

    private BareServer(JobStore store, int page, int part) {
        this.store = store;
        this.page = "x".repeat(page);
        this.part = "x".repeat(part);
    }

    /**
     * Serves until it is ended.
     *
     * @param arguments the store's file, the length of a page and of a changed part
     */
    public static void main(String[] arguments) {
        BareServer bare = new BareServer(
                StoreFile.open(Path.of(arguments[0]), Clock.systemUTC()),
                Integer.parseInt(arguments[1]),
                Integer.parseInt(arguments[2]));
        Javalin server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.startup.startupWatcherEnabled = false;
            config.http.compressionStrategy = CompressionStrategy.NONE;
            config.jetty.host = "127.0.0.1";
            config.jetty.port = 0;
            config.routes.get("/", ctx -> ctx.result(""));
            config.routes.get("/jobs/{job}", ctx -> bare.show(ctx, bare.page));
            config.routes.post("/jobs/{job}/fields", bare::edit);
            config.routes.post("/api/jobs/{job}/pieces", bare::log);
        });
        server.start();
        System.out.println("http://localhost:" + server.port() + "/");
    }

    private static JobId id(Context ctx) {
        return JobId.parse(ctx.pathParam("job")).get();
    }

    private void show(Context ctx, String text) {
        KeptJob kept = store.find(id(ctx)).orElseThrow();
        pages.show(
                ctx,
                200,
                "job/file.jte",
                "bare",
                new FileFeature.View("", "bare", text, kept.times().steps(), List.of()));
    }

    private void edit(Context ctx) {
        String title = ctx.formParam("title");
        store.edit(id(ctx), kept -> {
            String text = kept.text().text().replaceFirst("\"title\": \"[^\"]*\"", "\"title\": \"" + title + "\"");
            return Edit.of("bare", Change.of(JobText.read(text).text().orElseThrow()));
        });
        show(ctx, part);
    }

    private void log(Context ctx) {
        String label = ctx.body().replaceFirst(".*\"piece\": \"([^\"]*)\".*", "$1");
        store.edit(id(ctx), kept -> Edit.of("log piece " + label, Change.of(KeptPiece.unmeasured(label))));
        ctx.result("Piece %s is kept.".formatted(label));
    }
}
