package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.drawing.frame.PlacesDrawing;
import turnalike.drawing.frame.RowDrawing;
import turnalike.drawing.frame.WheelDrawing;
import turnalike.frame.Moment;
import turnalike.match.Candidate;
import turnalike.match.WheelPlacement;
import turnalike.units.SentenceCase;
import turnalike.units.WeighingScale;

/**
 * What the record of a set says.
 *
 * @param first what is to be said before all else: why the frame cannot be built, each a sentence
 * @param title the job's name
 * @param date as it is to be printed; may be empty
 * @param drawing the set in its places
 * @param facts the few figures worth a large letter
 * @param spares the pieces left over, each as it is to be printed
 * @param notes what else to know, each a sentence
 * @param cautions each a sentence or two
 */
public record SetRecordContent(
        List<String> first,
        String title,
        String date,
        PlacesDrawing drawing,
        List<BenchCardContent.Fact> facts,
        List<String> spares,
        List<String> notes,
        List<String> cautions) {
    /** What anyone who turns a wheel is told (common practice, no source). */
    public static final List<String> WHEEL_CAUTIONS = List.of(
            "Keep hands, sleeves and hair clear of a spinning wheel, and let it come to rest before you touch it.",
            "Fix every piece and any counterweight firmly before the first turn, begin slowly, and stand out of the plane of the rim.");

    public SetRecordContent {
        first = List.copyOf(first);
        facts = List.copyOf(facts);
        spares = List.copyOf(spares);
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
    }

    /** The record of a wheel: its figures, its spares, the placement's own warnings and the usual cautions. */
    public static SetRecordContent ofWheel(String title, String date, WheelDrawing wheel) {
        WheelPlacement placement = wheel.placement();
        List<BenchCardContent.Fact> facts = List.of(
                new BenchCardContent.Fact("unbalance", placement.left(), seen(placement)),
                new BenchCardContent.Fact(
                        "noise floor",
                        Moment.figure(placement.noiseFloorGMm()) + " g·mm",
                        "what the scale alone can feign"),
                new BenchCardContent.Fact(
                        "spread", wheel.weighing().apart(placement.massSpread()), "heaviest less lightest"));
        List<String> notes = new ArrayList<>();
        notes.add(
                placement.bestProven()
                        ? "No other choice or order has less unbalance."
                        : "The best order found; less may be possible.");
        placement.warnings().forEach(each -> notes.add(SentenceCase.sentence(each)));
        return new SetRecordContent(
                List.of(),
                title,
                date,
                wheel,
                facts,
                placement.spares().stream()
                        .map(piece -> spare(piece, wheel.weighing()))
                        .toList(),
                notes,
                WHEEL_CAUTIONS);
    }

    private static String seen(WheelPlacement placement) {
        if (placement.isWithinScale()) {
            return "the scale sees none";
        }
        return placement.isHeavyOnOneSide() ? "more than may be off" : "less than may be off";
    }

    /**
     * The record of a row.
     *
     * @param totalDifference of neighbours, as the match found it
     * @param spares the labels of the pieces left over
     */
    public static SetRecordContent ofRow(
            String title, String date, RowDrawing row, double totalDifference, List<String> spares) {
        BenchCardContent.Fact fact = new BenchCardContent.Fact(
                "difference of neighbours", figure(totalDifference), "in tolerances, added up along the row");
        return new SetRecordContent(List.of(), title, date, row, List.of(fact), spares, List.of(), List.of());
    }

    /**
     * The record of legs in groups.
     *
     * @param totalDifference of the pieces of each group, added up over the groups
     */
    public static SetRecordContent ofLegs(
            String title, String date, RowDrawing groups, double totalDifference, List<String> spares) {
        BenchCardContent.Fact fact = new BenchCardContent.Fact(
                "difference within groups", figure(totalDifference), "in tolerances, every two legs of a group");
        return new SetRecordContent(List.of(), title, date, groups, List.of(fact), spares, List.of(), List.of());
    }

    /** A copy with one figure more. */
    SetRecordContent with(BenchCardContent.Fact fact) {
        List<BenchCardContent.Fact> all = new ArrayList<>(facts);
        all.add(fact);
        return new SetRecordContent(first, title, date, drawing, all, spares, notes, cautions);
    }

    /** A copy with those warnings among the notes that are not there yet. */
    SetRecordContent with(List<String> warnings) {
        List<String> all = new ArrayList<>(notes);
        warnings.stream()
                .map(SentenceCase::sentence)
                .filter(each -> !all.contains(each))
                .forEach(all::add);
        return new SetRecordContent(first, title, date, drawing, facts, spares, all, cautions);
    }

    /** A copy that says this before all else. */
    SetRecordContent first(List<String> said) {
        return new SetRecordContent(
                said.stream().map(SentenceCase::sentence).toList(),
                title,
                date,
                drawing,
                facts,
                spares,
                notes,
                cautions);
    }

    private static String spare(Candidate piece, WeighingScale weighing) {
        return "%s (%s)".formatted(piece.label(), weighing.reading(piece.mass()));
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, Math.abs(value) >= 100 && Math.abs(value) < 1e7 ? "%.0f" : "%.3g", value);
    }

    /** Whether any piece was weighed. */
    boolean isWeighed() {
        return drawing.places().stream().map(PlacesDrawing.Place::mass).anyMatch(Optional::isPresent);
    }

    /** Whether the places stand at angles. */
    boolean isRound() {
        return drawing.places().stream().map(PlacesDrawing.Place::angle).anyMatch(Optional::isPresent);
    }
}
