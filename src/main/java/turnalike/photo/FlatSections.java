package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Squares left on a turned piece. A name given wrongly is worse than none, so a stretch is called square only where all of this is seen: its
 * width does not change; it steps down at both ends, but for the piece's own; nothing turned stands out of the square that it was turned from;
 * its light runs across each of one or two flats nearly evenly, as no round's does; of two flats it leaps at the arris, at one and the same place
 * from end to end; one flat alone is lit otherwise than what is round on the same piece. Where a stretch could be square by its shape and is not
 * lit as the piece's rounds are, but something is missing, it is said to be doubtful.
 *
 * <p>Of a square turned by φ about the axis one sees w = s·(cos φ + sin φ) across, the arris at the share p = (1 − tan φ) / (1 + tan φ) of the
 * half width; so s follows from both. Derived for a far camera; a near one widens the nearer corners, of which the half for a flat that faces
 * the camera is exact: its half width is seen at depth 1 − s/2.
 */
final class FlatSections {
    /** Over so many pixels of the length it is judged whether light falls on a flat or on a round: grain and noise hardly count then. */
    private static final double LIT_PIXELS = 3;

    private static final double LEAST_MM = 15;

    /** By how much an even stretch's half width may change, in pixels, and as a share of itself. */
    private static final double EVEN_PIXELS = 0.8;

    private static final double EVEN_SHARE = 0.012;

    /** Where a square's end or shoulder is rounded, its width is still within this share of the even one, so many half widths long. */
    private static final double ROUNDED = 0.06;

    private static final double ROUNDED_LENGTH = 0.35;

    /** An end's rim is so near, in pixels, that what stands beyond the even stretch is the rim. */
    private static final double RIM_PIXELS = 8;

    /** A shoulder falls by this share of the half width at least, within so many of them. */
    private static final double SHOULDER = 0.04;

    private static final double SHOULDER_LENGTH = 0.8;

    /** What is turned may stand out of its square by so much: the camera is near and the width is not exact. */
    private static final double STANDS_OUT = 1.05;

    /** In made pictures the light across a flat changed by 0.3 of its mean at most, with coarse grain, and across half a round by 0.87 at least. */
    private static final double UNEVEN = 0.4;

    /** What two straight runs may leave of the light's mean: coarse grain left 0.10. */
    private static final double MOST_MISFIT = 0.12;

    /** An arris is a leap of at least so much of the light. */
    private static final double LEAST_LEAP = 0.15;

    /** From end to end an arris stays within this share of the half width. */
    private static final double ARRIS_STAYS = 0.12;

    /** Lit otherwise than the rounds: light that falls the same on flats and rounds differs by far less. */
    private static final double UNLIKE = 0.12;

    private final Picture picture;

    private final RoundOutline outline;

    private final SquaredContour contour;

    private final Lens lens;

    private final float[] colour = new float[3];

    FlatSections(Picture picture, RoundOutline outline, SquaredContour contour, Lens lens) {
        this.picture = picture;
        this.lens = lens;
        this.outline = outline;
        this.contour = contour;
    }

    /**
     * A stretch found square, or that may be.
     *
     * @param from its first step
     * @param to its last
     * @param share half its side over the radius that a round of that width would have
     * @param faceOn whether one flat faces the camera; else two are seen
     * @param sure whether it is square; else it is taken for a round and may be square
     */
    record Flat(int from, int to, double share, boolean faceOn, boolean sure) {
        /** How far its nearest side or arris stands before the axis, in radii that a round of its width would have. */
        double before() {
            return faceOn ? share : 1;
        }
    }

    /**
     * A view whose ends are known to be square where they are. A square's near rim is nearer to the camera than its axis, as a round's is, and
     * seen farther out: by 2 to 4 per cent of the place, at a telephone's distance.
     */
    static ViewFit.View withSquareEnds(Picture picture, ViewFit.View view, Lens lens, double lengthMm) throws Unsure {
        RoundOutline outline = RoundOutline.of(view.contour(), view.start(), view.end(), lengthMm);
        EndCap start = view.start();
        EndCap end = view.end();
        for (Flat flat : new FlatSections(picture, outline, view.contour(), lens).find()) {
            double before = flat.before() * outline.radiusUnits((flat.from() + flat.to()) / 2);
            double near = flat.before() * outline.radiusMm((flat.from() + flat.to()) / 2);
            if (flat.sure() && !start.isPlaced() && outline.placeMm(flat.from()) < near) {
                start = start.squared(before);
            }
            if (flat.sure() && !end.isPlaced() && lengthMm - outline.placeMm(flat.to()) < near) {
                end = end.squared(before);
            }
        }
        return view.withEnds(start, end);
    }

    List<Flat> find() {
        List<int[]> stretches = even().stream()
                .map(each -> new int[] {each[0], each[1], widened(each[0], -1), widened(each[1], 1)})
                .filter(each -> stepsDown(each, -1) && stepsDown(each, 1))
                .toList();
        // From the thickest down: what is found square no longer counts as turned.
        List<Flat> found = new ArrayList<>();
        boolean[] flat = new boolean[outline.count()];
        stretches.stream()
                .sorted((a, b) -> Double.compare(outline.radiusMm(b[0]), outline.radiusMm(a[0])))
                .forEach(each -> {
                    double widest = widestBeside(stretches, flat, each);
                    judged(each, widest, rounds(each)).ifPresent(judged -> {
                        found.add(judged);
                        IntStream.rangeClosed(judged.from(), judged.to()).forEach(k -> flat[k] = true);
                    });
                });
        found.sort((a, b) -> Integer.compare(a.from(), b.from()));
        return found;
    }

    /** Stretches of even width, each its first step and its last. */
    private List<int[]> even() {
        List<int[]> stretches = new ArrayList<>();
        int from = 0;
        while (from < outline.count()) {
            int to = from;
            double least = outline.radiusMm(from);
            double most = least;
            double allowed = Math.max(EVEN_PIXELS * outline.mmPerPixel(), EVEN_SHARE * least);
            while (to + 1 < outline.count()) {
                double next = outline.radiusMm(to + 1);
                if (Math.max(most, next) - Math.min(least, next) > allowed) {
                    break;
                }
                least = Math.min(least, next);
                most = Math.max(most, next);
                to++;
            }
            if (outline.placeMm(to) - outline.placeMm(from) >= LEAST_MM) {
                stretches.add(new int[] {from, to});
                from = to + 1;
            } else {
                from++;
            }
        }
        return joined(stretches);
    }

    /** One stretch whose width has a fault somewhere is found as two of the same width. */
    private List<int[]> joined(List<int[]> stretches) {
        List<int[]> joined = new ArrayList<>();
        for (int[] each : stretches) {
            int[] last = joined.isEmpty() ? each : joined.get(joined.size() - 1);
            double gap = outline.placeMm(each[0]) - outline.placeMm(last[1]);
            double apart =
                    Math.abs(outline.radiusMm((each[0] + each[1]) / 2) - outline.radiusMm((last[0] + last[1]) / 2));
            if (last != each && gap < 3 && apart < 2 * EVEN_SHARE * outline.radiusMm(each[0])) {
                joined.set(joined.size() - 1, new int[] {last[0], each[1]});
            } else {
                joined.add(each);
            }
        }
        return joined;
    }

    /** On to the shoulder, or to the piece's end, whose rim the picture's softness rounds. */
    private int widened(int k, int way) {
        double even = outline.radiusMm(k);
        int on = k;
        while (within(on + way)
                && Math.abs(outline.radiusMm(on + way) - even) < ROUNDED * even
                && Math.abs(outline.placeMm(on + way) - outline.placeMm(k)) < ROUNDED_LENGTH * even) {
            on += way;
        }
        int end = way < 0 ? 0 : outline.count() - 1;
        return Math.abs(outline.placeMm(end) - outline.placeMm(on)) < RIM_PIXELS * outline.mmPerPixel() ? end : on;
    }

    private boolean within(int k) {
        return k >= 0 && k < outline.count();
    }

    /** Whether the piece ends there, or falls away at a shoulder. */
    private boolean stepsDown(int[] stretch, int way) {
        double half = outline.radiusMm((stretch[0] + stretch[1]) / 2);
        int k = way < 0 ? stretch[2] : stretch[3];
        for (int on = k; Math.abs(outline.placeMm(on) - outline.placeMm(k)) < SHOULDER_LENGTH * half; on += way) {
            if (!within(on + way)) {
                return true;
            }
            if (outline.radiusMm(on + way) < (1 - SHOULDER) * half) {
                return true;
            }
        }
        return false;
    }

    /** The largest radius of what is turned: not in the stretch, nor in one as wide, nor in a square. */
    private double widestBeside(List<int[]> stretches, boolean[] flat, int[] stretch) {
        double half = outline.radiusMm((stretch[0] + stretch[1]) / 2);
        boolean[] counts = new boolean[outline.count()];
        for (int k = 0; k < counts.length; k++) {
            counts[k] = !flat[k];
        }
        int rim = (int) (RIM_PIXELS * outline.mmPerPixel() / outline.placeMm(1));
        for (int[] each : stretches) {
            if (isAsWide((each[0] + each[1]) / 2, half)) {
                int from = each[2];
                int to = each[3];
                while (within(from - 1) && isAsWide(from - 1, half)) {
                    from--;
                }
                while (within(to + 1) && isAsWide(to + 1, half)) {
                    to++;
                }
                Arrays.fill(counts, Math.max(0, from - rim), Math.min(counts.length, to + 1 + rim), false);
            }
        }
        double widest = 0;
        for (int k = 0; k < counts.length; k++) {
            widest = counts[k] ? Math.max(widest, outline.radiusMm(k)) : widest;
        }
        return widest;
    }

    private boolean isAsWide(int k, double half) {
        return Math.abs(outline.radiusMm(k) - half) < ROUNDED * half;
    }

    /** How the piece is lit where it is surely round: narrower than the stretch and hardly sloping. */
    private Optional<AcrossLight> rounds(int[] stretch) {
        double half = outline.radiusMm((stretch[0] + stretch[1]) / 2);
        int beside = Math.max(1, (int) (2 * outline.mmPerPixel() / outline.placeMm(1)));
        int[] steps = IntStream.range(beside, outline.count() - beside)
                .filter(k -> k % beside == 0 && !outline.isHidden(k) && outline.radiusMm(k) < 0.93 * half)
                .filter(k -> Math.abs(outline.radiusMm(k + beside) - outline.radiusMm(k - beside))
                        < 0.15 * (outline.placeMm(k + beside) - outline.placeMm(k - beside)))
                .toArray();
        return steps.length < 12 ? Optional.empty() : Optional.of(AcrossLight.at(this::light, steps));
    }

    /** What a stretch is, if it is not plainly round. */
    private Optional<Flat> judged(int[] stretch, double widest, Optional<AcrossLight> rounds) {
        int middle = (stretch[0] + stretch[1]) / 2;
        double half = outline.radiusUnits(middle);
        double seen = half / Math.sqrt(1 - half * half);
        double facing = seen / (1 + seen) / half;
        if (facing * outline.radiusMm(middle) * STANDS_OUT < widest) {
            return Optional.empty();
        }
        int inner = Math.max(1, (stretch[1] - stretch[0]) / 12);
        AcrossLight light = AcrossLight.between(this::light, stretch[0] + inner, stretch[1] - inner);
        boolean unlike = rounds.isPresent() && light.unlike(rounds.orElseThrow()) > UNLIKE;
        AcrossLight.Arris arris = light.arris();
        AcrossLight.Run one = light.run(0, AcrossLight.ACROSS);
        if (isFlat(one) && unlike) {
            int[] lit = litAlike(stretch, light, rounds.orElseThrow());
            return Optional.of(new Flat(lit[0], lit[1], facing, true, true));
        }
        double tan = (1 - Math.abs(arris.share())) / (1 + Math.abs(arris.share()));
        double turned = Math.sqrt(1 + tan * tan) / (1 + tan);
        boolean two = arris.misfit() < MOST_MISFIT
                && arris.unevenness() < UNEVEN
                && arris.leap() > Math.max(LEAST_LEAP, arris.unevenness());
        boolean fits = turned * outline.radiusMm(middle) * STANDS_OUT > widest;
        if (two && unlike && fits && stays(stretch, arris.share())) {
            int[] lit = litAlike(stretch, light, rounds.orElseThrow());
            return Optional.of(new Flat(lit[0], lit[1], turned, false, true));
        }
        // A round lit otherwise than the rest, by a shine or a shadow, keeps falling off to both sides.
        boolean may = isFlat(one) || (arris.unevenness() < 2 * UNEVEN && arris.leap() > LEAST_LEAP / 2);
        return may && (unlike || rounds.isEmpty())
                ? Optional.of(new Flat(stretch[2], stretch[3], isFlat(one) ? facing : turned, isFlat(one), false))
                : Optional.empty();
    }

    /** From where to where a stretch is lit as its middle is and not as what is round: a round of nearly its width may follow it. */
    private int[] litAlike(int[] stretch, AcrossLight light, AcrossLight round) {
        int wide = Math.max(2, (int) (LIT_PIXELS * outline.mmPerPixel() / outline.placeMm(1)));
        int most = (stretch[3] - stretch[2]) / 4;
        int from = stretch[2];
        while (stretch[2] > 0 && from - stretch[2] < most && isRound(from, from + wide, light, round)) {
            from++;
        }
        int to = stretch[3];
        while (stretch[3] < outline.count() - 1 && stretch[3] - to < most && isRound(to - wide, to, light, round)) {
            to--;
        }
        return new int[] {from, to};
    }

    private boolean isRound(int from, int to, AcrossLight flat, AcrossLight round) {
        AcrossLight here = AcrossLight.between(this::light, from, to);
        return here.unlike(round) < here.unlike(flat);
    }

    private static boolean isFlat(AcrossLight.Run run) {
        return run.misfit() < MOST_MISFIT / 2 && 2 * Math.abs(run.slope()) < UNEVEN / 2;
    }

    /** Whether each quarter of the stretch has its arris at one and the same place. */
    private boolean stays(int[] stretch, double share) {
        int inner = Math.max(1, (stretch[1] - stretch[0]) / 12);
        int from = stretch[0] + inner;
        int long4 = stretch[1] - inner - from;
        int off = 0;
        for (int quarter = 0; quarter < 4; quarter++) {
            AcrossLight part =
                    AcrossLight.between(this::light, from + long4 * quarter / 4, from + long4 * (quarter + 1) / 4);
            off += Math.abs(part.arris().share() - share) > ARRIS_STAYS ? 1 : 0;
        }
        return off == 0;
    }

    private double light(int k, double share) {
        PixelPoint straight = contour.sight().pixel(outline.alongUnits(k), outline.radiusUnits(k) * share);
        PixelPoint pixel = lens.bent(straight.x(), straight.y());
        int px = (int) Math.max(0, Math.min(picture.width() - 1, pixel.x()));
        int py = (int) Math.max(0, Math.min(picture.height() - 1, pixel.y()));
        picture.linear(px, py, colour);
        return (colour[0] + colour[1] + colour[2]) / 3;
    }
}
