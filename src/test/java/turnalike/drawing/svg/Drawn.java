package turnalike.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** What every picture must keep to, and what is found in one. */
public final class Drawn {
    private Drawn() {}

    /** No lettering covers other lettering or leaves the picture, and the file is well-formed XML. */
    public static void assertSound(Svg svg) {
        List<Lettered.Box> boxes = Lettered.boxes(svg);
        assertThat(boxes).isNotEmpty();
        for (Lettered.Box box : boxes) {
            String where = "%s in %s".formatted(box.text(), svg.title());
            assertThat(Math.min(box.left(), box.top())).as(where).isGreaterThanOrEqualTo(-0.01);
            assertThat(box.right()).as(where).isLessThanOrEqualTo(svg.width().mm() + 0.01);
            assertThat(box.bottom()).as(where).isLessThanOrEqualTo(svg.height().mm() + 0.01);
        }
        assertThat(Lettered.overlaps(boxes)).as(svg.title()).isEmpty();
        try {
            DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg.file())));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(svg.title(), e);
        }
    }

    /** The text is the same where a comma is the decimal sign. */
    public static void assertSameEverywhere(Supplier<Svg> picture) {
        Locale before = Locale.getDefault();
        String here = picture.get().file();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(picture.get().file()).isEqualTo(here);
        } finally {
            Locale.setDefault(before);
        }
    }

    /** The groups of that class, in the order they are drawn. */
    public static List<Group> groups(Svg svg, String type) {
        List<Group> out = new ArrayList<>();
        collect(svg.shapes(), type, out);
        return out;
    }

    private static void collect(List<Shape> shapes, String type, List<Group> out) {
        for (Shape shape : shapes) {
            if (shape instanceof Group group) {
                if (type.equals(group.attributes().get("class"))) {
                    out.add(group);
                }
                collect(group.shapes(), type, out);
            }
        }
    }

    /** What a group letters, in order. */
    public static List<String> texts(Group group) {
        return group.shapes().stream()
                .filter(TextLine.class::isInstance)
                .map(shape -> ((TextLine) shape).text())
                .toList();
    }
}
