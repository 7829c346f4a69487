package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the outlines of a DXF file in text: lines, polylines old and new with their bulges, arcs, ellipses and splines of its entities.
 * Group codes as in Autodesk's DXF reference (from memory). A block is drawn wherever the drawing puts it in, once where it says rows of it.
 */
final class DxfDrawing {
    /** {@code $INSUNITS}: what a unit is. */
    private static final Map<Integer, Double> MM_PER_UNIT = Map.of(
            1, 25.4, 2, 304.8, 4, 1.0, 5, 10.0, 6, 1000.0, 8, 25.4e-6, 9, 0.0254, 10, 914.4, 13, 0.001, 14, 100.0);

    private static final int MOST_PAIRS = 2_000_000;
    private static final int DEEPEST = 8;
    /** No drawing of a piece holds so much; of one that does the rest is passed over. */
    private static final int MOST_STROKES = 100_000;

    private static final int MOST_BLOCKS = 10_000;

    /** A group code, its value and the line it stands on. */
    private record Pair(int code, String value, int line) {
        double number() {
            double out = Double.parseDouble(value.strip());
            if (!(Math.abs(out) < 1e9)) {
                throw new NumberFormatException("too large");
            }
            return out;
        }
    }

    private final List<Pair> pairs = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    /** Of each block's name the place among the pairs where it begins. */
    private final Map<String, Integer> blocks = new HashMap<>();

    /** Layers that are off or frozen. */
    private final Set<String> unseen = new HashSet<>();

    /** The layer of the block that is being drawn: what it has on layer 0 goes with that. */
    private String outerLayer = "0";

    /** Where what is drawn now stands in the drawing, and in how many blocks. */
    private Affine place = Affine.NONE;

    private int depth;
    private int drawnBlocks;
    private int line = 1;

    private DxfDrawing() {}

    static Drawing read(String text, double mmPerUntoldUnit, String untold) {
        if (text.startsWith("AutoCAD Binary DXF")) {
            return Drawing.none("drawing", "is a binary DXF", "save it as DXF in text (ASCII)");
        }
        DxfDrawing dxf = new DxfDrawing();
        try {
            dxf.split(text);
            int units = dxf.units();
            dxf.entities();
            boolean told = MM_PER_UNIT.containsKey(units);
            boolean template =
                    dxf.strokes.stream().anyMatch(each -> each.layer().equals("TEMPLATE"));
            return new Drawing(
                    dxf.strokes,
                    MM_PER_UNIT.getOrDefault(units, mmPerUntoldUnit),
                    told ? "the drawing's own units" : untold,
                    told,
                    template ? Optional.of(0.0) : Optional.empty(),
                    List.of(),
                    Optional.empty());
        } catch (NumberFormatException mistake) {
            return Drawing.none("line " + dxf.line, "is not DXF there", "save the drawing as DXF in text once more");
        }
    }

    private void split(String text) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        for (int i = 0; i + 1 < lines.length; i += 2) {
            line = i + 1;
            if (lines[i].isBlank() && i + 2 >= lines.length) {
                break;
            }
            int code = Integer.parseInt(lines[i].strip());
            pairs.add(new Pair(code, lines[i + 1], i + 2));
            if (pairs.size() > MOST_PAIRS) {
                throw new NumberFormatException("too long");
            }
            if (code == 0 && lines[i + 1].strip().equals("EOF")) {
                break;
            }
        }
        if (pairs.isEmpty()) {
            throw new NumberFormatException("empty");
        }
    }

    private int units() {
        for (int i = 0; i + 1 < pairs.size(); i++) {
            if (pairs.get(i).code() == 9 && pairs.get(i).value().strip().equals("$INSUNITS")) {
                return Integer.parseInt(pairs.get(i + 1).value().strip());
            }
        }
        return 0;
    }

    private void entities() {
        int at = pairs.size();
        for (int i = 0; i < pairs.size() && at == pairs.size(); i++) {
            if (is(i, 0, "LAYER")) {
                layer(i + 1);
            } else if (is(i, 0, "BLOCK")) {
                blocks.putIfAbsent(text(i + 1, 2), i + 1);
            } else if (is(i, 2, "ENTITIES")) {
                at = i;
            }
        }
        drawFrom(at + 1);
    }

    /** An entry of the table of layers: the colour of one that is off is below zero, and the first bit of its flags says that it is frozen. */
    private void layer(int at) {
        line = pairs.get(Math.min(at, pairs.size() - 1)).line();
        String colour = text(at, 62);
        String flags = text(at, 70);
        boolean off = !colour.isEmpty() && Integer.parseInt(colour) < 0;
        boolean frozen = !flags.isEmpty() && (Integer.parseInt(flags) & 1) != 0;
        if (off || frozen) {
            unseen.add(text(at, 2).toUpperCase(Locale.ROOT));
        }
    }

    /** In paper space, invisible, or on a layer that is off or frozen. */
    private boolean isUnseen(List<Pair> entity) {
        return value(entity, 67, 0) != 0 || value(entity, 60, 0) != 0 || unseen.contains(seenOn(entity));
    }

    private String seenOn(List<Pair> entity) {
        String own = layerOf(entity);
        return own.equals("0") || own.isEmpty() ? outerLayer : own;
    }

    private static String layerOf(List<Pair> entity) {
        return entity.stream()
                .filter(each -> each.code() == 8)
                .map(each -> each.value().strip().toUpperCase(Locale.ROOT))
                .findFirst()
                .orElse("");
    }

    private boolean is(int index, int code, String value) {
        Pair pair = pairs.get(index);
        return pair.code() == code && pair.value().strip().equals(value);
    }

    /** The first value of that code from a place on, within its entity; empty for none. */
    private String text(int from, int code) {
        for (int i = from; i < pairs.size() && pairs.get(i).code() != 0; i++) {
            if (pairs.get(i).code() == code) {
                return pairs.get(i).value().strip();
            }
        }
        return "";
    }

    /** Draws the entities from a place among the pairs up to the end of their section or block. */
    private void drawFrom(int from) {
        List<Pair> entity = new ArrayList<>();
        List<Pair> polyline = new ArrayList<>();
        List<List<Pair>> vertices = new ArrayList<>();
        for (int i = from; i < pairs.size(); i++) {
            Pair pair = pairs.get(i);
            if (pair.code() != 0) {
                entity.add(pair);
                continue;
            }
            String kind = entity.isEmpty() || entity.get(0).code() != 0
                    ? ""
                    : entity.get(0).value().strip();
            switch (kind) {
                case "POLYLINE" -> {
                    polyline = entity;
                    vertices = new ArrayList<>();
                }
                case "VERTEX" -> vertices.add(entity);
                case "SEQEND" -> old(polyline, vertices);
                case "INSERT" -> insert(entity);
                default -> draw(kind, entity);
            }
            entity = new ArrayList<>(List.of(pair));
            if (is(i, 0, "ENDSEC") || is(i, 0, "ENDBLK")) {
                return;
            }
        }
    }

    /** Draws a block where it is put in, turned and scaled; one that holds itself no deeper than any drawing goes. */
    private void insert(List<Pair> entity) {
        line = entity.get(0).line();
        Integer block = blocks.get(entity.stream()
                .filter(each -> each.code() == 2)
                .map(each -> each.value().strip())
                .findFirst()
                .orElse(""));
        if (block == null || isUnseen(entity) || depth >= DEEPEST || drawnBlocks >= MOST_BLOCKS) {
            return;
        }
        drawnBlocks++;
        List<Pair> head = new ArrayList<>();
        for (int i = block; i < pairs.size() && pairs.get(i).code() != 0; i++) {
            head.add(pairs.get(i));
        }
        Affine outside = place;
        String outsideLayer = outerLayer;
        outerLayer = seenOn(entity);
        double wide = value(entity, 41, 1);
        Affine behind = value(entity, 230, 1) < 0 ? new Affine(-1, 0, 0, 1, 0, 0) : Affine.NONE;
        place = outside.after(behind)
                .after(Affine.shift(value(entity, 10, 0), value(entity, 20, 0)))
                .after(Affine.turn(value(entity, 50, 0)))
                .after(new Affine(wide, 0, 0, value(entity, 42, wide), 0, 0))
                .after(Affine.shift(-value(head, 10, 0), -value(head, 20, 0)));
        depth++;
        drawFrom(block);
        depth--;
        place = outside;
        outerLayer = outsideLayer;
    }

    private void draw(String kind, List<Pair> entity) {
        line = entity.isEmpty() ? line : entity.get(0).line();
        List<Spot> spots = new ArrayList<>();
        boolean closed = false;
        switch (kind) {
            case "LINE" -> {
                spots.add(Spot.knot(value(entity, 10, 0), value(entity, 20, 0)));
                spots.add(Spot.knot(value(entity, 11, 0), value(entity, 21, 0)));
            }
            case "ARC" -> {
                double radius = value(entity, 40, 0);
                double from = Math.toRadians(value(entity, 50, 0));
                double to = Math.toRadians(value(entity, 51, 360));
                to += to <= from ? 2 * Math.PI : 0;
                ellipse(spots, entity, radius, 0, 0, radius, from, to);
            }
            case "ELLIPSE" -> {
                double ax = value(entity, 11, 1);
                double ay = value(entity, 21, 0);
                double ratio = value(entity, 40, 1);
                double to = value(entity, 42, 2 * Math.PI);
                double from = value(entity, 41, 0);
                ellipse(spots, entity, ax, ay, -ay * ratio, ax * ratio, from, to <= from ? to + 2 * Math.PI : to);
            }
            case "LWPOLYLINE" -> {
                closed = ((int) value(entity, 70, 0) & 1) != 0;
                light(spots, entity, closed);
            }
            case "SPLINE" -> {
                closed = false;
                Splines.draw(
                        spots,
                        (int) value(entity, 71, 3),
                        all(entity, 40),
                        all(entity, 10),
                        all(entity, 20),
                        all(entity, 41),
                        all(entity, 11),
                        all(entity, 21));
            }
            default -> {
                return;
            }
        }
        add(spots, closed, entity);
    }

    private static void ellipse(
            List<Spot> spots, List<Pair> entity, double ax, double ay, double bx, double by, double from, double to) {
        double cx = value(entity, 10, 0);
        double cy = value(entity, 20, 0);
        spots.add(Spot.knot(
                cx + ax * Math.cos(from) + bx * Math.sin(from), cy + ay * Math.cos(from) + by * Math.sin(from)));
        Curves.arc(spots, cx, cy, ax, ay, bx, by, from, to);
    }

    /** Its vertices stand one after the other within the entity: x, y and the bulge towards the next. */
    private static void light(List<Spot> spots, List<Pair> entity, boolean closed) {
        List<double[]> vertices = new ArrayList<>();
        for (Pair each : entity) {
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

    private void old(List<Pair> polyline, List<List<Pair>> vertices) {
        List<double[]> points = new ArrayList<>();
        for (List<Pair> each : vertices) {
            // Sixteen marks a spline's control point, which is not on the line.
            if (((int) value(each, 70, 0) & 16) == 0) {
                points.add(new double[] {value(each, 10, 0), value(each, 20, 0), value(each, 42, 0)});
            }
        }
        boolean closed = ((int) value(polyline, 70, 0) & 1) != 0;
        List<Spot> spots = new ArrayList<>();
        bulged(spots, points, closed);
        add(spots, closed, polyline);
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

    private void add(List<Spot> spots, boolean closed, List<Pair> entity) {
        if (spots.size() < 2 || isUnseen(entity) || strokes.size() >= MOST_STROKES) {
            return;
        }
        // Drawn from behind: the entity's own x runs the other way.
        boolean behind = value(entity, 230, 1) < 0;
        List<Spot> seen = behind
                ? spots.stream()
                        .map(each -> new Spot(-each.x(), each.y(), each.isKnot()))
                        .toList()
                : spots;
        strokes.add(place.of(new Stroke(seen, closed, layerOf(entity))));
    }

    private static double value(List<Pair> entity, int code, double otherwise) {
        for (Pair each : entity) {
            if (each.code() == code) {
                return each.number();
            }
        }
        return otherwise;
    }

    private static double[] all(List<Pair> entity, int code) {
        return entity.stream()
                .filter(each -> each.code() == code)
                .mapToDouble(Pair::number)
                .toArray();
    }
}
