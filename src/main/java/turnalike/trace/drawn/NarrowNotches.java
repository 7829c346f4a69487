package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;
import turnalike.trace.Profile.Station;

/**
 * Notches and ridges so narrow that no member is: a slip of the pen, or a knife's line. Members that followed one would be as high as a house.
 *
 * @param stations without them
 * @param placesMm where they were
 */
record NarrowNotches(List<Station> stations, List<Double> placesMm) {
    private static final double NARROW_MM = 0.3;
    private static final double DEEP_MM = 0.25;
    /** On both sides of one the outline goes on so much more level than into it. */
    private static final double LEVEL = 0.5;

    NarrowNotches {
        stations = List.copyOf(stations);
        placesMm = List.copyOf(placesMm);
    }

    static NarrowNotches without(List<Station> stations) {
        List<Station> out = new ArrayList<>();
        List<Double> places = new ArrayList<>();
        int i = 0;
        while (i < stations.size()) {
            out.add(stations.get(i));
            int end = end(stations, i);
            if (end > i) {
                places.add(x(stations, i));
            }
            i = Math.max(end, i + 1);
        }
        return new NarrowNotches(out, places);
    }

    /** The station where a notch that begins at one ends; that one itself when none begins there. */
    private static int end(List<Station> stations, int from) {
        double start = x(stations, from);
        double r = r(stations, from);
        double deepest = 0;
        int end = from;
        for (int k = from + 1; k < stations.size() && x(stations, k) - start < NARROW_MM; k++) {
            double off = Math.abs(r(stations, k) - r);
            boolean back = deepest > DEEP_MM && off < LEVEL / 2 * deepest;
            if (back && beside(stations, from, -1) < LEVEL * deepest && beside(stations, k, 1) < LEVEL * deepest) {
                end = k;
            }
            deepest = Math.max(deepest, off);
        }
        return end;
    }

    /** By how much the outline changes over as long a way as a notch may be wide, from a station on to one side. */
    private static double beside(List<Station> stations, int from, int step) {
        int k = from;
        double most = 0;
        while (k + step >= 0
                && k + step < stations.size()
                && Math.abs(x(stations, k + step) - x(stations, from)) < NARROW_MM) {
            k += step;
            most = Math.max(most, Math.abs(r(stations, k) - r(stations, from)));
        }
        if (k + step < 0 || k + step >= stations.size()) {
            return most;
        }
        // The next lies beyond: as far towards it as the way goes.
        double run = Math.abs(x(stations, k + step) - x(stations, k));
        double share = (NARROW_MM - Math.abs(x(stations, k) - x(stations, from))) / run;
        double there = r(stations, k) + share * (r(stations, k + step) - r(stations, k));
        return Math.max(most, Math.abs(there - r(stations, from)));
    }

    private static double x(List<Station> stations, int index) {
        return stations.get(index).place().mm();
    }

    private static double r(List<Station> stations, int index) {
        return stations.get(index).radius().mm();
    }
}
