package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The line that an entity of a DXF file draws, in its own coordinates.
 *
 * @param spots along it
 * @param closed whether its end meets its beginning
 */
record DxfShape(List<Spot> spots, boolean closed) {
    DxfShape {
        spots = List.copyOf(spots);
    }

    /** The line that an entity is; empty for one that is none, such as lettering. */
    static Optional<DxfShape> of(DxfEntity entity) {
        List<Spot> spots = new ArrayList<>();
        boolean closed = false;
        switch (entity.kind()) {
            case "LINE" -> {
                spots.add(Spot.knot(entity.value(10, 0), entity.value(20, 0)));
                spots.add(Spot.knot(entity.value(11, 0), entity.value(21, 0)));
            }
            case "ARC" -> {
                double radius = entity.value(40, 0);
                double from = Math.toRadians(entity.value(50, 0));
                double to = Math.toRadians(entity.value(51, 360));
                to += to <= from ? 2 * Math.PI : 0;
                ellipse(spots, entity, radius, 0, 0, radius, from, to);
            }
            case "ELLIPSE" -> {
                double ax = entity.value(11, 1);
                double ay = entity.value(21, 0);
                double ratio = entity.value(40, 1);
                double to = entity.value(42, 2 * Math.PI);
                double from = entity.value(41, 0);
                ellipse(spots, entity, ax, ay, -ay * ratio, ax * ratio, from, to <= from ? to + 2 * Math.PI : to);
            }
            case "LWPOLYLINE" -> {
                closed = ((int) entity.value(70, 0) & 1) != 0;
                light(spots, entity, closed);
            }
            case "SPLINE" ->
                Splines.draw(
                        spots,
                        (int) entity.value(71, 3),
                        entity.all(40),
                        entity.all(10),
                        entity.all(20),
                        entity.all(41),
                        entity.all(11),
                        entity.all(21));
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(new DxfShape(spots, closed));
    }

    /** The same of an old polyline, whose vertices are entities of their own. */
    static DxfShape of(DxfEntity polyline, List<DxfEntity> vertices) {
        List<double[]> points = new ArrayList<>();
        for (DxfEntity each : vertices) {
            // Sixteen marks a spline's control point, which is not on the line.
            if (((int) each.value(70, 0) & 16) == 0) {
                points.add(new double[] {each.value(10, 0), each.value(20, 0), each.value(42, 0)});
            }
        }
        boolean closed = ((int) polyline.value(70, 0) & 1) != 0;
        List<Spot> spots = new ArrayList<>();
        bulged(spots, points, closed);
        return new DxfShape(spots, closed);
    }

    private static void ellipse(
            List<Spot> spots, DxfEntity entity, double ax, double ay, double bx, double by, double from, double to) {
        double cx = entity.value(10, 0);
        double cy = entity.value(20, 0);
        spots.add(Spot.knot(
                cx + ax * Math.cos(from) + bx * Math.sin(from), cy + ay * Math.cos(from) + by * Math.sin(from)));
        Curves.arc(spots, cx, cy, ax, ay, bx, by, from, to);
    }

    /** Its vertices stand one after the other within the entity: x, y and the bulge towards the next. */
    private static void light(List<Spot> spots, DxfEntity entity, boolean closed) {
        List<double[]> vertices = new ArrayList<>();
        for (DxfEntity.Pair each : entity.pairs()) {
            if (each.code() == 10) {
                vertices.add(new double[] {each.number(), 0, 0});
            } else if (each.code() == 20 && !vertices.isEmpty()) {
                vertices.get(vertices.size() - 1)[1] = each.number();
            } else if (each.code() == 42 && !vertices.isEmpty()) {
                vertices.get(vertices.size() - 1)[2] = each.number();
            }
        }
        bulged(spots, vertices, closed);
    }

    private static void bulged(List<Spot> spots, List<double[]> vertices, boolean closed) {
        if (vertices.isEmpty()) {
            return;
        }
        spots.add(Spot.knot(vertices.get(0)[0], vertices.get(0)[1]));
        int last = closed ? vertices.size() : vertices.size() - 1;
        for (int i = 0; i < last; i++) {
            double[] next = vertices.get((i + 1) % vertices.size());
            Curves.bulge(spots, next[0], next[1], vertices.get(i)[2]);
        }
        if (closed && spots.size() > 1) {
            spots.remove(spots.size() - 1);
        }
    }
}
