package turnalike.web.job;

import gg.jte.Content;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import turnalike.web.job.FinishedParts.Finished;
import turnalike.web.job.FinishedParts.Shown;
import turnalike.web.kit.HtmlWords;

/**
 * Which parts of a job's page a script is sent. It tells by their digests which ones it shows already; those come as an empty element that
 * says so, and the browser neither reads nor lays them out again; of the drawing, each group is a part of its own. Who tells of none is sent
 * the page whole. A part that was written before is not written again: while the page is made a mark stands for each, and {@link #onto} puts
 * the parts there. For one answer, on one thread.
 */
public final class Parts {
    /** The header a script tells in: {@code drawing=0123456789abcdef run=…}, empty while it knows of none. */
    static final String HEADER = "X-Turnalike-Parts";

    private static final String DRAWING = "drawing";
    private static final int USUAL_LETTERS = 8_192;
    private static final int PAGE_BYTES = 110_000;

    /** Drawn anew at each start, so that nobody can have written it into a job. */
    private static final String MARK = "<!--" + new BigInteger(128, new SecureRandom()).toString(36) + ":";

    private static final String END = "-->";

    /** Where a form says the version, the member and the token. */
    private static final String FORM = "form";

    private static final String FILLED_IN = MARK + FORM + END;

    private final boolean whole;
    private final Map<String, String> shown;
    private final Kept kept;
    private final StringBuilder sent = new StringBuilder();
    private final List<Consumer<ByteArrayOutputStream>> placed = new ArrayList<>();
    private byte[] filling = {};

    /**
     * What was made before for anybody.
     *
     * @param drawings as they were sent, group by group
     * @param finished parts as they were written
     * @param forms as they were shown
     */
    record Kept(SentDrawings drawings, FinishedParts finished, Forms forms) {
        Kept() {
            this(new SentDrawings(), new FinishedParts(), new Forms());
        }
    }

    private Parts(boolean whole, Map<String, String> shown, Kept kept) {
        this.whole = whole;
        this.shown = shown;
        this.kept = kept;
    }

    /** Everything, as for a page that stands by itself. */
    static Parts whole() {
        return whole(new Kept());
    }

    private static Parts whole(Kept kept) {
        return new Parts(true, Map.of(), kept);
    }

    /** What this request's page lacks. */
    static Parts lackedBy(Context ctx, Kept kept) {
        return lackedBy(Optional.ofNullable(ctx.header(HEADER)), kept);
    }

    /** @param told what a script told of the parts it shows; empty where none asks */
    static Parts lackedBy(Optional<String> told, Kept kept) {
        if (told.isEmpty()) {
            return whole(kept);
        }
        Map<String, String> shown = new HashMap<>();
        for (String each : told.orElseThrow().split(" ", -1)) {
            int split = each.indexOf('=');
            if (split > 0) {
                shown.put(each.substring(0, split), each.substring(split + 1));
            }
        }
        return new Parts(false, shown, kept);
    }

    /** Whether no script knows the parts; one that does fills each form's version, member and token in by itself. */
    public boolean isWhole() {
        return whole;
    }

    /**
     * What each form of the page says by itself; the same in all of them.
     *
     * @param fields hidden ones, with what they say
     * @return a mark for it
     */
    public String inEachForm(Content fields) {
        if (filling.length == 0) {
            filling = bytes(text(fields));
        }
        return FILLED_IN;
    }

    Forms forms() {
        return kept.forms();
    }

    /** A mark for a part of the page; it is written unless it was before. */
    String mark(Shown part, Content content) {
        Finished finished =
                kept.finished().get(part, () -> Finished.of(HtmlWords.in(part.language(), text(content)), FILLED_IN));
        placed.add(whole ? out -> finished.onto(out, filling) : lacked(part.id(), finished));
        return MARK + (placed.size() - 1) + END;
    }

    private Consumer<ByteArrayOutputStream> lacked(String id, Finished finished) {
        String digest = finished.digest();
        sent.append(sent.isEmpty() ? "" : " ").append(id).append('=').append(digest);
        String before = shown.getOrDefault(id, "");
        if (digest.equals(before)) {
            byte[] same = bytes("<div id=\"" + id + "\" data-same></div>");
            return out -> out.writeBytes(same);
        }
        if (!id.equals(DRAWING)) {
            return out -> finished.onto(out, new byte[0]);
        }
        byte[] changed = bytes(kept.drawings().since(before, digest, finished.text()));
        return out -> out.writeBytes(changed);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String text(Content content) {
        StringOutput out = new StringOutput(USUAL_LETTERS);
        content.writeTo(new OwaspHtmlTemplateOutput(out));
        return out.toString();
    }

    /** The page with every part in its place. */
    byte[] onto(String page) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(PAGE_BYTES);
        int from = 0;
        for (int mark = page.indexOf(MARK); mark >= 0; mark = page.indexOf(MARK, from)) {
            int end = page.indexOf(END, mark);
            out.writeBytes(bytes(page.substring(from, mark)));
            from = end + END.length();
            String which = page.substring(mark + MARK.length(), end);
            if (which.equals(FORM)) {
                out.writeBytes(filling);
            } else {
                placed.get(Integer.parseInt(which)).accept(out);
            }
        }
        out.writeBytes(bytes(page.substring(from)));
        return out.toByteArray();
    }

    /** The digests of all parts so far, for the script to tell with its next request. */
    public String told() {
        return sent.toString();
    }
}
