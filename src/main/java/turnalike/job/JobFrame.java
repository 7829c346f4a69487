package turnalike.job;

import java.util.List;
import java.util.Optional;
import turnalike.frame.Frame;
import turnalike.frame.Moment;
import turnalike.frame.Row;
import turnalike.frame.Wheel;
import turnalike.units.Length;

/** What the set goes into, as the job file tells it. */
public sealed interface JobFrame permits JobFrame.OnWheel, JobFrame.InRow {
    Frame frame();

    <R> R match(Cases<R> cases);

    /** One answer for each kind. */
    interface Cases<R> {
        R onWheel(OnWheel frame);

        R inRow(InRow frame);
    }

    /** The end of the run that enters the hub. */
    enum HubEnd {
        START,
        END
    }

    /**
     * Round a hub.
     *
     * @param wheel places and hub radius
     * @param hubEnd which end of the pattern enters the hub
     * @param givenMoments what the bare wheel pulls by itself: hub, rim, rim joint
     * @param counterweightRadius where a counterweight could sit, from the axle
     */
    record OnWheel(Wheel wheel, HubEnd hubEnd, List<Moment> givenMoments, Optional<Length> counterweightRadius)
            implements JobFrame {
        public OnWheel {
            givenMoments = List.copyOf(givenMoments);
        }

        @Override
        public Frame frame() {
            return wheel;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.onWheel(this);
        }
    }

    /** Side by side along a rail. */
    record InRow(Row row) implements JobFrame {
        @Override
        public Frame frame() {
            return row;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.inRow(this);
        }
    }
}
