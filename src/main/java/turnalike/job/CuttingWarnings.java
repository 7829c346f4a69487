package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.outline.Section;
import turnalike.pattern.PlacedMember;
import turnalike.pattern.Warning;
import turnalike.settings.CaliperSetting;
import turnalike.settings.Wrench;
import turnalike.units.Article;
import turnalike.units.Length;

/** What the blank and the allowances leave no room for. The bounds are common practice, no source. */
final class CuttingWarnings {
    private static final double SLACK_MM = 1e-6;

    private final Job job;
    private final JobSettings settings;

    private CuttingWarnings(Job job, JobSettings settings) {
        this.job = job;
        this.settings = settings;
    }

    static List<Warning> of(Job job, JobSettings settings) {
        CuttingWarnings warnings = new CuttingWarnings(job, settings);
        List<Warning> out = new ArrayList<>(warnings.cleanUp());
        warnings.sanding().ifPresent(out::add);
        out.addAll(warnings.wrenches());
        return out;
    }

    /** A round as large as the blank's flats leaves them standing. */
    private List<Warning> cleanUp() {
        List<Warning> out = new ArrayList<>();
        Length most = job.largestRound();
        for (PlacedMember placed : job.pattern().placed()) {
            Length diameter = placed.outline().largestRadius().times(2);
            if (placed.member().section() == Section.ROUND && diameter.mm() > most.mm() + SLACK_MM) {
                out.add(new Warning(
                        placed.where(),
                        "%s does not clean up from a blank of %s: %s at most, as far off its middle as it may run; take a larger"
                                        .formatted(
                                                print(diameter),
                                                print(job.pattern().stock().size()),
                                                print(most))
                                + " blank or make it slimmer"));
            }
        }
        return out;
    }

    private Optional<Warning> sanding() {
        Length sizing = job.cutting().sizing();
        Length sanding = job.cutting().sanding();
        return sanding.mm() > sizing.mm() + SLACK_MM
                ? Optional.of(new Warning(
                        "allowances",
                        "sanding takes %s of the %s that sizing leaves: every piece ends thinner than drawn; size over by more"
                                .formatted(print(sanding), print(sizing))))
                : Optional.empty();
    }

    /** The calipers take a tenon past the size at which its wrench would have dropped over. */
    private List<Warning> wrenches() {
        List<Warning> out = new ArrayList<>();
        for (TenonFit fit : settings.tenons()) {
            Optional<Length> opening = settings.calipers().stream()
                    .filter(each -> each.members().contains(fit.member()))
                    .map(CaliperSetting::opening)
                    .min(Length::compareTo);
            // The nearest is the one that the order of cuts names; where it serves, the other system's is nobody's
            // business.
            Optional<Wrench> wider = fit.wrenches().stream()
                    .findFirst()
                    .filter(nearest -> opening.isPresent()
                            && least(nearest).mm() > opening.get().mm() + SLACK_MM);
            wider.ifPresent(wrench -> out.add(new Warning(
                    job.pattern().placed().get(fit.member()).where(),
                    "the calipers at %s go past %s wrench, which opens to %s: the tenon ends loose in its hole; leave a sizing allowance"
                            .formatted(
                                    print(opening.orElseThrow()), Article.with(wrench.name()), print(least(wrench))))));
        }
        return out;
    }

    private static Length least(Wrench wrench) {
        return wrench.opening().map(Wrench.Opening::least).orElse(wrench.nominal());
    }

    private String print(Length length) {
        return length.formatFineBoth(job.units());
    }
}
