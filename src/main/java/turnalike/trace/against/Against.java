package turnalike.trace.against;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.pattern.Pattern;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.against.Comparison.Held;
import turnalike.units.Length;

/**
 * Lays a finished piece beside its pattern. Which way round it lay and roughly where its edges stand comes from {@link RoughShifts}, their
 * places and thicknesses from {@link BendFit}. Work grows with the stations, and with the square of the members.
 */
public final class Against {
    /** One way round is told from the other when it fits so much better. */
    private static final double CLEARLY = 0.8;

    private Against() {}

    /**
     * How what was seen is to be taken.
     *
     * @param held the end that piece and pattern are laid together at
     * @param together whether errors of radii go together along the piece, as those of a photograph do, so that many are no surer than one
     * @param squaresTell whether sides left square were measured across their flats
     */
    public record Manner(Held held, boolean together, boolean squaresTell) {}

    /**
     * {@return the piece beside the pattern}
     *
     * @param original the piece as it was seen or measured
     * @param pattern what it was to be
     * @param manner how what was seen is to be taken
     */
    public static Comparison of(Original original, Pattern pattern, Manner manner) {
        Bend bend = Bend.of(pattern);
        double[] edges = edges(bend);
        Profile profile = original.profile();
        Profile turned = Seen.turned(profile);
        RoughShifts asItLay = rough(original, profile, edges, bend);
        RoughShifts otherWay = rough(original, turned, edges, bend);
        boolean turn = otherWay.cost() < CLEARLY * asItLay.cost();
        boolean clear = turn || asItLay.cost() < CLEARLY * otherWay.cost();
        Seen seen = Seen.of(turn ? turned : profile, original.surest().mm());
        BendFit fit = new BendFit(bend, seen, (turn ? otherWay : asItLay).shiftMm(), manner).fit();
        return new Told(pattern, bend, fit, seen, manner).comparison(turn ? turned : profile, turn, !clear);
    }

    private static RoughShifts rough(Original original, Profile profile, double[] edges, Bend bend) {
        double longer = profile.length().mm() - edges[edges.length - 1];
        Seen seen = Seen.of(profile, original.surest().mm());
        return RoughShifts.of(edges, new BentLine(bend), seen, 0, longer);
    }

    private static double[] edges(Bend bend) {
        List<Double> out = new ArrayList<>(List.of(0.0));
        bend.stretches().forEach(each -> out.add(bend.spotMm()[each.lastSpot()]));
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** {@return a length as long as that, or none} */
    static Optional<Figure> figure(double mm, double sigmaMm) {
        return Optional.of(new Figure(Length.ofMm(mm), Length.ofMm(sigmaMm)));
    }
}
