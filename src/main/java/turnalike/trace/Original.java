package turnalike.trace;

import java.util.List;
import turnalike.trace.Profile.Stretch;
import turnalike.units.Length;

/**
 * An original as it was read: its profile, and what its source tells besides.
 *
 * @param profile what was seen or measured
 * @param squares stretches left square, in order, apart from one another
 * @param surest no radius is taken to be known better than this, one standard deviation; above zero
 * @param fitted the stations that members are fitted to, of the same length: of a drawing, which may have thousands, a choice
 * @param pixel what of the piece a pixel shows; zero where it was not read from a picture
 */
public record Original(Profile profile, List<Stretch> squares, Length surest, Profile fitted, Length pixel) {
    /**
     * An original whose members are fitted to all that was read, each radius of which strays by itself.
     *
     * @param profile what was seen or measured
     * @param squares stretches left square, in order, apart from one another
     * @param surest no radius is taken to be known better than this, one standard deviation; above zero
     */
    public Original(Profile profile, List<Stretch> squares, Length surest) {
        this(profile, squares, surest, profile, Length.ZERO);
    }

    private static final double COARSE = 0.025;

    public Original {
        squares = List.copyOf(squares);
        if (!surest.isPositive()) {
            throw new IllegalArgumentException(
                    "every radius is uncertain by something, was %s mm".formatted(surest.mm()));
        }
        for (int i = 1; i < squares.size(); i++) {
            if (squares.get(i).from().mm() < squares.get(i - 1).to().mm()) {
                throw new IllegalArgumentException("squares stand in order, apart, %s does not".formatted(i));
            }
        }
    }

    /**
     * Whether a picture shows it so small that no name is sure: radii are known no better than a fortieth of the greatest. Set on a made picture
     * in four sizes: from there on downwards coves came out as vees and fillets as beads.
     *
     * @param scatter one standard deviation of a radius
     * @return false for what was measured or drawn
     */
    public boolean isCoarse(Length scatter) {
        return pixel.isPositive()
                && scatter.mm() > COARSE * fitted.largestRadius().mm();
    }
}
