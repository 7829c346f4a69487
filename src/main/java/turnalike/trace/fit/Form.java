package turnalike.trace.fit;

/**
 * A form that a stretch of outline may have. Its radii are linear in its sizes once its ends are known, so that the sizes of best fit are a
 * linear least-squares problem. With u the share of the way from its start to its end and s(u) the form's own share, a form of two sizes is
 * r = p₀(1 − s) + p₁s; the formulas are those of the members' records, and a test holds them to these.
 */
enum Form {
    /** One radius: a cylinder, fillet, groove, tenon or square. */
    LEVEL(1, 0, 0),
    /** A taper. */
    STRAIGHT(2, 0, 1),
    /** The quadratic through three radii, a swell. */
    BELLY(3, 1, 2),
    /** Half an ellipse, up or down: a bead or a cove. */
    HUMP(2, 0, 0),
    /** A quarter ellipse, level where it starts: a half bead that falls, a half cove that rises. */
    LEVEL_AT_START(2, 1, 1),
    /** A quarter ellipse, level where it ends: a half bead that rises, a half cove that falls. */
    LEVEL_AT_END(2, 1, 1),
    /** An ogee. */
    S(2, 1.5, 1),
    /** A reverse ogee. */
    REVERSE_S(2, 2, 1),
    /** A vee. */
    POINT(2, 1, 0);

    private static final double LONG_BEAD = 2;
    private static final double ODD = 4;

    private final int sizes;
    private final double rarity;
    private final int endSize;

    Form(int sizes, double rarity, int endSize) {
        this.sizes = sizes;
        this.rarity = rarity;
        this.endSize = endSize;
    }

    /** How many radii give it. */
    int sizes() {
        return sizes;
    }

    /**
     * What is added to its cost, of one so long that rises so much on a piece so thick, so that of forms that explain alike the plainer is told; a
     * choice of ours, below one size's cost. What is short and bulges is a bead, and what is long a swell, and neither a bead nor a cove is more than
     * half a circle: what is deeper is cut as a vee (common practice, no source). One that is not so is told only where the stations say so.
     */
    double rarity(double lengthMm, double thickMm, double riseMm) {
        boolean tall = 2 * Math.abs(riseMm) > lengthMm;
        boolean odd =
                (this == HUMP && (tall || lengthMm > LONG_BEAD * thickMm)) || (this == BELLY && lengthMm < thickMm);
        return odd ? rarity + ODD : rarity;
    }

    /** Which of its sizes is the radius where it ends; where it starts that is always the first. */
    int endSize() {
        return endSize;
    }

    /** Whether it stands upright where it starts. */
    boolean steepAtStart() {
        return this == HUMP || this == LEVEL_AT_END;
    }

    /** Whether it stands upright where it ends. */
    boolean steepAtEnd() {
        return this == HUMP || this == LEVEL_AT_START;
    }

    /** The share s(u) of a form of two sizes. */
    double share(double u) {
        return switch (this) {
            case LEVEL -> 0;
            case STRAIGHT, BELLY -> u;
            case HUMP -> 2 * Math.sqrt(Math.max(0, u * (1 - u)));
            case LEVEL_AT_START -> 1 - Math.sqrt(Math.max(0, 1 - u * u));
            case LEVEL_AT_END -> Math.sqrt(Math.max(0, u * (2 - u)));
            case S -> u < 0.5 ? 2 * u * u : 1 - 2 * (1 - u) * (1 - u);
            case REVERSE_S -> u < 0.5 ? 2 * u * (1 - u) : 0.5 + 0.5 * (2 * u - 1) * (2 * u - 1);
            case POINT -> 1 - Math.abs(2 * u - 1);
        };
    }

    /** What each size counts with in the radius at u; {@code out} has room for three. */
    void weights(double u, double[] out) {
        if (this == LEVEL) {
            out[0] = 1;
        } else if (this == BELLY) {
            out[0] = (1 - u) * (1 - 2 * u);
            out[1] = 4 * u * (1 - u);
            out[2] = u * (2 * u - 1);
        } else {
            double s = share(u);
            out[0] = 1 - s;
            out[1] = s;
        }
    }
}
