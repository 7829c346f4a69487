package turnalike.web.job;

import java.util.Optional;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;
import turnalike.units.Working;

/**
 * A figure that opens its working.
 *
 * @param name what it is
 * @param value in the job's units
 * @param also the same in the other unit, or what it hangs on
 * @param working how it was found; empty where it is what was given
 */
public record FigureView(String name, String value, String also, Optional<Working> working) {
    static FigureView of(String name, Length length, UnitSystem units, Optional<Working> working) {
        return new FigureView(name, length.format(units), length.format(units.other()), working);
    }

    static FigureView of(String name, Mass mass, WeighingScale scale, Optional<Working> working) {
        return new FigureView(name, scale.reading(mass), scale.other(mass), working);
    }
}
