package turnalike.photo;

import java.util.Locale;

/**
 * A made picture of a spindle: what stands in it and how it is taken, written for POV-Ray. All of it is invented. The piece lies along x of the
 * scene with its middle at the origin, the ground below it, and the camera looks down on it.
 *
 * @param name what the table calls it
 * @param shape the truth
 * @param distance from the camera to the middle of the axis, mm
 * @param view the angle of view across the width, degrees
 * @param width pixels
 * @param height pixels
 * @param turn how the piece is turned in the picture, degrees
 * @param tilt how far its axis stands out of the picture plane, degrees
 * @param ground POV-Ray's words for the ground's texture
 * @param wood its words for the piece's
 * @param light how bright the lamps are
 * @param extra further objects
 * @param shift how far beside the picture's middle the piece lies, mm
 * @param noise of each pixel, standard deviation in codes of 255
 * @param blur of the lens, standard deviation in pixels
 */
record PhotoScene(
        String name,
        TurnedShape shape,
        double distance,
        double view,
        int width,
        int height,
        double turn,
        double tilt,
        String ground,
        String wood,
        double light,
        String extra,
        double shift,
        double noise,
        double blur)
        implements RenderedScene {
    static final String OAK =
            "pigment { wood turbulence 0.06 colour_map { [0 rgb <0.42,0.24,0.11>] [0.7 rgb <0.36,0.19,0.08>]"
                    + " [1 rgb <0.27,0.13,0.05>] } scale 3 rotate <3,88,7> } finish { ambient 0 diffuse 0.85 specular 0.15 roughness 0.05 }";

    static final String MAPLE =
            "pigment { wood turbulence 0.05 colour_map { [0 rgb <0.65,0.49,0.30>] [0.8 rgb <0.60,0.43,0.25>]"
                    + " [1 rgb <0.52,0.35,0.19>] } scale 5 rotate <2,91,5> } finish { ambient 0 diffuse 0.9 }";

    static final String CARD = "pigment { rgb <0.62,0.64,0.66> } finish { ambient 0 diffuse 0.9 }";

    static final String BLUE_CARD = "pigment { rgb <0.12,0.2,0.38> } finish { ambient 0 diffuse 0.9 }";

    static final String CLOTH = "pigment { checker rgb <0.16,0.2,0.24> rgb <0.2,0.25,0.29> scale 1.3 }"
            + " normal { bumps 0.5 scale 9 } finish { ambient 0 diffuse 0.9 }";

    static final String LINEN =
            "pigment { granite scale 14 colour_map { [0 rgb <0.66,0.64,0.58>] [1 rgb <0.5,0.48,0.44>] } }"
                    + " normal { bumps 0.4 scale 25 } finish { ambient 0 diffuse 0.9 }";

    static final String BENCH =
            "pigment { wood turbulence 0.08 colour_map { [0 rgb <0.46,0.29,0.15>] [0.8 rgb <0.40,0.24,0.12>]"
                    + " [1 rgb <0.3,0.17,0.08>] } scale 9 rotate <4,85,0> translate <40,11,7> } finish { ambient 0 diffuse 0.85 }";

    static final String WHITE = "pigment { rgb 1 } finish { ambient 0 diffuse 0 emission 1.6 }";

    PhotoScene with(int newWidth, int newHeight) {
        return new PhotoScene(
                name, shape, distance, view, newWidth, newHeight, turn, tilt, ground, wood, light, extra, shift, noise,
                blur);
    }

    static String f(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    @Override
    public String pov() {
        StringBuilder text = new StringBuilder("#version 3.7;\nglobal_settings { assumed_gamma 1.0 }\n");
        text.append(f(
                "camera { perspective location <0,%.6f,0> direction -y right x*%.8f up z*%.8f sky z angle %.8f }\n",
                distance, (double) width / height, 1.0, view));
        text.append(f(
                "light_source { <-500,1500,700> rgb %.4f area_light <260,0,0>,<0,0,260>,4,4 adaptive 0 jitter }\n",
                light));
        text.append(f("light_source { <700,1300,-400> rgb %.4f shadowless }\n", light * 0.35));
        text.append("background { rgb <0.3,0.3,0.3> }\n");
        text.append(f(
                "plane { y, %.4f texture { %s } }\n",
                -shape.widest() - Math.sin(Math.toRadians(Math.abs(tilt))) * shape.length() / 2 - 0.01, ground));
        text.append("union {\n").append(lathe()).append(extra).append('\n');
        // POV-Ray turns left-handed; z is up in the picture. The piece is turned in the picture last.
        text.append(f("rotate z*%.6f rotate y*%.6f translate z*%.4f }\n", tilt, -turn, shift));
        return text.toString();
    }

    /** Open cones, one a segment, and discs: POV-Ray finds its way among them far quicker than in one lathe. */
    String lathe() {
        StringBuilder parts = new StringBuilder("union {\n");
        double middle = shape.length() / 2;
        double[] x = shape.x();
        double[] r = shape.r();
        parts.append(disc(-middle, r[0], 0)).append(disc(middle, r[r.length - 1], 0));
        for (int i = 0; i + 1 < x.length; i++) {
            if (x[i + 1] - x[i] < 1e-9) {
                if (r[i] != r[i + 1]) {
                    parts.append(disc(x[i] - middle, Math.max(r[i], r[i + 1]), Math.min(r[i], r[i + 1])));
                }
            } else {
                parts.append(f(
                        "cone { <%.6f,0,0>,%.6f,<%.6f,0,0>,%.6f open }\n",
                        x[i] - middle, r[i], x[i + 1] - middle, r[i + 1]));
            }
        }
        return parts.append("texture { ").append(wood).append(" } }\n").toString();
    }

    private static String disc(double at, double outer, double inner) {
        return f("disc { <%.6f,0,0>, x, %.6f, %.6f }\n", at, outer, inner);
    }
}
