package turnalike.outline;

/**
 * The shape across the axis. For a square section the outline's radius is half the side.
 *
 * <p>Each factor multiplies a power of that radius r: a square of side s = 2r has area s², second moment s⁴/12 about an axis through
 * its middle, and twice that about the long axis (any handbook of mechanics; derived here by integration).
 */
public enum Section {
    /** A circle of radius r: area πr², second moment πr⁴/4 about an axis across the piece. */
    ROUND(Math.PI, Math.PI / 4),

    /** A square of side 2r: area 4r², second moment 4r⁴/3 about an axis across the piece. */
    SQUARE(4, 16.0 / 12);

    private final double areaFactor;
    private final double secondMomentFactor;

    Section(double areaFactor, double secondMomentFactor) {
        this.areaFactor = areaFactor;
        this.secondMomentFactor = secondMomentFactor;
    }

    /** {@return area over r²} */
    public double areaFactor() {
        return areaFactor;
    }

    /** {@return second moment of area about an axis across the piece, over r⁴} About the long axis it is twice this. */
    public double secondMomentFactor() {
        return secondMomentFactor;
    }

    /** {@return how far the section's farthest point stands from the axis, over r: √2 for a square's arris} */
    public double reachFactor() {
        return this == ROUND ? 1 : Math.sqrt(2);
    }
}
