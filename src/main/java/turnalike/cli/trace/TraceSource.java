package turnalike.cli.trace;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.UserError;
import turnalike.effort.Effort;
import turnalike.job.Tolerances;
import turnalike.photo.PhotoTrace;
import turnalike.photo.PhotoWish;
import turnalike.trace.Original;
import turnalike.trace.TraceWarnings;
import turnalike.trace.Traced;
import turnalike.trace.TracedRun;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.trace.fit.MemberFit;
import turnalike.trace.table.PointTable;
import turnalike.units.Length;

/** A source traced, whichever kind it is: told by its name's ending. */
final class TraceSource {
    /** No edge in a picture is taken to be found better than this, in pixels: common practice, no source. */
    private static final double SUREST_PIXELS = 0.1;

    private TraceSource() {}

    static Traced trace(Path source, TraceWish wish) {
        String name = String.valueOf(source.getFileName()).toLowerCase(Locale.ROOT);
        if (name.endsWith(".csv") || name.endsWith(".tsv") || name.endsWith(".txt")) {
            return table(source, wish);
        }
        if (name.endsWith(".svg")) {
            return drawing(source, DrawnOutline.Format.SVG, wish);
        }
        if (name.endsWith(".dxf")) {
            return drawing(source, DrawnOutline.Format.DXF, wish);
        }
        if (isPhotograph(source)) {
            return photograph(source, wish);
        }
        throw UserError.of(
                source.toString(),
                "is neither a photograph (.jpg, .png) nor a table (.csv) nor a drawing (.svg, .dxf) by its name",
                "save it as one of these");
    }

    static boolean isPhotograph(Path source) {
        String name = String.valueOf(source.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".jpg") || name.endsWith(".jpeg") || name.endsWith(".png");
    }

    private static Traced photograph(Path source, TraceWish wish) {
        if (wish.error().isPresent()) {
            throw UserError.of("--error", "a photograph tells its own uncertainty", "leave it out");
        }
        PhotoWish known = new PhotoWish(wish.span(), Optional.empty(), Optional.empty(), wish.sheet());
        PhotoTrace answer = PhotoTrace.of(InputFiles.picture(source), known, Effort.unlimited());
        if (answer instanceof PhotoTrace.NotSure unsure) {
            throw UserError.of(String.valueOf(source.getFileName()), unsure.what(), unsure.mend());
        }
        PhotoTrace.Traced seen = (PhotoTrace.Traced) answer;
        List<String> notes = new ArrayList<>(seen.warnings());
        notes.add("Angle of view: " + seen.viewFrom() + ".");
        notes.add("What is not lit as flats is taken to be round: measure what may be a square.");
        return traced(
                Traced.Source.PHOTOGRAPH,
                new Original(seen.profile(), seen.squares(), Length.ofMm(SUREST_PIXELS * seen.mmPerPixel())),
                wish,
                new Traced.Scale(OptionalDouble.of(seen.mmPerPixel()), seen.scaleFrom()),
                notes);
    }

    private static Traced table(Path source, TraceWish wish) {
        if (wish.span().isPresent()) {
            throw UserError.of(
                    "--span", "a table gives its own lengths", "leave it out, or mend the places in the table");
        }
        Length usual = Tolerances.USUAL.diameter().times(0.5);
        PointTable.Read read = PointTable.read(
                InputFiles.text(source), wish.units(), wish.error().orElse(usual));
        Original original = read.original().orElseThrow(() -> InputFiles.in(source, read.problems()));
        List<String> notes = new ArrayList<>(read.notes());
        if (wish.error().isEmpty()) {
            notes.add(
                    "Diameters are taken to be measured within %s, half of what a job's may be off; --error says it better."
                            .formatted(usual.formatFineBoth(wish.units())));
        }
        return traced(
                Traced.Source.TABLE,
                original,
                wish,
                new Traced.Scale(OptionalDouble.empty(), "places as measured"),
                notes);
    }

    private static Traced drawing(Path source, DrawnOutline.Format format, TraceWish wish) {
        if (wish.error().isPresent()) {
            throw UserError.of("--error", "a drawing was not measured", "leave it out");
        }
        DrawnOutline.Read read = DrawnOutline.read(InputFiles.text(source), format, wish.span(), wish.units());
        Original original = read.original().orElseThrow(() -> InputFiles.in(source, read.problems()));
        return traced(Traced.Source.DRAWING, original, wish, read.scale(), read.notes());
    }

    static Traced traced(
            Traced.Source source, Original original, TraceWish wish, Traced.Scale scale, List<String> notes) {
        TracedRun run = MemberFit.of(original, wish.snap());
        List<String> warnings = new ArrayList<>(TraceWarnings.of(original, run, wish.units()));
        warnings.addAll(notes);
        return new Traced(source, original, run, scale, warnings);
    }
}
