package turnalike.trace;

import java.util.List;
import java.util.OptionalDouble;

/**
 * An original traced: where it came from, what was read, the members that explain it and what to know of them.
 *
 * @param source what kind of source it was
 * @param original as it was read
 * @param run the members that explain it
 * @param scale how places became millimetres
 * @param warnings what to know before relying on it, each a sentence; the gravest first
 */
public record Traced(Source source, Original original, TracedRun run, Scale scale, List<String> warnings) {
    public Traced {
        warnings = List.copyOf(warnings);
    }

    /** {@return the outline as points at most half a millimetre apart; two at one place are a shoulder} */
    public List<Profile.Station> outlinePoints() {
        return OutlinePoints.of(original, run);
    }

    /** Kinds of sources. */
    public enum Source {
        /** A picture of the piece. */
        PHOTOGRAPH("photograph"),
        /** A table of places and diameters. */
        TABLE("table"),
        /** A drawn outline. */
        DRAWING("drawing");

        private final String word;

        Source(String word) {
            this.word = word;
        }

        /** {@return the word for it} */
        public String word() {
            return word;
        }
    }

    /**
     * How places in the source became millimetres.
     *
     * @param mmPerUnit millimetres for each pixel of a photograph or unit of a drawing; nothing for a table, which gives lengths
     * @param from where that came from, in words
     */
    public record Scale(OptionalDouble mmPerUnit, String from) {}
}
