package turnalike.web.help;

import io.javalin.config.RoutesConfig;
import java.util.List;
import turnalike.pattern.MemberKind;
import turnalike.web.kit.Feature;
import turnalike.web.kit.Pages;

/** The help. */
public final class HelpFeature implements Feature {
    private final Pages pages;

    public HelpFeature(Pages pages) {
        this.pages = pages;
    }

    /** What the page shows. */
    public record View(List<MemberPicture> kinds) {
        public View {
            kinds = List.copyOf(kinds);
        }
    }

    /** Drawn once, on first use. */
    private static final class Drawn {
        static final View VIEW =
                new View(MemberKind.all().stream().map(MemberPicture::of).toList());

        private Drawn() {}
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/help", ctx -> pages.show(ctx, 200, "help/page.jte", "Help", Drawn.VIEW));
    }
}
