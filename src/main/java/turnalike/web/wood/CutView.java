package turnalike.web.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.svg.Svg;
import turnalike.effort.Ending;
import turnalike.job.boards.BoardNotes;
import turnalike.job.boards.BoardWords;
import turnalike.job.boards.JobBlanks;
import turnalike.job.boards.WoodToBuy;
import turnalike.sheets.CutSheet;
import turnalike.stock.boards.CuttingPlan;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * How the boards are cut, as the page shows it.
 *
 * @param missing what there is no wood for, and what to buy
 * @param aim what is cut and how sure it is that it cannot be done for less
 * @param ended what ended the search
 * @param boards each with its picture and its cuts in the order of sawing
 * @param keep what of the left-overs is told
 * @param kept the left-overs
 * @param notes what to know before believing it
 */
public record CutView(
        List<String> missing,
        String aim,
        String ended,
        List<Drawn> boards,
        String keep,
        List<String> kept,
        List<String> notes) {
    private static final Length WIDTH = Length.ofMm(270);
    private static final int MOST_KEPT = 20;
    private static final int MOST_DRAWN = 40;

    /** One board. */
    public record Drawn(String heading, String picture, List<String> steps) {
        public Drawn {
            steps = List.copyOf(steps);
        }
    }

    public CutView {
        missing = List.copyOf(missing);
        boards = List.copyOf(boards);
        kept = List.copyOf(kept);
        notes = List.copyOf(notes);
    }

    static Optional<CutView> of(CutState state) {
        return state.plan().map(plan -> of(state, plan));
    }

    private static CutView of(CutState state, CuttingPlan plan) {
        UnitSystem units = JobBlanks.units(state.jobs());
        Map<String, Svg> pictures = CutSheet.drawings(state.jobs(), plan, WIDTH);
        List<Svg> drawn = new ArrayList<>(pictures.values());
        List<Drawn> boards = new ArrayList<>();
        for (int i = 0; i < Math.min(plan.boards().size(), MOST_DRAWN); i++) {
            CutBoard cut = plan.boards().get(i);
            boards.add(new Drawn(
                    BoardWords.board(cut, units),
                    drawn.get(i).inline(),
                    BoardWords.steps(cut, plan.order().sawing(), units)));
        }
        List<String> notes = new ArrayList<>(BoardNotes.of(state.jobs(), plan.order()));
        if (plan.boards().size() > MOST_DRAWN) {
            notes.add("%d more boards are on the cut sheet."
                    .formatted(plan.boards().size() - MOST_DRAWN));
        }
        return new CutView(
                plan.missing().stream()
                        .map(each -> "%s. To buy: %s."
                                .formatted(
                                        WoodToBuy.missing(plan, each, units), WoodToBuy.buy(plan.order(), each, units)))
                        .toList(),
                BoardWords.aim(plan, units),
                ending(state, plan).words(),
                boards,
                plan.keep().format(units),
                BoardWords.kept(plan, units, MOST_KEPT),
                notes);
    }

    private static Ending ending(CutState state, CuttingPlan plan) {
        return plan.proven() && plan.longestProven()
                ? Ending.PROOF
                : state.ended().orElse(Ending.STEPS);
    }

    /** What sawing can do to a hand. */
    public List<String> cautions() {
        return boards.isEmpty() ? List.of() : BoardNotes.CAUTIONS;
    }
}
