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

    /** Of a piece without squares the view stays as it is. */
    static SquaredView of(Picture picture, Lens lens, ViewFit fit, ViewFit.View view, double lengthMm) throws Unsure {
        List<FlatSections.Flat> flats = flats(picture, lens, view, lengthMm);
        SquaredView best = new SquaredView(fit, squared(view, flats, lengthMm));
        for (int round = 0; round < ROUNDS && !flats.isEmpty(); round++) {
            ViewFit.View last = best.view;
            KnownSquares known = KnownSquares.of(
                    flats, outline(last, lengthMm), last.contour().sight());
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
                start = squared(start, flat.end(view.contour(), outline, true));
            }
            if (flat.sure() && lengthMm - outline.placeMm(flat.to()) < near) {
                end = squared(end, flat.end(view.contour(), outline, false));
            }
        }
        return view.withEnds(start, end);
    }

    private static EndCap squared(EndCap cap, Optional<SquareEnd> end) {
        return end.map(each -> cap.squared(1 - each.place() / cap.apex())).orElse(cap);
    }
}
