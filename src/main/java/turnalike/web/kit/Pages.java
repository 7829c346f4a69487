package turnalike.web.kit;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import turnalike.language.Speech;
import turnalike.release.Release;
import turnalike.units.Problem;

/**
 * The templates, made into pages. A template takes {@code shell} and {@code view}; it escapes whatever it prints, except pictures, which
 * {@code drawing} has escaped already.
 */
public final class Pages {
    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, Pages.class.getClassLoader(), "templates");
    private final Assets assets;
    private final Supplier<Optional<Release>> news;
    private final PageWork work = PageWork.onThisMachine();

    public Pages(Assets assets) {
        this(assets, Optional::empty);
    }

    /** @param news a release of which nobody has closed the note yet; asked with every page */
    public Pages(Assets assets, Supplier<Optional<Release>> news) {
        this.assets = assets;
        this.news = news;
    }

    /** Where they are made. */
    public PageWork work() {
        return work;
    }

    /**
     * Answers with a template: {@code job/page.jte}. One that is a whole page wraps itself in the layout.
     *
     * @param view what it shows; of the type the template asks for
     */
    public void show(Context ctx, int status, String template, String title, Object view) {
        answer(ctx, status, text(shell(ctx, title), template, view));
    }

    /** What goes round a page that answers this request. */
    public Shell shell(Context ctx, String title) {
        // Who is not paired yet has nothing to read or to close.
        Optional<Release> told = ctx.path().equals("/pair") ? Optional.empty() : news.get();
        return new Shell(title, Gate.tokenFor(ctx), assets, Spoken.by(ctx), Tour.of(ctx), told);
    }

    /** The page in UTF-8, made when its turn comes. */
    private byte[] text(Shell shell, String template, Object view) {
        return work.inTurn(() -> made(shell, template, view));
    }

    /** The page in UTF-8, to be answered with later; may be called from any thread that has its turn. */
    public byte[] made(Shell shell, String template, Object view) {
        StringOutput out = new StringOutput(32_768);
        // What is drawn meanwhile is measured in the words that it will bear, and those are not said a second time.
        String said = Speech.in(shell.language(), () -> {
            engine.render(template, Map.of("shell", shell, "view", view), out);
            return HtmlWords.in(shell.language(), out.toString());
        });
        return view instanceof PutTogether parts ? parts.onto(said) : said.getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Answers with a page that is made.
     *
     * @param page in UTF-8
     */
    public void answer(Context ctx, int status, byte[] page) {
        ctx.status(status).contentType("text/html; charset=utf-8").result(page);
    }

    /** What went wrong, as a page, or as a few lines when a script asked. */
    public void problems(Context ctx, int status, List<Problem> problems) {
        if (ForPrograms.asks(ctx)) {
            ForPrograms.problems(ctx, status, problems);
            return;
        }
        show(ctx, status, isPart(ctx) ? "problems.jte" : "refused.jte", "Not done", problems);
    }

    /** Whether a script asked, which puts the answer into a page that stands already. */
    public static boolean isPart(Context ctx) {
        return Optional.ofNullable(ctx.header("HX-Request")).isPresent();
    }
}
