package turnalike.job.original;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Kinds of originals, told by a file's name. */
public enum OriginalKind {
    /** A picture: JPEG or PNG. */
    PHOTOGRAPH(Set.of("jpg", "jpeg", "png")),
    /** Places and diameters, as CSV. */
    TABLE(Set.of("csv", "tsv", "txt")),
    /** A drawn outline, as SVG. */
    SVG(Set.of("svg")),
    /** A drawn outline, as DXF. */
    DXF(Set.of("dxf"));

    private final Set<String> endings;

    OriginalKind(Set<String> endings) {
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
            if (name.contains(".") && kind.endings.contains(ending)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
