package turnalike.trace.drawn;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Loose strokes that meet at their ends, as an elevation is drawn with a line across at each joint: what they enclose together is the outline,
 * and what lies within it is none. Strokes and the places where they meet are taken as a map of countries; round each connected part of the
 * map goes one border, the one that encloses the most.
 */
final class OuterBorder {
    /** A way along a stroke from one place to another; its way back has the next number, or the one before. */
    private record Way(int from, int to, Stroke stroke, double angle) {}

    private final double near;
    private final List<Spot> places = new ArrayList<>();
    /** Places by the square of the drawing they lie in. */
    private final Map<Long, List<Integer>> squares = new HashMap<>();

    private final List<Stroke> closed = new ArrayList<>();
    private final List<Stroke> rest = new ArrayList<>();

    private OuterBorder(double near) {
        this.near = near;
    }

    /**
     * What came of it.
     *
     * @param closed an outline round each connected part
     * @param rest what leads nowhere or lies within
     */
    record Found(List<Stroke> closed, List<Stroke> rest) {}

    /** @param near places no farther apart are one */
    static Found of(List<Stroke> open, double near) {
        OuterBorder border = new OuterBorder(near);
        border.trace(open);
        return new Found(border.closed, border.rest);
    }

    private void trace(List<Stroke> open) {
        for (Stroke each : open) {
            place(each.start());
            place(each.end());
        }
        List<Stroke> left = new ArrayList<>();
        List<Spot> byX = new ArrayList<>(places);
        byX.sort(Comparator.comparingDouble(Spot::x));
        double[] xs = byX.stream().mapToDouble(Spot::x).toArray();
        for (Stroke each : open) {
            for (Stroke part : parted(each, byX, xs)) {
                boolean ring = place(part.start()) == place(part.end());
                if (ring && part.spots().size() > 3) {
                    closed.add(ring(part));
                } else if (ring) {
                    rest.add(part);
                } else {
                    left.add(part);
                }
            }
        }
        boolean changed = true;
        while (changed && !left.isEmpty()) {
            left = leadingOn(distinct(left));
            changed = bordered(left);
        }
    }

    private Stroke ring(Stroke stroke) {
        return new Stroke(stroke.spots().subList(0, stroke.spots().size() - 1), true, stroke.layer());
    }

    /** The number of the place at a spot, or a new one. */
    private int place(Spot spot) {
        long column = Math.round(spot.x() / near / 4);
        long row = Math.round(spot.y() / near / 4);
        for (long x = column - 1; x <= column + 1; x++) {
            for (long y = row - 1; y <= row + 1; y++) {
                for (int each : squares.getOrDefault(key(x, y), List.of())) {
                    if (places.get(each).distance(spot) <= near) {
                        return each;
                    }
                }
            }
        }
        places.add(spot);
        squares.computeIfAbsent(key(column, row), none -> new ArrayList<>()).add(places.size() - 1);
        return places.size() - 1;
    }

    private static long key(long x, long y) {
        return x * 1_000_003 + y;
    }

    /** A straight line is parted wherever another begins or ends on it. */
    private List<Stroke> parted(Stroke line, List<Spot> byX, double[] xs) {
        if (line.spots().size() != 2) {
            return List.of(line);
        }
        Spot a = line.start();
        Spot b = line.end();
        double length = a.distance(b);
        double ux = (b.x() - a.x()) / length;
        double uy = (b.y() - a.y()) / length;
        List<Spot> on = new ArrayList<>();
        int first = Arrays.binarySearch(xs, Math.min(a.x(), b.x()) - near);
        double last = Math.max(a.x(), b.x()) + near;
        for (int i = first < 0 ? -first - 1 : first; i < xs.length && xs[i] <= last && length > 2 * near; i++) {
            Spot each = byX.get(i);
            double dx = each.x() - a.x();
            double dy = each.y() - a.y();
            double along = dx * ux + dy * uy;
            if (along > near && along < length - near && Math.abs(dx * uy - dy * ux) <= near) {
                on.add(each);
            }
        }
        on.sort(Comparator.comparingDouble(a::distance));
        List<Stroke> out = new ArrayList<>();
        Spot from = a;
        for (Spot each : on) {
            out.add(new Stroke(List.of(from, each), false, line.layer()));
            from = each;
        }
        out.add(new Stroke(List.of(from, b), false, line.layer()));
        return out;
    }

    /** Of straight lines between the same two places one. */
    private List<Stroke> distinct(List<Stroke> strokes) {
        Map<Long, Stroke> straight = new HashMap<>();
        List<Stroke> out = new ArrayList<>();
        for (Stroke each : strokes) {
            int from = place(each.start());
            int to = place(each.end());
            boolean isNew = each.spots().size() != 2
                    || straight.putIfAbsent((long) Math.min(from, to) << 32 | Math.max(from, to), each) == null;
            if (isNew) {
                out.add(each);
            }
        }
        return out;
    }

    /** Those of which both ends lead on; what does not is no part of a border. */
    private List<Stroke> leadingOn(List<Stroke> strokes) {
        List<List<Integer>> meet = new ArrayList<>();
        places.forEach(each -> meet.add(new ArrayList<>()));
        int[][] ends = new int[strokes.size()][];
        for (int i = 0; i < ends.length; i++) {
            ends[i] = new int[] {
                place(strokes.get(i).start()), place(strokes.get(i).end())
            };
            meet.get(ends[i][0]).add(i);
            meet.get(ends[i][1]).add(i);
        }
        Deque<Integer> dead = new ArrayDeque<>();
        for (int i = 0; i < meet.size(); i++) {
            dead.add(i);
        }
        boolean[] out = new boolean[ends.length];
        while (!dead.isEmpty()) {
            int place = dead.remove();
            if (meet.get(place).size() == 1) {
                Integer stroke = meet.get(place).get(0);
                out[stroke] = true;
                for (int each : ends[stroke]) {
                    meet.get(each).remove(stroke);
                    dead.add(each);
                }
            }
        }
        List<Stroke> kept = new ArrayList<>();
        for (int i = 0; i < out.length; i++) {
            (out[i] ? rest : kept).add(strokes.get(i));
        }
        return kept;
    }

    /** Walks along all borders; takes out those strokes that have the same country on both sides, and tells whether there were any. */
    private boolean bordered(List<Stroke> strokes) {
        List<Way> ways = new ArrayList<>();
        for (Stroke each : strokes) {
            ways.add(way(each));
            ways.add(way(each.reversed()));
        }
        int[] next = next(ways);
        int[] border = new int[ways.size()];
        List<List<Integer>> borders = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            if (border[i] == 0) {
                List<Integer> walk = new ArrayList<>();
                for (int k = i; border[k] == 0; k = next[k]) {
                    border[k] = borders.size() + 1;
                    walk.add(k);
                }
                borders.add(walk);
            }
        }
        List<Stroke> bridges = new ArrayList<>();
        for (int i = 0; i < ways.size(); i += 2) {
            if (border[i] == border[i + 1]) {
                bridges.add(strokes.get(i / 2));
            }
        }
        if (!bridges.isEmpty()) {
            strokes.removeAll(bridges);
            rest.addAll(bridges);
            return true;
        }
        outermost(ways, borders);
        return false;
    }

    private Way way(Stroke stroke) {
        Spot from = stroke.start();
        Spot towards = stroke.spots().get(1);
        double angle = Math.atan2(towards.y() - from.y(), towards.x() - from.x());
        return new Way(place(from), place(stroke.end()), stroke, angle);
    }

    /** After each way the one that leaves its end first, clockwise from the way back. */
    private int[] next(List<Way> ways) {
        List<List<Integer>> leaving = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            leaving.add(new ArrayList<>());
        }
        for (int i = 0; i < ways.size(); i++) {
            leaving.get(ways.get(i).from()).add(i);
        }
        int[] next = new int[ways.size()];
        for (List<Integer> at : leaving) {
            at.sort(Comparator.comparingDouble(i -> ways.get(i).angle()));
            for (int k = 0; k < at.size(); k++) {
                next[at.get(k) ^ 1] = at.get((k + at.size() - 1) % at.size());
            }
        }
        return next;
    }

    /** Of the borders that meet, the one that encloses most; what is on none of these lies within. */
    private void outermost(List<Way> ways, List<List<Integer>> borders) {
        List<Stroke> outlines =
                borders.stream().map(each -> outline(ways, each)).toList();
        Integer[] order = new Integer[borders.size()];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        Arrays.sort(
                order, Comparator.comparingDouble(i -> -Math.abs(outlines.get(i).doubleArea())));
        int[] part = parts(ways);
        boolean[] done = new boolean[places.size()];
        boolean[] used = new boolean[ways.size()];
        for (int each : order) {
            int first = borders.get(each).get(0);
            int here = part[ways.get(first).from()];
            if (!done[here]) {
                done[here] = true;
                closed.add(outlines.get(each));
                borders.get(each).forEach(i -> used[i] = true);
            }
        }
        for (int i = 0; i < ways.size(); i += 2) {
            if (!used[i] && !used[i + 1]) {
                rest.add(ways.get(i).stroke());
            }
        }
    }

    private static Stroke outline(List<Way> ways, List<Integer> border) {
        List<Spot> spots = new ArrayList<>();
        for (int each : border) {
            List<Spot> more = ways.get(each).stroke().spots();
            spots.addAll(more.subList(0, more.size() - 1));
        }
        return new Stroke(spots, true, ways.get(border.get(0)).stroke().layer());
    }

    /** Of each place the lowest one that it is connected with. */
    private int[] parts(List<Way> ways) {
        int[] part = new int[places.size()];
        for (int i = 0; i < part.length; i++) {
            part[i] = i;
        }
        for (Way each : ways) {
            int a = root(part, each.from());
            int b = root(part, each.to());
            part[Math.max(a, b)] = Math.min(a, b);
        }
        for (int i = 0; i < part.length; i++) {
            part[i] = root(part, i);
        }
        return part;
    }

    private static int root(int[] part, int place) {
        int at = place;
        while (part[at] != at) {
            part[at] = part[part[at]];
            at = part[at];
        }
        return at;
    }
}
