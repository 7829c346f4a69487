package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.frame.Moment;

/**
 * What a wheel pulls before any spoke is in it: hub, rim, rim joint.
 *
 * @param moments as the job gives them
 * @param rocking as found by letting it rock, if it was; adds to the given ones
 */
public record BareWheel(List<Moment> moments, Optional<Rocking> rocking) {
    public BareWheel {
        moments = List.copyOf(moments);
    }

    /** Given and found together. */
    public List<Moment> all() {
        List<Moment> all = new ArrayList<>(moments);
        rocking.map(Rocking::unbalance).ifPresent(all::add);
        return List.copyOf(all);
    }
}
