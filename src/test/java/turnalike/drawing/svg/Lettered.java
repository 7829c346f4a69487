package turnalike.drawing.svg;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Where the lettering of a picture stands: boxes round the capitals and figures of each line. */
public final class Lettered {
    private Lettered() {}

    /** Edges in millimetres of the picture. */
    public record Box(String text, double left, double top, double right, double bottom) {
        boolean covers(Box other) {
            double slack = 0.05;
            return left < other.right - slack
                    && other.left < right - slack
                    && top < other.bottom - slack
                    && other.top < bottom - slack;
        }
    }

    public static List<Box> boxes(Svg svg) {
        List<Box> out = new ArrayList<>();
        collect(svg.shapes(), 0, 0, out);
        return out;
    }

    public static List<String> overlaps(List<Box> boxes) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (boxes.get(i).covers(boxes.get(j))) {
                    out.add(boxes.get(i) + " covers " + boxes.get(j));
                }
            }
        }
        return out;
    }

    /** Lettering that a straight stroke of the picture runs through. */
    public static List<String> crossed(Svg svg) {
        List<String> out = new ArrayList<>();
        for (Box box : boxes(svg)) {
            Rectangle2D area = new Rectangle2D.Double(
                    box.left() + 0.05,
                    box.top() + 0.05,
                    box.right() - box.left() - 0.1,
                    box.bottom() - box.top() - 0.1);
            strokes(svg.shapes()).stream()
                    .filter(stroke -> stroke.intersects(area))
                    .forEach(stroke -> out.add(box + " crossed at " + stroke.getP1()));
        }
        return out;
    }

    private static List<Line2D> strokes(List<Shape> shapes) {
        List<Line2D> out = new ArrayList<>();
        for (Shape shape : shapes) {
            if (shape instanceof Group group) {
                out.addAll(strokes(group.shapes())); // only for pictures that move nothing
            } else if (shape instanceof Path path
                    && path.steps().size() == 2
                    && path.steps().get(0) instanceof Path.Move from
                    && path.steps().get(1) instanceof Path.Straight to) {
                out.add(new Line2D.Double(from.xMm(), from.yMm(), to.xMm(), to.yMm()));
            }
        }
        return out;
    }

    private static void collect(List<Shape> shapes, double right, double down, List<Box> out) {
        for (Shape shape : shapes) {
            if (shape instanceof Group group) {
                collect(group.shapes(), right + group.rightMm(), down + group.downMm(), out);
            } else if (shape instanceof TextLine words) {
                out.add(box(words, right, down));
            }
        }
    }

    private static Box box(TextLine words, double right, double down) {
        double width = words.widthMm();
        double cap = words.lettering().capHeightMm();
        double back =
                switch (words.anchor()) {
                    case START -> 0;
                    case MIDDLE -> width / 2;
                    case END -> width;
                };
        double x = right + words.xMm();
        double y = down + words.yMm();
        return words.upright()
                ? new Box(words.text(), x - cap, y - width + back, x, y + back)
                : new Box(words.text(), x - back, y - cap, x - back + width, y);
    }
}
