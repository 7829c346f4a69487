package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;

/**
 * A line from place to place.
 *
 * @param spots two at least
 * @param isClosed whether it also runs from the last place to the first
 * @param layer the drawing's name for what it belongs to; empty for none
 */
record Stroke(List<Spot> spots, boolean isClosed, String layer) {
    Stroke {
        spots = List.copyOf(spots);
    }

    Spot start() {
        return spots.get(0);
    }

    Spot end() {
        return spots.get(spots.size() - 1);
    }

    Stroke reversed() {
        List<Spot> out = new ArrayList<>(spots);
        java.util.Collections.reverse(out);
        return new Stroke(out, isClosed, layer);
    }

    /** Twice the area within, anticlockwise positive. */
    double doubleArea() {
        double sum = 0;
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % spots.size());
            sum += a.x() * b.y() - b.x() * a.y();
        }
        return sum;
    }

    double size() {
        double[] box = box();
        return Math.hypot(box[1] - box[0], box[3] - box[2]);
    }

    /** From left to right, from low to high. */
    double[] box() {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Spot each : spots) {
            left = Math.min(left, each.x());
            right = Math.max(right, each.x());
            low = Math.min(low, each.y());
            high = Math.max(high, each.y());
        }
        return new double[] {left, right, low, high};
    }
}
