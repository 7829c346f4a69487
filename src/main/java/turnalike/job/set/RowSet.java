package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Watch;
import turnalike.match.HandPlaces;
import turnalike.match.RowMatch;
import turnalike.match.RowPlacement;
import turnalike.match.RowProblem;
import turnalike.match.RowSorts;
import turnalike.match.Unlikeness;
import turnalike.pieces.Likeness;
import turnalike.pieces.Measures;
import turnalike.pieces.PairDifferences;
import turnalike.pieces.Piece;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;
import turnalike.units.Problem;
import turnalike.units.WeighingScale;
import turnalike.units.Working;

/**
 * A set in a row.
 *
 * @param pieces every piece there was to choose from
 * @param placement which stands where, by number in {@code pieces}
 * @param lengths the letter of the length that each place wants; empty where all pieces are of one length
 * @param endedBy what ended the search for it
 * @param unlike how much the piece of each place but the last differs from the next, in order
 * @param handWork what a person settled of it
 * @param nextSet what the left-over pieces are good for, if any was weighed
 * @param weighing how its masses are told
 * @param warnings what to know before believing it
 */
public record RowSet(
        List<Piece> pieces,
        RowPlacement placement,
        List<String> lengths,
        List<Double> unlike,
        Ending endedBy,
        HandWork handWork,
        Optional<NextPieces> nextSet,
        WeighingScale weighing,
        List<String> warnings)
        implements SetMatch {
    public RowSet {
        lengths = List.copyOf(lengths);
        unlike = List.copyOf(unlike);
        pieces = List.copyOf(pieces);
        warnings = List.copyOf(warnings);
    }

    static RowSet of(SetTerms terms, InRow frame, List<Piece> pieces, Effort effort) {
        Watch watch = Watch.over(effort);
        RowProblem problem = problem(terms, frame, pieces);
        List<Integer> wanted = frame.wanted();
        if (terms.hand().isAny()) {
            return byHand(terms, frame, pieces, watch);
        }
        RowPlacement found = wanted.isEmpty()
                ? RowMatch.solve(problem, watch)
                : RowMatch.solve(
                        problem, sorts(terms, frame, pieces), terms.lengths().names(terms.units()), watch);
        boolean eitherWay = wanted.isEmpty() || sorts(terms, frame, pieces).isSameReversed();
        RowPlacement placement = eitherWay ? turned(terms, frame, pieces, found) : found;
        return of(terms, frame, pieces, placement, watch.ending(placement.bestProven()), HandWork.NONE);
    }

    /** As it stands, or the rest searched round what is held; never turned end for end. */
    private static RowSet byHand(SetTerms terms, InRow frame, List<Piece> pieces, Watch watch) {
        RowMatch.ByHand found = RowMatch.byHand(
                problem(terms, frame, pieces),
                frame.wanted().isEmpty() ? Optional.empty() : Optional.of(sorts(terms, frame, pieces)),
                terms.lengths().names(terms.units()),
                terms.hand().among(pieces),
                watch);
        Ending ending = watch.ending(found.leastOfRest() || terms.hand().stands());
        return of(terms, frame, pieces, found.placement(), ending, new HandWork(terms.hand(), found.leastOfRest()));
    }

    private static RowSet of(
            SetTerms terms, InRow frame, List<Piece> pieces, RowPlacement placement, Ending ending, HandWork hand) {
        List<Integer> wanted = frame.wanted();
        List<String> warnings = new ArrayList<>(placement.warnings());
        CoarseScale.words(terms, pieces).ifPresent(warnings::add);
        if (!allWeighed(pieces)) {
            warnings.add("not every piece was weighed, so the set is not held to how far weights may differ");
        }
        List<Piece> placed = placement.order().stream().map(pieces::get).toList();
        NothingMeasured.words(terms.likeness(pieces), pieces, placed).ifPresent(warnings::add);
        List<Piece> left = placement.spares().stream().map(pieces::get).toList();
        return new RowSet(
                pieces,
                placement,
                wanted.stream().map(PieceLength::letter).toList(),
                toNext(problem(terms, frame, pieces).unlikeness(), placement.order()),
                ending,
                hand,
                wanted.isEmpty()
                        ? terms.unlessGlance(() -> NextPieces.ofPieces(left, pieces, frame.places(), terms.massPct()))
                        : Optional.empty(),
                terms.weighing(),
                warnings);
    }

    private static List<Double> toNext(Unlikeness unlikeness, List<Integer> order) {
        return IntStream.range(1, order.size())
                .mapToObj(i -> unlikeness.between(order.get(i - 1), order.get(i)))
                .toList();
    }

    /** What keeps the pieces from standing in the frame; empty when nothing does. */
    static List<Problem> problems(SetTerms terms, InRow frame, List<Piece> pieces) {
        if (frame.lengths().isEmpty()) {
            List<Problem> out = new ArrayList<>(problem(terms, frame, pieces).problems());
            out.addAll(terms.hand().problems(frame.places(), pieces));
            return out;
        }
        List<Problem> unknown = terms.lengths().problems(pieces);
        if (!unknown.isEmpty()) {
            return unknown;
        }
        List<Problem> out = new ArrayList<>(problem(terms, frame, pieces).problems());
        out.addAll(terms.hand().problems(frame.places(), pieces));
        if (out.isEmpty()) {
            out.addAll(sorts(terms, frame, pieces).problems(terms.lengths().names(terms.units())));
        }
        if (out.isEmpty() && !frame.wanted().isEmpty()) {
            out.addAll(misplaced(terms, frame, pieces));
        }
        return out;
    }

    /** Pieces that were put by hand where another length is wanted. */
    private static List<Problem> misplaced(SetTerms terms, InRow frame, List<Piece> pieces) {
        HandPlaces hand = terms.hand().among(pieces);
        RowSorts sorts = sorts(terms, frame, pieces);
        Map<Integer, Integer> settled = new TreeMap<>(hand.held());
        for (int place = 0; place < hand.order().size(); place++) {
            settled.put(place, hand.order().get(place));
        }
        List<Problem> out = new ArrayList<>();
        settled.forEach((place, piece) -> {
            int wanted = sorts.ofPlaces().get(place);
            if (sorts.ofPieces().get(piece) != wanted) {
                out.add(new Problem(
                        "by_hand",
                        "piece %s stands at place %d, which wants length %s"
                                .formatted(pieces.get(piece).label(), place + 1, PieceLength.letter(wanted)),
                        "put a piece of that length there, or let the set be searched"));
            }
        });
        return out;
    }

    private static RowSorts sorts(SetTerms terms, InRow frame, List<Piece> pieces) {
        return new RowSorts(
                pieces.stream()
                        .map(piece -> terms.lengths().of(piece).orElseThrow())
                        .toList(),
                frame.wanted());
    }

    /** The pieces as they are compared: of several lengths each as if it were of the drawn one. */
    private static List<Piece> compared(SetTerms terms, List<Piece> pieces) {
        return terms.lengths().isOne()
                ? pieces
                : pieces.stream().map(terms.lengths()::asDrawn).toList();
    }

    /**
     * Of the two ways round, which differ in nothing else, the one with the pieces least like the pattern far from where the row is seen:
     * each piece's unlikeness counts by how many places it stands from the far end.
     */
    private static RowPlacement turned(SetTerms terms, InRow frame, List<Piece> all, RowPlacement placement) {
        List<Piece> pieces = compared(terms, all);
        Likeness likeness = terms.likeness(pieces);
        Measures reference = Likeness.reference(terms.shape(), pieces);
        int places = placement.order().size();
        double seenFromStart = 0;
        double seenFromEnd = 0;
        for (int i = 0; i < places; i++) {
            double unlike = likeness.figure(pieces.get(placement.order().get(i)), reference)
                    .figure();
            seenFromStart += unlike * (places - i);
            seenFromEnd += unlike * (i + 1);
        }
        boolean asIs = frame.seenFrom() == End.START ? seenFromStart <= seenFromEnd : seenFromEnd <= seenFromStart;
        return asIs ? placement : placement.reversed();
    }

    private static RowProblem problem(SetTerms terms, InRow frame, List<Piece> all) {
        List<Piece> pieces = compared(terms, all);
        Likeness likeness = terms.likeness(pieces);
        boolean weighed = allWeighed(all);
        List<Mass> masses = all.stream()
                .map(piece -> weighed ? piece.mass().orElseThrow() : Mass.ofGrams(1))
                .toList();
        return new RowProblem(masses, new PairDifferences(likeness, pieces)::between, frame.places(), terms.massPct());
    }

    private static boolean allWeighed(List<Piece> pieces) {
        return pieces.stream().allMatch(piece -> piece.mass().isPresent());
    }

    /** {@return the pieces in order of their places, from the start of the row} */
    public List<Piece> inOrder() {
        return placement.order().stream().map(pieces::get).toList();
    }

    /** {@return the pieces left over; may be none} */
    public List<Piece> spares() {
        return placement.spares().stream().map(pieces::get).toList();
    }

    @Override
    public List<String> spareLabels() {
        return spares().stream().map(Piece::label).toList();
    }

    @Override
    public List<String> order() {
        return inOrder().stream().map(Piece::label).toList();
    }

    @Override
    public double leftOver() {
        return placement.totalDifference();
    }

    @Override
    public Verdict verdict() {
        String sure = placement.bestProven()
                ? "no other choice or order has less"
                : handWork.hand().isAny()
                        ? handWork.sureness()
                        : String.format(Locale.ROOT, "the best found; none can be below %.4g", placement.bound());
        String differ = String.format(
                Locale.ROOT,
                "neighbours differ by %s in all, counted in tolerances%s; %s",
                PlainNumber.toFigures(placement.totalDifference(), 3),
                lengths.isEmpty() ? "" : ", each beside its own length",
                sure);
        List<String> out = new ArrayList<>(List.of(differ));
        out.addAll(handWork.sentences());
        return new Verdict("Likeness", out);
    }

    @Override
    public List<Working> workings() {
        List<Working> out = new ArrayList<>(placement.workings());
        if (!lengths.isEmpty()) {
            out.add(
                    new Working(
                            "pieces of different lengths",
                            "each measure by how far it is off what its own length asks for, a weight by its share",
                            Working.COMMON_PRACTICE,
                            "a piece is of the length nearest to its own, or of its label's letter; weights are held to a set's tolerance within a length"));
        }
        out.add(new Working(
                "which way round",
                "of the row and its mirror image, the one with less of Σ unlikeness × places to the far end",
                Working.COMMON_PRACTICE,
                "the end it is seen from is the frame's seen_from, the start if it does not say"));
        return out;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.row(this);
    }
}
