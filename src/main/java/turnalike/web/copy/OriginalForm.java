package turnalike.web.copy;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import turnalike.job.original.OriginalKind;
import turnalike.job.original.OriginalWish;
import turnalike.photo.PhotoWish;
import turnalike.photo.PixelPoint;
import turnalike.trace.Snap;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.web.kit.RequestInput;

/**
 * What was typed beside an original.
 *
 * @param units {@code in} or {@code mm}
 * @param span the overall length; empty for none
 * @param error how well it was measured; empty for none
 * @param snap whether sizes are rounded
 * @param points a pasted table
 * @param piece the label of a finished piece
 * @param byEnd whether a finished piece is laid to the pattern by its far end
 * @param ends where the ends were pointed at, if they were
 * @param bar how long the bar of 100 mm on a printed sheet in the picture is; empty for as meant
 * @param height how high the piece's axis stands above that sheet; empty for lying on it or beside it
 */
public record OriginalForm(
        String units,
        String span,
        String error,
        boolean snap,
        String points,
        String piece,
        boolean byEnd,
        Optional<PhotoWish.Ends> ends,
        String bar,
        String height) {
    static OriginalForm blank(UnitSystem units, String piece) {
        return new OriginalForm(units.symbol(), "", "", false, "", piece, false, Optional.empty(), "", "");
    }

    static OriginalForm of(Context ctx) {
        return new OriginalForm(
                typed(ctx, "units"),
                typed(ctx, "span"),
                typed(ctx, "error"),
                typed(ctx, "snap").equals("yes"),
                RequestInput.table(ctx, "points").orElse(""),
                typed(ctx, "piece"),
                typed(ctx, "held").equals("end"),
                ends(ctx),
                typed(ctx, "bar"),
                typed(ctx, "height"));
    }

    private static String typed(Context ctx, String name) {
        return RequestInput.field(ctx, name).orElse("").strip();
    }

    private static Optional<PhotoWish.Ends> ends(Context ctx) {
        Optional<PixelPoint> start = point(typed(ctx, "start_x"), typed(ctx, "start_y"));
        Optional<PixelPoint> end = point(typed(ctx, "end_x"), typed(ctx, "end_y"));
        if (start.isEmpty() || end.isEmpty() || start.equals(end)) {
            return Optional.empty();
        }
        boolean swapped = typed(ctx, "swap").equals("yes");
        return Optional.of(new PhotoWish.Ends(swapped ? end.get() : start.get(), swapped ? start.get() : end.get()));
    }

    private static Optional<PixelPoint> point(String x, String y) {
        String number = "-?\\d{1,6}(?:[.,]\\d{1,9})?";
        if (!x.matches(number) || !y.matches(number)) {
            return Optional.empty();
        }
        return Optional.of(
                new PixelPoint(Double.parseDouble(x.replace(',', '.')), Double.parseDouble(y.replace(',', '.'))));
    }

    /** The same form for another original: nobody pointed at anything in it, and its table is its own. */
    OriginalForm forAnother() {
        return new OriginalForm(units, span, error, snap, "", piece, byEnd, Optional.empty(), bar, height);
    }

    public boolean isMetric() {
        return system() == UnitSystem.METRIC;
    }

    UnitSystem system() {
        return UnitSystem.find(units).orElse(UnitSystem.METRIC);
    }

    boolean hasSpan() {
        return !span.isEmpty();
    }

    /**
     * What is asked of the tracing.
     *
     * @param asPattern the pattern's length, which a photograph of a finished piece has if neither anybody nor a sheet in it says otherwise
     * @param problems where what cannot be read is told
     */
    OriginalWish wish(OriginalKind kind, Optional<Length> asPattern, List<Problem> problems) {
        Optional<Length> length = length("Overall length", span, problems);
        Optional<Length> within = length("Measured within", error, problems);
        switch (kind) {
            case PHOTOGRAPH -> refuse(within, "Measured within", "a photograph tells its own uncertainty", problems);
            case TABLE -> refuse(length, "Overall length", "a table gives its own lengths", problems);
            case SVG, DXF -> {
                // A drawing may have both: its own size, and how well it was drawn.
            }
        }
        boolean photograph = kind == OriginalKind.PHOTOGRAPH;
        return OriginalWish.of(system(), length, within, snap ? Snap.in(system()) : Snap.finest(system()))
                .with(photograph ? ends : Optional.empty())
                .onSheet(onSheet(problems).orLength(asPattern));
    }

    private PhotoWish.OnSheet onSheet(List<Problem> problems) {
        Optional<Length> printed = length("Its bar of 100 mm", bar, problems);
        boolean far = printed.filter(each -> each.mm() < 50 || each.mm() > 200).isPresent();
        if (far) {
            problems.add(new Problem(
                    "Its bar of 100 mm",
                    "was " + printed.get().formatFineBoth(system()),
                    "give what a rule says of the upper bar, the one marked 100 mm"));
        }
        return new PhotoWish.OnSheet(
                printed.filter(each -> !far), length("Axis above the sheet", height, problems), Optional.empty());
    }

    private static void refuse(Optional<Length> given, String where, String what, List<Problem> problems) {
        given.ifPresent(each -> problems.add(new Problem(where, what, "leave the field empty")));
    }

    private Optional<Length> length(String where, String typed, List<Problem> problems) {
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        return Length.parse(typed, system())
                .fold(
                        found -> {
                            if (!found.isPositive()) {
                                problems.add(new Problem(where, "must be above zero", "give a length above zero"));
                            }
                            return Optional.of(found).filter(Length::isPositive);
                        },
                        (what, mend) -> {
                            problems.add(new Problem(where, what, mend));
                            return Optional.empty();
                        });
    }
}
