package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import turnalike.outline.Segment;
import turnalike.pattern.Member;
import turnalike.trace.fit.RandomRuns;

/**
 * Pictures of runs of members between two tenons, half of those chamfered, whose members are known: what is told of them can be counted. Wood,
 * ground, light, lens, turn and lean are drawn from a seed. All of it is invented. They are stouter than the other scenes' pieces and taken from as near,
 * so that more hides.
 */
final class MemberPhotoScenes {
    private static final String LIME =
            "pigment { wood turbulence 0.04 colour_map { [0 rgb <0.70,0.60,0.44>] [0.8 rgb <0.67,0.56,0.40>] [1 rgb"
                    + " <0.60,0.48,0.32>] } scale 6 rotate <3,89,4> } finish { ambient 0 diffuse 0.9 }";

    private static final String DENIM = "pigment { checker rgb <0.07,0.10,0.19> rgb <0.11,0.15,0.26> scale 0.9 }"
            + " normal { bumps 0.4 scale 14 } finish { ambient 0 diffuse 0.9 }";

    private static final String SHEETING = "pigment { granite scale 9 colour_map { [0 rgb <0.78,0.78,0.76>] [1 rgb"
            + " <0.68,0.68,0.67>] } } normal { bumps 0.5 scale 30 } finish { ambient 0 diffuse 0.9 }";

    private static final String NAVY = "pigment { rgb <0.05,0.07,0.16> } finish { ambient 0 diffuse 0.9 }";

    private static final String PLYWOOD =
            "pigment { wood turbulence 0.06 colour_map { [0 rgb <0.68,0.55,0.38>] [0.8 rgb <0.64,0.50,0.33>] [1 rgb"
                    + " <0.56,0.41,0.25>] } scale 18 rotate <2,86,1> translate <15,20,9> } finish { ambient 0 diffuse 0.85 }";

    private static final String OLD_OAK =
            "pigment { wood turbulence 0.09 colour_map { [0 rgb <0.30,0.19,0.10>] [0.8 rgb <0.25,0.15,0.08>] [1 rgb"
                    + " <0.17,0.10,0.05>] } scale 11 rotate <3,84,0> translate <70,9,3> } finish { ambient 0 diffuse 0.85 }";

    private static final List<Named> WOODS = List.of(
            new Named("oak", PhotoScene.OAK),
            new Named("maple", PhotoScene.MAPLE),
            new Named("walnut", FurtherPhotoScenes.WALNUT),
            new Named("ash", FurtherPhotoScenes.ASH),
            new Named("cherry", FurtherPhotoScenes.CHERRY),
            new Named("mahogany", SquarePhotoScenes.MAHOGANY),
            new Named("beech", SquarePhotoScenes.BEECH),
            new Named("lime", LIME));

    private static final List<Named> GROUNDS = List.of(
            new Named("card", PhotoScene.CARD),
            new Named("blue card", PhotoScene.BLUE_CARD),
            new Named("white card", FurtherPhotoScenes.WHITE_CARD),
            new Named("navy", NAVY),
            new Named("paper", SquarePhotoScenes.PAPER),
            new Named("concrete", SquarePhotoScenes.CONCRETE),
            new Named("cloth", PhotoScene.CLOTH),
            new Named("linen", PhotoScene.LINEN),
            new Named("green cloth", FurtherPhotoScenes.GREEN_CLOTH),
            new Named("grey cloth", FurtherPhotoScenes.GREY_CLOTH),
            new Named("felt", SquarePhotoScenes.FELT),
            new Named("denim", DENIM),
            new Named("sheeting", SHEETING),
            new Named("burnt out", PhotoScene.WHITE));

    private static final Named BLACK = new Named("black card", FurtherPhotoScenes.BLACK_CARD);

    private static final Named BENCH = new Named("bench", PhotoScene.BENCH);

    private static final Named PINE = new Named("pine", FurtherPhotoScenes.PINE);

    private MemberPhotoScenes() {}

    private record Named(String name, String texture) {}

    /**
     * A scene and the members that stand in it.
     *
     * @param scene to render
     * @param run its members
     */
    record Known(PhotoScene scene, List<Member> run) {}

    /** Those that were looked at while chamfered ends were mended and some limits were set. */
    static List<Known> set() {
        List<Known> all = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            all.add(drawn(601 + i, i % GROUNDS.size()));
        }
        all.add(on(641, WOODS.get(3), new Named("old oak", OLD_OAK), 8));
        all.add(on(642, WOODS.get(0), new Named("plywood", PLYWOOD), -12));
        all.add(on(643, WOODS.get(6), PINE, 4));
        all.add(on(644, WOODS.get(5), BENCH, -20));
        all.add(on(651, WOODS.get(3), BLACK, 14));
        all.add(on(652, WOODS.get(0), BLACK, -7));
        return all;
    }

    /** Those that were traced when that was done, and looked at when edges were weighed and corners made sharp. */
    static List<Known> further() {
        List<Known> all = new ArrayList<>();
        for (int i = 0; i < 22; i++) {
            all.add(drawn(701 + i, -1));
        }
        all.add(on(741, WOODS.get(7), BENCH, -9));
        all.add(on(742, WOODS.get(4), new Named("plywood", PLYWOOD), 17));
        all.add(on(743, WOODS.get(2), PINE, -3));
        all.add(on(744, WOODS.get(0), new Named("old oak", OLD_OAK), 25));
        all.add(on(751, WOODS.get(7), BLACK, -11));
        all.add(on(752, WOODS.get(6), BLACK, 6));
        return all;
    }

    /** Those that were traced when that was done too: light wood on black card, and wood on wood, among them. */
    static List<Known> heldOut() {
        List<Known> all = new ArrayList<>();
        for (int i = 0; i < 22; i++) {
            all.add(drawn(801 + i, -1));
        }
        all.add(on(841, WOODS.get(1), BENCH, 12));
        all.add(on(842, WOODS.get(6), new Named("plywood", PLYWOOD), -19));
        all.add(on(843, WOODS.get(5), PINE, 8));
        all.add(on(844, WOODS.get(4), new Named("old oak", OLD_OAK), -14));
        all.add(on(851, WOODS.get(4), BLACK, 10));
        all.add(on(852, WOODS.get(1), BLACK, -23));
        return all;
    }

    /** On a ground of that number, or on any. */
    private static Known drawn(long seed, int number) {
        SplittableRandom dice = new SplittableRandom(seed * 7919);
        Named wood = WOODS.get(dice.nextInt(WOODS.size()));
        Named ground = GROUNDS.get(number < 0 ? dice.nextInt(GROUNDS.size()) : number);
        boolean low = number < 0 && dice.nextInt(8) == 0;
        List<Member> run = new RandomRuns(seed).run(6 + dice.nextInt(4));
        TurnedShape shape = shape(run);
        double view = dice.nextInt(4) == 0 ? 33 : 50;
        double distance = distance(shape, 0.68 + 0.12 * dice.nextDouble(), view);
        double turn = Math.round(-35 + 70 * dice.nextDouble());
        double tilt = dice.nextInt(3) == 0 ? 0 : Math.round(10 * (-3 + 6 * dice.nextDouble())) / 10.0;
        double usual = 0.65 + 0.2 * dice.nextDouble();
        double light = ground.texture.equals(PhotoScene.WHITE) ? 0.65 : low ? 0.13 : usual;
        double noise = low ? 4 : 1 + 0.5 * dice.nextInt(2);
        String name = "%d, %s on %s%s".formatted(seed, wood.name, ground.name, low ? ", low light" : "");
        return known(name, run, shape, new double[] {distance, view, turn, tilt, light, noise}, ground, wood);
    }

    private static Known on(long seed, Named wood, Named ground, double turn) {
        List<Member> run = new RandomRuns(seed).run(8);
        TurnedShape shape = shape(run);
        double[] figures = {distance(shape, 0.7, 50), 50, turn, 0, 0.8, 1};
        return known("%d, %s on %s".formatted(seed, wood.name, ground.name), run, shape, figures, ground, wood);
    }

    /** From so far that a piece takes up a share of the picture's width. */
    private static double distance(TurnedShape shape, double share, double view) {
        return Math.round(shape.length() / share / (2 * Math.tan(Math.toRadians(view / 2))));
    }

    /** Figures: distance, view, turn, tilt, light, noise. */
    private static Known known(
            String name, List<Member> run, TurnedShape shape, double[] figures, Named ground, Named wood) {
        PhotoScene scene = new PhotoScene(
                name,
                shape,
                figures[0],
                figures[1],
                1200,
                900,
                figures[2],
                figures[3],
                ground.texture,
                wood.texture,
                figures[4],
                "",
                0,
                figures[5],
                0.6);
        return new Known(scene, run);
    }

    private static TurnedShape shape(List<Member> run) {
        List<double[]> points = new ArrayList<>();
        for (Segment segment : RandomRuns.outline(run).segments()) {
            double from = segment.start().mm();
            double length = segment.curve().length().mm();
            int steps = (int) Math.max(2, Math.min(120, Math.ceil(length / 0.3)));
            for (int i = 0; i <= steps; i++) {
                double at = length * (1 - Math.cos(Math.PI * i / steps)) / 2;
                points.add(new double[] {from + at, segment.curve().radiusMm(at)});
            }
        }
        return TurnedShape.of(points);
    }
}
