package turnalike.photo;

/** A straight line through what lies off an axis along it, by least squares; the farther off something is, the less it counts, as a shadow on one side does. */
final class StraightLine {
    /** Off by so much, in coarse pixels, a place counts half. */
    private static final double HALF = 2;

    private final double[][] rows = new double[2][3];

    void add(double place, double off) {
        double weight = 1 / (1 + off * off / (HALF * HALF));
        rows[0][0] += weight;
        rows[0][1] += weight * place;
        rows[1][1] += weight * place * place;
        rows[0][2] += weight * off;
        rows[1][2] += weight * off * place;
    }

    /** How far off it is at place 0, and its slope. */
    double[] solved() {
        double[][] both = {rows[0].clone(), rows[1].clone()};
        both[1][0] = both[0][1];
        return LeastSquares.solve(both);
    }
}
