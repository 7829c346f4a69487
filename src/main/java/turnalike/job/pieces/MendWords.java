package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.pieces.mend.MendPlan;
import turnalike.units.UnitSystem;

/**
 * How one piece is brought to weight, in words.
 *
 * @param head what it weighs and what was wanted, the first half of a sentence
 * @param verdict its second half: leave it, cut it or turn another
 * @param steps the cuts one after the other, or the ways there are for a light piece
 */
public record MendWords(String head, String verdict, List<String> steps) {
    public MendWords {
        steps = List.copyOf(steps);
    }

    static MendWords of(MendJob mend, UnitSystem units) {
        return mend.plan().match(new Cases(mend, units));
    }

    private record Cases(MendJob mend, UnitSystem units) implements MendPlan.Cases<MendWords> {
        @Override
        public MendWords leave(MendPlan.Leave leave) {
            return words("near enough, leave it.", List.of());
        }

        @Override
        public MendWords cuts(MendPlan.Cuts plan) {
            List<String> steps = new ArrayList<>();
            plan.cuts().forEach(cut -> steps.add(cut.words(units)));
            steps.add(fixed(
                    "It will then weigh %.1f g. Weigh between cuts.",
                    plan.massAfter().grams()));
            return words(
                    plan.gentle() ? "these cuts nobody will see." : "these cuts, at the edge of what shows.", steps);
        }

        @Override
        public MendWords light(MendPlan.Light light) {
            return words(fixed("it lacks %.1f g.", light.lacking().grams()), mend.lightWays());
        }

        @Override
        public MendWords makeAnother(MendPlan.MakeAnother another) {
            return words(
                    fixed(
                            "%.1f g too much, and the deepest cuts within the tolerance take off %.1f g. Turn another.",
                            another.tooMuch().grams(), another.cutsTakeOff().grams()),
                    List.of());
        }

        private MendWords words(String verdict, List<String> steps) {
            String head = fixed(
                    "Piece %s weighs %.1f g, wanted %.1f g",
                    mend.piece().label(), mend.mass().grams(), mend.target().grams());
            return new MendWords(head, verdict, steps);
        }

        // Not formatted(): the locale would choose the decimal sign.
        private static String fixed(String words, Object... values) {
            return String.format(Locale.ROOT, words, values);
        }
    }
}
