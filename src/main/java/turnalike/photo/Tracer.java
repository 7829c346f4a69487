package turnalike.photo;

import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.effort.Progress;
import turnalike.units.Length;

/** The stages one after the other: file, picture, body, contour, view, profile. */
final class Tracer {
    /** Fewer pixels than this from edge to edge say little of a shape. */
    private static final double LEAST_ACROSS = 16;

    private Tracer() {}

    static PhotoTrace trace(byte[] bytes, PhotoWish wish, Effort effort) {
        try {
            PictureFile file = PictureFile.read(bytes);
            Length span = wish.span()
                    .orElseThrow(() -> new Unsure(
                            PhotoTrace.Reason.NO_SCALE,
                            "nothing says how large the piece is",
                            "give its overall length with --span"));
            CameraData camera = CameraData.of(file.exif());
            go(effort, "reading the picture");
            Picture picture = Picture.decode(bytes, file, camera.orientation());
            go(effort, "finding the piece");
            CoarsePicture coarse = CoarsePicture.of(picture);
            BodyFinder.Body body = BodyFinder.find(coarse, PointedPlace.of(wish.ends(), coarse.block()));
            go(effort, "following its edges");
            EdgeFit.Fitted contour = contour(picture, coarse, body, CoarseColour.of(file, camera.orientation()));
            go(effort, "working out where the camera stood");
            FocalGuess focal = FocalGuess.of(wish.view(), camera, picture.width(), picture.height());
            ViewFit fit = new ViewFit(contour.x(), contour.y(), picture.width(), picture.height(), focal);
            ViewFit.View view = fit.fit(directed(body, coarse.block(), wish.ends()));
            PointedEnds ends = PointedEnds.of(view, span, wish.ends());
            return ends.cut(new TraceReport(picture, focal, fit, view, ends.whole(), contour).answer());
        } catch (Unsure unsure) {
            return unsure.answer();
        }
    }

    private static void go(Effort effort, String next) throws Unsure {
        effort.report(new Progress(next, 0, 0));
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
