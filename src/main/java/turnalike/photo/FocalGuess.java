package turnalike.photo;

import java.util.Optional;
import turnalike.units.Angle;

/**
 * What is thought of the focal length before the picture itself is asked.
 *
 * @param pixels the guess
 * @param uncertainty of its logarithm, one standard deviation
 * @param from where it comes from, in words
 */
record FocalGuess(double pixels, double uncertainty, String from) {
    /**
     * What a lens is taken to have of which nothing is said, as on 36 mm film: a phone's main one has some 27 mm, but a picture without the camera's data
     * has often been cut down, which is as if by a longer lens, and larger cameras have 50 mm; common practice, no source.
     */
    private static final double USUAL_EQUIVALENT = 35;

    private static final double ITS_UNCERTAINTY = 0.35;

    /** In the picture made so many times smaller. */
    FocalGuess smaller(int factor) {
        return new FocalGuess(pixels / factor, uncertainty, from);
    }

    static FocalGuess of(Optional<Angle> view, CameraData camera, int width, int height) {
        double longer = Math.max(width, height);
        if (view.isPresent()) {
            double half = view.orElseThrow().radians() / 2;
            return new FocalGuess(longer / 2 / Math.tan(half), 0.01, "the angle of view that was given");
        }
        // By the film's width or by its diagonal: the middle of both, and both are within.
        double byWidth = longer / 36;
        double byDiagonal = Math.hypot(width, height) / Math.hypot(36, 24);
        double perMm = Math.sqrt(byWidth * byDiagonal);
        if (camera.equivalentMm().isPresent()) {
            return new FocalGuess(
                    camera.equivalentMm().getAsDouble() * perMm,
                    0.03,
                    "the camera's data: as a lens of "
                            + Math.round(camera.equivalentMm().getAsDouble())
                            + " mm on film");
        }
        return new FocalGuess(
                USUAL_EQUIVALENT * perMm,
                ITS_UNCERTAINTY,
                "a guess: the picture's file says nothing of the lens, a middling one is taken");
    }
}
