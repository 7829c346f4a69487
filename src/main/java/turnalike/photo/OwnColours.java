package turnalike.photo;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What may be the piece where the picture shows many things: whatever differs all round from what it touches, one way or another in hue and light, and
 * is slender, whole in the picture and alike on both sides of a line. A piece between a lathe's centres is, and one that stands before a wall with its
 * foot on the floor.
 */
final class OwnColours {
    /** An edge all round: so many of its pixels, as a share, may lie at a weaker one than is counted. */
    private static final double WEAK = 0.2;

    /** Less than this of a patch in its own mirror image, and it is no turned piece. */
    private static final double LEAST_MIRRORED = 0.85;

    /** Two patches that share so much of both are one. */
    private static final double SAME = 0.85;

    private static final int MOST = 5;

    private final CoarsePicture picture;

    private final Tints tints;

    private final int width;

    private final int height;

    private OwnColours(CoarsePicture picture) {
        this.picture = picture;
        tints = Tints.of(picture);
        width = tints.width();
        height = tints.height();
    }

    /** The likeliest first: each as its colours part it from all round it, then as what is about there looks rather than what is beside. */
    static List<Cores.Work<BodyFinder.Body>> of(CoarsePicture picture) {
        OwnColours own = new OwnColours(picture);
        List<Cores.Work<BodyFinder.Body>> bodies = new ArrayList<>();
        for (Candidate each : own.candidates()) {
            BodyFinder.Body body = own.body(each);
            bodies.add(() -> body);
            bodies.add(() -> BodyFinder.near(picture, body.mask()));
        }
        return bodies;
    }

    /**
     * A patch that may be the piece.
     *
     * @param way through hue and light in which it stands out
     * @param level above which its values are
     * @param mask 1 where it is
     * @param mirrored its axis and sides
     * @param likely the sharper its edge, the longer it is and the more alike its sides
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and large
    private record Candidate(double[] way, double level, byte[] mask, MirroredPatch mirrored, double likely) {}

    private List<Candidate> candidates() {
        List<double[]> ways = ways();
        List<List<Candidate>> found = new ArrayList<>();
        for (int k = 0; k < ways.size(); k++) {
            found.add(new ArrayList<>());
        }
        Cores.each(ways.size(), k -> {
            float[] along = tints.along(ways.get(k));
            for (PatchTree.Patch each : PatchTree.of(along, width, height)) {
                candidate(ways.get(k), along, each, found.get(k));
            }
        });
        List<Candidate> best = new ArrayList<>();
        found.stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparingDouble(Candidate::likely).reversed())
                .forEach(each -> {
                    if (best.size() < MOST && best.stream().noneMatch(other -> same(each, other))) {
                        best.add(each);
                    }
                });
        return best;
    }

    /** Each number up or down, or none, with each other one. */
    private static List<double[]> ways() {
        List<double[]> ways = new ArrayList<>();
        for (int k = 0; k < 27; k++) {
            double[] way = {k % 3 - 1, k / 3 % 3 - 1, k / 9 - 1};
            double size = Math.hypot(Math.hypot(way[0], way[1]), way[2]);
            if (size > 0) {
                ways.add(Arrays.stream(way).map(each -> each / size).toArray());
            }
        }
        return ways;
    }

    private static boolean same(Candidate one, Candidate other) {
        int both = 0;
        int any = 0;
        for (int i = 0; i < one.mask.length; i++) {
            both += one.mask[i] & other.mask[i];
            any += one.mask[i] | other.mask[i];
        }
        return both > SAME * any;
    }

    private void candidate(double[] way, float[] along, PatchTree.Patch patch, List<Candidate> to) {
        GrayU8 own = new GrayU8(width, height);
        own.data = flooded(along, patch);
        byte[] solid = PatchBody.solid(own);
        MirroredPatch mirrored = new MirroredPatch(solid, width, Blob.of(solid, width));
        double share = mirrored.share();
        if (share >= LEAST_MIRRORED && new PatchSurroundings(tints, mirrored).letItBeRound()) {
            double likely = edge(solid) * Math.sqrt(mirrored.to() - mirrored.from()) * Math.pow(share, 4);
            to.add(new Candidate(way, patch.level(), solid, mirrored, likely));
        }
    }

    /** All that hangs together with the patch's seed. */
    private byte[] flooded(float[] along, PatchTree.Patch patch) {
        byte[] mask = new byte[along.length];
        int[] next = new int[patch.area() + 1];
        int count = 0;
        next[count++] = patch.seed();
        mask[patch.seed()] = 1;
        while (count > 0) {
            int at = next[--count];
            int x = at % width;
            int y = at / width;
            int[] beside = {
                x > 0 ? at - 1 : at,
                x + 1 < width ? at + 1 : at,
                y > 0 ? at - width : at,
                y + 1 < height ? at + width : at
            };
            for (int each : beside) {
                if (mask[each] == 0 && along[each] > patch.level() && count < next.length) {
                    mask[each] = 1;
                    next[count++] = each;
                }
            }
        }
        return mask;
    }

    /** How sharp the edge is all round but for the weakest stretches. */
    private double edge(byte[] mask) {
        float[] edges = new float[mask.length];
        int count = 0;
        for (int i = width + 1; i < mask.length - width - 1; i++) {
            if (mask[i] > 0 && (mask[i - 1] & mask[i + 1] & mask[i - width] & mask[i + width]) == 0) {
                edges[count++] = tints.edges()[i];
            }
        }
        return count == 0 ? 0 : Ranked.of(edges, count, (int) (WEAK * count));
    }

    /** As a body of one hue, without a lathe's centres, if it is one; else as it is. */
    private BodyFinder.Body body(Candidate candidate) {
        byte[] whole = whole(candidate);
        return PatchBody.find(picture, whole, Blob.of(whole, picture.width()))
                .orElseGet(() -> candidate.mirrored.body(whole, tints.factor()));
    }

    /** The patch in the picture itself: near its outline by its level there. */
    private byte[] whole(Candidate candidate) {
        int w = picture.width();
        int h = picture.height();
        byte[] both = candidate.mirrored.mirrored();
        GrayU8 large = new GrayU8(w, h);
        for (int y = 0; y < height * tints.factor(); y++) {
            for (int x = 0; x < width * tints.factor(); x++) {
                large.data[y * w + x] = both[y / tints.factor() * width + x / tints.factor()];
            }
        }
        if (tints.factor() == 1) {
            return large.data;
        }
        byte[] most = GrownMask.dilated(large, tints.factor()).data;
        byte[] least = GrownMask.eroded(large, tints.factor()).data;
        float[] along = Tints.of(picture, 1).along(candidate.way);
        for (int i = 0; i < along.length; i++) {
            large.data[i] = (byte) (least[i] > 0 || (most[i] > 0 && along[i] > candidate.level) ? 1 : 0);
        }
        return PatchBody.solid(large);
    }
}
