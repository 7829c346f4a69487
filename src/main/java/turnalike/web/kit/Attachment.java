package turnalike.web.kit;

import io.javalin.http.Context;
import java.io.InputStream;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import turnalike.language.Speech;
import turnalike.sheets.Paper;
import turnalike.sheets.Sheet;

/** A file that the browser keeps instead of showing it. */
public final class Attachment {
    private Attachment() {}

    /** Answers with the file; its type as HTTP writes it. */
    public static void send(Context ctx, String name, String type, byte[] bytes) {
        head(ctx, name, type).result(bytes);
    }

    /** As above, of a text. */
    public static void send(Context ctx, String name, String type, String text) {
        head(ctx, name, type).result(text);
    }

    /** As above, of what is read from there; it is closed in the end. */
    public static void send(Context ctx, String name, String type, InputStream in) {
        head(ctx, name, type).result(in);
    }

    /** Answers with the sheet as a PDF, made in the language of who asks. */
    public static void send(Context ctx, Supplier<Sheet> made) {
        Sheet sheet = Speech.in(Spoken.by(ctx), made);
        send(ctx, sheet.name() + ".pdf", "application/pdf", sheet.pdf());
    }

    /** Answers with the sheet of that name on whichever paper bears it, made in the language of who asks. */
    public static void send(Context ctx, String name, Function<Paper, Sheet> on) {
        send(ctx, () -> Stream.of(Paper.A4, Paper.LETTER)
                .map(on)
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("that sheet")));
    }

    private static Context head(Context ctx, String name, String type) {
        return ctx.header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .contentType(type);
    }
}
