package turnalike.web.job;

import gg.jte.Content;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which parts of a job's page a script is sent. It tells by their digests which ones it shows already; those come as an empty element that
 * says so, and the browser neither reads nor lays them out again; of the drawing, each group is a part of its own. Who tells of none is sent the page whole. For one answer, on one thread.
 */
public final class Parts {
    /** The header a script tells in: {@code drawing=0123456789abcdef run=…}, empty while it knows of none. */
    static final String HEADER = "X-Turnalike-Parts";

    private static final String DRAWING = "drawing";
    private static final int USUAL_LETTERS = 8_192;

    private final boolean whole;
    private final Map<String, String> shown;
    private final SentDrawings drawings;
    private final StringBuilder sent = new StringBuilder();

    private Parts(boolean whole, Map<String, String> shown, SentDrawings drawings) {
        this.whole = whole;
        this.shown = shown;
        this.drawings = drawings;
    }

    /** Everything, as for a page that stands by itself. */
    static Parts whole() {
        return new Parts(true, Map.of(), new SentDrawings());
    }

    /** What this request's page lacks. */
    static Parts lackedBy(Context ctx, SentDrawings drawings) {
        return lackedBy(Optional.ofNullable(ctx.header(HEADER)), drawings);
    }

    /** @param told what a script told of the parts it shows; empty where none asks */
    static Parts lackedBy(Optional<String> told, SentDrawings drawings) {
        if (told.isEmpty()) {
            return whole();
        }
        Map<String, String> shown = new HashMap<>();
        for (String each : told.orElseThrow().split(" ", -1)) {
            int split = each.indexOf('=');
            if (split > 0) {
                shown.put(each.substring(0, split), each.substring(split + 1));
            }
        }
        return new Parts(false, shown, drawings);
    }

    /** Whether no script knows the parts; one that does fills each form's version, member and token in by itself. */
    public boolean isWhole() {
        return whole;
    }

    /**
     * A part as it is sent.
     *
     * @param id of its element
     * @param content the element with what is in it
     */
    public String text(String id, Content content) {
        StringOutput out = new StringOutput(USUAL_LETTERS);
        content.writeTo(new OwaspHtmlTemplateOutput(out));
        String text = out.toString();
        String digest = digest(text);
        sent.append(sent.isEmpty() ? "" : " ").append(id).append('=').append(digest);
        String before = shown.getOrDefault(id, "");
        if (digest.equals(before)) {
            return "<div id=\"%s\" data-same></div>".formatted(id);
        }
        return id.equals(DRAWING) ? drawings.since(before, digest, text) : text;
    }

    /** The digests of all parts so far, for the script to tell with its next request. */
    public String told() {
        return sent.toString();
    }

    /** A sum of 64 bits: two states of one part have the same by chance once in 10¹⁹ times. */
    private static String digest(String text) {
        long sum = text.length();
        for (int i = 0; i < text.length(); i++) {
            sum = (sum + text.charAt(i)) * 0x9E3779B97F4A7C15L;
            sum ^= sum >>> 29;
        }
        return Long.toHexString(sum);
    }
}
