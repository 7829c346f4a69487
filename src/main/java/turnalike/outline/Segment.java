package turnalike.outline;

import turnalike.units.Length;

/**
 * A curve in its place on the piece.
 *
 * @param start where the curve begins, from the piece's datum end
 * @param curve its shape
 * @param section round, or square with the curve's radius as half the side
 */
public record Segment(Length start, Curve curve, Section section) {
    /** {@return where the curve ends, from the piece's datum end} */
    public Length end() {
        return start.plus(curve.length());
    }

    /**
     * ∫ xᵏ rᵖ dx with x measured from {@code originMm} instead of the curve's start; k is 0, 1 or 2.
     *
     * @param originMm where x is 0, in millimetres from the piece's datum end
     * @param xPower k, else {@link IllegalArgumentException}
     * @param rPower p: 0 to 4
     * @return the integral in mm to the power k + p + 1
     */
    public double integralAbout(double originMm, int xPower, int rPower) {
        double shift = start.mm() - originMm;
        return switch (xPower) {
            case 0 -> curve.integral(0, rPower);
            case 1 -> curve.integral(1, rPower) + shift * curve.integral(0, rPower);
            case 2 ->
                curve.integral(2, rPower)
                        + 2 * shift * curve.integral(1, rPower)
                        + shift * shift * curve.integral(0, rPower);
            default -> throw new IllegalArgumentException("power of x must be 0 to 2, was %d".formatted(xPower));
        };
    }
}
