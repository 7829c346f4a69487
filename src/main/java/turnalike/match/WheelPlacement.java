package turnalike.match;

import java.util.List;
import turnalike.frame.Moment;
import turnalike.units.Mass;
import turnalike.units.Working;

/**
 * A set placed on a wheel.
 *
 * @param seats one for each place, in order
 * @param spares the pieces left over, in the order given
 * @param unbalance what is left over, toward the heavy spot; none when it is below rounding
 * @param noiseFloorGMm the unbalance that the scale alone can feign, see {@link turnalike.frame.Wheel#noiseFloorGMm}
 * @param bestProven whether no other choice or order has a smaller unbalance
 * @param massSpread heaviest − lightest of the set
 * @param warnings in the user's words
 * @param workings how the figures were found
 */
public record WheelPlacement(
        List<Seat> seats,
        List<Candidate> spares,
        Moment unbalance,
        double noiseFloorGMm,
        boolean bestProven,
        Mass massSpread,
        List<String> warnings,
        List<Working> workings) {
    public WheelPlacement {
        seats = List.copyOf(seats);
        spares = List.copyOf(spares);
        warnings = List.copyOf(warnings);
        workings = List.copyOf(workings);
    }
}
