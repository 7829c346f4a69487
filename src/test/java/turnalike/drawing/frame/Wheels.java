package turnalike.drawing.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import turnalike.frame.Counterweight;
import turnalike.frame.Moment;
import turnalike.frame.RimFit;
import turnalike.frame.RimPoint;
import turnalike.frame.Wheel;
import turnalike.match.Candidate;
import turnalike.match.Seat;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/** Invented wheels and rows for looking at; their figures are worked out from the pieces, not made up. */
public final class Wheels {
    public static final Length HUB = Length.ofMm(57);
    private static final WeighingScale SCALE = new WeighingScale(Mass.ofGrams(0.1));
    private static final String LONG = "Speiche <b>&\"'</b> linkes Rad, Nachdreher Nr. ";

    private Wheels() {}

    private static String label(int i, boolean hostile) {
        return hostile ? LONG + i : Integer.toString(i);
    }

    /** A wheel in the order the pieces came; with a scale so coarse that the unbalance drowns, or a fine one. */
    public static WheelDrawing wheel(int places, boolean hostile, Mass scale) {
        Random random = new Random(places);
        Wheel wheel = new Wheel(places, HUB);
        List<Seat> seats = new ArrayList<>();
        List<Moment> pulls = new ArrayList<>();
        List<Length> reaches = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < places; i++) {
            Mass mass = Mass.ofGrams(Math.round(4120 + 40 * random.nextGaussian()) / 10.0);
            Length reach = Length.ofMm(290 + random.nextGaussian());
            seats.add(new Seat(i + 1, wheel.angle(i), new Candidate(label(places + 3 - i, hostile), mass, reach)));
            pulls.add(wheel.moment(i, mass, reach));
            reaches.add(reach);
            least = Math.min(least, mass.grams());
            most = Math.max(most, mass.grams());
        }
        List<Candidate> spares = List.of(
                new Candidate(label(1, hostile), Mass.ofGrams(402.1), Length.ofMm(290)),
                new Candidate(label(2, hostile), Mass.ofGrams(431.9), Length.ofMm(290)));
        Moment unbalance = Moment.sum(pulls);
        WheelPlacement placement = new WheelPlacement(
                seats,
                spares,
                unbalance,
                Wheel.noiseFloorGMm(scale, reaches),
                false,
                Mass.ofGrams(most - least),
                List.of(),
                List.of());
        Optional<Counterweight> weight = Optional.of(unbalance.counterweight(Length.ofMm(48)));
        return new WheelDrawing(placement, HUB, weight, SCALE, UnitSystem.METRIC);
    }

    /** Groups of legs, the second piece of each not weighed. */
    public static RowDrawing legs(int groups, int size, boolean hostile) {
        List<PlacesDrawing.Place> out = new ArrayList<>();
        for (int i = 0; i < groups * size; i++) {
            Optional<Mass> mass = i % size == 1 ? Optional.empty() : Optional.of(Mass.ofGrams(800 + i));
            out.add(new PlacesDrawing.Place(i + 1, Optional.empty(), label(i + 1, hostile), mass.map(SCALE::reading)));
        }
        return RowDrawing.ofGroups(out, size);
    }

    public static RowDrawing row(int places, boolean hostile, boolean weighed) {
        List<PlacesDrawing.Place> out = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            Optional<Mass> mass = weighed && i % 7 != 5 ? Optional.of(Mass.ofGrams(300 + i * 0.3)) : Optional.empty();
            out.add(new PlacesDrawing.Place(
                    i + 1, Optional.empty(), label(places - i, hostile), mass.map(SCALE::reading)));
        }
        return RowDrawing.along(out);
    }

    /** A curve whose points get rounder as they get worse balanced. */
    public static List<TradeOff.Point> curve(int points, double firstGMm) {
        List<TradeOff.Point> out = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double outOfRound = 2.4 / (1 + i);
            List<RimPoint> rim = List.of(
                    new RimPoint(Angle.ofDegrees(0), Length.ofMm(300 + outOfRound)),
                    new RimPoint(Angle.ofDegrees(90), Length.ofMm(300)),
                    new RimPoint(Angle.ofDegrees(180), Length.ofMm(300 + outOfRound)),
                    new RimPoint(Angle.ofDegrees(270), Length.ofMm(300)));
            Moment unbalance = new Moment(firstGMm * Math.pow(1.7, i), Angle.ofDegrees(40 * i));
            out.add(new TradeOff.Point(List.of(0, 1, 2, 3), unbalance, RimFit.of(rim)));
        }
        return out;
    }
}
