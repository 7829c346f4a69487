package turnalike.photo;

import java.util.List;
import java.util.Optional;

/**
 * A view of a piece with what its squares say of it. They are known by a view only, and a view that takes their edges for mirror images and their ends for
 * rounds' leans and stands askew; so it is fitted again with what may be square left out, and once more with what then is.
 *
 * @param fit by which the view is moved
 * @param view the view, its ends square where they are
 */
record SquaredView(ViewFit fit, ViewFit.View view) {
    private static final int ROUNDS = 2;

    /** How far a square's end may be seen to stand before the axis, as a share of how far its section does there. */
    private static final double LEAST_BEFORE = 0.4;

    private static final double MOST_BEFORE = 1.6;

    /** Of a piece without squares the view stays as it is. */
    static SquaredView of(Picture picture, Lens lens, ViewFit fit, ViewFit.View view, double lengthMm) throws Unsure {
        List<FlatSections.Flat> flats = flats(picture, lens, view, lengthMm);
        SquaredView best = new SquaredView(fit, squared(view, flats, lengthMm));
        for (int round = 0; round < ROUNDS && !flats.isEmpty(); round++) {
            ViewFit.View last = best.view;
            // Where their ends stand tells the scale, and so where along the piece they are.
            List<FlatSections.Flat> scaled = flats(picture, lens, last, lengthMm);
            KnownSquares known = KnownSquares.of(
                    scaled.isEmpty() ? flats : scaled,
                    outline(last, lengthMm),
                    last.contour().sight());
            ViewFit held = fit.with(known);
            ViewFit.View next = held.fit(last.axis(), picture, lens);
            flats = flats(picture, lens, next, lengthMm).stream()
                    .filter(FlatSections.Flat::sure)
                    .toList();
            if (!flats.isEmpty()) {
                best = new SquaredView(held, squared(next, flats, lengthMm));
            }
        }
        return best;
    }

    private static RoundOutline outline(ViewFit.View view, double lengthMm) throws Unsure {
        return RoundOutline.of(view.contour(), view.start(), view.end(), lengthMm);
    }

    private static List<FlatSections.Flat> flats(Picture picture, Lens lens, ViewFit.View view, double lengthMm)
            throws Unsure {
        return new FlatSections(picture, outline(view, lengthMm), view.contour(), lens).find();
    }

    /**
     * A view whose ends are known to be square where they are. A square's near rim is nearer to the camera than its axis, as a round's is, and
     * seen farther out: by 2 to 4 per cent of the place, at a telephone's distance.
     */
    private static ViewFit.View squared(ViewFit.View view, List<FlatSections.Flat> flats, double lengthMm)
            throws Unsure {
        RoundOutline outline = outline(view, lengthMm);
        EndCap start = view.start();
        EndCap end = view.end();
        for (FlatSections.Flat flat : flats) {
            double near = outline.acrossMm(flat.middle());
            if (flat.sure() && outline.placeMm(flat.from()) < near) {
                start = squared(start, flat, flat.end(view.contour(), outline, true), outline);
            }
            if (flat.sure() && lengthMm - outline.placeMm(flat.to()) < near) {
                end = squared(end, flat, flat.end(view.contour(), outline, false), outline);
            }
        }
        return view.withEnds(start, end);
    }

    private static EndCap squared(EndCap cap, FlatSections.Flat flat, Optional<SquareEnd> end, RoundOutline outline) {
        double near = 1 - flat.seen(outline).near(0);
        return end.map(each -> 1 - each.place() / cap.apex())
                .map(read -> cap.squared(before(read, near)))
                .orElse(cap);
    }

    /** Its near side or arris stands before the axis about as far as the section's does; what is read otherwise is no end of it. */
    static double before(double read, double near) {
        return read > LEAST_BEFORE * near && read < MOST_BEFORE * near ? read : near;
    }
}
