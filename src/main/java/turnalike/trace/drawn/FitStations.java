package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import turnalike.trace.Profile.Station;
import turnalike.units.Length;

/**
 * The stations of a drawn outline that members are fitted to: even all along, and where the drawing has a point of its own (an end of a line
 * or an arc) two at that place, so that a joint may stand exactly there.
 */
final class FitStations {
    private static final int STATIONS = 900;
    private static final double GRID_MM = 0.5;
    private static final int MOST_KNOTS = 160;
    private static final double TURN_RAD = 0.12;
    private static final double STEP_MM = 0.01;
    private static final double HAIR_MM = 0.02;

    /** What a shaking hand draws is a shoulder only where it is so many times as high as the hand shakes. */
    private static final double SURE_STEP = 6;

    private final List<Station> stations;
    private final double stepMm;
    private final boolean isShaky;

    private FitStations(List<Station> stations, double shakeMm) {
        this.stations = stations;
        this.stepMm = Math.max(STEP_MM, SURE_STEP * shakeMm);
        this.isShaky = shakeMm > 0;
    }

    /** @param shakeMm how far the outline wavers; zero where each of its points is meant */
    static List<Station> of(List<Station> stations, Sides sides, double shakeMm) {
        return new FitStations(stations, shakeMm).chosen(sides);
    }

    private List<Station> chosen(Sides sides) {
        double length = stations.get(stations.size() - 1).place().mm();
        double grid = Math.max(GRID_MM, length / STATIONS);
        NavigableSet<Double> joints = joints(sides, length);
        List<Station> out = new ArrayList<>();
        out.add(stations.get(0));
        int count = (int) Math.ceil(length / grid);
        double step = length / count;
        for (int i = 1; i < count; i++) {
            // Each from is the last to, to the bit: a joint right at a place of the grid lies in one of the two.
            add(out, joints, (i - 1) * step, i * step, step);
        }
        add(out, joints, (count - 1) * step, length, step);
        out.add(stations.get(stations.size() - 1));
        return out;
    }

    /** The joints after one place of the grid up to the next, then that place itself unless it stands right beside one. */
    private void add(List<Station> out, NavigableSet<Double> joints, double from, double to, double step) {
        for (double joint : joints.subSet(from, true, to, false)) {
            out.add(at(joint, false));
            out.add(at(joint, true));
        }
        Double near = joints.floor(to);
        Double beyond = joints.ceiling(to);
        boolean beside = (near != null && to - near < 0.2 * step) || (beyond != null && beyond - to < 0.2 * step);
        boolean isEnd = to >= stations.get(stations.size() - 1).place().mm();
        if (!beside && !isEnd) {
            out.add(at(to, false));
        }
    }

    /** Shoulders first: where a curve ends upright at one, the last of its points stands within a hair of it and would be taken for the joint. */
    private NavigableSet<Double> joints(Sides sides, double length) {
        List<Double> knots = sides.knots();
        List<Double> inside = knots.stream()
                .map(each -> nearest(each - sides.start()))
                .filter(x -> x > HAIR_MM && x < length - HAIR_MM)
                .toList();
        NavigableSet<Double> out = new TreeSet<>();
        inside.stream().filter(this::isStep).forEach(x -> addClear(out, x));
        if (isShaky) {
            return out;
        }
        inside.stream().filter(x -> knots.size() <= MOST_KNOTS || isCorner(x)).forEach(x -> addClear(out, x));
        return out;
    }

    private static void addClear(NavigableSet<Double> joints, double x) {
        if (joints.subSet(x - HAIR_MM, true, x + HAIR_MM, true).isEmpty()) {
            joints.add(x);
        }
    }

    /** Places closer than a hair were taken for one; the joint stands where that one does. */
    private double nearest(double x) {
        int at = first(x - HAIR_MM);
        double best = x;
        double least = HAIR_MM;
        for (int i = at; i < stations.size() && stations.get(i).place().mm() <= x + HAIR_MM; i++) {
            double off = Math.abs(stations.get(i).place().mm() - x);
            if (off < least) {
                least = off;
                best = stations.get(i).place().mm();
            }
        }
        return best;
    }

    /** The first station not before a place. */
    private int first(double x) {
        int low = 0;
        int high = stations.size() - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (stations.get(middle).place().mm() < x - 1e-7) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean isStep(double x) {
        return Math.abs(at(x, true).radius().minus(at(x, false).radius()).mm()) > stepMm;
    }

    private boolean isCorner(double x) {
        if (isStep(x)) {
            return true;
        }
        double before = at(x, false).radius().mm();
        double after = at(x, true).radius().mm();
        double wide = 0.1;
        double one = Math.atan((before - at(x - wide, true).radius().mm()) / wide);
        double two = Math.atan((at(x + wide, false).radius().mm() - after) / wide);
        return Math.abs(one - two) > TURN_RAD;
    }

    /** The outline at a place; at a shoulder before it or after it. */
    private Station at(double x, boolean after) {
        int low = first(x);
        Station here = stations.get(low);
        if (Math.abs(here.place().mm() - x) < 1e-6) {
            boolean two = low + 1 < stations.size()
                    && stations.get(low + 1).place().mm() - here.place().mm() < 1e-9;
            Length radius = two && after ? stations.get(low + 1).radius() : here.radius();
            return new Station(Length.ofMm(x), radius, here.uncertainty());
        }
        Station before = stations.get(Math.max(0, low - 1));
        double run = here.place().mm() - before.place().mm();
        // A place beyond the end, as beside a corner right at it, has the end's radius.
        double share = run > 0 ? Math.min(1, (x - before.place().mm()) / run) : 0;
        double r = before.radius().mm() * (1 - share) + here.radius().mm() * share;
        return new Station(Length.ofMm(x), Length.ofMm(r), here.uncertainty());
    }
}
