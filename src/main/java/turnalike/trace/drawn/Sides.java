package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A closed outline that lies along x, as what a line across it meets: the highest place, the lowest and the one nearest an axis, just before
 * and just after each place where the outline has one. All in millimetres.
 */
final class Sides {
    /** Steeper than this over the whole, an edge stands upright. */
    private static final double UPRIGHT = 1e-7;

    /**
     * What a line across meets.
     *
     * @param crossings how often the outline is crossed; two, unless it is undercut
     */
    record Across(double x, double high, double low, int crossings) {
        double middle() {
            return (high + low) / 2;
        }

        double half() {
            return (high - low) / 2;
        }
    }

    /** An edge from left to right. */
    private record Edge(Spot a, Spot b) {
        double y(double x) {
            return a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
        }
    }

    private final List<Edge> edges = new ArrayList<>();
    private final TreeSet<Double> knots = new TreeSet<>();
    private final TreeSet<Double> places = new TreeSet<>();

    Sides(List<Spot> outline) {
        double left = outline.stream().mapToDouble(Spot::x).min().orElseThrow();
        double right = outline.stream().mapToDouble(Spot::x).max().orElseThrow();
        double upright = UPRIGHT * (right - left);
        for (int i = 0; i < outline.size(); i++) {
            Spot a = outline.get(i);
            Spot b = outline.get((i + 1) % outline.size());
            if (Math.abs(a.x() - b.x()) > upright) {
                edges.add(a.x() < b.x() ? new Edge(a, b) : new Edge(b, a));
            }
            places.add(a.x());
            if (a.isKnot()) {
                knots.add(a.x());
            }
        }
        edges.sort(Comparator.comparingDouble(each -> each.a().x()));
    }

    double start() {
        return places.first();
    }

    double end() {
        return places.last();
    }

    /** Where the drawing itself has points. */
    List<Double> knots() {
        return List.copyOf(knots);
    }

    /** Just before and just after every place, in order; at the ends only inwards. */
    List<Across> all() {
        List<Double> xs = new ArrayList<>();
        double least = 1e-6 * (end() - start());
        for (double each : places) {
            if (xs.isEmpty() || each - xs.get(xs.size() - 1) > least) {
                xs.add(each);
            }
        }
        List<Across> out = new ArrayList<>();
        List<Edge> near = new ArrayList<>();
        int next = 0;
        for (double x : xs) {
            while (next < edges.size() && edges.get(next).a().x() <= x + least) {
                near.add(edges.get(next++));
            }
            near.removeIf(each -> each.b().x() < x - least);
            if (x - least > start()) {
                across(x, near, -least).ifPresent(out::add);
            }
            if (x + least < end()) {
                across(x, near, least).ifPresent(out::add);
            }
        }
        return out;
    }

    /** On the edges that reach to that side of the place. */
    private static Optional<Across> across(double x, List<Edge> near, double aside) {
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        int crossings = 0;
        for (Edge edge : near) {
            boolean there = aside < 0
                    ? edge.a().x() < x + aside && edge.b().x() >= x + aside
                    : edge.a().x() <= x + aside && edge.b().x() > x + aside;
            if (there) {
                double y = edge.y(Math.max(edge.a().x(), Math.min(edge.b().x(), x)));
                crossings++;
                high = Math.max(high, y);
                low = Math.min(low, y);
            }
        }
        return crossings < 2 ? Optional.empty() : Optional.of(new Across(x, high, low, crossings));
    }
}
