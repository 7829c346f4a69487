package turnalike.job.boards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.OneLength;
import turnalike.job.Plan;
import turnalike.stock.Blank;
import turnalike.stock.StockPlan;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.BoardCutting;
import turnalike.stock.boards.CuttingOrder;
import turnalike.stock.boards.CuttingPlan;
import turnalike.stock.boards.Sawing;
import turnalike.stock.boards.Wanted;
import turnalike.units.UnitSystem;
import turnalike.wood.Wood;

/** The blanks that jobs want of the boards in hand, cut in one go. */
public final class JobBlanks {
    /** Some five seconds' work: what is proven at all is proven in a few, and a shop waits longer for the blade to be set. */
    public static final long USUAL_STEPS = 300_000;

    private JobBlanks() {}

    /**
     * A job and what it is called among the others.
     *
     * @param name its title; where two bear the same, with the file's name
     * @param file the job file's name
     * @param job the order
     */
    public record Named(String name, String file, Job job) {}

    /**
     * {@return the jobs, each with a name of its own; of a job whose pieces are made in several lengths, each length as one}
     *
     * @param files the names of their files, which may be alike too
     * @param jobs as many
     */
    public static List<Named> named(List<String> files, List<Job> jobs) {
        List<Named> out = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            String title = jobs.get(i).title();
            boolean twice =
                    jobs.stream().filter(each -> each.title().equals(title)).count() > 1;
            String name = twice ? "%s (%s)".formatted(title, files.get(i)) : title;
            int copy = 2;
            String unique = name;
            while (isTaken(out, unique)) {
                unique = "%s #%d".formatted(name, copy++);
            }
            out.add(new Named(unique, files.get(i), jobs.get(i)));
        }
        return out.stream().flatMap(JobBlanks::lengths).toList();
    }

    /** Each length of a job as an order of its own, since its blanks are; the job itself where all its pieces are as drawn. */
    private static Stream<Named> lengths(Named named) {
        List<OneLength> lengths = OneLength.of(named.job());
        int title = named.job().title().length();
        return lengths.isEmpty()
                ? Stream.of(named)
                : lengths.stream().map(each -> {
                    String words = each.job().title().substring(title);
                    return new Named(named.name() + words, named.file(), each.job());
                });
    }

    private static boolean isTaken(List<Named> named, String name) {
        return named.stream().anyMatch(each -> each.name().equals(name));
    }

    /**
     * {@return the plan}
     *
     * @param jobs at least one; all are sawn in one go, so each saw cut, edge and end is the greatest that any of them asks for
     * @param boards in hand
     * @param effort what the search may spend
     */
    public static CuttingPlan plan(List<Named> jobs, List<Board> boards, Effort effort) {
        return BoardCutting.plan(order(jobs, boards), effort);
    }

    /**
     * {@return what is to be cut out of what: every job's rough blanks, spares included}
     *
     * @param jobs at least one
     * @param boards in hand
     */
    public static CuttingOrder order(List<Named> jobs, List<Board> boards) {
        List<Wanted> wanted = new ArrayList<>();
        for (Named each : jobs) {
            StockPlan stock = Plan.stock(each.job());
            Blank rough = stock.rough();
            Optional<String> wood = each.job().wood() instanceof Wood.OfSpecies known
                    ? Optional.of(known.species().name())
                    : Optional.empty();
            wanted.add(new Wanted(
                    each.name(), rough.size(), rough.length(), stock.spares().blanks(), wood));
        }
        return new CuttingOrder(wanted, boards, sawing(jobs));
    }

    private static Sawing sawing(List<Named> jobs) {
        return jobs.stream()
                .map(each -> each.job().cutting().sawing())
                .reduce(Sawing::atLeast)
                .orElseThrow();
    }

    /**
     * {@return the units in which bare lengths of the boards are read and the plan is told: the first job's}
     *
     * @param jobs at least one
     */
    public static UnitSystem units(List<Named> jobs) {
        return jobs.get(0).job().units();
    }
}
