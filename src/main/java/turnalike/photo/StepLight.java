package turnalike.photo;

/**
 * How plainly light leaps at a place of a line: on the one side it runs straight, on the other it has another level. Light is linear, and both the leap
 * and how well it explains what is seen count, so that a shine or a slow shade, which fits no leap, is none.
 */
final class StepLight {
    /** Samples stand so far apart, in units of the reader's, and so many lie before and behind the leap. */
    static final double APART = 0.5;

    static final int BEFORE = 6;

    static final int BEHIND = 4;

    /** How soft a leap is; between the picture's pixels light is mixed, which softens it too. */
    private static final double SOFT = 0.7;

    private static final int COUNT = BEFORE + BEHIND + 1;

    /** A level, a slope and a leap, square to one another and of size 1. */
    private static final double[][] SHAPES = shapes();

    private StepLight() {}

    private static double[][] shapes() {
        double[][] shapes = new double[3][COUNT];
        for (int i = 0; i < COUNT; i++) {
            double x = (i - BEFORE) * APART;
            shapes[0][i] = 1;
            shapes[1][i] = x;
            shapes[2][i] = NormalShare.below(x / SOFT);
        }
        for (int k = 0; k < shapes.length; k++) {
            for (int other = 0; other < k; other++) {
                double shared = dot(shapes[k], shapes[other]);
                for (int i = 0; i < COUNT; i++) {
                    shapes[k][i] -= shared * shapes[other][i];
                }
            }
            double size = Math.sqrt(dot(shapes[k], shapes[k]));
            for (int i = 0; i < COUNT; i++) {
                shapes[k][i] /= size;
            }
        }
        return shapes;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    /**
     * Works out a leap's size and what a level and a slope leave of the light around it, at each sample that has enough beside it.
     *
     * @param light along the line, from the side that runs straight
     * @param leap where the sizes go; of the first {@link #BEFORE} samples and the last {@link #BEHIND} it stays as it is
     * @param left where the rest squared goes
     */
    static void read(double[] light, double[] leap, double[] left) {
        for (int t = BEFORE; t + BEHIND < light.length; t++) {
            double level = 0;
            double slope = 0;
            double step = 0;
            double squares = 0;
            for (int i = 0; i < COUNT; i++) {
                double value = light[t - BEFORE + i];
                level += SHAPES[0][i] * value;
                slope += SHAPES[1][i] * value;
                step += SHAPES[2][i] * value;
                squares += value * value;
            }
            leap[t] = step;
            left[t] = Math.max(step * step, squares - level * level - slope * slope);
        }
    }
}
