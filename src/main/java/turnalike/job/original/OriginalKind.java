package turnalike.job.original;

import java.util.Locale;
import java.util.Optional;

/** Kinds of originals, told by a file's name. */
public enum OriginalKind {
    /** A picture: JPEG or PNG. */
    PHOTOGRAPH("jpe?g|png"),
    /** Places and diameters, as CSV or a workbook. */
    TABLE("csv|tsv|txt|xlsx"),
    /** A drawn outline, as SVG. */
    SVG("svg"),
    /** A drawn outline, as DXF. */
    DXF("dxf");

    private final String endings;

    OriginalKind(String endings) {
        this.endings = endings;
    }

    /**
     * {@return the kind that a file of that name is of; empty where its ending is none of ours}
     *
     * @param name of the file, with or without its folder
     */
    public static Optional<OriginalKind> find(String name) {
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        for (OriginalKind kind : values()) {
            if (name.contains(".") && ending.matches(kind.endings)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
