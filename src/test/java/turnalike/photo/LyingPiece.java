package turnalike.photo;

/**
 * How an invented piece lies on a flat top, worked out once more and otherwise than the program does: of all pairs of places on either side of its
 * middle of mass, the two whose chord stands highest there.
 *
 * @param place of one resting place, mm from the start
 * @param radius there
 * @param slope of the chord
 */
record LyingPiece(double place, double radius, double slope) {
    static LyingPiece of(TurnedShape shape) {
        int count = 600;
        double step = shape.length() / count;
        double mass = 0;
        double moment = 0;
        double[] radius = new double[count + 1];
        for (int k = 0; k <= count; k++) {
            radius[k] = shape.at(k * step);
            mass += radius[k] * radius[k];
            moment += radius[k] * radius[k] * k * step;
        }
        double middle = moment / mass;
        LyingPiece best = new LyingPiece(0, 0, 0);
        double highest = -1;
        for (int i = 0; i * step <= middle; i++) {
            for (int j = count; j * step > middle; j--) {
                double slope = (radius[j] - radius[i]) / ((j - i) * step);
                double high = radius[i] + slope * (middle - i * step);
                if (high > highest) {
                    highest = high;
                    best = new LyingPiece(i * step, radius[i], slope);
                }
            }
        }
        return best;
    }
}
