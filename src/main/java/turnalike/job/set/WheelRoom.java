package turnalike.job.set;

import java.util.Optional;
import java.util.stream.Stream;
import turnalike.frame.RadialBody;
import turnalike.frame.SpokeGap;
import turnalike.outline.Outline;
import turnalike.units.Length;

/**
 * The room that a pattern has in a wheel, as given or with one thing of it changed.
 *
 * @param joinery how the wheel is put together
 * @param body the turned part between the shoulders, running outward
 * @param hubHole diameter of a mortise in the hub, where the piece has a tenon for it
 * @param hubDepth how deep it is
 * @param rimHole diameter of one in the rim, likewise
 * @param rimDepth how deep that is
 */
record WheelRoom(
        WheelJoinery joinery,
        Outline body,
        Optional<Length> hubHole,
        Length hubDepth,
        Optional<Length> rimHole,
        Length rimDepth) {
    /** A wheel that might be built. */
    record Trial(int places, Length hubRadius, Length stagger, Length hubDepth) {
        Trial withPlaces(int other) {
            return new Trial(other, hubRadius, stagger, hubDepth);
        }

        Trial withHubRadius(Length other) {
            return new Trial(places, other, stagger, hubDepth);
        }

        Trial withStagger(Length other) {
            return new Trial(places, hubRadius, other, hubDepth);
        }

        Trial withHubDepth(Length other) {
            return new Trial(places, hubRadius, stagger, other);
        }
    }

    SpokeGap gap(Trial trial) {
        return SpokeGap.of(new RadialBody(body, trial.hubRadius()), trial.places(), trial.stagger());
    }

    Optional<Length> hubWall(Trial trial) {
        return hubHole.map(hole -> wall(hole, trial.hubRadius().minus(trial.hubDepth()), trial.hubDepth(), trial));
    }

    Optional<Length> rimWall(Trial trial) {
        return rimHole.map(hole -> wall(hole, trial.hubRadius().plus(body.length()), rimDepth, trial));
    }

    private static boolean isAtLeast(RadialBody body, Trial trial, Length least) {
        return SpokeGap.isAtLeast(body, trial.places(), trial.stagger(), least);
    }

    private static Length wall(Length hole, Length from, Length depth, Trial trial) {
        return SpokeGap.of(RadialBody.level(hole, from, depth), trial.places(), trial.stagger())
                .gap();
    }

    /** Whether a mortise comes to the axle's hole, or to the axle where no hole is told. */
    boolean reachesAxle(Trial trial) {
        return hubHole.isPresent()
                && trial.hubRadius().minus(trial.hubDepth()).mm()
                        <= joinery.axleHole().mm() / 2;
    }

    /** Whether everything has enough room. */
    boolean fits(Trial trial) {
        return seatsFit(trial) && isAtLeast(new RadialBody(body, trial.hubRadius()), trial, joinery.leastGap());
    }

    private boolean seatsFit(Trial trial) {
        return !reachesAxle(trial)
                && leavesAxleWall(trial)
                && enough(hubHole, trial.hubRadius().minus(trial.hubDepth()), trial.hubDepth(), trial)
                && enough(rimHole, trial.hubRadius().plus(body.length()), rimDepth, trial);
    }

    /** What is left from a mortise's bottom to the axle's hole; empty where no hole is told. */
    Optional<Length> axleWall(Trial trial) {
        Length hole = joinery.axleHole();
        return hubHole.filter(bored -> hole.isPositive())
                .map(bored -> trial.hubRadius().minus(trial.hubDepth()).minus(hole.times(0.5)));
    }

    private boolean leavesAxleWall(Trial trial) {
        return axleWall(trial)
                .filter(left -> left.compareTo(joinery.leastWall(hubHole.orElseThrow())) < 0)
                .isEmpty();
    }

    private boolean enough(Optional<Length> hole, Length from, Length depth, Trial trial) {
        return hole.isEmpty()
                || isAtLeast(RadialBody.level(hole.get(), from, depth), trial, joinery.leastWall(hole.get()));
    }

    /** What is left of the hub beyond a row of mortises; without a hub length nobody knows. */
    Optional<Length> hubEnds(Trial trial) {
        return beyond(hubHole, joinery.hubLength(), trial);
    }

    /** What is left of the rim beyond a row of mortises; without its thickness nobody knows. */
    Optional<Length> rimFaces(Trial trial) {
        return beyond(rimHole, joinery.rimThickness(), trial);
    }

    private static Optional<Length> beyond(Optional<Length> hole, Optional<Length> along, Trial trial) {
        return hole.flatMap(bored ->
                along.map(length -> length.minus(trial.stagger()).minus(bored).times(0.5)));
    }

    /** The most that every second place may be set off by with enough left beyond both rows, in hub and rim; empty where neither's size is told. */
    Optional<Length> mostStagger() {
        return Stream.of(across(hubHole, joinery.hubLength()), across(rimHole, joinery.rimThickness()))
                .flatMap(Optional::stream)
                .min(Length::compareTo);
    }

    private Optional<Length> across(Optional<Length> hole, Optional<Length> along) {
        return hole.flatMap(bored -> along.map(
                length -> length.minus(bored).minus(joinery.leastWall(bored).times(2))));
    }
}
