package turnalike.outline;

/**
 * The shape across the axis. For a square section the outline's radius is half the side.
 *
 * <p>Each factor multiplies a power of that radius r: a square of side s = 2r has area s², second moment s⁴/12 about an axis through
 * its middle, and twice that about the long axis (any handbook of mechanics; derived here by integration).
 */
public enum Section {
    /** A circle of radius r: area πr², second moment πr⁴/4 about an axis across the piece. */
    ROUND(Math.PI, Math.PI / 4, 9.0 / 10),

    /** A square of side 2r: area 4r², second moment 4r⁴/3 about an axis across the piece. */
    SQUARE(4, 16.0 / 12, 5.0 / 6);

    private final double areaFactor;
    private final double secondMomentFactor;
    private final double shearFactor;

    Section(double areaFactor, double secondMomentFactor, double shearFactor) {
        this.areaFactor = areaFactor;
        this.secondMomentFactor = secondMomentFactor;
        this.shearFactor = shearFactor;
    }

    /** {@return area over r²} */
    public double areaFactor() {
        return areaFactor;
    }

    /** {@return second moment of area about an axis across the piece, over r⁴} About the long axis it is twice this. */
    public double secondMomentFactor() {
        return secondMomentFactor;
    }

    /**
     * {@return the part of the area that shear counts with when the piece is bent: 9/10 of a round, 5/6 of a square}
     *
     * <p>From the work of the shear stress VQ/Ib, the area over (A²/I²)∫Q²/b² dA: derived here by integration. Finer theories give a round
     * 6/7 to 0.89 by the wood's cross contraction (G. R. Cowper, J. Appl. Mech. 33 (1966) 335; from memory), which changes no figure by more
     * than a hundredth where shear counts a fifth.
     */
    public double shearFactor() {
        return shearFactor;
    }

    /** {@return how far the section's farthest point stands from the axis, over r: √2 for a square's arris} */
    public double reachFactor() {
        return this == ROUND ? 1 : Math.sqrt(2);
    }
}
