package turnalike.job.boards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.CuttingOrder;
import turnalike.stock.boards.Sawing;
import turnalike.stock.boards.Wanted;
import turnalike.units.Listing;
import turnalike.units.UnitSystem;

/** What a plan takes for granted and a turner should know, each a sentence. */
public final class BoardNotes {
    /** What sawing boards can do to a hand; common practice, no source. */
    public static final List<String> CAUTIONS = List.of(
            "A board that is cupped, bowed or case-hardened can close on the blade and be thrown back: flatten one face and straighten one edge"
                    + " first, keep the riving knife or splitter and the guard in place, and stand out of the line of the blade.",
            "Short and narrow pieces pull the fingers in: use push sticks, never cross-cut against the rip fence, and saw no strip that is too"
                    + " short for your machine to hold; splitting strips over one another is bandsaw work.",
            "Common practice, no source: your saw's own instructions and whoever is licensed to teach its use come first.");

    private BoardNotes() {}

    /**
     * {@return the notes, in order; none where nothing needs saying}
     *
     * @param jobs whose blanks they are
     * @param order what was asked
     */
    public static List<String> of(List<JobBlanks.Named> jobs, CuttingOrder order) {
        List<String> out = new ArrayList<>();
        UnitSystem units = JobBlanks.units(jobs);
        if (jobs.stream().anyMatch(each -> each.job().units() != units)) {
            out.add(
                    "The jobs are in inches and in millimetres: bare lengths of the boards were read in the first job's units, %s."
                            .formatted(units.symbol()));
        }
        sawing(jobs, order, units).ifPresent(out::add);
        prices(order).ifPresent(out::add);
        for (Wanted each : order.wanted()) {
            ruledOut(each, order).ifPresent(out::add);
        }
        unnamed(order).ifPresent(out::add);
        return out;
    }

    private static Optional<String> sawing(List<JobBlanks.Named> jobs, CuttingOrder order, UnitSystem units) {
        Sawing sawing = order.sawing();
        boolean differ =
                jobs.stream().anyMatch(each -> !each.job().cutting().sawing().equals(sawing));
        return differ
                ? Optional.of(
                        "The jobs' sawing differs: all are sawn in one go, with the greatest of each: kerf %s, edge %s, end %s."
                                .formatted(
                                        sawing.kerf().formatFine(units),
                                        sawing.edge().formatFine(units),
                                        sawing.end().formatFine(units)))
                : Optional.empty();
    }

    private static Optional<String> prices(CuttingOrder order) {
        List<String> free = order.boards().stream()
                .filter(board -> board.price().isEmpty())
                .map(Board::name)
                .toList();
        return order.isPriced() && !free.isEmpty()
                ? Optional.of("%s no price and %s as costing nothing: %s."
                        .formatted(
                                free.size() == 1 ? "One board has" : "%d boards have".formatted(free.size()),
                                free.size() == 1 ? "counts" : "count",
                                few(free)))
                : Optional.empty();
    }

    private static Optional<String> ruledOut(Wanted blank, CuttingOrder order) {
        List<String> out = order.boards().stream()
                .filter(board -> blank.wood().isPresent()
                        && board.species().isPresent()
                        && !board.species().equals(blank.wood()))
                .map(board -> "%s (%s)".formatted(board.name(), board.species().orElse("")))
                .toList();
        return out.isEmpty()
                ? Optional.empty()
                : Optional.of("%s is of %s, so these boards do not serve it: %s."
                        .formatted(blank.job(), blank.wood().orElse("another wood"), few(out)));
    }

    private static Optional<String> unnamed(CuttingOrder order) {
        List<String> unnamed = order.boards().stream()
                .filter(board -> board.species().isEmpty())
                .map(Board::name)
                .toList();
        long woods = order.wanted().stream()
                .flatMap(each -> each.wood().stream())
                .distinct()
                .count();
        return woods > 1 && !unnamed.isEmpty()
                ? Optional.of(
                        "The jobs are of different woods, and these boards name none; they were taken as right for any: %s."
                                .formatted(few(unnamed)))
                : Optional.empty();
    }

    private static String few(List<String> names) {
        return Listing.of(names, 8);
    }
}
