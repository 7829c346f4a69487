package turnalike.drawing.svg;

/** A rectangle of paper, its edges in millimetres of the picture; top is above bottom, so its figure is the smaller. */
public record Box(double left, double top, double right, double bottom) {
    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    public boolean holds(Box other) {
        return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
    }

    public Box grown(double mm) {
        return new Box(left - mm, top - mm, right + mm, bottom + mm);
    }

    /** Round the capitals and figures of a line. */
    public static Box of(TextLine words) {
        double width = words.widthMm();
        double back =
                switch (words.anchor()) {
                    case START -> 0;
                    case MIDDLE -> width / 2;
                    case END -> width;
                };
        double cap = words.lettering().capHeightMm();
        double x = words.xMm();
        double y = words.yMm();
        return words.upright()
                ? new Box(x - cap, y - width + back, x, y + back)
                : new Box(x - back, y - cap, x - back + width, y);
    }

    /** A straight stroke. */
    public record Stroke(double x1, double y1, double x2, double y2) {
        /** Whether any of it lies in the rectangle: what is left of it after each edge has cut its outside off (Liang and Barsky; from memory). */
        public boolean crosses(Box box) {
            double[] kept = {0, 1};
            return cut(kept, x1 - x2, x1 - box.left())
                    && cut(kept, x2 - x1, box.right() - x1)
                    && cut(kept, y1 - y2, y1 - box.top())
                    && cut(kept, y2 - y1, box.bottom() - y1);
        }

        private static boolean cut(double[] kept, double towards, double distance) {
            if (towards == 0) {
                return distance >= 0;
            }
            double at = distance / towards;
            if (towards < 0) {
                kept[0] = Math.max(kept[0], at);
            } else {
                kept[1] = Math.min(kept[1], at);
            }
            return kept[0] <= kept[1];
        }
    }
}
