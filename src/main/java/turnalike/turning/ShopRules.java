package turnalike.turning;

import turnalike.pattern.CurveRules;
import turnalike.pattern.ShapeRules;
import turnalike.units.Force;
import turnalike.units.Length;
import turnalike.units.Speed;

/**
 * The rules of thumb that the advice about turning goes by, all in one place. Each usual value is common practice, no source; a job may set
 * its own, and where a shop has rules or a teacher, theirs come first.
 *
 * @param chart the speeds for round work by its diameter
 * @param ceiling no faster than this, whatever the diameter
 * @param outOfRound the share of the chart's speed for the width across the flats while the piece is square or out of round, or keeps
 *     square parts; above 0, at most 1
 * @param longWork no faster than this for a blank {@link #LONG} long, others in inverse proportion to their length
 * @param whipShare the share of a natural speed that is not passed; above 0, at most 1. Wood of one kind differs in stiffness by a fifth and
 *     more, and centres are not as stiff as they are reckoned
 * @param steadyFrom a piece shorter than so many of its greatest diameters wants no steady rest
 * @param roughingGouge a thinner blank is roughed with a spindle gouge: a roughing gouge is wider than the work, and its edge catches the corners
 * @param pencil nothing thinner is parted down to: it breaks or is wrung off
 * @param parting the width of a sizing cut
 * @param overhang without a tailstock a piece stands out of its hold by no more than so many of its greatest diameters
 * @param centring how far off its middle a blank runs, milling and centring together; twice of it is lost of the largest round
 * @param strengthMargin the plain cut bends the wood with no more than its strength over this, 1 or more: what breaks a neck is a dig, several
 *     times the plain cutting force
 * @param thrustShare a tailstock of which nothing is told presses with this share of what bows the piece; above 0, at most 1
 * @param thrustMost and with no more than this: it is eased as the piece grows thin, tens of newtons on a slender piece and some hundreds on
 *     a stout one
 * @param shapes from where on a shape is warned of
 * @param slender which stretches are slender
 * @param curves what counts as a peak, a step and a line of its own on a curve through points
 */
public record ShopRules(
        SpeedChart chart,
        Speed ceiling,
        double outOfRound,
        Speed longWork,
        double whipShare,
        double steadyFrom,
        Length roughingGouge,
        Length pencil,
        Length parting,
        double overhang,
        Length centring,
        double strengthMargin,
        double thrustShare,
        Force thrustMost,
        ShapeRules shapes,
        SlenderRules slender,
        CurveRules curves) {
    /** Seven feet, a post's height: the length that {@link #longWork} is told for. */
    public static final Length LONG = Length.ofInches(84);

    /** What a job that sets none goes by. Common practice, no source, each of them. */
    public static final ShopRules USUAL = new ShopRules(
            SpeedChart.USUAL,
            Speed.ofRpm(3500),
            0.5,
            Speed.ofRpm(600),
            0.5,
            8,
            Length.ofMm(20),
            Length.ofMm(7),
            Length.ofMm(3),
            4,
            Length.ofInches(1 / 64.0),
            4,
            0.1,
            Force.ofNewtons(300),
            ShapeRules.USUAL,
            SlenderRules.USUAL,
            CurveRules.USUAL);

    public ShopRules {
        share("outOfRound", outOfRound);
        share("whipShare", whipShare);
        share("thrustShare", thrustShare);
        if (!(strengthMargin >= 1)) {
            throw new IllegalArgumentException("strengthMargin must be 1 or more, was %s".formatted(strengthMargin));
        }
    }

    private static void share(String name, double value) {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException("%s must be above 0 and at most 1, was %s".formatted(name, value));
        }
    }

    /**
     * {@return the largest round that a blank cleans up to}
     *
     * @param across the blank's flats, or its diameter
     */
    public Length largestRound(Length across) {
        return across.minus(centring.times(2));
    }

    /** The most for a blank of that length. */
    Speed mostFor(Length length) {
        return longWork.times(LONG.mm() / length.mm());
    }
}
