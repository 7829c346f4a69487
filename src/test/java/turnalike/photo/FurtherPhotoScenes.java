package turnalike.photo;

import java.util.List;

/**
 * Pictures of other woods, grounds and poses than {@link PhotoScenes}. All of it is invented. They were looked at while the finding of the
 * piece was mended and some limits were set: further pictures, not unseen ones.
 */
final class FurtherPhotoScenes {
    static final String WALNUT =
            "pigment { wood turbulence 0.07 colour_map { [0 rgb <0.20,0.12,0.07>] [0.7 rgb <0.16,0.09,0.05>] [1 "
                    + "rgb <0.10,0.055,0.03>] } scale 4 rotate <5,86,2> } finish { ambient 0 diffuse 0.85 specular 0.25 "
                    + "roughness 0.03 }";

    static final String ASH =
            "pigment { wood turbulence 0.04 colour_map { [0 rgb <0.72,0.58,0.40>] [0.8 rgb <0.66,0.52,0.34>] [1 "
                    + "rgb <0.54,0.40,0.24>] } scale 2.5 rotate <1,88,9> } finish { ambient 0 diffuse 0.85 }";

    static final String CHERRY =
            "pigment { wood turbulence 0.06 colour_map { [0 rgb <0.52,0.27,0.15>] [0.8 rgb <0.47,0.23,0.12>] [1 "
                    + "rgb <0.38,0.17,0.09>] } scale 4 rotate <2,93,5> } finish { ambient 0 diffuse 0.85 specular 0.1 "
                    + "roughness 0.06 }";

    static final String GREEN_CLOTH =
            "pigment { checker rgb <0.08,0.17,0.10> rgb <0.10,0.20,0.12> scale 1.6 } normal { bumps 0.5 scale 11 "
                    + "} finish { ambient 0 diffuse 0.9 }";

    static final String GREY_CLOTH =
            "pigment { granite scale 10 colour_map { [0 rgb <0.33,0.33,0.33>] [1 rgb <0.25,0.25,0.26>] } } "
                    + "normal { bumps 0.4 scale 20 } finish { ambient 0 diffuse 0.9 }";

    static final String BLACK_CARD = "pigment { rgb <0.03,0.03,0.035> } finish { ambient 0 diffuse 0.9 }";

    static final String WHITE_CARD = "pigment { rgb <0.85,0.86,0.86> } finish { ambient 0 diffuse 0.9 }";

    static final String PINE =
            "pigment { wood turbulence 0.05 colour_map { [0 rgb <0.70,0.52,0.30>] [0.8 rgb <0.66,0.47,0.26>] [1 "
                    + "rgb <0.5,0.32,0.15>] } scale 14 rotate <3,84,0> translate <30,8,4> } finish { ambient 0 diffuse "
                    + "0.85 }";

    private FurtherPhotoScenes() {}

    static List<PhotoScene> all() {
        return List.of(
                scene("walnut white card", 101, WHITE_CARD, WALNUT, new double[] {7, 0, 600, 26, 850, 0.8, 1}, "", 50),
                scene(
                        "ash blue card",
                        102,
                        PhotoScene.BLUE_CARD,
                        ASH,
                        new double[] {-20, 2, 600, 28, 850, 0.8, 1},
                        "",
                        50),
                scene(
                        "cherry grey cloth",
                        103,
                        GREY_CLOTH,
                        CHERRY,
                        new double[] {14, -2, 600, 28, 850, 0.8, 1.5},
                        "",
                        50),
                scene("ash green cloth", 104, GREEN_CLOTH, ASH, new double[] {-9, 0, 600, 27, 850, 0.7, 1.5}, "", 50),
                scene(
                        "maple black card",
                        105,
                        BLACK_CARD,
                        PhotoScene.MAPLE,
                        new double[] {3, 0, 550, 30, 800, 0.8, 1},
                        "",
                        50),
                scene(
                        "cherry near thick",
                        106,
                        PhotoScene.CARD,
                        CHERRY,
                        new double[] {-5, 0, 380, 50, 480, 0.8, 1},
                        "",
                        50),
                scene(
                        "cherry low light",
                        107,
                        PhotoScene.BLUE_CARD,
                        CHERRY,
                        new double[] {6, 1, 600, 28, 850, 0.12, 4},
                        "",
                        50),
                scene("ash burnt", 108, PhotoScene.WHITE, ASH, new double[] {-6, 0, 600, 28, 850, 0.6, 1}, "", 50),
                scene(
                        "cherry centres",
                        109,
                        PhotoScene.CARD,
                        CHERRY,
                        new double[] {2, 0, 600, 28, 850, 0.8, 1},
                        PhotoScenes.centres(600),
                        50),
                scene(
                        "maple clutter",
                        110,
                        PhotoScene.BLUE_CARD,
                        PhotoScene.MAPLE,
                        new double[] {0, 0, 600, 28, 850, 0.8, 1},
                        PhotoScenes.CLUTTER,
                        50),
                scene("cherry on pine", 111, PINE, CHERRY, new double[] {-12, 0, 600, 28, 850, 0.8, 1}, "", 50),
                scene(
                        "walnut on bench",
                        112,
                        PhotoScene.BENCH,
                        WALNUT,
                        new double[] {15, 0, 600, 28, 850, 0.8, 1},
                        "",
                        50),
                scene(
                        "walnut green cloth",
                        113,
                        GREEN_CLOTH,
                        WALNUT,
                        new double[] {10, 0, 600, 27, 850, 0.8, 1},
                        "",
                        50),
                scene(
                        "oak card far",
                        114,
                        PhotoScene.CARD,
                        PhotoScene.OAK,
                        new double[] {-33, 0, 700, 26, 1500, 0.8, 1},
                        "",
                        33));
    }

    /** Figures: turn, tilt, length, thickest radius, distance, light, noise. */
    private static PhotoScene scene(
            String name, long seed, String ground, String wood, double[] figures, String extra, double view) {
        return new PhotoScene(
                name,
                TurnedShape.random(seed, figures[2], figures[3]),
                figures[4],
                view,
                1200,
                900,
                figures[0],
                figures[1],
                ground,
                wood,
                figures[5],
                extra,
                0,
                figures[6],
                0.6);
    }
}
