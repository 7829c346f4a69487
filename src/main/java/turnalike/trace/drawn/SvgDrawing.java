package turnalike.trace.drawn;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Reads the outlines of an SVG file: paths, polygons, polylines, rectangles and lines, wherever groups and transforms put them. Document
 * types and outside entities are not followed. A px is 1/96 in (CSS Values and Units; from memory).
 */
final class SvgDrawing {
    private static final double MM_PER_PX = 25.4 / 96;
    private static final Map<String, Double> MM_PER_UNIT = Map.of(
            "", MM_PER_PX, "px", MM_PER_PX, "mm", 1.0, "cm", 10.0, "in", 25.4, "pt", 25.4 / 72, "pc", 25.4 / 6, "q",
            0.25);
    private static final Set<String> UNDRAWN =
            Set.of("defs", "clippath", "mask", "symbol", "pattern", "marker", "text", "style", "metadata", "title");
    private static final Pattern SIZE = Pattern.compile("\\s*([0-9.eE+-]+)\\s*([a-zA-Z%]*)\\s*");
    private static final int DEEPEST = 200;

    private final List<Stroke> strokes = new ArrayList<>();
    private final Deque<Affine> places = new ArrayDeque<>(List.of(Affine.NONE));
    private Optional<Double> axisY = Optional.empty();
    private double mmPerUnit = MM_PER_PX;
    private String from = "pixels of 1/96 in, since the drawing names no unit";
    private boolean isTold;
    private boolean isSvg;

    private SvgDrawing() {}

    static Drawing read(String text) {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        SvgDrawing drawing = new SvgDrawing();
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text));
            drawing.walk(reader);
            reader.close();
        } catch (XMLStreamException trouble) {
            int line = trouble.getLocation() == null ? 1 : trouble.getLocation().getLineNumber();
            return Drawing.none("line " + line, "is not XML there", "export the drawing as SVG once more");
        }
        if (!drawing.isSvg) {
            return Drawing.none("drawing", "is no SVG", "export it as SVG or DXF");
        }
        return new Drawing(
                drawing.strokes, drawing.mmPerUnit, drawing.from, drawing.isTold, drawing.axisY, Optional.empty());
    }

    private void walk(XMLStreamReader reader) throws XMLStreamException {
        int undrawn = 0;
        while (reader.hasNext()) {
            int event = next(reader);
            if (event == XMLStreamConstants.START_ELEMENT) {
                String name = reader.getLocalName().toLowerCase(Locale.ROOT);
                undrawn += undrawn > 0 || UNDRAWN.contains(name) || isHidden(reader) ? 1 : 0;
                if (places.size() > DEEPEST) {
                    throw new XMLStreamException("nested too deeply", reader.getLocation());
                }
                Affine here = places.getLast();
                String transform = attribute(reader, "transform");
                places.addLast(transform.isEmpty() ? here : here.after(Affine.parse(transform)));
                if (undrawn == 0) {
                    element(name, reader);
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                places.removeLast();
                undrawn -= undrawn > 0 ? 1 : 0;
            }
        }
    }

    /** Java's reader lacks the words for some faults of a document type, and then fails by not finding them: the text is no XML either way. */
    private static int next(XMLStreamReader reader) throws XMLStreamException {
        try {
            return reader.next();
        } catch (MissingResourceException wordless) {
            throw new XMLStreamException("a fault without words", reader.getLocation(), wordless);
        }
    }

    private static boolean isHidden(XMLStreamReader reader) {
        String style = attribute(reader, "style").replace(" ", "");
        return attribute(reader, "display").equals("none") || style.contains("display:none");
    }

    private static String attribute(XMLStreamReader reader, String name) {
        @Nullable String value = reader.getAttributeValue(null, name);
        return value == null ? "" : value;
    }

    private void element(String name, XMLStreamReader reader) {
        String axis = attribute(reader, "data-axis");
        if (!axis.isEmpty() && !Double.isNaN(number(axis))) {
            axisY = Optional.of(places.getLast().of(Spot.knot(0, number(axis))).y());
        }
        switch (name) {
            case "svg" -> {
                if (!isSvg) {
                    root(reader);
                }
                isSvg = true;
            }
            case "path" -> SvgPath.read(attribute(reader, "d"), "").forEach(this::add);
            case "polygon" -> polygon(attribute(reader, "points"), true);
            case "polyline" -> polygon(attribute(reader, "points"), false);
            case "line" ->
                polygon(
                        "%s %s %s %s"
                                .formatted(
                                        attribute(reader, "x1"),
                                        attribute(reader, "y1"),
                                        attribute(reader, "x2"),
                                        attribute(reader, "y2")),
                        false);
            case "rect" -> rectangle(reader);
            default -> {
                // Neither a line nor anything that holds one.
            }
        }
    }

    private void add(Stroke stroke) {
        strokes.add(places.getLast().of(stroke));
    }

    private void root(XMLStreamReader reader) {
        double[] view = numbers(attribute(reader, "viewBox"));
        boolean viewed = view.length == 4 && view[2] > 0 && view[3] > 0;
        double width = mm(attribute(reader, "width"));
        double height = mm(attribute(reader, "height"));
        if (viewed && (width > 0 || height > 0)) {
            double byWidth = width > 0 ? width / view[2] : Double.POSITIVE_INFINITY;
            double byHeight = height > 0 ? height / view[3] : Double.POSITIVE_INFINITY;
            mmPerUnit = Math.min(byWidth, byHeight);
            from = "the drawing's own size and view box";
        }
        String unit = unit(attribute(reader, "width")) + unit(attribute(reader, "height"));
        isTold = (width > 0 || height > 0) && !unit.isEmpty() && !unit.contains("px");
        if (!viewed) {
            from = "pixels of 1/96 in";
        } else if (!isTold && width > 0) {
            from = "the drawing's size in pixels of 1/96 in";
        }
    }

    private static String unit(String size) {
        Matcher matcher = SIZE.matcher(size);
        return matcher.matches() ? matcher.group(2).toLowerCase(Locale.ROOT) : "";
    }

    /** A size in millimetres; not a number when there is none. */
    private static double mm(String size) {
        Matcher matcher = SIZE.matcher(size);
        if (!matcher.matches()) {
            return Double.NaN;
        }
        Double each = MM_PER_UNIT.get(matcher.group(2).toLowerCase(Locale.ROOT));
        return each == null ? Double.NaN : number(matcher.group(1)) * each;
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException none) {
            return Double.NaN;
        }
    }

    private static double[] numbers(String text) {
        if (text.isBlank()) {
            return new double[0];
        }
        String[] parts = text.strip().split("[\\s,]+", -1);
        double[] out = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            out[i] = number(parts[i]);
        }
        return out;
    }

    private void polygon(String points, boolean closed) {
        double[] n = numbers(points);
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i + 1 < n.length; i += 2) {
            if (!(Math.abs(n[i]) < 1e9 && Math.abs(n[i + 1]) < 1e9)) {
                return;
            }
            spots.add(Spot.knot(n[i], n[i + 1]));
        }
        boolean meets = spots.size() > 3 && spots.get(0).distance(spots.get(spots.size() - 1)) == 0;
        if (meets) {
            spots.remove(spots.size() - 1);
        }
        if (spots.size() > 1) {
            add(new Stroke(spots, closed || meets, ""));
        }
    }

    private void rectangle(XMLStreamReader reader) {
        double x = orZero(attribute(reader, "x"));
        double y = orZero(attribute(reader, "y"));
        double width = orZero(attribute(reader, "width"));
        double height = orZero(attribute(reader, "height"));
        if (width > 0 && height > 0 && Math.abs(x) + Math.abs(y) + width + height < 1e9) {
            add(new Stroke(
                    List.of(
                            Spot.knot(x, y),
                            Spot.knot(x + width, y),
                            Spot.knot(x + width, y + height),
                            Spot.knot(x, y + height)),
                    true,
                    ""));
        }
    }

    private static double orZero(String text) {
        double value = number(text);
        return Double.isNaN(value) ? 0 : value;
    }
}
