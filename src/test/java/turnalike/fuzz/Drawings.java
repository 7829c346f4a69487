package turnalike.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Whatever a drawing holds is an outline or problems, with its length given and without. */
final class Drawings {
    private static final Length SPAN = Length.ofMm(300);
    private static final double SLACK_MM = 0.01;

    private Drawings() {}

    static void tryOut(byte[] input, DrawnOutline.Format format) {
        String text = new String(input, StandardCharsets.UTF_8);
        read(text, format, Optional.empty());
        DrawnOutline.Read scaled = read(text, format, Optional.of(SPAN));
        scaled.original().ifPresent(original -> {
            double off = original.profile().length().minus(SPAN).mm();
            Fuzz.require(Math.abs(off) < SLACK_MM, "%s mm off the length that was given".formatted(off));
        });
    }

    private static DrawnOutline.Read read(String text, DrawnOutline.Format format, Optional<Length> span) {
        DrawnOutline.Read read = DrawnOutline.read(text, format, span, UnitSystem.METRIC);
        Fuzz.readable(read.problems());
        Fuzz.require(read.original().isPresent() == read.problems().isEmpty(), "neither an outline nor problems");
        return read;
    }
}
