package turnalike.photo;

import java.util.List;

/** Pictures for the stated uncertainty alone: it was set by others, and these were looked at once, when it was done. All of it is invented. */
final class UnseenPhotoScenes {
    private UnseenPhotoScenes() {}

    static List<PhotoScene> all() {
        return List.of(
                scene("unseen oak card", 401, PhotoScene.CARD, PhotoScene.OAK, new double[] {-7, 1, 580, 27, 840, 0.8, 1
                }),
                scene("unseen maple blue card", 402, PhotoScene.BLUE_CARD, PhotoScene.MAPLE, new double[] {
                    18, -1, 600, 25, 900, 0.7, 1
                }),
                scene("unseen maple cloth", 403, PhotoScene.CLOTH, PhotoScene.MAPLE, new double[] {
                    -5, 0, 560, 28, 820, 0.8, 1.5
                }),
                scene("unseen oak linen", 404, PhotoScene.LINEN, PhotoScene.OAK, new double[] {
                    9, 2, 600, 28, 860, 0.75, 1
                }),
                scene("unseen low light", 405, PhotoScene.CARD, PhotoScene.OAK, new double[] {
                    -3, -2, 600, 28, 850, 0.14, 4
                }),
                scene("unseen near", 406, PhotoScene.CARD, PhotoScene.OAK, new double[] {5, 0, 400, 45, 520, 0.8, 1}));
    }

    /** Figures: turn, tilt, length, thickest radius, distance, light, noise. */
    private static PhotoScene scene(String name, long seed, String ground, String wood, double[] figures) {
        return new PhotoScene(
                name,
                TurnedShape.random(seed, figures[2], figures[3]),
                figures[4],
                50,
                1200,
                900,
                figures[0],
                figures[1],
                ground,
                wood,
                figures[5],
                "",
                0,
                figures[6],
                0.6);
    }
}
