package turnalike.web.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.set.SetMatch;
import turnalike.units.UnitSystem;

/**
 * What a search round the held pieces came to, beside what stands.
 *
 * @param better whether it is better
 * @param figures as they stand and as they would be
 * @param moves which places would change, a line each; none where it is no better
 */
public record RestFound(boolean better, HandFigures figures, List<String> moves) {
    public RestFound {
        moves = List.copyOf(moves);
    }

    static RestFound of(SetMatch now, SetMatch found, UnitSystem units) {
        HandFigures figures = HandFigures.of(now, Optional.of(found), units);
        List<String> moves = new ArrayList<>();
        for (int i = 0; figures.better() && i < now.order().size(); i++) {
            if (!now.order().get(i).equals(found.order().get(i))) {
                moves.add("place %d: piece %s instead of %s"
                        .formatted(i + 1, found.order().get(i), now.order().get(i)));
            }
        }
        return new RestFound(figures.better(), figures, moves);
    }
}
