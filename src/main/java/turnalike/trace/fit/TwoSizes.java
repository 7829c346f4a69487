package turnalike.trace.fit;

/** The forms of two sizes, and the shares of all of them at once. */
final class TwoSizes {
    /** In the order in which their shares and sums stand. */
    static final Form[] FORMS = {
        Form.STRAIGHT, Form.HUMP, Form.LEVEL_AT_START, Form.LEVEL_AT_END, Form.S, Form.REVERSE_S, Form.POINT
    };

    /** Where the point stands among them. */
    static final int POINT = 6;

    private TwoSizes() {}

    /** Each form's share at u, as {@link Form#share} has it. */
    static void shares(double u, double[] share) {
        double rest = 1 - u;
        share[0] = u;
        share[1] = 2 * Math.sqrt(u * rest);
        share[2] = 1 - Math.sqrt(rest * (1 + u));
        share[3] = Math.sqrt(u * (1 + rest));
        share[4] = u < 0.5 ? 2 * u * u : 1 - 2 * rest * rest;
        share[5] = u < 0.5 ? 2 * u * rest : 1 - 2 * u * rest;
        share[6] = 1 - Math.abs(2 * u - 1);
    }
}
