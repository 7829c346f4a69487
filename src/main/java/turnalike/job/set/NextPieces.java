package turnalike.job.set;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import turnalike.match.NextSet;
import turnalike.match.WorkMass;
import turnalike.pieces.Piece;
import turnalike.units.Mass;
import turnalike.units.WeighingScale;

/**
 * What the left-over pieces are good for: the most of them that keep within the mass tolerance, toward the next set.
 *
 * @param pieces labels of the spares to keep together, lightest first; at least one
 * @param next how many more that set needs, and what they should weigh
 */
public record NextPieces(List<String> pieces, NextSet next) {
    /** A piece left over, weighed. */
    record Spare(String label, Mass mass) {}

    /** Less than this beside the work's mean is no other aim: a twentieth of its scatter. */
    private static final double SAME_SHARE = 0.05;

    private static final int MOST_DECIMALS = 4;

    /** More than so many, and than so many times as many as are wanted, are no advice (common practice, no source). */
    private static final int MOST_TURNED = 100;

    private static final int MOST_TIMES = 3;

    public NextPieces {
        pieces = List.copyOf(pieces);
    }

    /** Empty when nothing weighed was left over; {@code turned} are all the pieces there are, placed or left over. */
    static Optional<NextPieces> of(List<Spare> spares, List<Piece> turned, int places, double tolerancePct) {
        if (spares.isEmpty()) {
            return Optional.empty();
        }
        List<Mass> weighed =
                turned.stream().flatMap(piece -> piece.mass().stream()).toList();
        NextSet next =
                NextSet.of(spares.stream().map(Spare::mass).toList(), places, tolerancePct, WorkMass.of(weighed));
        List<String> labels =
                next.pieces().stream().map(i -> spares.get(i).label()).toList();
        return Optional.of(new NextPieces(labels, next));
    }

    static Optional<NextPieces> ofPieces(List<Piece> spares, List<Piece> turned, int places, double tolerancePct) {
        List<Spare> weighed = spares.stream()
                .flatMap(piece -> piece.mass().map(mass -> new Spare(piece.label(), mass)).stream())
                .toList();
        return of(weighed, turned, places, tolerancePct);
    }

    /** What to keep and what to turn. A range sure to pass is told by the readings within it. */
    String inWords(WeighingScale scale) {
        String keep =
                (pieces.size() == 1 ? "next set: keep piece " : "next set: keep pieces ") + String.join(", ", pieces);
        if (next.missing() == 0) {
            return keep + "; they make a set as they are";
        }
        String range = range(scale);
        return "%s; turn %d more of %s, sure to pass%s%s"
                .formatted(
                        keep,
                        next.missing(),
                        range,
                        next.missing() == 1 ? "" : " together",
                        next.turning().map(turning -> inWords(turning, scale)).orElse(""));
    }

    private String range(WeighingScale scale) {
        Mass from = scale.atLeast(next.aimFrom());
        Mass to = scale.atMost(next.aimTo());
        if (from.compareTo(to) > 0) {
            return between(scale.unit().count(next.aimFrom()), scale.unit().count(next.aimTo())) + " "
                    + scale.unit().symbol() + ", between two steps of your scale";
        }
        return from.equals(to) ? scale.reading(to) : "%s to %s".formatted(scale.figure(from), scale.reading(to));
    }

    /** No reading of the scale lies within: in as round figures as do, no wider than what is sure. */
    private static String between(double least, double most) {
        for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
            double step = Math.pow(10, -decimals);
            double from = Math.ceil(least / step) * step;
            double to = Math.floor(most / step) * step;
            if (from < to) {
                String pattern = "%%.%df to %%.%df".formatted(decimals, decimals);
                return fixed(pattern, from, to);
            }
        }
        return fixed("%.3f to %.3f", least, most);
    }

    private String inWords(NextSet.Turning turning, WeighingScale scale) {
        WorkMass work = turning.work();
        if (isHopeless(turning)) {
            return ("; as your work runs, %s give or take %s, it takes %s to be 95 %% sure of them at best (simulated): let a set's weights"
                            + " differ by more, or keep what is left for repairs")
                    .formatted(
                            scale.reckoned(Mass.ofGrams(work.meanG())),
                            scale.scatter(Mass.ofGrams(work.scatterG())),
                            number(fewest(turning)));
        }
        double off = next.aim().grams() - work.meanG();
        Mass aside = Mass.ofGrams(Math.abs(off));
        String aimed = aside.grams() <= SAME_SHARE * work.scatterG()
                        || !scale.scatter(aside).equals(scale.reckoned(aside))
                ? ""
                : ", or %s if you aim %s"
                        .formatted(
                                number(turning.aimed()),
                                "%s %s".formatted(scale.reckoned(aside), off > 0 ? "heavier" : "lighter"));
        return "; as your work runs, %s give or take %s, it takes %s to be 95 %% sure of them%s (simulated)"
                .formatted(
                        scale.reckoned(Mass.ofGrams(work.meanG())),
                        scale.scatter(Mass.ofGrams(work.scatterG())),
                        number(turning.asItRuns()),
                        aimed);
    }

    /** Nobody turns so many to find a handful that weigh alike. */
    private boolean isHopeless(NextSet.Turning turning) {
        int most = Math.max(MOST_TURNED, MOST_TIMES * next.missing());
        return fewest(turning).orElse(Integer.MAX_VALUE) > most;
    }

    private static OptionalInt fewest(NextSet.Turning turning) {
        return IntStream.concat(turning.asItRuns().stream(), turning.aimed().stream())
                .min();
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? String.valueOf(number.getAsInt()) : "more than 200";
    }

    // Not formatted(): the locale would choose the decimal sign.
    private static String fixed(String words, Object... figures) {
        return String.format(Locale.ROOT, words, figures);
    }
}
