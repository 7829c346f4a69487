package turnalike.job.original;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.effort.Effort;
import turnalike.job.Tolerances;
import turnalike.photo.PhotoTrace;
import turnalike.photo.PhotoWish;
import turnalike.trace.DoubtWarnings;
import turnalike.trace.Original;
import turnalike.trace.TraceWarnings;
import turnalike.trace.Traced;
import turnalike.trace.TracedRun;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.trace.fit.MemberFit;
import turnalike.trace.fit.TracedRows;
import turnalike.trace.table.PointTable;
import turnalike.units.Length;
import turnalike.units.Problem;

/**
 * What came of tracing an original: what was found, or what is wrong.
 *
 * @param traced what was found; empty where anything is wrong
 * @param overlay where a piece that was found lies in its photograph
 * @param problems why nothing was found, in order; none beside what was
 */
public record OriginalTrace(Optional<Traced> traced, Optional<PhotoTrace.Overlay> overlay, List<Problem> problems) {
    /** No edge in a picture is taken to be found better than this, in pixels: common practice, no source. */
    private static final double SUREST_PIXELS = 0.1;

    /** What a diameter is taken to be measured within where nothing is said of it. */
    private static final Length USUAL = Tolerances.USUAL.diameter().times(0.5);

    /** Rows that stray by so many times what is usual were not measured so well: of chance alone a few dozen do not. */
    private static final double MORE = 1.25;

    /** Shorter, longer or thinner a piece is none that anyone would trace: the length was mistyped. Bounds of ours, wide on purpose. */
    private static final double SHORTEST_MM = 5;

    private static final double LONGEST_MM = 6000;
    private static final double THINNEST_MM = 1;
    private static final String SPAN_MEND = "check the overall length and its unit";

    public OriginalTrace {
        problems = List.copyOf(problems);
    }

    private static OriginalTrace refused(List<Problem> problems) {
        return new OriginalTrace(Optional.empty(), Optional.empty(), problems);
    }

    private static OriginalTrace refused(String where, String what, String mend) {
        return refused(List.of(new Problem(where, what, mend)));
    }

    /**
     * {@return what a photograph gives}
     *
     * @param picture a JPEG or PNG file, whatever its bytes are
     * @param wish with its span, or the sheet in the picture
     * @param effort how long it may take; what it has come to is told there
     */
    public static OriginalTrace photograph(byte[] picture, OriginalWish wish, Effort effort) {
        if (wish.span()
                .filter(each -> each.mm() < SHORTEST_MM || each.mm() > LONGEST_MM)
                .isPresent()) {
            return refused(
                    "photograph",
                    "no turned piece is %s long".formatted(wish.span().get().formatMeasuredBoth(wish.units())),
                    SPAN_MEND);
        }
        PhotoWish known = new PhotoWish(wish.span(), wish.ends(), Optional.empty(), wish.sheet());
        PhotoTrace answer = PhotoTrace.of(picture, known, effort);
        if (answer instanceof PhotoTrace.NotSure unsure) {
            return refused("photograph", unsure.what(), unsure.mend());
        }
        PhotoTrace.Traced seen = (PhotoTrace.Traced) answer;
        Length thick = seen.profile().largestRadius().times(2);
        if (thick.mm() < THINNEST_MM) {
            return refused(
                    "photograph",
                    "of that length the piece is only %s thick".formatted(thick.formatMeasuredBoth(wish.units())),
                    SPAN_MEND);
        }
        List<String> notes = new ArrayList<>(seen.warnings());
        notes.add("Angle of view: " + seen.viewFrom() + ".");
        notes.add("What is not lit as flats is taken to be round: measure what may be a square.");
        Traced traced = traced(
                Traced.Source.PHOTOGRAPH,
                new Original(
                        seen.profile(),
                        seen.squares(),
                        Length.ofMm(SUREST_PIXELS * seen.mmPerPixel()),
                        seen.fitted(),
                        Length.ofMm(seen.mmPerPixel())),
                wish,
                new Traced.Scale(OptionalDouble.of(seen.mmPerPixel()), seen.scaleFrom()),
                notes);
        return new OriginalTrace(Optional.of(traced), Optional.of(seen.overlay()), List.of());
    }

    /**
     * {@return what measured points give}
     *
     * @param text the table as CSV
     * @param wish without a span
     */
    public static OriginalTrace table(String text, OriginalWish wish) {
        PointTable.Read read = PointTable.read(text, wish.units(), wish.error().orElse(USUAL));
        if (read.original().isEmpty()) {
            return refused(read.problems());
        }
        TracedRows fit = MemberFit.ofRows(read.original().get(), wish.snap());
        Length stray = Length.ofMm(2 * fit.strayMm().orElse(0));
        if (wish.error().isPresent()) {
            return table(read, fit, wish, List.of());
        }
        String usual = USUAL.formatFineBoth(wish.units());
        if (stray.mm() <= MORE * USUAL.mm()) {
            String taken =
                    "Diameters are taken to be measured within %s, half of what a job's may be off; --error says it better."
                            .formatted(usual);
            return table(read, fit, wish, List.of(taken));
        }
        PointTable.Read again = PointTable.read(text, wish.units(), stray);
        if (again.original().isEmpty()) {
            return refused(again.problems());
        }
        String taken =
                "The rows stray by more than the usual %s round the members: diameters are taken to be measured within %s; --error says it better."
                        .formatted(usual, stray.formatFineBoth(wish.units()));
        return table(again, MemberFit.ofRows(again.original().get(), wish.snap()), wish, List.of(taken));
    }

    private static OriginalTrace table(PointTable.Read read, TracedRows fit, OriginalWish wish, List<String> error) {
        Original original = read.original().orElseThrow();
        List<String> warnings = new ArrayList<>(TraceWarnings.of(original, fit.run(), wish.units()));
        warnings.addAll(DoubtWarnings.of(fit.doubts(), fit.run(), wish.units()));
        warnings.addAll(read.notes());
        warnings.addAll(error);
        return found(new Traced(
                Traced.Source.TABLE,
                original,
                fit.marked(),
                new Traced.Scale(OptionalDouble.empty(), "places as measured"),
                warnings));
    }

    /**
     * {@return what a drawn outline gives}
     *
     * @param text the drawing's
     * @param format of it
     * @param wish with a span where it is to be scaled
     */
    public static OriginalTrace drawing(String text, DrawnOutline.Format format, OriginalWish wish) {
        DrawnOutline.Read read = DrawnOutline.read(text, format, wish.span(), wish.error(), wish.units());
        return read.original().isEmpty()
                ? refused(read.problems())
                : found(traced(Traced.Source.DRAWING, read.original().get(), wish, read.scale(), read.notes()));
    }

    private static OriginalTrace found(Traced traced) {
        return new OriginalTrace(Optional.of(traced), Optional.empty(), List.of());
    }

    private static Traced traced(
            Traced.Source source, Original original, OriginalWish wish, Traced.Scale scale, List<String> notes) {
        TracedRun run = MemberFit.of(original, wish.snap());
        List<String> warnings = new ArrayList<>(TraceWarnings.of(original, run, wish.units()));
        warnings.addAll(notes);
        return new Traced(source, original, run, scale, warnings);
    }
}
