package turnalike.frame;

import java.util.Collection;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * Places round a hub: place k of n, from 0, stands at angle 360°·k/n.
 *
 * @param places how many spokes, at least 1, else {@link IllegalArgumentException}
 * @param hubRadius from the axle to the shoulder of the hub tenon; the tenon itself is inside it; not negative
 */
public record Wheel(int places, Length hubRadius) {
    public Wheel {
        if (places < 1) {
            throw new IllegalArgumentException("a wheel needs at least 1 place, was %d".formatted(places));
        }
        if (hubRadius.mm() < 0) {
            throw new IllegalArgumentException("hub radius must not be negative, was %s mm".formatted(hubRadius.mm()));
        }
    }

    /**
     * {@return the direction of place {@code place}, counted from 0; {@link IllegalArgumentException} outside 0 … places − 1}
     *
     * @param place in the order of the directions
     */
    public Angle angle(int place) {
        if (place < 0 || place >= places) {
            throw new IllegalArgumentException("place must be 0 to %d, was %d".formatted(places - 1, place));
        }
        return Angle.ofDegrees(360.0 * place / places);
    }

    /**
     * {@return how far from the axle a piece's balance point comes to stand}
     *
     * @param balanceFromShoulder from the shoulder of the hub tenon outward to the balance point; negative inside the tenon
     */
    public Length reach(Length balanceFromShoulder) {
        return hubRadius.plus(balanceFromShoulder);
    }

    /**
     * {@return what a piece at that place adds: mass × reach, in the direction of the place} Exact up to rounding.
     *
     * @param place from 0, in the order of the directions
     * @param mass the piece's
     * @param reach the piece's balance point, from the wheel's centre
     */
    public Moment moment(int place, Mass mass, Length reach) {
        return new Moment(mass.grams() * reach.mm(), angle(place));
    }

    /**
     * {@return the unbalance that the scale alone can feign, in g·mm: scale / √12 · √(Σ R²)} A reading rounded to {@code scale} is off by a
     * uniform error of standard deviation scale / √12, independent from piece to piece; the figure is the standard deviation of the length
     * of the unbalance vector, both components together. Derived here.
     *
     * @param scale the scale's smallest step
     * @param reaches each piece's balance point, from the wheel's centre
     */
    public static double noiseFloorGMm(Mass scale, Collection<Length> reaches) {
        double squaresMm2 = 0;
        for (Length reach : reaches) {
            squaresMm2 += reach.mm() * reach.mm();
        }
        return scale.grams() / Math.sqrt(12) * Math.sqrt(squaresMm2);
    }
}
