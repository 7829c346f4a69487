package turnalike.web.kit;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import turnalike.sheets.Paper;

/** The paper a sheet is asked for on, by the address ({@code a4.pdf}, {@code letter.pdf}), and the day it is printed. */
public final class Papers {
    private Papers() {}

    /** The paper that {@code {paper}} names. */
    public static Paper at(Context ctx) {
        return switch (ctx.pathParam("paper")) {
            case "a4.pdf" -> Paper.A4;
            case "letter.pdf" -> Paper.LETTER;
            default -> throw Refusal.notFound("that sheet");
        };
    }

    /** The day where this machine stands, written as the command line prints it. */
    public static String today() {
        return DateTimeFormatter.ISO_LOCAL_DATE.format(LocalDate.now(ZoneId.systemDefault()));
    }
}
