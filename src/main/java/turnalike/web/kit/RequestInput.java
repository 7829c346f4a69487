package turnalike.web.kit;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.eclipse.jetty.http.HttpException;
import turnalike.workbook.WorkbookTable;

/** What a request asks for, read with care: whatever a browser sends may be anything. */
public final class RequestInput {
    private static final int LONGEST = 200_000;
    private static final int TOO_LARGE = 413;

    private RequestInput() {}

    /** Reads the form that was sent, so that it can be asked for its fields; one that is none is a {@link Refusal}. */
    public static void read(Context ctx) {
        try {
            ctx.formParamMap();
        } catch (
                Exception
                        unreadable) { // whatever kind the server's reader throws: a form is read here, and nothing else
            throw told(ctx, unreadable);
        }
    }

    private static Refusal told(Context ctx, Throwable unreadable) {
        for (Throwable each = unreadable; each != null; each = each.getCause()) {
            if (each instanceof HttpException known && known.getCode() == TOO_LARGE) {
                return new Refusal(TOO_LARGE, List.of(BodyLimits.tooLarge(ctx.path())));
            }
        }
        String mend = ForPrograms.asks(ctx) ? "send it as the description shows" : "load the page again";
        return Refusal.of(400, "request", "its form cannot be read", mend);
    }

    /** A field of the form that was sent, to the letter. */
    public static Optional<String> field(Context ctx, String name) {
        return table(ctx, name).filter(value -> value.length() <= LONGEST);
    }

    /** A field that holds a figure: a page in another language shows it with a comma, and what is kept has a point. */
    public static Optional<String> figure(Context ctx, String name) {
        return field(ctx, name).map(FiguresIn.ALL::kept);
    }

    /** A field into which a whole table may be pasted: as long as a request may be. */
    public static Optional<String> table(Context ctx, String name) {
        List<String> sent = ctx.formParams(name);
        // Of a tick box and the empty field before it, which stands for no tick, the last one sent counts.
        return sent.isEmpty() ? Optional.empty() : Optional.of(sent.get(sent.size() - 1));
    }

    /** A part of the address after the question mark. */
    public static Optional<String> query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name));
    }

    /** A field that is a whole number of at most nine digits. */
    public static Optional<Integer> number(Optional<String> text) {
        return text.filter(each -> each.matches("-?\\d{1,9}")).map(Integer::valueOf);
    }

    /** The text of a file that was sent, read as UTF-8; empty when none was chosen. */
    public static Optional<String> upload(Context ctx, String name) {
        Optional<UploadedFile> file = Optional.ofNullable(ctx.uploadedFile(name));
        return file.filter(each -> each.size() > 0).map(each -> {
            try (InputStream in = each.content()) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        });
    }

    /**
     * A table in a file that was sent, as CSV text: the file's own, or the first sheet of a workbook; empty when none was chosen. A workbook
     * that cannot be read is refused.
     */
    public static Optional<String> tableFile(Context ctx, String name) {
        Optional<UploadedFile> file =
                Optional.ofNullable(ctx.uploadedFile(name)).filter(each -> each.size() > 0);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream in = file.get().content()) {
            return Optional.of(tableText(in.readAllBytes(), "file"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A table in the chosen {@code file}, else in the pasted {@code cells}; empty where there is neither. */
    public static String pasted(Context ctx) {
        return tableFile(ctx, "file").or(() -> table(ctx, "cells")).orElse("");
    }

    /** The same of bytes at hand, called so where a problem is told. */
    public static String tableText(byte[] bytes, String called) {
        if (!WorkbookTable.isZip(bytes)) {
            return new String(bytes, StandardCharsets.UTF_8);
        }
        WorkbookTable.Read read = WorkbookTable.read(bytes, called);
        if (!read.problems().isEmpty()) {
            throw new Refusal(422, read.problems());
        }
        return read.text();
    }

    /** A number in the path; what is none leads nowhere. */
    public static int pathNumber(Context ctx, String name) {
        return number(Optional.of(ctx.pathParam(name))).orElseThrow(() -> Refusal.notFound("that page"));
    }
}
