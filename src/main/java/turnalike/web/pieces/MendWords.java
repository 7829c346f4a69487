package turnalike.web.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.MendJob;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.pieces.Piece;
import turnalike.pieces.mend.MendPlan;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/** How one piece is brought to the weight of the others, in sentences. */
public final class MendWords implements MendPlan.Cases<List<String>> {
    private final UnitSystem units;

    private MendWords(UnitSystem units) {
        this.units = units;
    }

    /**
     * What to do about a piece.
     *
     * @param head how it stands
     * @param steps what to do, a sentence each
     */
    public record Told(String head, List<String> steps, List<Working> workings) {
        public Told {
            steps = List.copyOf(steps);
            workings = List.copyOf(workings);
        }
    }

    /** Empty when there is nothing to aim at, or the piece was not weighed. */
    static Optional<Told> of(KeptJob kept, String label) {
        List<Piece> pieces = kept.pieces().stream().map(KeptPiece::piece).toList();
        if (!MendJob.problems(pieces, label, Optional.empty()).isEmpty()) {
            return Optional.empty();
        }
        MendJob mend = MendJob.of(kept.text().job(), pieces, label, Optional.empty());
        String head = String.format(
                Locale.ROOT,
                "Piece %s weighs %.1f g; the median of the others is %.1f g.",
                label,
                mend.mass().grams(),
                mend.target().grams());
        List<String> steps = mend.plan().match(new MendWords(kept.text().job().units()));
        return Optional.of(new Told(head, steps, mend.workings()));
    }

    @Override
    public List<String> leave(MendPlan.Leave leave) {
        return List.of("Near enough: leave it.");
    }

    @Override
    public List<String> cuts(MendPlan.Cuts plan) {
        List<String> out = new ArrayList<>();
        out.add(plan.gentle() ? "These cuts nobody will see:" : "These cuts are at the edge of what shows:");
        plan.cuts().forEach(cut -> out.add(cut.words(units)));
        out.add(String.format(
                Locale.ROOT,
                "It will then weigh %.1f g. Weigh between cuts.",
                plan.massAfter().grams()));
        return out;
    }

    @Override
    public List<String> light(MendPlan.Light light) {
        return List.of(String.format(
                Locale.ROOT,
                "It lacks %.1f g, and wood cannot be put back. Bring the others down to it, or keep it as a spare and turn another"
                        + " from a heavier blank.",
                light.lacking().grams()));
    }

    @Override
    public List<String> makeAnother(MendPlan.MakeAnother another) {
        return List.of(String.format(
                Locale.ROOT,
                "It is %.1f g too heavy, and the deepest cuts within the tolerance take off %.1f g. Turn another.",
                another.tooMuch().grams(),
                another.cutsTakeOff().grams()));
    }
}
