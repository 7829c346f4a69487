package turnalike.trace.drawn;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * An element of an SVG file with what lies in it; text is left out. Document types and outside entities are not followed.
 *
 * @param name in lower case, without its prefix
 * @param attributes by name, without prefixes
 * @param children in order
 * @param line of the file where it begins
 */
record SvgNode(String name, Map<String, String> attributes, List<SvgNode> children, int line) {
    private static final int DEEPEST = 200;

    /**
     * What came of reading a file.
     *
     * @param file all of it as one element, whose only child is the root; empty when it is not XML
     * @param badLine where it is not
     */
    record Read(Optional<SvgNode> file, int badLine) {}

    static Read read(String text) {
        try {
            return new Read(Optional.of(file(text)), 0);
        } catch (XMLStreamException trouble) {
            int line = trouble.getLocation() == null ? 1 : trouble.getLocation().getLineNumber();
            return new Read(Optional.empty(), line);
        }
    }

    /** The list of children grows while it is read. */
    private static SvgNode file(String text) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text));
        SvgNode file = new SvgNode("", Map.of(), new ArrayList<>(), 1);
        Deque<SvgNode> open = new ArrayDeque<>(List.of(file));
        while (reader.hasNext()) {
            int event = next(reader);
            if (event == XMLStreamConstants.START_ELEMENT) {
                if (open.size() > DEEPEST) {
                    throw new XMLStreamException("nested too deeply", reader.getLocation());
                }
                SvgNode node = new SvgNode(
                        reader.getLocalName().toLowerCase(Locale.ROOT),
                        attributes(reader),
                        new ArrayList<>(),
                        reader.getLocation().getLineNumber());
                open.getLast().children.add(node);
                open.addLast(node);
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                open.removeLast();
            }
        }
        reader.close();
        return file;
    }

    /** Java's reader lacks the words for some faults of a document type, and then fails by not finding them: the text is no XML either way. */
    private static int next(XMLStreamReader reader) throws XMLStreamException {
        try {
            return reader.next();
        } catch (MissingResourceException wordless) {
            throw new XMLStreamException("a fault without words", reader.getLocation(), wordless);
        }
    }

    /** Those without a prefix, and a link's, which older files have with one. */
    private static Map<String, String> attributes(XMLStreamReader reader) {
        Map<String, String> out = new HashMap<>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String space = reader.getAttributeNamespace(i);
            String name = reader.getAttributeLocalName(i);
            if (space == null || space.isEmpty()) {
                out.put(name, reader.getAttributeValue(i));
            } else if (name.equals("href")) {
                out.putIfAbsent(name, reader.getAttributeValue(i));
            }
        }
        return out;
    }

    /** An attribute's value; empty for none. */
    String get(String attribute) {
        return attributes.getOrDefault(attribute, "");
    }

    /** A number among its attributes; not a number when there is none. */
    double number(String attribute) {
        return number(attribute, Double.NaN);
    }

    double number(String attribute, double otherwise) {
        double value = SvgSizes.number(get(attribute));
        return Double.isNaN(value) ? otherwise : value;
    }

    /** What its style says of a property; empty for nothing. */
    String style(String property) {
        for (String each : get("style").split(";", -1)) {
            int colon = each.indexOf(':');
            if (colon > 0 && each.substring(0, colon).strip().equals(property)) {
                return each.substring(colon + 1).strip();
            }
        }
        return "";
    }

    /** A style's word comes before an attribute's. */
    String styled(String property) {
        String style = style(property);
        return style.isEmpty() ? get(property) : style;
    }
}
