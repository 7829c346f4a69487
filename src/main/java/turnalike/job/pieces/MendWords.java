package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.pieces.mend.MendCut;
import turnalike.pieces.mend.MendPlan;
import turnalike.units.Length;
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
            boolean seen = leave.off().grams() > 0.1;
            return words(
                    seen
                            ? fixed(
                                    "%.1f g too much is less than the smallest cut worth making takes off: leave it.",
                                    leave.off().grams())
                            : "near enough, leave it.",
                    List.of());
        }

        @Override
        public MendWords cuts(MendPlan.Cuts plan) {
            List<String> steps = new ArrayList<>();
            for (MendCut cut : plan.cuts()) {
                steps.add(cut.words(units) + own(cut));
            }
            steps.add(fixed(
                    "It will then weigh %.1f g. Weigh between cuts.",
                    plan.massAfter().grams()));
            boolean one = plan.cuts().size() == 1;
            boolean sure = plan.cuts().stream().allMatch(MendCut::sure);
            String what = one ? "this cut" : "these cuts";
            return words(
                    plan.gentle()
                            ? what + " nobody will see."
                            : sure
                                    ? what + ", at the edge of what shows."
                                    : what + " may go past the diameter tolerance; nothing else brings it to weight.",
                    steps);
        }

        /** What is known of the diameter there. */
        private String own(MendCut cut) {
            MendJob.Size size = mend.sizes().stream()
                    .filter(each -> each.member() == cut.member())
                    .findFirst()
                    .orElseThrow();
            String much = Length.ofMm(Math.abs(size.offMm())).formatFine(units);
            if (size.measured()) {
                return Math.abs(size.offMm()) < 0.05
                        ? ""
                        : " (measured %s %s)".formatted(much, size.offMm() > 0 ? "thick" : "thin");
            }
            return " (not measured, likely within %s of the pattern%s)"
                    .formatted(
                            Length.ofMm(Math.abs(size.offMm()) + 2 * size.deviationMm())
                                    .formatFine(units),
                            cut.sure() ? "" : ": measure it first, the cut may go past the tolerance");
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
