package turnalike.photo;

/** Codes of 255 and linear light from 0 to 1, both as numbers with a fraction, from memory of IEC 61966-2-1 (sRGB); by tables. */
final class Gamma {
    private static final int STEPS = 2048;

    /** Codes by the root of light, along which the curve is almost straight, and how they change with the light there. */
    private static final double[] CODE = new double[STEPS + 2];

    private static final double[] SLOPE = new double[STEPS + 2];

    private static final double[] LIGHT = new double[257];

    static {
        for (int i = 0; i < CODE.length; i++) {
            double light = (double) i / STEPS * i / STEPS;
            boolean dark = light <= 0.0031308;
            CODE[i] = 255 * (dark ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055);
            SLOPE[i] = 255 * (dark ? 12.92 : 1.055 / 2.4 * Math.pow(light, 1 / 2.4 - 1));
        }
        for (int i = 0; i < LIGHT.length; i++) {
            double value = i / 255.0;
            LIGHT[i] = value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
        }
    }

    private Gamma() {}

    /** Where light stands in the tables: what {@link #codeAt} and {@link #slopeAt} take. Light beyond full stands where full does. */
    static double at(double light) {
        // Hardly ever beyond either end: comparing is quicker than taking the greater.
        return light <= 0 ? 0 : light >= 1 ? STEPS : STEPS * Math.sqrt(light);
    }

    /** Puts in place of some lights, none of them negative, where they stand; in one loop, in which the compiler takes several roots at once. */
    static void at(double[] lights, int from, int end) {
        for (int i = from; i < end; i++) {
            lights[i] = STEPS * Math.sqrt(Math.min(1, lights[i]));
        }
    }

    static double codeAt(double at) {
        int i = (int) at;
        return CODE[i] + (at - i) * (CODE[i + 1] - CODE[i]);
    }

    /** How the code changes with the light; at full and beyond it hardly does. */
    static double slopeAt(double at) {
        return at >= STEPS ? 1 : SLOPE[(int) (at + 0.5)];
    }

    /** Light beyond full is written as full. */
    static double code(double light) {
        return codeAt(at(light));
    }

    static double linear(double code) {
        double at = Math.max(0, Math.min(255, code));
        int i = (int) at;
        return LIGHT[i] + (at - i) * (LIGHT[i + 1] - LIGHT[i]);
    }
}
