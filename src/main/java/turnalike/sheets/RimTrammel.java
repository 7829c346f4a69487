package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import turnalike.job.set.WheelFit;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * How the places of a rim too large for a template on paper are struck: both circles by a trammel about the axle, and every place from place 1
 * by its chord, so that slips do not add up as they do where one opening is stepped round. A chord is 2 R sin of half the angle, exact.
 */
final class RimTrammel {
    /** Nobody lays off more from one mark; with as many places as this the strip inside the rim serves better. */
    private static final int MOST_CHORDS = 60;

    private RimTrammel() {}

    static List<String> sentences(WheelFit fit, int pages, int most, UnitSystem units) {
        List<String> out = new ArrayList<>();
        out.add(
                ("At full size its template would take %d pages, more than the %d that anybody joins, and is not printed. The"
                                + " strip inside the rim has every place; or strike the rim with a trammel:")
                        .formatted(pages, most));
        out.add("One point on the axle, the other at %s for the inside%s."
                .formatted(
                        fit.innerRadius().formatBoth(units),
                        fit.outerRadius()
                                .map(outer -> ", at %s for the outside".formatted(outer.formatBoth(units)))
                                .orElse("")));
        out.add(
                "On the inside's circle from place 1, both ways round, each from place 1 itself: place, angle, straight across.");
        int half = fit.places() / 2;
        if (half > MOST_CHORDS) {
            out.add("There are too many places to tell each: take the strip, or a dividing head.");
            return out;
        }
        out.add(IntStream.rangeClosed(1, half)
                .mapToObj(step -> line(fit, step, units))
                .collect(Collectors.joining("; ")));
        return out;
    }

    private static String line(WheelFit fit, int step, UnitSystem units) {
        double degrees = fit.pitch().degrees() * step;
        Length chord = fit.innerRadius().times(2 * Math.sin(Math.toRadians(degrees) / 2));
        int mirrored = fit.places() - step;
        String places = mirrored == step ? "%d".formatted(step + 1) : "%d and %d".formatted(step + 1, mirrored + 1);
        return "%s, %s, %s".formatted(places, Angle.ofDegrees(degrees).format(), chord.format(units));
    }
}
