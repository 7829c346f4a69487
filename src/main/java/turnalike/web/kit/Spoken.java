package turnalike.web.kit;

import io.javalin.http.Context;
import java.util.Optional;
import turnalike.language.Language;

/** The language a browser is answered in: the one chosen on the page, else what the browser asks for first, else English. */
public final class Spoken {
    private static final String COOKIE = "turnalike-language";

    private Spoken() {}

    /** {@return the language to answer in} */
    public static Language by(Context ctx) {
        return Optional.ofNullable(ctx.cookie(COOKIE))
                .flatMap(Language::find)
                .or(() -> first(ctx))
                .orElse(Language.ENGLISH);
    }

    /** {@code de-AT,de;q=0.9,en;q=0.8}: the first only, as it is what the person set. */
    private static Optional<Language> first(Context ctx) {
        return Optional.ofNullable(ctx.header("Accept-Language"))
                .map(asked -> asked.split("[-,;_ ]", 2)[0])
                .flatMap(Language::find);
    }

    /** Answers with that text alone, which a script shows, in the language to answer in. */
    public static void text(Context ctx, int status, String text) {
        ctx.status(status).contentType("text/plain; charset=utf-8").result(by(ctx).say(text));
    }

    /** Remembers the choice. */
    public static void choose(Context ctx, Language language) {
        Cookies.choice(ctx, COOKIE, language.code());
    }
}
