package turnalike.photo;

import java.util.List;
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
            CameraData camera = CameraData.of(file.exif());
            go(effort, "reading the picture");
            FirstPasses passes = new FirstPasses();
            Picture picture = Picture.decode(bytes, file, camera.orientation(), passes);
            checkSize(picture);
            go(effort, "looking for the printed sheet");
            passes.finish(picture);
            FocalGuess focal = FocalGuess.of(wish.view(), camera, picture.width(), picture.height());
            Cores.Work<SheetReading> looked =
                    Cores.begin(() -> SheetReading.of(picture, passes.grey(), focal, wish.sheet()));
            CoarsePicture whole = passes.whole();
            Optional<PointedPlace> pointed = PointedPlace.of(wish.ends(), whole.block());
            // Most pictures show no sheet: while it is looked for, the piece is, as if there were none.
            Optional<Cores.Work<BodySearch.Found>> bare =
                    wish.span().isPresent() || wish.sheet().without().isPresent()
                            ? Optional.of(Cores.held(() -> BodySearch.find(whole, Optional.empty(), pointed)))
                            : Optional.empty();
            SheetReading sheet = looked.done();
            Optional<Length> span = wish.span()
                    .or(() -> sheet.relied().isPresent()
                            ? Optional.empty()
                            : wish.sheet().without());
            checkScale(sheet, span);
            go(effort, "finding the piece");
            CoarseColour colour = CoarseColour.of(file, camera.orientation());
            Asked asked = new Asked(picture, colour, focal, sheet, span, wish, effort);
            if (sheet.view().isPresent()) {
                return traced(BodySearch.find(whole, sheet.view(), pointed), asked, Care.USUAL);
            }
            SecondLook.Search search =
                    () -> bare.isPresent() ? bare.orElseThrow().done() : BodySearch.find(whole, sheet.view(), pointed);
            // Where somebody pointed there is nothing else to look at.
            return pointed.isPresent()
                    ? traced(search.found(), asked, Care.USUAL)
                    : SecondLook.trace(
                            whole,
                            search,
                            (found, care) -> traced(found, asked, care),
                            least -> inLessGrain(asked, least));
        } catch (Unsure unsure) {
            return unsure.answer();
        }
    }

    /** A piece with some ground on both sides of it is thicker than this in any picture that says something of it. */
    private static void checkSize(Picture picture) throws Unsure {
        if (Math.min(picture.width(), picture.height()) < LEAST_ACROSS + 2) {
            throw new Unsure(
                    PhotoTrace.Reason.TOO_SMALL,
                    "the picture is only %d by %d pixels".formatted(picture.width(), picture.height()),
                    "take a picture with more pixels");
        }
    }

    /** What is traced, and what is known of it. */
    private record Asked(
            Picture picture,
            CoarseColour colour,
            FocalGuess focal,
            SheetReading sheet,
            Optional<Length> span,
            PhotoWish wish,
            Effort effort) {
        /** The same of the picture made so many times smaller. */
        Asked smaller(int factor) {
            return new Asked(
                    PictureNoise.reduced(picture, factor),
                    colour.smaller(factor),
                    focal.smaller(factor),
                    sheet,
                    span,
                    wish,
                    effort);
        }
    }

    /** The trace of a picture with much grain that was made smaller. */
    private static Optional<PhotoTrace> inLessGrain(Asked asked, double leastLong) throws Unsure {
        if (!PictureNoise.isMuch(asked.picture)) {
            return Optional.empty();
        }
        int most = PictureNoise.mostSmaller(asked.picture);
        for (int factor = 2; factor <= most; factor++) {
            Asked small = asked.smaller(factor);
            Optional<PhotoTrace.Traced> trace = SecondLook.shortly(
                    CoarsePicture.of(small.picture), leastLong / factor, (found, care) -> traced(found, small, care));
            if (trace.isPresent()) {
                return Optional.of(PictureNoise.ofWhole(trace.orElseThrow(), factor, asked.picture));
            }
        }
        return Optional.empty();
    }

    private static PhotoTrace.Traced traced(BodySearch.Found found, Asked asked, Care care) throws Unsure {
        Picture picture = asked.picture;
        PhotoWish wish = asked.wish;
        SheetReading sheet = asked.sheet;
        go(asked.effort, "following its edges");
        CoarsePicture coarse = found.coarse();
        EdgeFit.Fitted contour = contour(picture, coarse, found.body(), asked.colour);
        go(asked.effort, "working out where the camera stood");
        Sight.AxisLine axis = directed(found.body(), coarse.block(), wish.ends());
        PointedScale scaled = sheet.relied().isPresent()
                ? bySheet(picture, sheet, wish, contour, axis)
                : bySpan(picture, asked.focal, asked.span.orElseThrow(), contour, axis, wish.ends());
        Scale scale = scaled.scale().warned(sheet.trouble().map(what -> what + ": it was not used"));
        return scaled.ends().cut(new TraceReport(picture, scale, contour, care).answer());
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

    /** The view with its size, and where the ends that somebody pointed at lie on it. */
    private record PointedScale(Scale scale, PointedEnds ends) {}

    private static PointedScale bySpan(
            Picture picture,
            FocalGuess focal,
            Length span,
            EdgeFit.Fitted contour,
            Sight.AxisLine axis,
            Optional<PhotoWish.Ends> pointed)
            throws Unsure {
        ViewFit fit = new ViewFit(
                contour.x(),
                contour.y(),
                contour.doubts(),
                picture.width(),
                picture.height(),
                focal,
                ViewFit.TiltGuess.BY_EYE);
        Lens lens = Lens.none(picture.width(), picture.height());
        ViewFit.View rounds = fit.fit(axis, picture, lens);
        SquaredView squared = SquaredView.of(picture, lens, fit, rounds, span.mm());
        PointedEnds ends = PointedEnds.apart(span, squared.view(), lens, pointed);
        Scale scale = new Scale(
                squared.fit(),
                squared.view(),
                focal,
                lens,
                ends.wholeMm(),
                0,
                "the overall length that was given",
                List.of());
        return new PointedScale(scale, ends);
    }

    private static PointedScale bySheet(
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
        Scale alone = new SheetScale(picture, sheet, wish, straight, contour.doubts())
                .scale(new Sight.AxisLine(on.x(), on.y(), axis.angle()));
        PointedEnds ends = PointedEnds.on(alone.lengthMm(), alone.view(), lens, wish.ends());
        // What was given is the length between the ends pointed at; the sheet has that of all that was found.
        Scale checked = alone.checkedBy(wish.span().map(ends::wholeFor));
        return new PointedScale(checked, PointedEnds.on(checked.lengthMm(), checked.view(), lens, wish.ends()));
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
        Sight.AxisLine axis = new Sight.AxisLine(body.x() * block, body.y() * block, body.angle());
        return new EdgeFit(picture, coarseColour, axis, best[0], best[1]).fit();
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
