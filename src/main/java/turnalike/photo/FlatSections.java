package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Squares left on a turned piece. A name given wrongly is worse than none, so a stretch is called square only where all of this is seen: its
 * width does not change; it steps down at both ends, but for the piece's own; nothing turned stands out of the square that it was turned from;
 * its light runs across each of one or two flats nearly evenly, as no round's does; of two flats it leaps at the arris, at one and the same place
 * from end to end; one flat alone is lit otherwise than what is round on the same piece. Where a stretch could be square by its shape and is not
 * lit as the piece's rounds are, but something is missing, it is said to be doubtful. What its
 * width and its arris say of its side is {@link SquareSection}'s.
 */
final class FlatSections {
    /** Over so many pixels of the length it is judged whether light falls on a flat or on a round: grain and noise hardly count then. */
    private static final double LIT_PIXELS = 3;

    /** What is turned may stand out of its square by so much: the camera is near and the width is not exact. */
    private static final double STANDS_OUT = 1.05;

    /** In made pictures the light across a flat changed by 0.3 of its mean at most, with coarse grain, and across half a round by 0.87 at least. */
    private static final double UNEVEN = 0.4;

    /** What two straight runs may leave of the light's mean: coarse grain left 0.10. */
    private static final double MOST_MISFIT = 0.12;

    /** An arris is a leap of at least so much of the light. */
    private static final double LEAST_LEAP = 0.15;

    /** Where each flat is lit the more evenly, one of so much. */
    private static final double LITTLE_LEAP = 0.08;

    /** An arris that the light and the rim of an end tell within this, radians, is one and the same. */
    private static final double NEAR_TURN = Math.toRadians(8);

    /** Squares of one blank, seen in a view that is not yet right, differ in width by less. */
    private static final double AS_WIDE = 0.05;

    /** What is turned stands out of its blank by less. */
    private static final double NEVER_ROUND = 1.12;

    /** From end to end an arris stays within this share of the half width. */
    private static final double ARRIS_STAYS = 0.12;

    /** The middle of a square's edges is off the axis by what its turn makes, but for so many pixels and such a share of its width: the first axis is askew. */
    private static final double ASIDE = 1.5;

    private static final double ASIDE_SHARE = 0.04;

    /** Lit otherwise than the rounds: light that falls the same on flats and rounds differs by far less. */
    private static final double UNLIKE = 0.12;

    /** A square's shoulder is no longer than so many half sides. Common practice, no source: a lamb's tongue is one and a half. */
    private static final double SHOULDER = 2.5;

    private final Picture picture;

    private final RoundOutline outline;

    private final EvenStretches shape;

    private final SquaredContour contour;

    private final Lens lens;

    private final float[] colour = new float[3];

    FlatSections(Picture picture, RoundOutline outline, SquaredContour contour, Lens lens) {
        this.picture = picture;
        this.lens = lens;
        this.outline = outline;
        this.contour = contour;
        shape = new EvenStretches(outline, contour);
    }

    /**
     * A stretch found square, or that may be.
     *
     * @param from its first step, by its width
     * @param to its last
     * @param evenFrom where its width begins not to change
     * @param evenTo and up to where
     * @param section as it is seen
     * @param share half its side over the radius that a round of that width would have
     * @param faceOn whether one flat faces the camera; else two are seen
     * @param sure whether it is square; else it is taken for a round and may be square
     * @param byRim whether the rim of the piece's end tells how it is turned
     */
    record Flat(
            int from,
            int to,
            int evenFrom,
            int evenTo,
            SquareSection section,
            double share,
            boolean faceOn,
            boolean sure,
            boolean byRim) {
        int middle() {
            return (evenFrom + evenTo) / 2;
        }

        /**
         * From where on, beyond an end, the piece is round all about: its shoulder keeps some of the flats as far as it is thicker than half the side.
         *
         * @param way 1 beyond its end, −1 beyond its start
         */
        int round(RoundOutline outline, int way) {
            double half = share * outline.acrossMm(middle());
            int k = way > 0 ? to : from;
            int end = k;
            while (end + way >= 0
                    && end + way < outline.count()
                    && outline.acrossMm(end) > half
                    && Math.abs(outline.placeMm(end) - outline.placeMm(k)) < SHOULDER * half) {
                end += way;
            }
            return end;
        }

        /** Its section as an outline has it, of this view or of another of the same piece. */
        SquareSection seen(RoundOutline outline) {
            return new SquareSection(share * outline.acrossUnits(middle()), section.arris());
        }

        /**
         * Where it ends, seen in this view or in another of the same piece.
         *
         * @param start whether its start is meant, else its end
         */
        Optional<SquareEnd> end(SquaredContour contour, RoundOutline outline, boolean start) {
            return SquareEnd.of(contour, seen(outline), outline.ray(middle()), outline.ray(start ? from : to));
        }
    }

    List<Flat> find() {
        List<int[]> stretches = shape.find();
        Optional<EndTurn> turn = turn(stretches);
        // From the thickest down: what is found square no longer counts as turned.
        List<Flat> found = new ArrayList<>();
        boolean[] flat = new boolean[outline.count()];
        stretches.stream()
                .sorted((a, b) -> Double.compare(outline.acrossMm(b[0]), outline.acrossMm(a[0])))
                .forEach(each -> {
                    double widest = shape.widestBeside(stretches, flat, each);
                    judged(each, widest, rounds(each), turn).ifPresent(judged -> {
                        found.add(judged);
                        IntStream.rangeClosed(judged.from(), judged.to()).forEach(k -> flat[k] = true);
                    });
                });
        addOfSameBlank(found, stretches);
        found.sort((a, b) -> Integer.compare(a.from(), b.from()));
        return found;
    }

    /** What is as wide as a square and so thick as a round that the square's blank does not hold it is square too, however it is lit. */
    private void addOfSameBlank(List<Flat> found, List<int[]> stretches) {
        List<Flat> sure = found.stream().filter(Flat::sure).toList();
        for (int[] each : stretches) {
            int middle = (each[0] + each[1]) / 2;
            double radius = outline.acrossMm(middle);
            Optional<Flat> like = sure.stream()
                    .filter(flat -> Math.abs(outline.acrossMm(flat.middle()) / radius - 1) < AS_WIDE)
                    .filter(flat -> flat.share() * outline.acrossMm(flat.middle()) * NEVER_ROUND < radius)
                    .findFirst();
            boolean known = sure.stream().anyMatch(flat -> flat.from() <= middle && middle <= flat.to());
            if (like.isPresent() && !known) {
                SquareSection section = SquareSection.showing(
                        seen(middle), like.orElseThrow().section().arris());
                found.removeIf(flat -> flat.from() <= middle && middle <= flat.to());
                int[] wide = {each[2], each[3]};
                found.add(square(each, wide, section, false, like.orElseThrow().byRim()));
            }
        }
    }

    /** How squares stand by the ends that they are: all were left of one blank. */
    private Optional<EndTurn> turn(List<int[]> stretches) {
        Optional<EndTurn> start = Optional.empty();
        Optional<EndTurn> end = Optional.empty();
        for (int[] each : stretches) {
            start = each[2] == 0 ? turn(each, true) : start;
            end = each[3] == outline.count() - 1 ? turn(each, false) : end;
        }
        return start.isEmpty()
                ? end
                : end.isEmpty() ? start : start.orElseThrow().with(end.orElseThrow());
    }

    /** How a stretch that the piece begins with, or ends with, stands if it is square. */
    private Optional<EndTurn> turn(int[] stretch, boolean start) {
        return EndTurn.of(contour, start, seen((stretch[0] + stretch[1]) / 2));
    }

    /** The same where its rim alone says that it is no round. */
    private Optional<EndTurn> byRim(int[] stretch) {
        Optional<EndTurn> start = stretch[2] == 0 ? turn(stretch, true) : Optional.empty();
        Optional<EndTurn> end = stretch[3] == outline.count() - 1 ? turn(stretch, false) : Optional.empty();
        return start.filter(EndTurn::plain).or(() -> end.filter(EndTurn::plain));
    }

    /** Y of a round's edge there. */
    private double seen(int k) {
        double half = outline.acrossUnits(k);
        return half / Math.sqrt(1 - half * half);
    }

    /** How the piece is lit where it is surely round: narrower than the stretch and hardly sloping. */
    private Optional<AcrossLight> rounds(int[] stretch) {
        double half = outline.acrossMm((stretch[0] + stretch[1]) / 2);
        int beside = Math.max(1, (int) (2 * outline.mmPerPixel() / outline.placeMm(1)));
        int[] steps = IntStream.range(beside, outline.count() - beside)
                .filter(k -> k % beside == 0 && !outline.isHidden(k) && outline.acrossMm(k) < 0.93 * half)
                .filter(k -> Math.abs(outline.acrossMm(k + beside) - outline.acrossMm(k - beside))
                        < 0.15 * (outline.placeMm(k + beside) - outline.placeMm(k - beside)))
                .toArray();
        return steps.length < 12 ? Optional.empty() : Optional.of(AcrossLight.at(this::light, steps));
    }

    /** What a stretch is, if it is not plainly round. */
    private Optional<Flat> judged(int[] stretch, double widest, Optional<AcrossLight> rounds, Optional<EndTurn> turn) {
        int middle = (stretch[0] + stretch[1]) / 2;
        double half = outline.acrossUnits(middle);
        double seen = seen(middle);
        SquareSection widestFace = SquareSection.facing(seen);
        if (!holds(widestFace, widest)) {
            return Optional.empty();
        }
        SquareSection face = turn.map(each -> SquareSection.showing(seen, each.arris()))
                .filter(each -> holds(each, widest))
                .orElse(widestFace);
        int inner = Math.max(1, (stretch[1] - stretch[0]) / 12);
        AcrossLight light = AcrossLight.between(this::light, stretch[0] + inner, stretch[1] - inner);
        boolean unlike = rounds.isPresent() && light.unlike(rounds.orElseThrow()) > UNLIKE;
        AcrossLight.Arris arris = light.arris();
        AcrossLight.Run one = light.run(0, AcrossLight.ACROSS);
        SquareSection byLight = SquareSection.turned(seen, arris.share() * half + outline.asideUnits(middle));
        Optional<EndTurn> same = turn.filter(each -> each.from(byLight.arris()) < NEAR_TURN);
        Optional<SquareSection> rim = byRim(stretch)
                .map(each -> SquareSection.showing(seen, each.arris()))
                .filter(each -> holds(each, widest))
                .filter(each -> showsAside(each, middle));
        if (rim.isPresent() && unlike) {
            int[] lit = litAlike(stretch, light, rounds.orElseThrow());
            SquareSection section = rim.orElseThrow();
            return Optional.of(square(stretch, lit, section, section.isFaceOn(), true));
        }
        boolean fitsTwo = isTwo(arris, light.roundMisfit()) && (same.isPresent() || stays(stretch, arris.share()));
        if (isFlat(one) && unlike && !(fitsTwo && 2 * arris.misfit() < one.misfit())) {
            int[] lit = litAlike(stretch, light, rounds.orElseThrow());
            return Optional.of(square(stretch, lit, face, true, turn.isPresent()));
        }
        SquareSection two =
                same.map(each -> SquareSection.showing(seen, each.arris())).orElse(byLight);
        boolean plainly = unlike || isPlain(arris, light.roundMisfit());
        if (fitsTwo && plainly && holds(two, widest)) {
            int[] lit = rounds.map(each -> litAlike(stretch, light, each)).orElse(new int[] {stretch[2], stretch[3]});
            return Optional.of(square(stretch, lit, two, false, same.isPresent()));
        }
        // A round lit otherwise than the rest, by a shine or a shadow, keeps falling off to both sides.
        boolean may = isFlat(one) || (arris.unevenness() < 2 * UNEVEN && arris.leap() > LEAST_LEAP / 2);
        if (!may || !(unlike || rounds.isEmpty())) {
            return Optional.empty();
        }
        boolean faceOn = isFlat(one);
        return Optional.of(new Flat(
                stretch[2],
                stretch[3],
                stretch[0],
                stretch[1],
                faceOn ? face : two,
                (faceOn ? face : two).half() / half,
                faceOn,
                false,
                false));
    }

    /** One that is surely square. */
    private Flat square(int[] stretch, int[] reach, SquareSection section, boolean faceOn, boolean byRim) {
        double share = section.half() / outline.acrossUnits((stretch[0] + stretch[1]) / 2);
        return new Flat(reach[0], reach[1], stretch[0], stretch[1], section, share, faceOn, true, byRim);
    }

    /** Whether its edges stand as far off the axis' two sides as such a square's do, as nearly as the axis is known. */
    private boolean showsAside(SquareSection section, int k) {
        double aside = (section.seen(true) - section.seen(false)) / 2;
        return Math.abs(outline.asideUnits(k) - aside)
                < ASIDE / outline.focalPx() + ASIDE_SHARE * outline.acrossUnits(k);
    }

    /** Whether nothing turned stands out of such a square there. */
    private boolean holds(SquareSection section, double widest) {
        return section.half() * outline.mmPerUnit() * STANDS_OUT > widest;
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

    /** Whether the light is that of two flats: it leaps between them, or leaps by less where each is lit the more evenly. */
    private static boolean isTwo(AcrossLight.Arris arris, double round) {
        boolean leaps = arris.leap() > LEAST_LEAP
                || (arris.leap() > LITTLE_LEAP && arris.leap() > 5 * arris.misfit() && 1.7 * arris.misfit() < round);
        return leaps
                && arris.misfit() < MOST_MISFIT
                && arris.unevenness() < UNEVEN
                && arris.leap() > arris.unevenness();
    }

    /** Whether it is so plainly theirs that what is round on the piece need not be lit otherwise. */
    private static boolean isPlain(AcrossLight.Arris arris, double round) {
        return arris.leap() > 2 * LEAST_LEAP && 3 * arris.unevenness() < arris.leap() && 4 * arris.misfit() < round;
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
        double across = outline.acrossUnits(k) * share + outline.asideUnits(k);
        PixelPoint straight = contour.sight().pixel(outline.alongUnits(k), across);
        PixelPoint pixel = lens.bent(straight.x(), straight.y());
        int px = (int) Math.max(0, Math.min(picture.width() - 1, pixel.x()));
        int py = (int) Math.max(0, Math.min(picture.height() - 1, pixel.y()));
        picture.linear(px, py, colour);
        return (colour[0] + colour[1] + colour[2]) / 3;
    }
}
