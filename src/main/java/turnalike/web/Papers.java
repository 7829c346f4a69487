package turnalike.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import turnalike.sheets.Paper;
import turnalike.sheets.Sheet;

/** A sheet handed out as a PDF, on the paper the address names: {@code a4.pdf}, {@code letter.pdf}. */
public final class Papers {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private Papers() {}

    /** The paper that {@code {paper}} names. */
    public static Paper at(Context ctx) {
        return switch (ctx.pathParam("paper")) {
            case "a4.pdf" -> Paper.A4;
            case "letter.pdf" -> Paper.LETTER;
            default -> throw Refusal.notFound("that sheet");
        };
    }

    /** The day where this machine stands, as it is printed. */
    public static String today() {
        return DATE.format(LocalDate.now(java.time.ZoneId.systemDefault()));
    }

    /** Answers with the sheet. */
    public static void send(Context ctx, Sheet sheet) {
        ctx.header("Content-Disposition", "attachment; filename=\"" + sheet.name() + ".pdf\"")
                .contentType("application/pdf")
                .result(sheet.pdf());
    }
}
