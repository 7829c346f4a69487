package turnalike.web.help;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URI;
import java.util.Optional;
import turnalike.language.Language;
import turnalike.web.kit.Feature;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.Spoken;

/** The choice of a language, by a link on every page. */
public final class LanguageFeature implements Feature {
    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/language/{code}", LanguageFeature::choose);
    }

    private static void choose(Context ctx) {
        Language language = Language.find(ctx.pathParam("code")).orElseThrow(() -> Refusal.notFound("that language"));
        Spoken.choose(ctx, language);
        ctx.redirect(Optional.ofNullable(ctx.header("Referer"))
                .flatMap(LanguageFeature::ownPlace)
                .orElse("/"));
    }

    /** The page that the link stood on, by its path alone: nobody is sent elsewhere. */
    private static Optional<String> ownPlace(String referer) {
        try {
            URI from = URI.create(referer);
            String path = Optional.ofNullable(from.getRawPath()).orElse("/");
            boolean odd = path.startsWith("//") || path.startsWith("/language/") || !path.startsWith("/");
            return odd
                    ? Optional.empty()
                    : Optional.of(from.getRawQuery() == null ? path : path + "?" + from.getRawQuery());
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
