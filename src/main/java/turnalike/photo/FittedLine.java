package turnalike.photo;

/** The straight line through points that passes nearest to them, y over x, by least squares, each counting alike. */
final class FittedLine {
    private int count;

    private double x;

    private double xx;

    private double y;

    private double xy;

    private double yy;

    void add(double alongX, double ofY) {
        count++;
        x += alongX;
        xx += alongX * alongX;
        y += ofY;
        xy += alongX * ofY;
        yy += ofY * ofY;
    }

    int count() {
        return count;
    }

    double slope() {
        return (xy - x / count * y) / spread();
    }

    double at(double place) {
        return y / count + slope() * (place - x / count);
    }

    /** What the points stray by from it, root mean square, in y. */
    double strays() {
        double slope = slope();
        return Math.sqrt(Math.max(0, yy - y / count * y - slope * slope * spread()) / count);
    }

    /** What its slope is uncertain by, one standard deviation, if each point strays by itself. */
    double slopeDoubt() {
        return strays() / Math.sqrt(spread());
    }

    private double spread() {
        return xx - x / count * x;
    }
}
