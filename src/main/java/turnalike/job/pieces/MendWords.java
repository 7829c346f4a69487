package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.List;
import turnalike.pieces.mend.MendCut;
import turnalike.pieces.mend.MendPlan;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

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
            Mass off = Mass.ofGrams(Math.abs(leave.off().grams()));
            String told = told();
            boolean seen = scale().step().grams() > 0 && Double.parseDouble(scale().figure(off)) > 0;
            String cut = "%s too much is less than the smallest cut worth making takes off: leave it.";
            String step = leave.off().grams() > 0
                    ? "%s too much is no more than a step of the scale: leave it."
                    : "%s too little is no more than a step of the scale: leave it.";
            return words(
                    !leave.scale() ? cut.formatted(told) : seen ? step.formatted(told) : "near enough, leave it.",
                    List.of());
        }

        @Override
        public MendWords cuts(MendPlan.Cuts plan) {
            List<String> steps = new ArrayList<>();
            for (MendCut cut : plan.cuts()) {
                steps.add(cut.words(units) + own(cut));
            }
            steps.add("It will then weigh %s. Weigh between cuts.".formatted(scale().reading(plan.massAfter())));
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
            double within = Math.abs(size.offMm()) + 2 * size.deviationMm();
            return " (not measured, likely within %s of the pattern%s)"
                    .formatted(
                            Length.ofMm(units == UnitSystem.METRIC ? Math.ceil(within * 10) / 10 : within)
                                    .formatFine(units),
                            cut.sure() ? "" : ": measure it first, the cut may go past the tolerance");
        }

        @Override
        public MendWords light(MendPlan.Light light) {
            return words("it lacks %s.".formatted(told()), mend.lightWays());
        }

        @Override
        public MendWords makeAnother(MendPlan.MakeAnother another) {
            String cuts = scale().reading(another.cutsTakeOff());
            return words(
                    cuts.equals(told())
                            ? "%s too much, and the deepest cuts within the tolerance do not take off quite as much. Turn another."
                                    .formatted(told())
                            : "%s too much, and the deepest cuts within the tolerance take off %s. Turn another."
                                    .formatted(told(), cuts),
                    List.of());
        }

        /** How far it is off, as the two figures of the head have it. */
        private String told() {
            return scale().difference(mend.mass(), mend.target());
        }

        private MendWords words(String verdict, List<String> steps) {
            String head = "Piece %s weighs %s, wanted %s"
                    .formatted(mend.piece().label(), scale().reading(mend.mass()), scale().reckoned(mend.target()));
            return new MendWords(head, verdict, steps);
        }

        private WeighingScale scale() {
            return mend.weighing();
        }
    }
}
