package turnalike.web.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.drawing.frame.PlacesDrawing;
import turnalike.drawing.frame.RowDrawing;
import turnalike.drawing.frame.WheelDrawing;
import turnalike.drawing.svg.Svg;
import turnalike.job.kept.KeptJob;
import turnalike.job.set.LegsSet;
import turnalike.job.set.NextPieces;
import turnalike.job.set.RowSet;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelSet;
import turnalike.match.Candidate;
import turnalike.pieces.Piece;
import turnalike.sheets.SetSheets;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.Working;
import turnalike.web.kit.JobAddress;

/**
 * The set as the page shows it.
 *
 * @param kept the job
 * @param problems why there can be no set yet
 * @param search for it
 */
public record MatchView(KeptJob kept, List<Problem> problems, Optional<SetSearch> search) {
    private static final Length FRAME_WIDTH = Length.ofMm(200);

    public MatchView {
        problems = List.copyOf(problems);
    }

    public String address() {
        return JobAddress.address(kept.id());
    }

    public String title() {
        return kept.text().job().title();
    }

    /** Whether it is still being looked for. */
    public boolean isRunning() {
        return search.isPresent() && !search.get().isDone();
    }

    public String progress() {
        return search.map(SetSearch::progress).orElse("");
    }

    /** What was found, as it is shown. */
    public Optional<Shown> shown() {
        return search.flatMap(SetSearch::found)
                .map(set -> set.match(new Showing(SetSheets.frame(kept.text().job(), set, FRAME_WIDTH))));
    }

    /**
     * A set in words and pictures.
     *
     * @param frame as it will look; empty when it has too many pieces to be seen
     * @param picture of the places with their pieces
     * @param curve balance against roundness; empty without one
     * @param places each with its piece
     * @param statements how good it is, a sentence each
     * @param spares the pieces left over
     * @param notes what to know before believing it
     */
    public record Shown(
            String frame,
            String picture,
            String curve,
            List<PlacesDrawing.Place> places,
            List<String> statements,
            List<String> spares,
            List<String> notes,
            List<Working> workings) {
        public Shown {
            places = List.copyOf(places);
            statements = List.copyOf(statements);
            spares = List.copyOf(spares);
            notes = List.copyOf(notes);
            workings = List.copyOf(workings);
        }
    }

    private record Showing(Optional<Svg> view) implements SetMatch.Cases<Shown> {
        private static final Length WIDE = Length.ofMm(150);

        @Override
        public Shown wheel(WheelSet set) {
            var placement = set.placement();
            WheelDrawing drawing = SetSheets.wheel(set);
            List<String> statements = new ArrayList<>(drawing.statements());
            statements.add(
                    placement.bestProven()
                            ? "No other choice or order has less unbalance."
                            : "The best found; less may be possible.");
            statements.add(String.format(
                    Locale.ROOT,
                    "Weights within %.1f g of one another.",
                    placement.massSpread().grams()));
            next(set).ifPresent(statements::add);
            String curve =
                    SetSheets.curve(set, WIDE, Length.ofMm(90)).map(Svg::inline).orElse("");
            List<String> spares =
                    placement.spares().stream().map(Candidate::label).toList();
            return new Shown(
                    frame(),
                    drawing.svg(WIDE).inline(),
                    curve,
                    drawing.places(),
                    statements,
                    spares,
                    set.warnings(),
                    set.workings());
        }

        @Override
        public Shown row(RowSet set) {
            var placement = set.placement();
            List<String> statements = new ArrayList<>();
            String sure = placement.bestProven()
                    ? "no other choice or order has less"
                    : String.format(Locale.ROOT, "the best found; none can be below %.4g", placement.bound());
            statements.add(String.format(
                    Locale.ROOT, "Neighbours differ by %.4g in all; %s.", placement.totalDifference(), sure));
            next(set).ifPresent(statements::add);
            RowDrawing drawing = SetSheets.row(set);
            return shown(set, drawing, Length.ofMm(230), statements, labels(set.spares()));
        }

        @Override
        public Shown legs(LegsSet set) {
            List<String> statements = new ArrayList<>();
            int number = 0;
            for (List<Piece> group : set.groups()) {
                number++;
                statements.add("Group %d: pieces %s.".formatted(number, String.join(", ", labels(group))));
            }
            String sure =
                    set.grouping().bestProven() ? "no other grouping has less" : "the best found; less may be possible";
            statements.add(String.format(
                    Locale.ROOT,
                    "Pieces of one group differ by %.4g in all; %s.",
                    set.grouping().totalDifference(),
                    sure));
            next(set).ifPresent(statements::add);
            RowDrawing drawing = SetSheets.legs(set);
            return shown(set, drawing, WIDE, statements, labels(set.spares()));
        }

        private Shown shown(
                SetMatch set, RowDrawing drawing, Length width, List<String> statements, List<String> spares) {
            return new Shown(
                    frame(),
                    drawing.svg(width).inline(),
                    "",
                    drawing.places(),
                    statements,
                    spares,
                    set.warnings(),
                    set.workings());
        }

        private String frame() {
            return view.map(Svg::inline).orElse("");
        }

        private static List<String> labels(List<Piece> pieces) {
            return pieces.stream().map(Piece::label).toList();
        }

        private static Optional<String> next(SetMatch set) {
            return set.nextSet().map(Showing::words);
        }

        private static String words(NextPieces next) {
            String turn = next.missing() == 0
                    ? "they make a set as they are"
                    : String.format(
                            Locale.ROOT,
                            "turn %d more of %.1f g to %.1f g",
                            next.missing(),
                            next.aimFrom().grams(),
                            next.aimTo().grams());
            return "For the next set keep %s; %s.".formatted(String.join(", ", next.pieces()), turn);
        }
    }
}
