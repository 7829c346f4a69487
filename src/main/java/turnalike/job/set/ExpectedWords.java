package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import turnalike.frame.Moment;
import turnalike.match.Expected;
import turnalike.match.WheelPlacement;
import turnalike.units.Listing;

/** What the unbalance is likely to be, in words: the range, what it is made of, and what to measure next. */
final class ExpectedWords {
    /** More pieces than these are counted, not named. */
    private static final int NAMED = 6;

    /** What gains less than this share of the expected unbalance is not worth a measurement (common practice, no source). */
    private static final double WORTH_MEASURING = 0.1;

    private ExpectedWords() {}

    static List<String> of(WheelPlacement placement) {
        Expected expected = placement.expected();
        List<String> out = new ArrayList<>();
        if (expected.unseenGMm() == 0) {
            return out;
        }
        out.add(said(
                "with all that may be off expect %s g·mm; nine wheels of ten lie between %s and %s",
                Moment.figure(expected.meanGMm()), Moment.figure(expected.fromGMm()), Moment.figure(expected.toGMm())));
        double squares = expected.noiseGMm() * expected.noiseGMm();
        out.add("what may be off, by its share in that: "
                + expected.shares().stream()
                        .sorted(Comparator.comparingDouble(share -> -share.rmsGMm()))
                        .map(share -> said(
                                "%s %s %% (%s)",
                                share.from(), percent(share.rmsGMm() * share.rmsGMm() / squares), share.stated()))
                        .collect(Collectors.joining("; ")));
        expected.next()
                .filter(next -> next.expectedGMm() < expected.meanGMm() * (1 - WORTH_MEASURING))
                .ifPresent(next -> out.add(said(
                        "measure next the balance points of piece %s: with all measured and the set placed anew expect %s g·mm",
                        named(next.pieces()), Moment.figure(next.expectedGMm()))));
        if (!placement.isHeavyOnOneSide() && !placement.isWithinScale()) {
            out.add(
                    "which side is heavy shows only when the wheel comes to rest on its axle: cut a counterweight by that");
        }
        return out;
    }

    private static String named(List<String> pieces) {
        return Listing.of(pieces, NAMED);
    }

    private static String percent(double share) {
        double whole = 100 * share;
        return whole > 0 && whole < 1 ? "under 1" : said("%.0f", whole);
    }

    private static String said(String text, Object... values) {
        return String.format(Locale.ROOT, text, values);
    }
}
