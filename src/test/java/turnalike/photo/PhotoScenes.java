package turnalike.photo;

import java.util.ArrayList;
import java.util.List;

/** The pictures whose accuracy is measured: what a shop's photographs are like, from easy to hard. */
final class PhotoScenes {
    private PhotoScenes() {}

    static List<PhotoScene> all() {
        List<PhotoScene> scenes = new ArrayList<>();
        scenes.add(
                scene("plain", 1, PhotoScene.CARD, PhotoScene.OAK).turned(3, 0).made());
        scenes.add(scene("plain, slanting", 2, PhotoScene.BLUE_CARD, PhotoScene.MAPLE)
                .turned(31, 0)
                .made());
        scenes.add(scene("plain, tilted", 3, PhotoScene.CARD, PhotoScene.OAK)
                .turned(-4, 4)
                .made());
        scenes.add(scene("plain, thick and near", 4, PhotoScene.BLUE_CARD, PhotoScene.MAPLE)
                .sized(420, 48, 520)
                .made());
        scenes.add(scene("plain, standing", 5, PhotoScene.CARD, PhotoScene.OAK)
                .turned(-88, 0)
                .sized(430, 30, 800)
                .made());
        scenes.add(scene("plain, beside the middle", 6, PhotoScene.CARD, PhotoScene.OAK)
                .beside(120)
                .made());
        scenes.add(scene("cloth", 7, PhotoScene.CLOTH, PhotoScene.MAPLE)
                .turned(8, 0)
                .made());
        scenes.add(scene("cloth, light", 8, PhotoScene.LINEN, PhotoScene.OAK)
                .turned(-12, 1.5)
                .made());
        scenes.add(scene("low light", 9, PhotoScene.CARD, PhotoScene.OAK)
                .lit(0.12, 4)
                .made());
        scenes.add(scene("burnt-out ground", 10, PhotoScene.WHITE, PhotoScene.OAK)
                .turned(5, 0)
                .made());
        scenes.add(scene("clutter", 11, PhotoScene.CARD, PhotoScene.OAK)
                .extra(CLUTTER)
                .made());
        scenes.add(scene("wood on wood", 12, PhotoScene.BENCH, PhotoScene.OAK)
                .turned(-6, 0)
                .made());
        scenes.add(scene("light wood on wood", 13, PhotoScene.BENCH, PhotoScene.MAPLE)
                .turned(10, 0)
                .made());
        scenes.add(scene("lathe centres", 14, PhotoScene.CARD, PhotoScene.OAK)
                .extra(centres(600))
                .made());
        return scenes;
    }

    /** Shavings, a square bar and a ball beside the piece. */
    static final String CLUTTER = "box { <-180,-20,150>,<90,0,166> pigment { rgb <0.5,0.5,0.55> } rotate y*7 }"
            + " sphere { <200,-10,-130>, 22 pigment { rgb <0.5,0.1,0.1> } }"
            + " torus { 14, 2 translate <-150,-24,-120> pigment { rgb <0.7,0.55,0.35> } }"
            + " torus { 11, 2 rotate x*40 translate <-90,-20,-150> pigment { rgb <0.65,0.5,0.3> } }"
            + " cylinder { <20,-22,-170>,<120,-22,-150>, 6 pigment { rgb <0.1,0.1,0.1> } }";

    static String centres(double length) {
        double half = length / 2;
        return "union { cone { <%s,0,0>,3,<%s,0,0>,9 } cylinder { <%s,0,0>,<%s,0,0>,9 } cone { <%s,0,0>,3,<%s,0,0>,9 } cylinder { <%s,0,0>,<%s,0,0>,9 } pigment { rgb <0.45,0.46,0.48> } finish { specular 0.6 metallic } }"
                .formatted(-half, -half - 14, -half - 14, -half - 60, half, half + 14, half + 14, half + 60);
    }

    private static Maker scene(String name, long seed, String ground, String wood) {
        Maker maker = new Maker();
        maker.name = name;
        maker.seed = seed;
        maker.ground = ground;
        maker.wood = wood;
        return maker;
    }

    /** One scene in the making; what is not said is usual. */
    private static final class Maker {
        private String name = "";
        private long seed;
        private String ground = "";
        private String wood = "";
        private double turn;
        private double tilt;
        private double length = 600;
        private double thick = 28;
        private double distance = 850;
        private double light = 0.8;
        private double noise = 1;
        private double shift;
        private String extra = "";

        Maker turned(double inPlane, double outOfPlane) {
            turn = inPlane;
            tilt = outOfPlane;
            return this;
        }

        Maker sized(double newLength, double newThick, double newDistance) {
            length = newLength;
            thick = newThick;
            distance = newDistance;
            return this;
        }

        Maker lit(double newLight, double newNoise) {
            light = newLight;
            noise = newNoise;
            return this;
        }

        Maker beside(double newShift) {
            shift = newShift;
            return this;
        }

        Maker extra(String objects) {
            extra = objects;
            return this;
        }

        PhotoScene made() {
            return new PhotoScene(
                    name,
                    TurnedShape.random(seed, length, thick),
                    distance,
                    50,
                    1200,
                    900,
                    turn,
                    tilt,
                    ground,
                    wood,
                    light,
                    extra,
                    shift,
                    noise,
                    0.6);
        }
    }
}
