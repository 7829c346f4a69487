package turnalike.job.set;

import java.util.Optional;
import turnalike.frame.RowGap;
import turnalike.frame.RowOpening;
import turnalike.frame.RowOpening.Side;
import turnalike.outline.Outline;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/**
 * The room that a pattern has in a row, for any number of places.
 *
 * @param rails what it stands between, the posts among it
 * @param exposed what of the piece stands between its shoulders
 * @param height between the rails
 * @param thickest the greatest radius between the rails, a square with half its side: the spacing goes by it
 * @param reach the greatest distance from the axis, a square with half its diagonal: what touches goes by it
 * @param between two pieces, at whatever distance
 * @param lowerEnd beside the post at the lower end of the rails
 * @param upperEnd beside the other post
 */
record RowRoom(
        RowRails rails,
        Outline exposed,
        Length height,
        Length thickest,
        Length reach,
        RowOpening between,
        RowOpening lowerEnd,
        RowOpening upperEnd) {
    /** What a spacing may miss by rounding. */
    static final double ROUNDING_MM = 1e-9;

    /** How sure an opening is. */
    static final double SURE_MM = 2e-6;

    static RowRoom of(RowRails rails, Pattern pattern) {
        Outline exposed = ExposedPart.of(pattern);
        Length height = rails.height(exposed);
        RowOpening between = new RowOpening(exposed, Side.PIECE, Side.PIECE, Length.ofMm(1), height, rails.rake());
        return new RowRoom(
                rails,
                exposed,
                height,
                thickest(exposed, height),
                RowGap.reach(exposed),
                between,
                between.between(Side.POST, Side.PIECE),
                between.between(Side.PIECE, Side.POST));
    }

    private static Length thickest(Outline exposed, Length height) {
        Length top = exposed.start().plus(height);
        Length most = exposed.radiusAt(top);
        for (Outline.Station station : exposed.stations()) {
            if (station.place().compareTo(top) <= 0 && station.radius().compareTo(most) > 0) {
                most = station.radius();
            }
        }
        return most;
    }

    /** From axis to axis, level; empty for one place whose distance from the post is told. */
    Optional<Length> pitch(int places) {
        Length clear = rails.clear().orElseThrow();
        if (rails.end().isEmpty()) {
            return Optional.of(clear.plus(thickest.times(2)).times(1.0 / (places + 1)));
        }
        Length left = clear.minus(rails.end().get().times(2));
        return places == 1 ? Optional.empty() : Optional.of(left.times(1.0 / (places - 1)));
    }

    /** From the first post's face to the first axis. */
    Length first(int places) {
        return rails.end().orElseGet(() -> pitch(places).orElseThrow().minus(thickest));
    }

    /** From the last axis to the other post's face: as at the first, but for one place whose distance is told. */
    Length last(int places) {
        return pitch(places).isPresent()
                ? first(places)
                : rails.clear().orElseThrow().minus(first(places));
    }

    /** How much higher the next piece stands. */
    Length rise(Length pitch) {
        return pitch.times(Math.tan(rails.rake().radians()));
    }

    /** Where two neighbours come nearest; empty where there are none. */
    Optional<RowGap.Nearest> gap(int places) {
        return places < 2 ? Optional.empty() : pitch(places).map(pitch -> RowGap.of(exposed, pitch, rise(pitch)));
    }

    /** What is left beside the post where it is less. */
    Length postGap(int places) {
        Length first = first(places);
        Length last = last(places);
        return (first.compareTo(last) < 0 ? first : last).minus(reach);
    }

    /** Whether pieces run into one another or into a post. */
    boolean touches(int places) {
        if (postGap(places).mm() < -ROUNDING_MM) {
            return true;
        }
        // Level neighbours have the least between them, so what is enough for them is enough on a rake.
        return places > 1
                && pitch(places).orElseThrow().mm() < reach.times(2).mm() - ROUNDING_MM
                && gap(places).orElseThrow().left().mm() < -ROUNDING_MM;
    }

    Optional<RowOpening.Ball> between(int places) {
        return places < 2
                ? Optional.empty()
                : pitch(places).filter(Length::isPositive).map(pitch -> between.withApart(pitch)
                        .widest());
    }

    /** The wider of the two ends. */
    EndBall end(int places) {
        RowOpening.Ball lower = lowerEnd.withApart(first(places)).widest();
        RowOpening.Ball upper = upperEnd.withApart(last(places)).widest();
        return EndBall.wider(lower, upper);
    }

    /**
     * The larger ball of the two ends.
     *
     * @param ball the ball
     * @param atUpper whether it passes at the last piece, where raked rails are highest
     */
    record EndBall(RowOpening.Ball ball, boolean atUpper) {
        static EndBall wider(RowOpening.Ball lower, RowOpening.Ball upper) {
            boolean atUpper = upper.diameter().mm() > lower.diameter().mm() + 1e-5;
            return new EndBall(atUpper ? upper : lower, atUpper);
        }
    }

    boolean endPasses(int places, Length ball) {
        return lowerEnd.withApart(first(places)).passesMoreThan(ball)
                || upperEnd.withApart(last(places)).passesMoreThan(ball);
    }

    /** Whether no opening is larger than the limit; one beside a post only where the places decide it. */
    boolean keeps(int places, Length limit) {
        if (places > 1 && between.withApart(pitch(places).orElseThrow()).passesMoreThan(limit)) {
            return false;
        }
        return (rails.end().isPresent() && places > 1) || !endPasses(places, limit);
    }

    /**
     * The fewest places that keep the limit, or the most that stand without touching where none does.
     *
     * @param places how many
     * @param keep whether they keep it
     */
    record Fewest(int places, boolean keep) {}

    Fewest fewest() {
        Length limit = rails.largestOpening().orElseThrow();
        int first = rails.end().isPresent() ? 2 : 1;
        for (int places = first; places <= FrameKind.MOST_PLACES; places++) {
            if (keeps(places, limit)) {
                return new Fewest(places, true);
            }
            if (touches(places)) {
                return new Fewest(Math.max(1, places - 1), false);
            }
        }
        return new Fewest(FrameKind.MOST_PLACES, false);
    }

    /** The most places, fewer than these, that do not touch. */
    Optional<Integer> mostThatStand(int places) {
        for (int fewer = places - 1; fewer >= 1; fewer--) {
            if (!touches(fewer)) {
                return Optional.of(fewer);
            }
        }
        return Optional.empty();
    }
}
