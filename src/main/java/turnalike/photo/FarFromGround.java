package turnalike.photo;

/**
 * How far the pixels of one row after the other are from the ground. In a few loops along the row, each of one kind of reckoning: the compiler then takes
 * several divisions at once, and several roots.
 */
final class FarFromGround {
    /** How much brighter than itself the ground may be where only the hue is asked. */
    private static final double SHINE = 1.6;

    /** By roots of light: darker than a sixth of the ground's light is hardly a soft shadow. */
    private static final double DEEPEST_SHADOW = 0.4;

    /** Where only the hue is asked, anything but black may be shadow. */
    private static final double BLACK = 0.12;

    /** So much less of the ground's light is as far from it as it strays itself. */
    private static final double SHADE = 0.2;

    private final float[][] planes;

    private final double[] places;

    /** One over what each colour strays by, squared. */
    private final double[] scale = new double[3];

    private final double[] products;

    private final double[] sizes;

    private final double[] hue;

    private final double[] light;

    /** How much light is missing. */
    private final double[] missing;

    /**
     * For one thread.
     *
     * @param picture the picture
     * @param places where each column stands, from the middle, in widths
     * @param spread how far each colour of the ground strays
     */
    FarFromGround(CoarsePicture picture, double[] places, double[] spread) {
        planes = picture.planes();
        this.places = places;
        for (int c = 0; c < 3; c++) {
            scale[c] = 1 / (spread[c] * spread[c]);
        }
        products = new double[places.length];
        sizes = new double[places.length];
        hue = new double[places.length];
        light = new double[places.length];
        missing = new double[places.length];
    }

    /**
     * Does a row.
     *
     * @param y which
     * @param surface the ground along it, by the power of the place, of each colour
     * @param byHue of all rows, where darkness alone counts for nothing
     * @param byLight likewise, where it counts
     */
    void row(int y, double[][] surface, float[] byHue, float[] byLight) {
        int first = y * places.length;
        onGround(first, surface);
        divide(products, sizes, products);
        off(first, surface);
        for (int x = 0; x < missing.length; x++) {
            missing[x] = missing[x] / SHADE;
        }
        for (int x = 0; x < missing.length; x++) {
            light[x] = light[x] + missing[x] * missing[x];
        }
        root(hue);
        root(light);
        for (int x = 0; x < hue.length; x++) {
            byHue[first + x] = (float) hue[x];
            byLight[first + x] = (float) light[x];
        }
    }

    private static void divide(double[] one, double[] other, double[] to) {
        for (int x = 0; x < to.length; x++) {
            to[x] = one[x] / other[x];
        }
    }

    private static void root(double[] squares) {
        for (int x = 0; x < squares.length; x++) {
            squares[x] = Math.sqrt(squares[x]);
        }
    }

    private static double at(double[] row, double x) {
        return row[0] + x * (row[1] + x * row[2]);
    }

    /** What each pixel has of the ground's colour, and the ground's own size. */
    private void onGround(int first, double[][] surface) {
        for (int x = 0; x < places.length; x++) {
            double right = places[x];
            double red = at(surface[0], right);
            double green = at(surface[1], right);
            double blue = at(surface[2], right);
            double redWeighed = scale[0] * red;
            double greenWeighed = scale[1] * green;
            double blueWeighed = scale[2] * blue;
            products[x] = redWeighed * planes[0][first + x]
                    + greenWeighed * planes[1][first + x]
                    + blueWeighed * planes[2][first + x];
            sizes[x] = redWeighed * red + greenWeighed * green + blueWeighed * blue;
        }
    }

    /** How far each pixel is off squared, by hue and by light without what is missing of that. */
    private void off(int first, double[][] surface) {
        for (int x = 0; x < places.length; x++) {
            double right = places[x];
            double[] share = products;
            double ofHue = sizes[x] > 0 ? Math.max(BLACK, Math.min(SHINE, share[x])) : 1;
            double ofLight = sizes[x] > 0 ? Math.max(DEEPEST_SHADOW, Math.min(1, share[x])) : 1;
            double red = at(surface[0], right);
            double green = at(surface[1], right);
            double blue = at(surface[2], right);
            hue[x] = squared(first + x, ofHue * red, ofHue * green, ofHue * blue);
            light[x] = squared(first + x, ofLight * red, ofLight * green, ofLight * blue);
            missing[x] = 1 - ofLight;
        }
    }

    private double squared(int pixel, double red, double green, double blue) {
        double redOff = planes[0][pixel] - red;
        double greenOff = planes[1][pixel] - green;
        double blueOff = planes[2][pixel] - blue;
        return redOff * redOff * scale[0] + greenOff * greenOff * scale[1] + blueOff * blueOff * scale[2];
    }
}
