package turnalike.stock;

import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What a rough blank is larger by than the blank made of it.
 *
 * @param millingPerFace taken off each of the four faces; zero or more
 * @param trimmingPerEnd taken off each end; zero or more
 */
public record Allowances(Length millingPerFace, Length trimmingPerEnd) {
    public Allowances {
        if (millingPerFace.mm() < 0 || trimmingPerEnd.mm() < 0) {
            throw new IllegalArgumentException("allowances must not be negative, were %s mm and %s mm"
                    .formatted(millingPerFace.mm(), trimmingPerEnd.mm()));
        }
    }

    /**
     * 1/16 in a face and 1/2 in an end, or 1.5 mm and 12 mm. Common practice, no source: enough to plane a sawn face flat and to cut
     * end checks and snipe away; warped or cracked stock needs more.
     *
     * @param units which of the two is meant
     * @return the allowances in round figures of those units
     */
    public static Allowances usual(UnitSystem units) {
        return units == UnitSystem.INCH
                ? new Allowances(Length.ofInches(1 / 16.0), Length.ofInches(1 / 2.0))
                : new Allowances(Length.ofMm(1.5), Length.ofMm(12));
    }
}
