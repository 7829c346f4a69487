package turnalike.photo;

import java.util.List;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.units.Length;

/** The stages one after the other: file, picture, body, contour, view, profile. */
final class Tracer {
    /** Fewer pixels than this from edge to edge say little of a shape. */
    private static final double LEAST_ACROSS = 16;

    private Tracer() {}

    static PhotoTrace trace(byte[] bytes, PhotoWish wish, Effort effort) {
        try {
            PictureFile file = PictureFile.read(bytes);
            CameraData camera = CameraData.of(file.exif());
            Picture picture = Picture.decode(bytes, file, camera.orientation());
            go(effort);
            FocalGuess focal = FocalGuess.of(wish.view(), camera, picture.width(), picture.height());
            SheetReading sheet = SheetReading.of(picture, focal, wish.sheet());
            Optional<Length> span = wish.span()
                    .or(() -> sheet.relied().isPresent()
                            ? Optional.empty()
                            : wish.sheet().without());
            checkScale(sheet, span);
            go(effort);
            BodySearch.Found found = BodySearch.find(CoarsePicture.of(picture), sheet.view());
            go(effort);
            CoarsePicture coarse = found.coarse();
            EdgeFit.Fitted contour =
                    contour(picture, coarse, found.body(), CoarseColour.of(file, camera.orientation()));
            go(effort);
            Sight.AxisLine axis = directed(found.body(), coarse.block(), wish.ends());
            Scale scale = sheet.relied().isPresent()
                    ? bySheet(picture, sheet, wish, contour, axis)
                    : bySpan(picture, focal, span.orElseThrow(), contour, axis);
            return new TraceReport(
                            picture, scale.warned(sheet.trouble().map(what -> what + ": it was not used")), contour)
                    .answer();
        } catch (Unsure unsure) {
            return unsure.answer();
        }
    }

    private static void checkScale(SheetReading sheet, Optional<Length> span) throws Unsure {
        if (span.isEmpty() && sheet.relied().isEmpty()) {
            if (sheet.trouble().isPresent()) {
                throw new Unsure(
                        PhotoTrace.Reason.SHEET,
                        sheet.trouble().orElseThrow(),
                        "tape the pages down flat, keep three squares and more in sight, or give the piece's overall length with --span");
            }
            throw new Unsure(
                    PhotoTrace.Reason.NO_SCALE,
                    "nothing says how large the piece is",
                    "give its overall length with --span, or take it on the printed sheet");
        }
    }

    private static Scale bySpan(
            Picture picture, FocalGuess focal, Length span, EdgeFit.Fitted contour, Sight.AxisLine axis) throws Unsure {
        ViewFit fit = new ViewFit(
                contour.x(), contour.y(), picture.width(), picture.height(), focal, ViewFit.TiltGuess.BY_EYE);
        return new Scale(
                fit,
                fit.fit(axis),
                focal,
                Lens.none(picture.width(), picture.height()),
                span.mm(),
                0,
                "the overall length that was given",
                List.of());
    }

    private static Scale bySheet(
            Picture picture, SheetReading sheet, PhotoWish wish, EdgeFit.Fitted contour, Sight.AxisLine axis)
            throws Unsure {
        Lens lens = sheet.relied().orElseThrow().lens();
        double[][] straight = new double[2][contour.x().length];
        for (int i = 0; i < straight[0].length; i++) {
            PixelPoint point = lens.straight(contour.x()[i], contour.y()[i]);
            straight[0][i] = point.x();
            straight[1][i] = point.y();
        }
        PixelPoint on = lens.straight(axis.x(), axis.y());
        return new SheetScale(picture, sheet, wish, straight)
                .scale(new Sight.AxisLine(on.x(), on.y(), axis.angle()))
                .checkedBy(wish.span());
    }

    private static void go(Effort effort) throws Unsure {
        if (effort.spent()) {
            throw new Unsure(PhotoTrace.Reason.STOPPED, "it was stopped before the end", "give it more time");
        }
    }

    private static EdgeFit.Fitted contour(
            Picture picture, CoarsePicture coarse, BodyFinder.Body body, CoarseColour coarseColour) throws Unsure {
        int block = coarse.block();
        if (2 * body.widest() * block < LEAST_ACROSS) {
            throw new Unsure(
                    PhotoTrace.Reason.TOO_SMALL,
                    "the piece is only %d pixels thick in the picture".formatted(Math.round(2 * body.widest() * block)),
                    "come nearer, or take a picture with more pixels");
        }
        LocalColours colours = new LocalColours(picture, coarse, body.mask());
        double middle = (body.from() + body.to()) / 2;
        int most = 40 * (picture.width() + picture.height());
        double[][] best = new double[2][0];
        for (double part : new double[] {0, 0.2, -0.2}) {
            double along = middle + part * (body.to() - body.from());
            int x = (int) ((body.x() + along * Math.cos(body.angle())) * block);
            int y = (int) ((body.y() + along * Math.sin(body.angle())) * block);
            boolean upright = Math.abs(Math.sin(body.angle())) > Math.sqrt(0.5);
            double[][] walk = new ContourWalk(colours).around(x, y, upright ? 1 : 0, upright ? 0 : -1, most);
            if (walk[0].length > best[0].length) {
                best = walk;
            }
            if (best[0].length > 1.8 * (body.to() - body.from()) * block) {
                break;
            }
        }
        if (best[0].length < 1.5 * (body.to() - body.from()) * block) {
            throw new Unsure(
                    PhotoTrace.Reason.NO_PIECE,
                    "the piece's edge could not be followed all round",
                    "take it on a plain ground of another colour, whole in the picture");
        }
        return new EdgeFit(colours, coarseColour, best[0], best[1]).fit();
    }

    /** The axis as first found, from the end that the profile begins at. */
    private static Sight.AxisLine directed(BodyFinder.Body body, int block, Optional<PhotoWish.Ends> ends) {
        double cos = Math.cos(body.angle());
        double sin = Math.sin(body.angle());
        double forward;
        if (ends.isPresent()) {
            PhotoWish.Ends both = ends.orElseThrow();
            forward = (both.end().x() - both.start().x()) * cos
                    + (both.end().y() - both.start().y()) * sin;
        } else {
            forward = Math.abs(cos) >= Math.abs(sin) ? cos : sin;
        }
        return new Sight.AxisLine(body.x() * block, body.y() * block, body.angle() + (forward < 0 ? Math.PI : 0));
    }
}
