package turnalike.drawing.dxf;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Writes a DXF of Release 12 (AC1009), the oldest that every laser, router and drawing program still reads: pairs of a group code and a
 * value, each on a line of its own. Units are millimetres. Group codes as in Autodesk's DXF reference for Release 12 (from memory).
 *
 * <p>Release 12 has no header variable for the units; {@code $INSUNITS}, which came later, is written all the same, since readers that do
 * not know it pass it over and those that do then need not ask.
 */
final class DxfFile {
    /** A vertex, and how the way to the next one bulges: the tangent of a quarter of its angle, positive when anticlockwise. */
    record Vertex(double xMm, double yMm, double bulge) {
        static Vertex straight(double xMm, double yMm) {
            return new Vertex(xMm, yMm, 0);
        }
    }

    private static final int RED = 1;
    private static final int BLACK_OR_WHITE = 7;

    private final List<String> comments;
    private final StringBuilder entities = new StringBuilder();
    private final Set<String> layers = new LinkedHashSet<>();
    private double leastX = Double.POSITIVE_INFINITY;
    private double leastY = Double.POSITIVE_INFINITY;
    private double mostX = Double.NEGATIVE_INFINITY;
    private double mostY = Double.NEGATIVE_INFINITY;

    /** @param comments read by people only, each on one line */
    DxfFile(List<String> comments) {
        this.comments = List.copyOf(comments);
    }

    /** A closed run of straight lines and circle arcs. */
    DxfFile closed(String layer, List<Vertex> vertices) {
        entity(entities, "POLYLINE", layer);
        pair(entities, 66, "1");
        point(entities, 0, 0);
        pair(entities, 70, "1");
        for (Vertex vertex : vertices) {
            entity(entities, "VERTEX", layer);
            pointSeen(vertex.xMm(), vertex.yMm());
            if (vertex.bulge() != 0) {
                pair(entities, 42, number(vertex.bulge()));
            }
        }
        entity(entities, "SEQEND", layer);
        return this;
    }

    DxfFile line(String layer, double x1Mm, double y1Mm, double x2Mm, double y2Mm) {
        entity(entities, "LINE", layer);
        pointSeen(x1Mm, y1Mm);
        pair(entities, 11, number(x2Mm));
        pair(entities, 21, number(y2Mm));
        pair(entities, 31, number(0));
        see(x2Mm, y2Mm);
        return this;
    }

    /** Text that reads upwards, starting at its place. */
    DxfFile upwards(String layer, double xMm, double yMm, double heightMm, String text) {
        entity(entities, "TEXT", layer);
        pointSeen(xMm, yMm);
        pair(entities, 40, number(heightMm));
        pair(entities, 1, plain(text));
        pair(entities, 50, number(90));
        return this;
    }

    String text() {
        StringBuilder out = new StringBuilder();
        comments.forEach(comment -> pair(out, 999, plain(comment)));
        header(out);
        tables(out);
        section(out, "ENTITIES", entities);
        pair(out, 0, "EOF");
        return out.toString();
    }

    private void header(StringBuilder out) {
        StringBuilder header = new StringBuilder();
        pair(header, 9, "$ACADVER");
        pair(header, 1, "AC1009");
        pair(header, 9, "$INSUNITS");
        pair(header, 70, "4");
        pair(header, 9, "$EXTMIN");
        point(header, leastX, leastY);
        pair(header, 9, "$EXTMAX");
        point(header, mostX, mostY);
        section(out, "HEADER", header);
    }

    private void tables(StringBuilder out) {
        StringBuilder tables = new StringBuilder();
        table(tables, "LTYPE", 1);
        pair(tables, 0, "LTYPE");
        pair(tables, 2, "CONTINUOUS");
        pair(tables, 70, "0");
        pair(tables, 3, "Solid line");
        pair(tables, 72, "65");
        pair(tables, 73, "0");
        pair(tables, 40, number(0));
        pair(tables, 0, "ENDTAB");
        table(tables, "LAYER", layers.size());
        int colour = BLACK_OR_WHITE;
        for (String layer : layers) {
            pair(tables, 0, "LAYER");
            pair(tables, 2, layer);
            pair(tables, 70, "0");
            pair(tables, 62, String.valueOf(colour));
            pair(tables, 6, "CONTINUOUS");
            colour = RED;
        }
        pair(tables, 0, "ENDTAB");
        section(out, "TABLES", tables);
    }

    private static void table(StringBuilder out, String name, int entries) {
        pair(out, 0, "TABLE");
        pair(out, 2, name);
        pair(out, 70, String.valueOf(entries));
    }

    private static void section(StringBuilder out, String name, StringBuilder content) {
        pair(out, 0, "SECTION");
        pair(out, 2, name);
        out.append(content);
        pair(out, 0, "ENDSEC");
    }

    private void entity(StringBuilder out, String kind, String layer) {
        layers.add(layer);
        pair(out, 0, kind);
        pair(out, 8, layer);
    }

    private void pointSeen(double xMm, double yMm) {
        point(entities, xMm, yMm);
        see(xMm, yMm);
    }

    private void see(double xMm, double yMm) {
        leastX = Math.min(leastX, xMm);
        leastY = Math.min(leastY, yMm);
        mostX = Math.max(mostX, xMm);
        mostY = Math.max(mostY, yMm);
    }

    private static void point(StringBuilder out, double xMm, double yMm) {
        pair(out, 10, number(xMm));
        pair(out, 20, number(yMm));
        pair(out, 30, number(0));
    }

    private static void pair(StringBuilder out, int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d\r\n%s\r\n", code, value));
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value);
        return text.equals("-0.000000") ? "0.000000" : text;
    }

    /** Release 12 is read in the code page of whoever opens it, so nothing but ASCII, on one line, goes in. */
    private static String plain(String text) {
        return text.replace("Ø", "%%c").replaceAll("[^\\x20-\\x7e]", "?");
    }
}
