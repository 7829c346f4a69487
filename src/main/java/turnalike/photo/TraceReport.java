package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** Turns contour and view into the answer: radii with their uncertainty, what was hidden, and what to know before relying on it. */
final class TraceReport {
    /** Of turned pieces up to a sixth hid in the pictures tried, of bodies not found right up to a third. */
    private static final double MOST_HIDDEN = 0.3;

    /**
     * What no edge is taken to be found better than, in pixels. This and the next three are set on the first two tables of
     * {@code docs/photo-accuracy.md}, so that two places in three lie within what is stated, and tried on its later ones.
     */
    private static final double LEAST_PIXELS = 0.055;

    /** How much of the edges' usual disagreement all over the piece is common to both, so that no difference shows it. */
    private static final double USUAL = 0.7;

    /** How much of their disagreement nearby is, and by how much of a pixel a place along is off where the outline runs steeply. */
    private static final double NEARBY = 0.45;

    private static final double ALONG = 0.08;

    /** A point of an edge less sure than this, in pixels or in softnesses of the lens where it is softer, is as likely a line of the ground's own. */
    private static final double MOST_UNSURE = 0.2;

    /**
     * Edges whose disagreement leaves so much open over a fifth of the length, in pixels and as a share of the largest radius, are not one round's:
     * pictures traced well stayed below 0.77 pixels and 0.012, those that went wrong began at 1.06 and 0.018.
     */
    private static final double LEAST_APART = 0.95;

    private static final double MOST_APART = 0.014;

    /**
     * Where over half of the length one edge is no surer than this, in pixels or in softnesses, it is lost in the ground: of pictures traced well the
     * worst had 0.32, those that went wrong began at 0.6.
     */
    private static final double LOST = 0.45;

    /** An edge by so much less sure than the other, over so much of the length, is told of: the radii rest on the other one there. */
    private static final double ONE_SIDED = 2.5;

    private static final double MUCH = 0.2;

    /**
     * What a camera's own work on a picture, its tone curve and its sharpening, moves both edges by alike, in pixels: no difference between them shows it.
     * Of 96 pictures by one who had not seen the program, most of them treated so, 66 places in 100 lie within what is stated with it, and 60 with a tenth.
     */
    private static final double BY_CAMERA = 0.15;

    /**
     * What a radius is known to at best where one edge alone takes it for hidden, in pixels: either the other edge's noise or shadow passes for what is seen,
     * or its own does for what hides. Set between three tenths and a half on 108 made pictures of members, of whose 758 such radii half are out by 0.16 pixels,
     * a quarter by 0.43 and more.
     */
    private static final double BY_ONE_EDGE = 0.4;

    private final Picture picture;

    private final FocalGuess focal;

    private final ViewFit fit;

    private final ViewFit.View view;

    private final double lengthMm;

    private final Scale scale;

    private final EdgeFit.Fitted contour;

    private final Care care;

    TraceReport(Picture picture, Scale scale, EdgeFit.Fitted contour, Care care) {
        this.care = care;
        this.picture = picture;
        this.scale = scale;
        focal = scale.focal();
        fit = scale.fit();
        view = scale.view();
        lengthMm = scale.lengthMm();
        this.contour = contour;
    }

    PhotoTrace.Traced answer() throws Unsure {
        RoundOutline outline = RoundOutline.of(view.contour(), view.start(), view.end(), lengthMm);
        List<FlatSections.Flat> flats = new FlatSections(picture, outline, view.contour(), scale.lens()).find();
        EdgesApart edges = new EdgesApart(outline, flats);
        double[] apart = edges.pixels();
        check(outline, apart);
        Cores.Work<FoundSquares.Seen> byTilting = Cores.begin(() -> other(0, view.tiltUncertainty()));
        FoundSquares.Seen farther = other(view.focalUncertainty(), 0);
        FoundSquares.Seen tilted = byTilting.done();
        FoundSquares squares = FoundSquares.of(
                flats, new FoundSquares.Seen(view.contour(), outline), List.of(farther, tilted), scale.uncertainty());
        List<Profile.Station> stations = new ArrayList<>();
        for (int k = 0; k < outline.count(); k++) {
            double byFocal = farther.outline().radiusMm(k) - outline.radiusMm(k);
            double byTilt = tilted.outline().radiusMm(k) - outline.radiusMm(k);
            double byEdge = edgeMm(outline, edges, k, apart[apart.length / 2]);
            double bySquare = squares.doubtMm(k);
            double byScale = scale.uncertainty() * outline.radiusMm(k);
            double byEnds = outline.ends().openMm(outline.placeMm(k), outline.radiusMm(k), slope(outline, k));
            stations.add(new Profile.Station(
                    Length.ofMm(outline.placeMm(k)),
                    Length.ofMm(squares.radiusMm(k)),
                    Length.ofMm(Math.sqrt(bySquare * bySquare
                            + byScale * byScale
                            + byEnds * byEnds
                            + byFocal * byFocal
                            + byTilt * byTilt
                            + byEdge * byEdge))));
        }
        double least = Math.max(0.4, outline.mmPerPixel());
        List<Profile.Stretch> hidden = squares.hidden(outline.hiddenStretches(least), least);
        List<Profile.Stretch> told = squares.hidden(outline.hiddenByEither(least), least);
        // What is told of a radius; members are fitted without it, for what moves all edges alike makes no member
        // another.
        Length byCamera = Length.ofMm(BY_CAMERA * outline.mmPerPixel());
        return new PhotoTrace.Traced(
                new Profile(
                                Length.ofMm(lengthMm),
                                stations,
                                HardlySeen.with(told, squares.stretches(), stations, outline.mmPerPixel()))
                        .lessSureBy(byCamera),
                new Profile(Length.ofMm(lengthMm), doubted(stations, outline), hidden),
                squares.stretches(),
                outline.mmPerPixel(),
                scale.from(),
                focal.from(),
                overlay(),
                warnings(outline, edges, squares));
    }

    /** Stations, those less sure that one edge alone was seen to hide. */
    private static List<Profile.Station> doubted(List<Profile.Station> stations, RoundOutline outline) {
        double by = BY_ONE_EDGE * outline.mmPerPixel();
        List<Profile.Station> out = new ArrayList<>();
        for (int k = 0; k < stations.size(); k++) {
            Profile.Station each = stations.get(k);
            out.add(outline.isHiddenByOne(k) ? each.lessSureBy(Length.ofMm(by)) : each);
        }
        return out;
    }

    /** What the less sure of the two edges is uncertain by over half of the length and more, pixels. */
    private static double lessSure(RoundOutline outline) {
        double[] doubts = new double[outline.count()];
        for (int k = 0; k < doubts.length; k++) {
            doubts[k] = outline.worseDoubt(k);
        }
        Arrays.sort(doubts);
        return doubts[doubts.length / 2];
    }

    /** A wrong trace is worse than none: refuses one whose edges do not belong together, or are too soft. */
    private void check(RoundOutline outline, double[] apart) throws Unsure {
        double widest = 0;
        for (int k = 0; k < outline.count(); k++) {
            widest = Math.max(widest, outline.radiusMm(k) / outline.mmPerPixel());
        }
        if (contour.softness() > Math.max(1.5, 0.08 * widest) || contour.softness() > 3.5) {
            throw new Unsure(
                    PhotoTrace.Reason.BLURRED,
                    "the piece's edges are blurred over some %.0f pixels".formatted(4 * contour.softness()),
                    contour.softness() > 0.08 * widest
                            ? "hold the camera still and let it focus on the piece"
                            : "make the picture smaller: it has more pixels than sharpness");
        }
        if (contour.sure() > care.share() * MOST_UNSURE * Math.max(1, contour.softness())) {
            throw new Unsure(
                    PhotoTrace.Reason.LIKE_GROUND,
                    "the piece and what lies behind it are so alike in colour and light that its edge may be a line of the ground's",
                    "take it on a plain ground of another colour");
        }
        if (lessSure(outline) > care.share() * LOST * Math.max(1, contour.softness())) {
            throw new Unsure(
                    PhotoTrace.Reason.LIKE_GROUND,
                    "one of the piece's edges is lost in what lies behind it over half of the length",
                    "take it on a plain ground of another colour, or in light that falls on both sides");
        }
        double most = apart[apart.length * 4 / 5];
        if (most > care.share() * Math.max(LEAST_APART, MOST_APART * widest)) {
            throw new Unsure(
                    PhotoTrace.Reason.NOT_ROUND,
                    ("the piece's two edges disagree by %.1f pixels and more over a fifth of its length: something of its colour,"
                                    + " or a shadow, was taken for the piece, or it is not round")
                            .formatted(most),
                    "take it on a plain ground of another colour, in light without hard shadows");
        }
        double hidden = outline.hiddenShare();
        if (hidden > MOST_HIDDEN) {
            throw new Unsure(
                    PhotoTrace.Reason.NOT_ROUND,
                    "as a round body %.0f per cent of it would hide behind thicker parts, so it is not one, or not all of it was found"
                            .formatted(100 * hidden),
                    "take it from farther off, whole, on a plain ground of another colour");
        }
        checkEnds();
    }

    private void checkEnds() throws Unsure {
        for (boolean start : new boolean[] {true, false}) {
            EndCap cap = start ? view.start() : view.end();
            if (cap.skew(view.contour(), start) > care.mostSkew(cap) * Math.max(1, contour.softness())) {
                throw new Unsure(
                        PhotoTrace.Reason.LIKE_GROUND,
                        "an end's outline is not alike on both sides of the axis: a shadow or the ground was taken for the piece there",
                        "take it on a plain ground of another colour, in light without hard shadows");
            }
            if (!cap.isPlaced()
                    && (cap.bulgesTooLittle()
                            || EndCap.face(view.contour(), start, EndEdge.SHARP).bulgesTooLittle())) {
                throw new Unsure(
                        PhotoTrace.Reason.NOT_ROUND,
                        "an end's outline is straighter than any round end's: something lies before it, or the piece was not followed to its end",
                        "take it again so that both ends are seen whole, on a plain ground of another colour");
            }
        }
    }

    private List<String> warnings(RoundOutline outline, EdgesApart edges, FoundSquares squares) {
        List<String> warnings = new ArrayList<>(scale.warnings());
        warnings.addAll(squares.words());
        if (focal.uncertainty() > 0.1) {
            warnings.add(
                    "the picture does not say what lens took it: places off its middle are the less sure; give the angle of view");
        }
        if (!view.start().flat() || !view.end().flat()) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "whether the camera was held square to the piece cannot be told from %s: a lean of %.1f° is allowed for",
                    view.start().flat() ? "its far end" : view.end().flat() ? "its start end" : "its ends",
                    Math.toDegrees(view.tiltUncertainty())));
        } else if (Math.abs(view.tilt()) > Math.toRadians(8)) {
            warnings.add("the piece leans %.0f° out of the picture: take it again squarely"
                    .formatted(Math.abs(Math.toDegrees(view.tilt()))));
        }
        double oneSided = outline.oneSidedShare(ONE_SIDED);
        if (oneSided > MUCH) {
            warnings.add(
                    "one edge is hardly told from the ground over %.0f per cent of the length: there the radii rest on the other edge"
                            .formatted(100 * oneSided));
        }
        int from = -1;
        double limit = Math.max(2, 4 * outline.noisePixels()) * outline.mmPerPixel();
        for (int k = 0; k <= outline.count(); k++) {
            boolean off = k < outline.count() && 2 * edges.openMm(k) > limit && !outline.isHidden(k);
            if (off && from < 0) {
                from = k;
            } else if (!off && from >= 0) {
                if (outline.placeMm(k - 1) - outline.placeMm(from) > 3) {
                    warnings.add("the two edges disagree from %.0f to %.0f mm: a shadow or something beside the piece"
                            .formatted(outline.placeMm(from), outline.placeMm(k - 1)));
                }
                from = -1;
            }
        }
        return warnings;
    }

    /** The outline for another focal length or tilt, the axis straightened for it. */
    private FoundSquares.Seen other(double logFocal, double tilt) throws Unsure {
        double f = view.logFocal() + logFocal;
        double t = view.tilt() + tilt;
        SquaredContour seen =
                fit.contour(fit.straightened(view.axis(), f, t), f, t).as(view.contour());
        return new FoundSquares.Seen(
                seen,
                RoundOutline.of(
                        seen, EndCap.again(view.start(), seen, true), EndCap.again(view.end(), seen, false), lengthMm));
    }

    /** What the edges themselves leave open: how they differ nearby and all over, and how steep the outline runs. */
    private static double edgeMm(RoundOutline outline, EdgesApart edges, int k, double usuallyApart) {
        double near = edges.nearMm(k, 6);
        double pixel = outline.mmPerPixel();
        double usual = pixel * Math.hypot(LEAST_PIXELS, USUAL * usuallyApart);
        double place = ALONG * pixel * Math.min(6, Math.abs(slope(outline, k)));
        return Math.sqrt(NEARBY * NEARBY * near * near + usual * usual + place * place);
    }

    /** dr/dx at a station. */
    private static double slope(RoundOutline outline, int k) {
        int before = Math.max(0, k - 1);
        int after = Math.min(outline.count() - 1, k + 1);
        return (outline.radiusMm(after) - outline.radiusMm(before))
                / Math.max(1e-9, outline.placeMm(after) - outline.placeMm(before));
    }

    private PhotoTrace.Overlay overlay() {
        Sight sight = view.contour().sight();
        double[][] left = view.contour().points(true);
        double[][] right = view.contour().points(false);
        return new PhotoTrace.Overlay(
                picture.width(),
                picture.height(),
                pixel(sight, left[0][0], 0),
                pixel(sight, left[0][left[0].length - 1], 0),
                pixels(sight, left),
                pixels(sight, right));
    }

    private PixelPoint pixel(Sight sight, double along, double across) {
        PixelPoint straight = sight.pixel(along, across);
        return scale.lens().bent(straight.x(), straight.y());
    }

    private List<PixelPoint> pixels(Sight sight, double[][] edge) {
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < edge[0].length; i++) {
            points.add(pixel(sight, edge[0][i], edge[1][i]));
        }
        return points;
    }
}
