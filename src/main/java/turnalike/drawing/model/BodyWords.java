package turnalike.drawing.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.outline.Outline.Station;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What to know before the body is printed. */
public final class BodyWords {
    /** Common practice, no source: a desktop printer's bed is 200 to 250 mm, its line 0.4 mm, so two lines are 0.8 mm. */
    private static final Length USUAL_BED = Length.ofMm(250);

    private static final Length USUAL_THINNEST = Length.ofMm(0.8);

    private static final String CAUTION =
            "A printed master is to be looked at and measured: keep it off the lathe, where plastic may burst.";

    private BodyWords() {}

    /** A sentence each: how large it is, what a usual printer will not hold, and the caution. */
    public static List<String> of(Pattern pattern, UnitSystem units) {
        Outline outline = pattern.outline();
        List<String> out = new ArrayList<>();
        out.add("Body       %s long, %s across the thickest round or flats; stands on its datum end"
                .formatted(
                        outline.length().formatBoth(units),
                        outline.largestRadius().times(2).formatBoth(units)));
        Station thinnest = outline.stations().stream()
                .min(Comparator.comparing(Station::radius))
                .orElseThrow();
        if (thinnest.radius().times(2).compareTo(USUAL_THINNEST) < 0) {
            out.add("           only %s thick at %s: less than two lines of a usual nozzle, which may not print"
                    .formatted(
                            thinnest.radius().times(2).formatFineBoth(units),
                            thinnest.place().formatBoth(units)));
        }
        if (outline.length().compareTo(USUAL_BED) > 0) {
            out.add("           longer than the bed of most desktop printers: cut it in the printing program");
        }
        out.add("           " + CAUTION);
        return out;
    }
}
