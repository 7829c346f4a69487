package turnalike.web.news;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import turnalike.release.Changes;
import turnalike.release.Libraries;
import turnalike.release.Release;
import turnalike.release.Renewal;
import turnalike.web.kit.Feature;
import turnalike.web.kit.Pages;

/** What changed since this store's user read of it last, and under which licences the libraries stand. */
public final class NewsFeature implements Feature {
    private final Optional<Renewal> renewal;
    private final Pages pages;

    /** @param renewal of the store, where it is a file that one can stand beside */
    public NewsFeature(Optional<Renewal> renewal, Pages pages) {
        this.renewal = renewal;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/changes", this::changes);
        routes.post("/changes/read", this::read);
        routes.get("/licences", ctx -> pages.show(ctx, 200, "news/licences.jte", "Licences", Libraries.list()));
    }

    private void changes(Context ctx) {
        Release now = Release.now();
        List<Changes> days = renewal.map(Renewal::changes).orElseGet(() -> Changes.since(now.day()));
        pages.show(ctx, 200, "news/changes.jte", "What changed", NewsView.of(now, days));
    }

    private void read(Context ctx) {
        renewal.ifPresent(Renewal::read);
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }
}
