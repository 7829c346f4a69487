package turnalike.drawing.dxf;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.dxf.DxfFile.Vertex;
import turnalike.drawing.svg.LengthLabels;
import turnalike.outline.Outline;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.units.UnitSystem;

/**
 * The piece's outline for a laser, a router or a drawing program, as DXF of Release 12 in millimetres at full size: x from the datum end, y
 * from the axis.
 */
public final class PieceDxf {
    private static final double BODY_MM = 30;
    private static final double ENGRAVED_MM = 8;
    private static final double LETTER_MM = 2.5;

    private PieceDxf() {}

    /** The half-profile, closed along the axis, on layer {@code OUTLINE}. */
    public static String outline(Pattern pattern) {
        Outline outline = pattern.outline();
        List<Vertex> vertices = new ArrayList<>(DxfOutline.of(outline));
        vertices.add(Vertex.straight(outline.end().mm(), 0));
        vertices.add(Vertex.straight(outline.start().mm(), 0));
        return new DxfFile(comments("half outline", pattern))
                .closed("OUTLINE", vertices)
                .text();
    }

    /**
     * The checking template to cut, on layer {@code TEMPLATE}: its lower edge is the profile, its back is straight. What to engrave is on
     * layer {@code MARKS}: a line at each mark with its number and place.
     */
    public static String template(Pattern pattern, UnitSystem units) {
        Outline outline = pattern.outline();
        double back = outline.largestRadius().mm() + BODY_MM;
        List<Vertex> vertices = new ArrayList<>(DxfOutline.of(outline));
        vertices.add(Vertex.straight(outline.end().mm(), back));
        vertices.add(Vertex.straight(outline.start().mm(), back));
        DxfFile file = new DxfFile(comments("checking template", pattern)).closed("TEMPLATE", vertices);
        List<Mark> marks = pattern.marks();
        for (int i = 1; i < marks.size() - 1; i++) {
            double x = marks.get(i).place().mm();
            double foot = outline.largestRadius().mm() + 1;
            file.line("MARKS", x, foot, x, foot + ENGRAVED_MM);
            String text = i + "  " + LengthLabels.bare(marks.get(i).place(), units);
            file.upwards("MARKS", x + LETTER_MM / 2, foot + ENGRAVED_MM + 1, LETTER_MM, text);
        }
        return file.text();
    }

    private static List<String> comments(String what, Pattern pattern) {
        return List.of(
                "%s of %s, full size, millimetres".formatted(what, pattern.name()),
                "lines and circle arcs exact, other curves within %s mm".formatted(DxfOutline.CHORD_MM));
    }
}
