package turnalike.photo;

import java.util.Optional;

/** Looks for the piece where it may be: on the sheet's blank band first, if there is a sheet, then beside it. */
final class BodySearch {
    /** A ground of which less shows than this share of the picture cannot be told. */
    private static final double LEAST_SHOWN = 0.04;

    /** Paper is brighter than what lies on it, shadows too: of the band's light from dark to bright this share is surely paper's. */
    private static final double PAPER = 0.8;

    private BodySearch() {}

    /**
     * A piece found.
     *
     * @param body the piece
     * @param coarse the coarse picture that it was found in, the sheet's printing painted over
     */
    record Found(BodyFinder.Body body, CoarsePicture coarse) {}

    static Found find(CoarsePicture coarse, Optional<SheetView> sheet, Optional<PointedPlace> pointed) throws Unsure {
        if (sheet.isEmpty()) {
            return new Found(BodyFinder.find(coarse, pointed), coarse);
        }
        SheetCover cover = new SheetCover(coarse, sheet.orElseThrow());
        byte[] band = cover.band();
        CoarsePicture inBand = Ground.painted(cover.mended(), band, PAPER);
        Optional<Unsure> why = Optional.empty();
        try {
            BodyFinder.Body body = find(inBand, band, pointed);
            if (!body.reachesOut(band, coarse.width())) {
                return new Found(body, inBand);
            }
            why = Optional.of(new Unsure(
                    PhotoTrace.Reason.SHEET,
                    "the piece reaches out of the sheet's blank band: over its squares, or past the last page",
                    "lay it along the band and lay on one page more, or lay the sheet beside it"));
        } catch (Unsure empty) {
            // Nothing there: it may lie beside the sheet.
        }
        byte[] beside = cover.beside();
        CoarsePicture around = Ground.painted(coarse, beside, 0.5);
        try {
            BodyFinder.Body body = find(around, beside, pointed);
            if (!body.reachesOut(beside, coarse.width())) {
                return new Found(body, around);
            }
        } catch (Unsure nothing) {
            throw why.orElse(nothing);
        }
        throw why.orElseGet(() -> new Unsure(
                PhotoTrace.Reason.SHEET,
                "the piece lies over a page's rim",
                "lay it wholly on the sheet's blank band, or wholly beside the sheet"));
    }

    private static BodyFinder.Body find(CoarsePicture painted, byte[] shows, Optional<PointedPlace> pointed)
            throws Unsure {
        int count = 0;
        for (byte each : shows) {
            count += each;
        }
        if (count < LEAST_SHOWN * shows.length) {
            throw new Unsure(
                    PhotoTrace.Reason.NO_PIECE,
                    "the sheet fills the picture, and no piece lies on its blank band",
                    "lay the piece along the band, or beside the sheet, and take it whole");
        }
        return BodyFinder.find(painted, pointed);
    }
}
