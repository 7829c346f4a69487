package turnalike.web.copy;

import turnalike.job.original.OriginalKind;

/**
 * What is asked of an original beside its units: before one is sent all that any may need, then what its kind can use.
 *
 * @param length its overall length
 * @param error how well it was measured
 * @param sheet the printed sheet in it
 */
public record Asked(boolean length, boolean error, boolean sheet) {
    static final Asked OF_ANY = new Asked(true, true, true);

    static Asked of(OriginalKind kind) {
        return switch (kind) {
            case PHOTOGRAPH -> new Asked(true, false, true);
            case TABLE -> new Asked(false, true, false);
            case SVG, DXF -> new Asked(true, true, false);
        };
    }
}
