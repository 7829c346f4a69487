package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Scale and pose of a piece from the sheet that it lies on: view, shape and what it rests on by turns, until they agree. */
final class SheetScale {
    /** How level a bench is and how flat paper lies under a piece, radians; by trying. */
    private static final double LYING = Math.toRadians(0.3);

    /** A piece held level by eye. */
    private static final double HELD = Math.toRadians(1.5);

    /** What the height of the axis above the sheet is uncertain by, mm: paper, bench and what a piece rests on. */
    private static final double HEIGHT_MM = 0.5;

    /** What a printer's length is uncertain by if nobody measured, and a bar measured with a rule; common practice, no source. */
    private static final double PRINTED = 0.001;

    private static final double MEASURED = 0.0015;

    /** Where only the shape is asked for. */
    private static final double ROUGHLY_MM = 400;

    private final Picture picture;

    private final SheetReading reading;

    private final PhotoWish wish;

    private final double[][] contour;

    private final double[] doubts;

    private final FocalGuess focal;

    /** A closed contour, straightened, and what each of its points is uncertain by, pixels. */
    SheetScale(Picture picture, SheetReading reading, PhotoWish wish, double[][] contour, double[] doubts) {
        this.picture = picture;
        this.reading = reading;
        this.wish = wish;
        this.contour = contour;
        this.doubts = doubts;
        SheetView sheet = reading.relied().orElseThrow();
        focal = new FocalGuess(
                sheet.focal(),
                Math.max(0.003, sheet.focalUncertainty()),
                reading.focal().from() + ", and the sheet's squares");
    }

    /** The view of the piece with what the sheet says of its size. */
    Scale scale(Sight.AxisLine guess) throws Unsure {
        SheetView sheet = reading.relied().orElseThrow();
        boolean lying = wish.sheet().height().isEmpty();
        LyingAxis first = LyingAxis.held(sheet, sight(sheet.focal(), guess), lying ? 0 : heightMm());
        ViewFit fit = fit(new ViewFit.TiltGuess(first.tilt(), HELD));
        // Lying, it is fitted three times more: the rims need be read the last time only.
        ViewFit.View view = lying ? fit.fit(guess) : fit.fit(guess, picture, sheet.lens());
        LyingAxis axis = first;
        for (int round = 0; lying && round < 3; round++) {
            RoundOutline outline = RoundOutline.of(view.contour(), view.start(), view.end(), ROUGHLY_MM);
            axis = LyingAxis.resting(
                    sheet,
                    sight(view.contour().sight().focal(), view.axis()),
                    LyingAxis.rest(outline, shares(outline, view, sheet.lens())));
            fit = fit(new ViewFit.TiltGuess(axis.tilt(), LYING));
            view = round < 2 ? fit.fit(view.axis()) : fit.fit(view.axis(), picture, sheet.lens());
        }
        SquaredView squared = SquaredView.of(picture, sheet.lens(), fit, view, ROUGHLY_MM);
        fit = squared.fit();
        view = squared.view();
        double lengthMm = lengthMm(view, 0);
        double farther = lengthMm(view, view.focalUncertainty()) / lengthMm - 1;
        double height = HEIGHT_MM / (sheet.cameraMm() - heightNow(view, sheet));
        double corners = sheet.missPixels() * sheet.mmPerPixel() / lengthMm;
        double printed = wish.sheet().bar().isPresent() ? MEASURED : PRINTED;
        double uncertainty = Math.sqrt(farther * farther + height * height + corners * corners + printed * printed);
        return new Scale(
                fit, view, focal, sheet.lens(), lengthMm, uncertainty, from(sheet, uncertainty), warnings(view, axis));
    }

    private double heightMm() {
        return wish.sheet().height().orElseThrow().mm();
    }

    private double heightNow(ViewFit.View view, SheetView sheet) {
        double widest = 0;
        for (boolean left : new boolean[] {true, false}) {
            for (double across : view.contour().points(left)[1]) {
                widest = Math.max(widest, Math.abs(across));
            }
        }
        return wish.sheet().height().isPresent() ? heightMm() : widest * sheet.cameraMm();
    }

    private ViewFit fit(ViewFit.TiltGuess tilt) {
        return new ViewFit(contour[0], contour[1], doubts, picture.width(), picture.height(), focal, tilt);
    }

    private Sight sight(double pixels, Sight.AxisLine axis) {
        return new Sight(pixels, picture.width(), picture.height(), axis, 0);
    }

    /** The length by the sheet, if the focal length were by so much larger, in its logarithm, than the view has it. */
    private double lengthMm(ViewFit.View view, double more) throws Unsure {
        double pixels = view.contour().sight().focal() * Math.exp(more);
        SheetView sheet = reading.withFocal(pixels, picture, wish.sheet());
        RoundOutline outline = RoundOutline.of(view.contour(), view.start(), view.end(), ROUGHLY_MM);
        Sight sight = sight(pixels, view.axis());
        LyingAxis axis = wish.sheet().height().isPresent()
                ? LyingAxis.held(sheet, sight, heightMm())
                : LyingAxis.resting(sheet, sight, LyingAxis.rest(outline, shares(outline, view, sheet.lens())));
        // With another focal length the same pixels are so many units less.
        double units = (outline.alongUnits(outline.count() - 1) - outline.alongUnits(0)) / Math.exp(more);
        return axis.distanceMm() * units;
    }

    /** What a flat's half side is of the radius that a round of its width would have. */
    private double[] shares(RoundOutline outline, ViewFit.View view, Lens lens) {
        double[] share = new double[outline.count()];
        Arrays.fill(share, 1);
        for (FlatSections.Flat flat : new FlatSections(picture, outline, view.contour(), lens).find()) {
            Arrays.fill(share, flat.from(), flat.to() + 1, flat.sure() ? flat.share() : 1);
        }
        return share;
    }

    private String from(SheetView sheet, double uncertainty) {
        return String.format(
                Locale.ROOT,
                "the printed sheet: %d squares, off by %.2f pixels; lengths within about %.1f %%%s",
                sheet.squares(),
                sheet.missPixels(),
                100 * uncertainty,
                wish.sheet().bar().isPresent() ? "" : ", if its bar is 100 mm long");
    }

    private List<String> warnings(ViewFit.View view, LyingAxis axis) {
        List<String> warnings = new ArrayList<>();
        double off = Math.toDegrees(Math.abs(view.tilt() - axis.tilt()));
        if (wish.sheet().height().isEmpty() && off > 0.5) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "its ends look as if it leaned %.1f° against the sheet: lay it down, or say how high its axis is with --height",
                    off));
        }
        return warnings;
    }
}
