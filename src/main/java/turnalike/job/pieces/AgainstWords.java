package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.job.Job;
import turnalike.trace.against.Comparison;
import turnalike.trace.against.Figure;
import turnalike.trace.against.MemberOff;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What a turner says of a piece held against its pattern: {@code its upper bead stands 1.2 mm low}. Only what is surely off, and by half a
 * tolerance or more. Low is toward the start end, high toward the other.
 */
final class AgainstWords {
    /** What is off by less of its tolerance is not worth a word. */
    private static final double WORTH_SAYING = 0.5;

    /** So many in a row that are off alike are told of together. */
    private static final int FEWEST_TOGETHER = 3;

    private static final double SAME_MM = 1e-6;

    private static final String NOTHING = "Just as asked for, as far as it was seen.";

    private final Job job;
    private final UnitSystem units;
    private final Comparison comparison;
    private final boolean lengthMeasured;
    private final List<Said> said = new ArrayList<>();

    /** A sentence, and how much it weighs: tolerances off, weighted as likeness weighs them. */
    private record Said(String text, double weight) {}

    AgainstWords(Job job, UnitSystem units, Comparison comparison, boolean lengthMeasured) {
        this.job = job;
        this.units = units;
        this.comparison = comparison;
        this.lengthMeasured = lengthMeasured;
    }

    List<String> sentences() {
        Length mark = job.tolerances().mark();
        if (lengthMeasured && comparison.longer().abs().mm() >= WORTH_SAYING * mark.mm()) {
            boolean more = comparison.longer().mm() > 0;
            say(
                    "It is %s too %s.".formatted(fine(comparison.longer()), more ? "long" : "short"),
                    comparison.longer(),
                    mark,
                    job.likeness().length());
        }
        places();
        comparison.members().forEach(this::sizes);
        said.sort(Comparator.comparingDouble(Said::weight).reversed());
        return said.isEmpty() ? List.of(NOTHING) : said.stream().map(Said::text).toList();
    }

    /** Members off alike in a row go together: one wrong length before them moved them all. */
    private void places() {
        List<MemberOff> run = new ArrayList<>();
        for (MemberOff each : comparison.members()) {
            Optional<Figure> stands = worth(each.stands(), job.tolerances().mark());
            boolean alike = stands.isPresent()
                    && (run.isEmpty()
                            || isAlike(run.get(run.size() - 1).stands().orElseThrow(), stands.get()));
            if (!alike) {
                tell(run);
                run.clear();
            }
            if (stands.isPresent()) {
                run.add(each);
            }
        }
        tell(run);
    }

    private static boolean isAlike(Figure one, Figure other) {
        double apart = one.value().minus(other.value()).abs().mm();
        return apart
                <= Math.max(
                        0.3,
                        2
                                * Math.hypot(
                                        one.uncertainty().mm(),
                                        other.uncertainty().mm()));
    }

    private void tell(List<MemberOff> run) {
        Length mark = job.tolerances().mark();
        if (run.size() >= FEWEST_TOGETHER) {
            double mean = run.stream()
                    .mapToDouble(each -> each.stands().orElseThrow().value().mm())
                    .average()
                    .orElseThrow();
            Length off = Length.ofMm(mean);
            say(
                    "Everything from its %s to its %s stands about %s %s."
                            .formatted(
                                    name(run.get(0)),
                                    name(run.get(run.size() - 1)),
                                    fine(off),
                                    mean > 0 ? "high" : "low"),
                    off,
                    mark,
                    run.size() * job.likeness().length());
            return;
        }
        for (MemberOff each : run) {
            // Where an edge without a crest stands is told by how long it is.
            boolean told = !hasCrest(each) && worth(each.longer(), mark).isPresent();
            if (told) {
                continue;
            }
            Figure stands = each.stands().orElseThrow();
            say(
                    "Its %s stands %s.".formatted(name(each), much(stands, "high", "low")),
                    stands.value(),
                    mark,
                    job.likeness().length());
        }
    }

    private static boolean hasCrest(MemberOff member) {
        return !member.placed().member().crests().isEmpty();
    }

    private void sizes(MemberOff member) {
        Length diameter = job.tolerances().diameter();
        Optional<Figure> deeper = worth(member.deeper(), diameter.times(0.5));
        Optional<Figure> thicker = worth(member.thicker(), diameter);
        double weight = job.likeness().diameter();
        if (deeper.isPresent()) {
            Figure figure = deeper.get();
            say(
                    "Its %s is %s.".formatted(name(member), much(figure, "deep", "shallow")),
                    figure.value().times(2),
                    diameter,
                    weight);
        } else if (thicker.isPresent()) {
            Figure figure = thicker.get();
            say(
                    "Its %s is %s.".formatted(name(member), much(figure, "too thick", "too thin")),
                    figure.value(),
                    diameter,
                    weight);
        } else {
            if (!meetsLast(member)) {
                end(member, 0, "starts");
            }
            end(member, 1, "ends");
        }
        worth(member.longer(), job.tolerances().mark())
                .ifPresent(figure -> say(
                        "Its %s is %s.".formatted(name(member), much(figure, "too long", "too short")),
                        figure.value(),
                        job.tolerances().mark(),
                        job.likeness().length()));
        LocalFault.find(comparison, member, diameter)
                .ifPresent(fault -> say(
                        "Its %s is %s too %s at %s from the start end."
                                .formatted(
                                        name(member),
                                        fine(fault.much()),
                                        fault.much().mm() > 0 ? "thick" : "thin",
                                        fault.place().format(units)),
                        fault.much(),
                        diameter,
                        weight));
    }

    /** Where two members meet without a step the diameter there is one, told of the first. */
    private boolean meetsLast(MemberOff member) {
        int index = member.placed().number() - 1;
        if (index == 0) {
            return false;
        }
        Length before = comparison.members().get(index - 1).placed().outline().endRadius();
        return before.minus(member.placed().outline().startRadius()).abs().mm() < SAME_MM;
    }

    private void end(MemberOff member, int end, String word) {
        worth(member.ends().get(end), job.tolerances().diameter())
                .ifPresent(figure -> say(
                        "Its %s %s %s.".formatted(name(member), word, much(figure, "too thick", "too thin")),
                        figure.value(),
                        job.tolerances().diameter(),
                        job.likeness().diameter()));
    }

    private static Optional<Figure> worth(Optional<Figure> figure, Length tolerance) {
        return figure.filter(each -> each.isSurelyOff() && each.value().abs().mm() >= WORTH_SAYING * tolerance.mm());
    }

    private void say(String text, Length off, Length tolerance, double weight) {
        said.add(new Said(text, weight * off.abs().mm() / tolerance.mm()));
    }

    /** {@code 1.2 mm low (give or take 0.2 mm)}. */
    private String much(Figure figure, String more, String less) {
        return "%s %s (give or take %s)"
                .formatted(
                        fine(figure.value()),
                        figure.value().mm() > 0 ? more : less,
                        figure.uncertainty().formatFineUp(units));
    }

    /** A tenth of a millimetre is all that is known. */
    private String fine(Length length) {
        return units == UnitSystem.METRIC
                ? length.abs().format(units)
                : length.abs().formatFine(units);
    }

    /** By its own name; with its number where others go by the same. */
    private String name(MemberOff member) {
        String title = member.placed().member().title();
        String those = comparison.members().stream()
                .map(each -> each.placed().member().title())
                .filter(title::equals)
                .collect(Collectors.joining("|"));
        return those.length() == title.length()
                ? title
                : "%s (member %d)".formatted(title, member.placed().number());
    }
}
