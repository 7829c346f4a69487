package turnalike.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import turnalike.units.Length;

/**
 * What is known of an original's shape: radii at places along its axis, from its start end on, whatever they were read from.
 *
 * @param length from end to end, above zero
 * @param stations at least two, places rising, from 0 to {@code length}
 * @param hidden stretches of which nothing was seen, in order, apart from one another; no station within is more than a guess
 */
public record Profile(Length length, List<Station> stations, List<Stretch> hidden) {
    public Profile {
        stations = List.copyOf(stations);
        hidden = List.copyOf(hidden);
        if (!(length.mm() > 0)) {
            throw new IllegalArgumentException("a profile needs a length above zero, was " + length.mm() + " mm");
        }
        if (stations.size() < 2) {
            throw new IllegalArgumentException("a profile needs two stations or more, has " + stations.size());
        }
        for (int i = 0; i < stations.size(); i++) {
            double place = stations.get(i).place().mm();
            if (!(place >= 0 && place <= length.mm() * (1 + 1e-12))) {
                throw new IllegalArgumentException("station %s lies outside the profile, at %s mm".formatted(i, place));
            }
            if (i > 0 && !(place >= stations.get(i - 1).place().mm())) {
                throw new IllegalArgumentException("stations must rise, %s does not".formatted(i));
            }
        }
    }

    /**
     * {@return the same, every radius less sure by so much that strays by itself}
     *
     * @param by one standard deviation
     */
    public Profile lessSureBy(Length by) {
        return new Profile(
                length, stations.stream().map(each -> each.lessSureBy(by)).toList(), hidden);
    }

    /** {@return the radius where it is thickest} */
    public Length largestRadius() {
        return stations.stream()
                .map(Station::radius)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /**
     * One place and what was found there. Two stations may share a place: a square shoulder.
     *
     * @param place from the start end
     * @param radius from the axis, not below zero; of a square section half its side
     * @param uncertainty of the radius, one standard deviation, not below zero
     */
    public record Station(Length place, Length radius, Length uncertainty) {
        public Station {
            if (!(radius.mm() >= 0) || !(uncertainty.mm() >= 0)) {
                throw new IllegalArgumentException(
                        "a station's radius and uncertainty are not below zero, were %s and %s mm"
                                .formatted(radius.mm(), uncertainty.mm()));
            }
        }

        /**
         * {@return the same, its radius less sure by so much that strays by itself}
         *
         * @param by one standard deviation
         */
        public Station lessSureBy(Length by) {
            return new Station(place, radius, Length.ofMm(Math.hypot(by.mm(), uncertainty.mm())));
        }
    }

    /**
     * A stretch of the axis.
     *
     * @param from nearer the start end
     * @param to above {@code from}
     */
    public record Stretch(Length from, Length to) {
        public Stretch {
            if (!(to.mm() > from.mm())) {
                throw new IllegalArgumentException(
                        "a stretch runs forward, was %s to %s mm".formatted(from.mm(), to.mm()));
            }
        }

        /**
         * {@return the same places in order, stretches that overlap or lie nearer to one another than that as one}
         *
         * @param stretches in any order
         * @param apart the least distance of two
         */
        public static List<Stretch> joined(List<Stretch> stretches, Length apart) {
            List<Stretch> joined = new ArrayList<>();
            for (Stretch each : stretches.stream()
                    .sorted(Comparator.comparing(Stretch::from))
                    .toList()) {
                int last = joined.size() - 1;
                if (last >= 0 && each.from.mm() - joined.get(last).to.mm() < apart.mm()) {
                    Stretch before = joined.get(last);
                    Length to = before.to.mm() > each.to.mm() ? before.to : each.to;
                    joined.set(last, new Stretch(before.from, to));
                } else {
                    joined.add(each);
                }
            }
            return joined;
        }
    }
}
