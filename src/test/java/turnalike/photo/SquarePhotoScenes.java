package turnalike.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * Pictures to ask for squares: long plain cylinders and hardly tapered posts, which must not be taken for squares, and true squares, which may be
 * found or passed over. All of it is invented.
 */
final class SquarePhotoScenes {
    static final String MAHOGANY =
            "pigment { wood turbulence 0.05 colour_map { [0 rgb <0.36,0.14,0.08>] [0.7 rgb <0.31,0.11,0.06>] [1 rgb"
                    + " <0.22,0.07,0.04>] } scale 3 rotate <4,87,3> } finish { ambient 0 diffuse 0.85 specular 0.3 roughness"
                    + " 0.02 }";

    static final String BEECH =
            "pigment { wood turbulence 0.03 colour_map { [0 rgb <0.60,0.41,0.26>] [0.8 rgb <0.56,0.37,0.23>] [1 rgb"
                    + " <0.47,0.29,0.17>] } scale 2 rotate <2,92,8> } finish { ambient 0 diffuse 0.9 }";

    static final String PAPER = "pigment { granite scale 30 colour_map { [0 rgb <0.47,0.36,0.24>] [1 rgb"
            + " <0.41,0.31,0.20>] } } finish { ambient 0 diffuse 0.9 }";

    static final String FELT = "pigment { granite scale 6 colour_map { [0 rgb <0.30,0.05,0.06>] [1 rgb"
            + " <0.22,0.035,0.04>] } } normal { bumps 0.3 scale 8 } finish { ambient 0 diffuse 0.9 }";

    static final String CONCRETE = "pigment { granite scale 40 colour_map { [0 rgb <0.50,0.50,0.48>] [1 rgb"
            + " <0.36,0.36,0.35>] } } normal { bumps 0.2 scale 6 } finish { ambient 0 diffuse 0.9 }";

    private SquarePhotoScenes() {}

    /**
     * A scene and where its squares are.
     *
     * @param scene to render
     * @param squares pairs of places, mm
     */
    record Asked(PhotoScene scene, List<double[]> squares) {}

    static List<Asked> all() {
        return List.of(
                round("post, oak on card", 501, PhotoScene.CARD, PhotoScene.OAK, new double[] {4, 0, 0.8, 1}),
                round(
                        "post, cherry on grey cloth",
                        502,
                        FurtherPhotoScenes.GREY_CLOTH,
                        FurtherPhotoScenes.CHERRY,
                        new double[] {-11, 1, 0.8, 1.5}),
                round("post, mahogany on paper", 503, PAPER, MAHOGANY, new double[] {7, -2, 0.8, 1}),
                round("post, beech on blue card", 504, PhotoScene.BLUE_CARD, BEECH, new double[] {-3, 3, 0.8, 1}),
                round("post, maple on felt", 505, FELT, PhotoScene.MAPLE, new double[] {15, 0, 0.8, 1}),
                round("post, ash on concrete", 506, CONCRETE, FurtherPhotoScenes.ASH, new double[] {-22, -1, 0.7, 1}),
                round("post, walnut on linen", 507, PhotoScene.LINEN, FurtherPhotoScenes.WALNUT, new double[] {
                    2, 2, 0.8, 1
                }),
                round("post, beech on green cloth", 508, FurtherPhotoScenes.GREEN_CLOTH, BEECH, new double[] {
                    9, -3, 0.7, 1.5
                }),
                round("post, mahogany in low light", 509, PhotoScene.CARD, MAHOGANY, new double[] {-5, 0, 0.13, 4}),
                round("post, cherry burnt out", 510, PhotoScene.WHITE, FurtherPhotoScenes.CHERRY, new double[] {
                    3, 0, 0.6, 1
                }),
                round("post, oak on felt", 511, FELT, PhotoScene.OAK, new double[] {-14, 4, 0.8, 1}),
                round("post, walnut on concrete", 512, CONCRETE, FurtherPhotoScenes.WALNUT, new double[] {6, 0, 0.8, 1
                }),
                square("square, oak on card", 521, PhotoScene.CARD, PhotoScene.OAK, new double[] {3, 0, 0.8, 1}, 0),
                square(
                        "square, beech on blue card",
                        522,
                        PhotoScene.BLUE_CARD,
                        BEECH,
                        new double[] {-6, 1, 0.8, 1},
                        25),
                square(
                        "square, cherry on grey cloth",
                        523,
                        FurtherPhotoScenes.GREY_CLOTH,
                        FurtherPhotoScenes.CHERRY,
                        new double[] {8, 0, 0.8, 1.5},
                        40),
                square("square, mahogany on paper", 524, PAPER, MAHOGANY, new double[] {-4, -1, 0.8, 1}, 15),
                square("square, maple on felt", 525, FELT, PhotoScene.MAPLE, new double[] {5, 0, 0.8, 1}, 0),
                // Held out: hardly turned, seen over the arris, and leaning.
                square(
                        "square, walnut on linen, hardly turned",
                        531,
                        PhotoScene.LINEN,
                        FurtherPhotoScenes.WALNUT,
                        new double[] {-7, 0, 0.8, 1},
                        -7),
                square(
                        "square, ash on green cloth, over its arris",
                        532,
                        FurtherPhotoScenes.GREEN_CLOTH,
                        FurtherPhotoScenes.ASH,
                        new double[] {4, 0, 0.8, 1},
                        45),
                square("square, beech on concrete, leaning", 533, CONCRETE, BEECH, new double[] {10, 3, 0.8, 1}, -30));
    }

    /** Figures: turn, tilt, light, noise. */
    private static Asked round(String name, long seed, String ground, String wood, double[] figures) {
        return new Asked(scene(name, TurnedShape.post(seed, 620, 28), ground, wood, figures, ""), List.of());
    }

    /** The same with squares at both ends, turned so about the axis. */
    private static Asked square(String name, long seed, String ground, String wood, double[] figures, double turned) {
        double side = 44;
        List<double[]> squares = List.of(new double[] {0, 95}, new double[] {505, 620});
        TurnedShape shape = TurnedShape.betweenSquares(seed, 620, 26, side / 2, squares);
        StringBuilder boxes = new StringBuilder();
        for (double[] each : squares) {
            boxes.append(PhotoScene.f(
                    "box { <%.3f,%.3f,%.3f>,<%.3f,%.3f,%.3f> rotate x*%.3f texture { %s } }\n",
                    each[0] - 310, -side / 2, -side / 2, each[1] - 310, side / 2, side / 2, turned, wood));
        }

        return new Asked(scene(name, shape, ground, wood, figures, boxes.toString()), new ArrayList<>(squares));
    }

    private static PhotoScene scene(
            String name, TurnedShape shape, String ground, String wood, double[] figures, String extra) {
        return new PhotoScene(
                name,
                shape,
                850,
                50,
                1200,
                900,
                figures[0],
                figures[1],
                ground,
                wood,
                figures[2],
                extra,
                0,
                figures[3],
                0.6);
    }
}
