package turnalike.drawing.svg;

import java.util.ArrayList;
import java.util.List;

/** A line or an area: steps of a pen, in the words of SVG's path data. */
public record Path(Pen pen, List<Step> steps) implements Shape {
    public Path {
        steps = List.copyOf(steps);
        if (steps.isEmpty() || !(steps.get(0) instanceof Move)) {
            throw new IllegalArgumentException("a path begins with a move");
        }
    }

    /** One step of the pen; places in millimetres. */
    public sealed interface Step permits Move, Straight, Cubic, Arc, Close {
        /** Writes it at the end of the path data that is there. */
        void svg(StringBuilder out);

        <R> R match(StepCases<R> cases);
    }

    public interface StepCases<R> {
        R move(Move move);

        R straight(Straight straight);

        R cubic(Cubic cubic);

        R arc(Arc arc);

        R close(Close close);
    }

    /** Lift the pen and set it down there. */
    public record Move(double xMm, double yMm) implements Step {
        @Override
        public void svg(StringBuilder out) {
            numbers(out.append('M'), xMm, yMm);
        }

        @Override
        public <R> R match(StepCases<R> cases) {
            return cases.move(this);
        }
    }

    /** Draw straight to there. */
    public record Straight(double xMm, double yMm) implements Step {
        @Override
        public void svg(StringBuilder out) {
            numbers(out.append('L'), xMm, yMm);
        }

        @Override
        public <R> R match(StepCases<R> cases) {
            return cases.straight(this);
        }
    }

    /** Draw a cubic Bézier curve with two control points. */
    public record Cubic(double x1Mm, double y1Mm, double x2Mm, double y2Mm, double xMm, double yMm) implements Step {
        @Override
        public void svg(StringBuilder out) {
            numbers(out.append('C'), x1Mm, y1Mm, x2Mm, y2Mm, xMm, yMm);
        }

        @Override
        public <R> R match(StepCases<R> cases) {
            return cases.cubic(this);
        }
    }

    /**
     * Draw an arc of at most half an ellipse whose axes lie along x and y.
     *
     * @param rxMm half axis along x, above zero
     * @param ryMm half axis along y, above zero
     * @param clockwise which way round, as seen on the paper
     */
    public record Arc(double rxMm, double ryMm, boolean clockwise, double xMm, double yMm) implements Step {
        public Arc {
            if (!(rxMm > 0 && ryMm > 0)) {
                throw new IllegalArgumentException(
                        "an arc's half axes must be above zero, were %s and %s mm".formatted(rxMm, ryMm));
            }
        }

        @Override
        public void svg(StringBuilder out) {
            numbers(out.append('A'), rxMm, ryMm);
            out.append(clockwise ? " 0 0 1 " : " 0 0 0 ");
            numbers(out, xMm, yMm);
        }

        @Override
        public <R> R match(StepCases<R> cases) {
            return cases.arc(this);
        }
    }

    /** Draw straight back to where the pen was last set down. */
    public record Close() implements Step {
        @Override
        public void svg(StringBuilder out) {
            out.append('Z');
        }

        @Override
        public <R> R match(StepCases<R> cases) {
            return cases.close(this);
        }
    }

    private static void numbers(StringBuilder out, double... mm) {
        for (int i = 0; i < mm.length; i++) {
            SvgNumbers.mm(i == 0 ? out : out.append(' '), mm[i]);
        }
    }

    public static Path line(Pen pen, double x1Mm, double y1Mm, double x2Mm, double y2Mm) {
        return new Path(pen, List.of(new Move(x1Mm, y1Mm), new Straight(x2Mm, y2Mm)));
    }

    /** Several lines of one pen as one path, since a page lays out one far sooner than a hundred; of none, none. */
    public static List<Shape> together(Pen pen, List<Path> lines) {
        List<Step> steps = lines.stream().flatMap(line -> line.steps().stream()).toList();
        return steps.isEmpty() ? List.of() : List.of(new Path(pen, steps));
    }

    /** A line through several places, given as x, y, x, y … */
    public static Path through(Pen pen, double... xyMm) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Move(xyMm[0], xyMm[1]));
        for (int i = 2; i + 1 < xyMm.length; i += 2) {
            steps.add(new Straight(xyMm[i], xyMm[i + 1]));
        }
        return new Path(pen, steps);
    }

    /** The same, closed. */
    public static Path polygon(Pen pen, double... xyMm) {
        List<Step> steps = new ArrayList<>(through(pen, xyMm).steps());
        steps.add(new Close());
        return new Path(pen, steps);
    }

    public static Path rectangle(Pen pen, double xMm, double yMm, double widthMm, double heightMm) {
        return polygon(pen, xMm, yMm, xMm + widthMm, yMm, xMm + widthMm, yMm + heightMm, xMm, yMm + heightMm);
    }

    public static Path circle(Pen pen, double xMm, double yMm, double radiusMm) {
        return new Path(
                pen,
                List.of(
                        new Move(xMm - radiusMm, yMm),
                        new Arc(radiusMm, radiusMm, true, xMm + radiusMm, yMm),
                        new Arc(radiusMm, radiusMm, true, xMm - radiusMm, yMm),
                        new Close()));
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.path(this);
    }
}
