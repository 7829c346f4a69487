package turnalike.cli.trace;

import java.nio.file.Path;
import java.util.Optional;
import turnalike.cli.kit.InputFiles;
import turnalike.cli.kit.UserError;
import turnalike.effort.Effort;
import turnalike.job.original.OriginalKind;
import turnalike.job.original.OriginalTrace;
import turnalike.job.original.OriginalWish;
import turnalike.trace.Traced;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.units.Problem;

/** A source traced, whichever kind it is: told by its name's ending. */
final class TraceSource {
    private TraceSource() {}

    static Traced trace(Path source, OriginalWish wish) {
        OriginalKind kind = OriginalKind.find(name(source))
                .orElseThrow(() -> UserError.of(
                        source.toString(),
                        "is neither a photograph (.jpg, .png) nor a table (.csv, .xlsx) nor a drawing (.svg, .dxf) by its name",
                        "save it as one of these"));
        return switch (kind) {
            case PHOTOGRAPH -> photograph(source, wish);
            case TABLE -> table(source, wish);
            case SVG -> drawing(source, DrawnOutline.Format.SVG, wish);
            case DXF -> drawing(source, DrawnOutline.Format.DXF, wish);
        };
    }

    static boolean isPhotograph(Path source) {
        return OriginalKind.find(name(source)).equals(Optional.of(OriginalKind.PHOTOGRAPH));
    }

    private static String name(Path source) {
        return String.valueOf(source.getFileName());
    }

    private static Traced photograph(Path source, OriginalWish wish) {
        if (wish.error().isPresent()) {
            throw UserError.of("--error", "a photograph tells its own uncertainty", "leave it out");
        }
        OriginalTrace trace = OriginalTrace.photograph(InputFiles.picture(source), wish, Effort.unlimited());
        return trace.traced().orElseThrow(() -> {
            Problem problem = trace.problems().get(0);
            return UserError.of(name(source), problem.what(), problem.mend());
        });
    }

    private static Traced table(Path source, OriginalWish wish) {
        if (wish.span().isPresent()) {
            throw UserError.of(
                    "--span", "a table gives its own lengths", "leave it out, or mend the places in the table");
        }
        return found(source, OriginalTrace.table(InputFiles.table(source), wish));
    }

    private static Traced drawing(Path source, DrawnOutline.Format format, OriginalWish wish) {
        return found(source, OriginalTrace.drawing(InputFiles.text(source), format, wish));
    }

    private static Traced found(Path source, OriginalTrace trace) {
        return trace.traced().orElseThrow(() -> InputFiles.in(source, trace.problems()));
    }
}
