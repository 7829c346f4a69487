package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Watch;
import turnalike.match.GroupMatch;
import turnalike.match.Grouping;
import turnalike.match.Unlikeness;
import turnalike.pieces.Likeness;
import turnalike.pieces.PairDifferences;
import turnalike.pieces.Piece;
import turnalike.units.Article;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;
import turnalike.units.Problem;
import turnalike.units.WeighingScale;
import turnalike.units.Working;

/**
 * Pairs, fours or larger groups whose pieces look alike.
 *
 * @param pieces every piece there was to choose from
 * @param grouping which stand together, by number in {@code pieces}
 * @param endedBy what ended the search for it
 * @param unlike how much the piece of each place differs from the others of its group, in the order of the places
 * @param handWork what a person settled of it
 * @param nextSet what the left-over pieces are good for, if any was weighed
 * @param weighing how its masses are told
 * @param warnings what to know before believing it
 */
public record LegsSet(
        List<Piece> pieces,
        Grouping grouping,
        List<Double> unlike,
        Ending endedBy,
        HandWork handWork,
        Optional<NextPieces> nextSet,
        WeighingScale weighing,
        List<String> warnings)
        implements SetMatch {
    /** All pieces are compared with all others: more would fill the memory before they tired the search. */
    private static final int MOST_PIECES = 2000;

    public LegsSet {
        pieces = List.copyOf(pieces);
        unlike = List.copyOf(unlike);
        warnings = List.copyOf(warnings);
    }

    static List<Problem> problems(SetTerms terms, InLegs frame, List<Piece> pieces) {
        if (pieces.size() < frame.pieces()) {
            int groups = frame.groups().orElse(1);
            return List.of(new Problem(
                    "pieces",
                    (pieces.size() == 1 ? "a single piece for %2$s of %3$d" : "%d pieces for %s of %d")
                            .formatted(pieces.size(), Article.count(groups, "group"), frame.places()),
                    "log %d more or ask for less".formatted(frame.pieces() - pieces.size())));
        }
        if (pieces.size() > MOST_PIECES) {
            return List.of(new Problem(
                    "pieces",
                    "%d pieces are too many to group at once".formatted(pieces.size()),
                    "give %d at most".formatted(MOST_PIECES)));
        }
        return terms.hand().problems(frame.places() * groups(frame, pieces), pieces);
    }

    private static int groups(InLegs frame, List<Piece> pieces) {
        return frame.groups().orElse(pieces.size() / frame.places());
    }

    static LegsSet of(SetTerms terms, InLegs frame, List<Piece> pieces, Effort effort) {
        Likeness likeness = terms.likeness(pieces);
        int size = frame.places();
        Watch watch = Watch.over(effort);
        int groups = groups(frame, pieces);
        Unlikeness unlikeness = new PairDifferences(likeness, pieces)::between;
        if (terms.hand().isAny()) {
            GroupMatch.ByHand found = GroupMatch.byHand(
                    pieces.size(), size, groups, unlikeness, terms.hand().among(pieces), watch);
            Ending ending = watch.ending(found.leastOfRest() || terms.hand().stands());
            return of(terms, size, pieces, found.grouping(), ending, new HandWork(terms.hand(), found.leastOfRest()));
        }
        Grouping grouping = GroupMatch.groups(pieces.size(), size, groups, unlikeness, watch);
        return of(terms, size, pieces, grouping, watch.ending(grouping.bestProven()), HandWork.NONE);
    }

    private static LegsSet of(
            SetTerms terms, int size, List<Piece> pieces, Grouping grouping, Ending ending, HandWork hand) {
        List<Piece> left = grouping.spares().stream().map(pieces::get).toList();
        double tolerancePct = terms.massPct();
        return new LegsSet(
                pieces,
                grouping,
                toGroup(grouping, terms.likeness(pieces), pieces),
                ending,
                hand,
                terms.unlessGlance(() -> NextPieces.ofPieces(left, pieces, size, tolerancePct)),
                terms.weighing(),
                warnings(terms, pieces, grouping));
    }

    private static List<Double> toGroup(Grouping grouping, Likeness likeness, List<Piece> pieces) {
        List<Double> out = new ArrayList<>();
        for (List<Integer> group : grouping.groups()) {
            for (int each : group) {
                out.add(group.stream()
                        .mapToDouble(
                                other -> other == each ? 0 : likeness.difference(pieces.get(each), pieces.get(other)))
                        .sum());
            }
        }
        return out;
    }

    private static List<String> warnings(SetTerms terms, List<Piece> pieces, Grouping grouping) {
        List<String> out = new ArrayList<>();
        double tolerancePct = terms.massPct();
        CoarseScale.words(terms, pieces).ifPresent(out::add);
        if (pieces.stream().anyMatch(piece -> piece.mass().isEmpty())) {
            out.add("not every piece was weighed, so likeness goes by what was measured on both of two pieces");
        }
        List<Piece> placed = grouping.groups().stream()
                .flatMap(group -> group.stream().map(pieces::get))
                .toList();
        NothingMeasured.words(terms.likeness(pieces), pieces, placed).ifPresent(out::add);
        for (int g = 0; g < grouping.groups().size(); g++) {
            double[] massesG = grouping.groups().get(g).stream()
                    .flatMap(i -> pieces.get(i).mass().stream())
                    .mapToDouble(Mass::grams)
                    .sorted()
                    .toArray();
            double sum = 0;
            for (double each : massesG) {
                sum += each;
            }
            double pct =
                    massesG.length < 2 ? 0 : 100 * (massesG[massesG.length - 1] - massesG[0]) * massesG.length / sum;
            if (pct > tolerancePct * (1 + 1e-12)) {
                out.add(String.format(
                        Locale.ROOT,
                        "group %d: masses differ by %.2f %%, more than the tolerance for a set's weights, %s %%",
                        g + 1,
                        pct,
                        PlainNumber.exact(tolerancePct)));
            }
        }
        return out;
    }

    /** {@return the pieces of each group} */
    public List<List<Piece>> groups() {
        return grouping.groups().stream()
                .map(group -> group.stream().map(pieces::get).toList())
                .toList();
    }

    /** {@return the pieces left over; may be none} */
    public List<Piece> spares() {
        return grouping.spares().stream().map(pieces::get).toList();
    }

    @Override
    public List<String> spareLabels() {
        return spares().stream().map(Piece::label).toList();
    }

    @Override
    public List<String> groupsInWords() {
        List<String> out = new ArrayList<>();
        for (List<Piece> group : groups()) {
            String labels = String.join(", ", group.stream().map(Piece::label).toList());
            out.add("group %d: pieces %s%s".formatted(out.size() + 1, labels, masses(group, weighing)));
        }
        return out;
    }

    private static String masses(List<Piece> group, WeighingScale weighing) {
        double[] massesG = group.stream()
                .flatMap(piece -> piece.mass().stream())
                .mapToDouble(Mass::grams)
                .sorted()
                .toArray();
        if (massesG.length < group.size()) {
            return "";
        }
        String least = weighing.figure(Mass.ofGrams(massesG[0]));
        String most = weighing.figure(Mass.ofGrams(massesG[massesG.length - 1]));
        return least.equals(most)
                ? " (%s %s each)".formatted(least, weighing.unit().symbol())
                : " (%s to %s %s)".formatted(least, most, weighing.unit().symbol());
    }

    @Override
    public List<String> order() {
        return groups().stream().flatMap(List::stream).map(Piece::label).toList();
    }

    @Override
    public double leftOver() {
        return grouping.totalDifference();
    }

    @Override
    public Verdict verdict() {
        String sure = grouping.bestProven()
                ? "no other grouping has less"
                : handWork.hand().isAny() ? handWork.sureness() : Verdict.MAY_BE_LESS;
        String differ = String.format(
                Locale.ROOT,
                "pieces of one group differ by %s in all, counted in tolerances; %s",
                PlainNumber.toFigures(grouping.totalDifference(), 3),
                sure);
        List<String> out = new ArrayList<>(List.of(differ));
        out.addAll(handWork.sentences());
        return new Verdict("Likeness", out);
    }

    @Override
    public List<Working> workings() {
        return List.of(new Working(
                "total difference",
                "Σ of the differences of any two pieces of one group",
                Working.DERIVED,
                grouping.bestProven()
                        ? "no other grouping has a smaller one"
                        : "the best found; a smaller one may exist"));
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.legs(this);
    }
}
