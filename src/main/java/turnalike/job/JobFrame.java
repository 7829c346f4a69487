package turnalike.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import turnalike.frame.Frame;
import turnalike.frame.Legs;
import turnalike.frame.Moment;
import turnalike.frame.Row;
import turnalike.frame.Wheel;
import turnalike.units.Length;

/** What the set goes into, as the job file tells it. */
public sealed interface JobFrame permits JobFrame.OnWheel, JobFrame.InRow, JobFrame.InLegs {
    Frame frame();

    /** How many pieces are wanted for it in all. */
    default int pieces() {
        return frame().places();
    }

    /** This frame with a counterweight radius told for the whole job; one of the frame's own comes first. Only a wheel has a use for it. */
    default JobFrame withCounterweightAt(Length radius) {
        return this;
    }

    <R> R match(Cases<R> cases);

    /** One answer for each kind. */
    interface Cases<R> {
        R onWheel(OnWheel frame);

        R inRow(InRow frame);

        R inLegs(InLegs frame);
    }

    /** The end of the run that enters the hub. */
    enum HubEnd {
        START,
        END
    }

    /** The end of a row from which it is looked at. */
    enum SeenFrom {
        START,
        END
    }

    /**
     * Round a hub.
     *
     * @param wheel places and hub radius
     * @param hubEnd which end of the pattern enters the hub
     * @param bare what the bare wheel pulls by itself
     * @param seatDepths how much deeper than meant each place's seat lies in the hub, in the order of the places; none when not told
     * @param counterweightRadius where a counterweight could sit, from the axle
     * @param revPerMin how fast it will turn, if told; positive
     */
    record OnWheel(
            Wheel wheel,
            HubEnd hubEnd,
            BareWheel bare,
            List<Length> seatDepths,
            Optional<Length> counterweightRadius,
            OptionalDouble revPerMin)
            implements JobFrame {
        public OnWheel {
            seatDepths = List.copyOf(seatDepths);
            if (!seatDepths.isEmpty() && seatDepths.size() != wheel.places()) {
                throw new IllegalArgumentException(
                        "%d seat depths for %d places".formatted(seatDepths.size(), wheel.places()));
            }
        }

        @Override
        public JobFrame withCounterweightAt(Length radius) {
            return new OnWheel(
                    wheel, hubEnd, bare, seatDepths, counterweightRadius.or(() -> Optional.of(radius)), revPerMin);
        }

        /** What hub, rim and rim joint pull, given and found together. */
        public List<Moment> givenMoments() {
            return bare.all();
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

    /**
     * Side by side along a rail.
     *
     * @param row how many places
     * @param seenFrom the end that people come from: pieces there are looked at most
     */
    record InRow(Row row, SeenFrom seenFrom) implements JobFrame {
        @Override
        public Frame frame() {
            return row;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.inRow(this);
        }
    }

    /**
     * Together under one table, or one of several.
     *
     * @param legs how many make one group, 2 or more
     * @param groups how many groups are wanted; without it, as many as the pieces allow
     */
    record InLegs(Legs legs, OptionalInt groups) implements JobFrame {
        @Override
        public Frame frame() {
            return legs;
        }

        @Override
        public int pieces() {
            return legs.places() * groups.orElse(1);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.inLegs(this);
        }
    }
}
