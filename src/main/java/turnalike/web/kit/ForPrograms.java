package turnalike.web.kit;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import turnalike.job.answer.PlainJson;
import turnalike.language.Language;
import turnalike.units.Problem;

/** What is asked by programs and not by the page: it is answered in JSON, and needs no token of a page. */
public final class ForPrograms {
    /** How every address of it begins. */
    public static final String PATH = "/api";

    private static final String BEARER = "Bearer ";

    private ForPrograms() {}

    /** Whether an address is one for programs. */
    public static boolean isAt(String path) {
        return path.equals(PATH) || path.startsWith(PATH + "/");
    }

    /** Whether a program asks. */
    public static boolean asks(Context ctx) {
        return isAt(ctx.path());
    }

    /** The token in a header as HTTP writes it: {@code Bearer abc}. */
    public static Optional<String> token(Optional<String> header) {
        return header.filter(text -> text.regionMatches(true, 0, BEARER, 0, BEARER.length()))
                .map(text -> text.substring(BEARER.length()).strip())
                .filter(text -> !text.isEmpty());
    }

    /** Answers with what is wrong, in the words of the command line and the language that is asked for; the status is what a program goes by. */
    static void problems(Context ctx, int status, List<Problem> problems) {
        Language language = Spoken.by(ctx);
        List<Problem> said = problems.stream()
                .map(each ->
                        new Problem(language.say(each.where()), language.say(each.what()), language.say(each.mend())))
                .toList();
        ctx.status(status).contentType("application/json").result(PlainJson.error(said));
    }

    /** Where a program finds what it may ask. */
    public static Problem nowhere() {
        return new Problem("address", "there is nothing here", "read " + PATH + "/openapi.json");
    }
}
