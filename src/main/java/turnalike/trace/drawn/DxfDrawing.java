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

    private final List<DxfEntity.Pair> pairs = new ArrayList<>();
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
            pairs.add(new DxfEntity.Pair(code, lines[i + 1], i + 2));
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
    private boolean isUnseen(DxfEntity entity) {
        return entity.value(67, 0) != 0 || entity.value(60, 0) != 0 || unseen.contains(seenOn(entity));
    }

    private String seenOn(DxfEntity entity) {
        String own = entity.layer();
        return own.equals("0") || own.isEmpty() ? outerLayer : own;
    }

    private boolean is(int index, int code, String value) {
        DxfEntity.Pair pair = pairs.get(index);
        return pair.code() == code && pair.value().strip().equals(value);
    }

    /** What stands from a place on up to the next entity. */
    private DxfEntity within(int from) {
        int to = from;
        while (to < pairs.size() && pairs.get(to).code() != 0) {
            to++;
        }
        return new DxfEntity(pairs.subList(Math.min(from, to), to));
    }

    private String text(int from, int code) {
        return within(from).text(code);
    }

    /** Draws the entities from a place among the pairs up to the end of their section or block. */
    private void drawFrom(int from) {
        List<DxfEntity.Pair> read = new ArrayList<>();
        DxfEntity polyline = new DxfEntity(List.of());
        List<DxfEntity> vertices = new ArrayList<>();
        for (int i = from; i < pairs.size(); i++) {
            DxfEntity.Pair pair = pairs.get(i);
            if (pair.code() != 0) {
                read.add(pair);
                continue;
            }
            DxfEntity entity = new DxfEntity(read);
            switch (entity.kind()) {
                case "POLYLINE" -> {
                    polyline = entity;
                    vertices = new ArrayList<>();
                }
                case "VERTEX" -> vertices.add(entity);
                case "SEQEND" -> add(DxfShape.of(polyline, vertices), polyline);
                case "INSERT" -> insert(entity);
                default -> draw(entity);
            }
            read = new ArrayList<>(List.of(pair));
            if (is(i, 0, "ENDSEC") || is(i, 0, "ENDBLK")) {
                return;
            }
        }
    }

    /** Draws a block where it is put in, turned and scaled; one that holds itself no deeper than any drawing goes. */
    private void insert(DxfEntity entity) {
        line = entity.line().orElse(line);
        Integer block = blocks.get(entity.text(2));
        if (block == null || isUnseen(entity) || depth >= DEEPEST || drawnBlocks >= MOST_BLOCKS) {
            return;
        }
        drawnBlocks++;
        DxfEntity head = within(block);
        Affine outside = place;
        String outsideLayer = outerLayer;
        outerLayer = seenOn(entity);
        double wide = entity.value(41, 1);
        Affine behind = entity.isFromBehind() ? new Affine(-1, 0, 0, 1, 0, 0) : Affine.NONE;
        place = outside.after(behind)
                .after(Affine.shift(entity.value(10, 0), entity.value(20, 0)))
                .after(Affine.turn(entity.value(50, 0)))
                .after(new Affine(wide, 0, 0, entity.value(42, wide), 0, 0))
                .after(Affine.shift(-head.value(10, 0), -head.value(20, 0)));
        depth++;
        drawFrom(block);
        depth--;
        place = outside;
        outerLayer = outsideLayer;
    }

    private void draw(DxfEntity entity) {
        line = entity.line().orElse(line);
        DxfShape.of(entity).ifPresent(shape -> add(shape, entity));
    }

    private void add(DxfShape shape, DxfEntity entity) {
        if (shape.spots().size() < 2 || isUnseen(entity) || strokes.size() >= MOST_STROKES) {
            return;
        }
        // Drawn from behind: the entity's own x runs the other way.
        List<Spot> seen = entity.isFromBehind()
                ? shape.spots().stream()
                        .map(each -> new Spot(-each.x(), each.y(), each.isKnot()))
                        .toList()
                : shape.spots();
        strokes.add(place.of(new Stroke(seen, shape.closed(), entity.layer())));
    }
}
