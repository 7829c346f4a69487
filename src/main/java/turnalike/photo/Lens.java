package turnalike.photo;

/**
 * How far a lens bends what is straight: a place at the distance r from the picture's middle would stand at r·(1 + a·ρ² + b·ρ⁴) without it, ρ
 * being r over half the picture's diagonal (the usual polynomial in even powers; common practice, no source). Both places are pixels.
 *
 * @param a of the second power; above 0 for a barrel
 * @param b of the fourth
 * @param middleX of the picture
 * @param middleY of the picture
 */
record Lens(double a, double b, double middleX, double middleY) {
    private static final int ROUNDS = 12;

    /** A lens that bends nothing. */
    static Lens none(int width, int height) {
        return new Lens(0, 0, width / 2.0, height / 2.0);
    }

    /** Where a place of the picture would stand without the bending. */
    PixelPoint straight(double x, double y) {
        double dx = x - middleX;
        double dy = y - middleY;
        double factor = factor(dx * dx + dy * dy);
        return new PixelPoint(middleX + dx * factor, middleY + dy * factor);
    }

    /** The other way: where the lens puts what would stand there without it. */
    PixelPoint bent(double x, double y) {
        if (a == 0 && b == 0) {
            return new PixelPoint(x, y);
        }
        double dx = x - middleX;
        double dy = y - middleY;
        double bentX = dx;
        double bentY = dy;
        // A lens bends by a few hundredths, so that each round brings two digits more.
        for (int round = 0; round < ROUNDS; round++) {
            double factor = factor(bentX * bentX + bentY * bentY);
            bentX = dx / factor;
            bentY = dy / factor;
        }
        return new PixelPoint(middleX + bentX, middleY + bentY);
    }

    private double factor(double squared) {
        double part = squared / (middleX * middleX + middleY * middleY);
        return Math.max(0.5, 1 + part * (a + part * b));
    }
}
