package turnalike.photo;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the picture's sheet says, if one lies in it.
 *
 * @param view where it lies; empty where none was found, or too little of it
 * @param trouble why it is not to be relied on, in words; empty if it is
 * @param squares what was seen
 * @param focal what was thought of the focal length before
 */
record SheetReading(Optional<SheetView> view, Optional<String> trouble, List<SeenSquare> squares, FocalGuess focal) {
    /** Fewer squares than this tell scale and place badly. */
    private static final int LEAST_SQUARES = 3;

    /** Corners off by more than both of these say that the sheet is not flat, or not as it was printed; by trying. */
    private static final double MOST_PIXELS = 0.6;

    private static final double MOST_MM = 0.25;

    SheetReading {
        squares = List.copyOf(squares);
    }

    /** Looks for it. */
    static SheetReading of(Picture picture, GreyLines grey, FocalGuess focal, PhotoWish.OnSheet wish) {
        List<SeenSquare> squares = SquareFinder.find(picture, grey);
        if (squares.isEmpty()) {
            return new SheetReading(Optional.empty(), Optional.empty(), squares, focal);
        }
        if (squares.size() < LEAST_SQUARES) {
            return new SheetReading(
                    Optional.empty(),
                    Optional.of("only %d of the sheet's numbered squares %s seen whole"
                            .formatted(squares.size(), squares.size() == 1 ? "was" : "were")),
                    squares,
                    focal);
        }
        SheetView view = new SheetFit(squares, picture.width(), picture.height(), focal, wish.size()).fit();
        double mm = view.missPixels() * view.mmPerPixel();
        Optional<String> trouble = view.missPixels() > MOST_PIXELS && mm > MOST_MM
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "the sheet's squares stand %.1f pixels, %.1f mm, off where a flat sheet has them: it is bent, or its pages do not lie on one"
                                + " flat top",
                        view.missPixels(),
                        mm))
                : Optional.empty();
        return new SheetReading(Optional.of(view), trouble, squares, focal);
    }

    /** The view to rely on. */
    Optional<SheetView> relied() {
        return trouble.isEmpty() ? view : Optional.empty();
    }

    /** The sheet's view once the focal length is known from elsewhere. */
    SheetView withFocal(double pixels, Picture picture, PhotoWish.OnSheet wish) {
        FocalGuess known = new FocalGuess(pixels, 1e-5, focal.from());
        return new SheetFit(squares, picture.width(), picture.height(), known, wish.size()).fit();
    }
}
