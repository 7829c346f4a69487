package turnalike.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What is to be known of a run before relying on it, as sentences. */
public final class TraceWarnings {
    /** A single station further off than so many standard deviations is likelier a slip than chance. */
    private static final double SLIP_SIGMAS = 6;

    /** No spindle of millimetres is so short, many are of inches. */
    private static final double SHORT_MM = 40;

    private static final double LEAST_SLIP_MM = 0.8;
    /** Members that miss by more than so many standard deviations in the mean do not explain what was measured. */
    private static final double BAD_SIGMAS = 2;

    /** Less than this beside steps is not worth a word. */
    private static final double LEAST_BESIDE_MM = 1;

    private TraceWarnings() {}

    /**
     * {@return the warnings, the gravest first}
     *
     * @param original as it was read
     * @param run the members found
     * @param units to print in
     */
    public static List<String> of(Original original, TracedRun run, UnitSystem units) {
        List<String> out = new ArrayList<>();
        Length longest = original.profile().length();
        if (units == UnitSystem.METRIC && longest.mm() < SHORT_MM) {
            out.add("The piece is only %s long: if it was measured in inches, say so with --units in."
                    .formatted(longest.format(units)));
        }
        List<Integer> uncertain = new ArrayList<>();
        List<Integer> rivalled = new ArrayList<>();
        for (int i = 0; i < run.members().size(); i++) {
            TracedMember member = run.members().get(i);
            if (!member.guessed().isEmpty()) {
                out.add(
                        "Nothing was read that tells the size “%s” of member %d (%s): it is carried on from farther off; measure it on the piece."
                                .formatted(
                                        String.join("” and “", member.guessed()),
                                        i + 1,
                                        member.member().title()));
            } else if (member.uncertain()) {
                (member.rivalled() ? rivalled : uncertain).add(i + 1);
            }
        }
        List<Profile.Stretch> hidden = original.fitted().hidden();
        if (!hidden.isEmpty()) {
            String where = hidden.stream()
                    .map(each -> "%s to %s"
                            .formatted(
                                    each.from().format(units).replace(" " + units.symbol(), ""),
                                    each.to().format(units)))
                    .collect(Collectors.joining(", "));
            out.add("Not seen behind thicker parts: %s.".formatted(where));
        }
        double beside = total(original.profile().hidden()) - total(hidden);
        if (beside > LEAST_BESIDE_MM) {
            out.add(
                    "Beside steps, over %s in all, the radii count as not seen either: half a pixel along is the whole step across there."
                            .formatted(Length.ofMm(beside).format(units)));
        }
        if (original.isCoarse(run.scatter())) {
            out.add(
                    "Radii are known to within %s only, too little for this piece: no member's kind and size is sure; come nearer, or take a picture with more pixels."
                            .formatted(run.scatter().formatMeasuredBoth(units)));
        } else if (!uncertain.isEmpty()) {
            out.add("%s on what was not seen: measure it on the piece."
                    .formatted(
                            uncertain.size() == 1
                                    ? "Member %d rests".formatted(uncertain.get(0))
                                    : "Members %s rest".formatted(DoubtWarnings.listed(uncertain))));
        }
        if (!rivalled.isEmpty()) {
            out.add("%s as well be of another kind, for all that the picture shows: measure there."
                    .formatted(
                            rivalled.size() == 1
                                    ? "Member %d may".formatted(rivalled.get(0))
                                    : "Members %s may".formatted(DoubtWarnings.listed(rivalled))));
        }
        Length scatter = run.scatter();
        Length rms = run.miss().rms();
        if (rms.mm() > BAD_SIGMAS * scatter.mm()) {
            out.add("The members miss what was read by %s in the mean, more than it should be off (%s)."
                    .formatted(rms.formatMeasuredBoth(units), scatter.formatMeasuredBoth(units)));
        }
        double slip = Math.max(LEAST_SLIP_MM, SLIP_SIGMAS * scatter.mm());
        if (run.miss().worst().mm() > slip) {
            out.add(
                    "At %s what was read lies %s off the members around it: a slip, or a detail too small to tell; look there again."
                            .formatted(
                                    run.miss().worstAt().formatBoth(units),
                                    run.miss().worst().formatFineBoth(units)));
        }
        return out;
    }

    private static double total(List<Profile.Stretch> stretches) {
        return stretches.stream()
                .mapToDouble(each -> each.to().mm() - each.from().mm())
                .sum();
    }
}
