package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;

/** Which member is which in a picture of a run: a line across it at each joint, and the numbers below, from 1. */
final class MemberNumbers {
    private static final double APART_MM = 0.4;

    private final double headMm;
    private final double footMm;
    private final List<Shape> numbers = new ArrayList<>();
    private final List<Path> joints = new ArrayList<>();
    private double lastText = Double.NEGATIVE_INFINITY;
    private int members;

    /** Across a run that reaches so far either way from its axis. */
    MemberNumbers(double axisMm, double reachMm) {
        this.headMm = axisMm - reachMm;
        this.footMm = axisMm + reachMm + 1;
    }

    /** The next member, from one place on the paper to another. */
    void add(double fromMm, double toMm) {
        members++;
        if (members > 1) {
            joints.add(Path.line(Pen.FINE, fromMm, headMm, fromMm, footMm));
        }
        String number = String.valueOf(members);
        double middle = (fromMm + toMm) / 2;
        double half = Lettering.TINY.widthMm(number) / 2;
        // Where members are too narrow for their numbers side by side, every other one is left out.
        if (middle - half > lastText + APART_MM) {
            numbers.add(TextLine.centred(Lettering.TINY, middle, footMm + 3, number));
            lastText = middle + half;
        }
    }

    List<Shape> shapes() {
        List<Shape> out = new ArrayList<>(numbers);
        out.addAll(Path.together(Pen.FINE, joints));
        return out;
    }
}
