package turnalike.job.boards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.CuttingPlan;
import turnalike.stock.boards.CuttingPlan.CutBlank;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.LeftOver;
import turnalike.stock.boards.CuttingPlan.Rip;
import turnalike.stock.boards.CuttingPlan.Strip;
import turnalike.stock.boards.SawCut;
import turnalike.stock.boards.Sawing;
import turnalike.units.Article;
import turnalike.units.UnitSystem;

/** A cutting plan in words, in the order of the shop. */
public final class BoardWords {
    private BoardWords() {}

    /**
     * {@return which boards are cut, what they cost, how sure it is that it cannot be done for less, and how much of them becomes blanks}
     *
     * @param plan what is told
     * @param units the units to print in
     */
    public static String aim(CuttingPlan plan, UnitSystem units) {
        int lots = plan.order().boards().stream().mapToInt(Board::count).sum();
        if (plan.boards().isEmpty()) {
            return lots == 0 ? "Boards: there are none." : "Boards: none of the %d gives a blank.".formatted(lots);
        }
        boolean priced = plan.order().isPriced();
        String what = priced
                ? "%d of %d cut at a price of %s together"
                        .formatted(plan.used(), lots, plan.cost().toPlainString())
                : "%d of %d cut".formatted(plan.used(), lots);
        String bound = plan.bound().toPlainString();
        String sure = plan.proven()
                ? (priced ? "proven to be the least" : "proven to be the fewest")
                : (priced
                                ? "best found; it is proven that it takes %s at least"
                                : "best found; it is proven that it takes %s boards at least")
                        .formatted(bound);
        String longest = plan.leftOver().isEmpty()
                ? ""
                : "; longest left over %s%s"
                        .formatted(
                                plan.leftOver().get(0).length().formatBoth(units),
                                plan.longestProven()
                                        ? ", the longest that such boards can leave"
                                        : ", at most %s could be"
                                                .formatted(plan.longest().format(units)));
        return String.format(
                Locale.ROOT,
                "Boards: %s (%s)%s; %.0f %% of their wood becomes blanks.",
                what,
                sure,
                longest,
                100 * plan.shareUsed());
    }

    /**
     * {@return a board: name, sizes, wood, price}
     *
     * @param cut which
     * @param units the units to print in
     */
    public static String board(CutBoard cut, UnitSystem units) {
        Board board = cut.board();
        Optional<String> price = board.price().map(each -> each.toPlainString());
        return "Board %s: %s x %s x %s%s%s"
                .formatted(
                        cut.label(),
                        board.thickness().format(units),
                        board.width().format(units),
                        board.length().format(units),
                        board.species().map(each -> ", " + each).orElse(""),
                        price.map(each -> ", " + each).orElse(""));
    }

    /**
     * {@return what is sawn, in order, each with the numbers of its cuts}
     *
     * @param cut the board
     * @param sawing what sawing takes
     * @param units the units to print in
     */
    public static List<String> steps(CutBoard cut, Sawing sawing, UnitSystem units) {
        List<SawCut> cuts = SawCut.of(cut, sawing);
        List<String> out = new ArrayList<>();
        for (Board.Fault fault : cut.board().faults()) {
            out.add("fault from %s to %s: no blank touches it"
                    .formatted(fault.from().format(units), fault.to().format(units)));
        }
        out.add("%s straighten one edge, %s off it; mark from that edge"
                .formatted(numbers(cuts.subList(0, 1)), sawing.edge().formatFine(units)));
        int rip = 0;
        while (rip < cut.rips().size()) {
            int alike = rip;
            while (alike + 1 < cut.rips().size()
                    && cut.rips()
                            .get(alike + 1)
                            .size()
                            .equals(cut.rips().get(rip).size())) {
                alike++;
            }
            out.add(rip(cut, cuts, rip, alike, units));
            rip = alike + 1;
        }
        out.addAll(splits(cut, cuts, units));
        for (int each = 0; each < cut.rips().size(); each++) {
            out.addAll(strips(cut, cuts, each, units));
        }
        return out;
    }

    private static String rip(CutBoard cut, List<SawCut> cuts, int first, int last, UnitSystem units) {
        List<SawCut> own = cuts.stream()
                .filter(each -> each.kind() == SawCut.Kind.RIP && each.rip() >= first && each.rip() <= last)
                .toList();
        return "%s rip %s, %s wide"
                .formatted(
                        numbers(own),
                        first == last ? "rip " + (first + 1) : "rips %d to %d".formatted(first + 1, last + 1),
                        cut.rips().get(first).size().formatFine(units))
                .replace("rip rip ", "saw rip ")
                .replace("rip rips ", "saw rips ");
    }

    private static List<String> splits(CutBoard cut, List<SawCut> cuts, UnitSystem units) {
        List<SawCut> own =
                cuts.stream().filter(each -> each.kind() == SawCut.Kind.SPLIT).toList();
        if (own.isEmpty()) {
            return List.of();
        }
        boolean all = cut.rips().stream().allMatch(each -> each.strips().size() == 1);
        return List.of("%s %s"
                .formatted(
                        numbers(own),
                        all
                                ? "saw each rip down to its square"
                                : "split the rips into strips: "
                                        + cut.rips().stream()
                                                .map(each -> "%s of %s"
                                                        .formatted(
                                                                each.strips().size(),
                                                                each.size().formatFine(units)))
                                                .distinct()
                                                .collect(Collectors.joining(", "))));
    }

    private static List<String> strips(CutBoard cut, List<SawCut> cuts, int rip, UnitSystem units) {
        List<String> out = new ArrayList<>();
        Rip of = cut.rips().get(rip);
        for (int layer = 0; layer < of.strips().size(); layer++) {
            Strip strip = of.strips().get(layer);
            int at = layer;
            List<SawCut> own = cuts.stream()
                    .filter(each -> each.kind() == SawCut.Kind.CROSS && each.rip() == rip && each.layer() == at)
                    .toList();
            String name =
                    of.strips().size() == 1 ? "rip " + (rip + 1) : "rip %d, strip %d".formatted(rip + 1, layer + 1);
            if (strip.blanks().isEmpty()) {
                out.add("%s: left whole".formatted(name));
                continue;
            }
            out.add("%s %s, cross-cut at %s: %s"
                    .formatted(
                            numbers(own),
                            name,
                            own.stream().map(each -> each.at().format(units)).collect(Collectors.joining(", ")),
                            blanks(strip, units)));
        }
        return out;
    }

    private static String blanks(Strip strip, UnitSystem units) {
        List<String> out = new ArrayList<>();
        int first = 0;
        while (first < strip.blanks().size()) {
            CutBlank blank = strip.blanks().get(first);
            int alike = first;
            while (alike < strip.blanks().size()
                    && strip.blanks().get(alike).of().equals(blank.of())) {
                alike++;
            }
            out.add("%s of %s for %s"
                    .formatted(
                            Article.count(alike - first, "blank"),
                            blank.of().length().format(units),
                            blank.of().job()));
            first = alike;
        }
        return String.join(", ", out);
    }

    private static String numbers(List<SawCut> cuts) {
        if (cuts.isEmpty()) {
            return "(no cut)";
        }
        int first = cuts.get(0).number();
        int last = cuts.get(cuts.size() - 1).number();
        return first == last ? first + "." : "%d.-%d.".formatted(first, last);
    }

    /**
     * {@return the left-over pieces as long as the shortest blank or longer, a line each; a last line counts those that are not told. Empty where
     * there are none}
     *
     * @param plan what is told
     * @param units the units to print in
     * @param most so many lines of pieces
     */
    public static List<String> kept(CuttingPlan plan, UnitSystem units, int most) {
        List<LeftOver> worth = plan.leftOver().stream()
                .filter(each -> each.length().compareTo(plan.keep()) >= 0)
                .toList();
        List<String> out = new ArrayList<>(worth.stream()
                .limit(most)
                .map(each -> "%s: %s wide, %s long"
                        .formatted(
                                each.label(),
                                each.width().format(units),
                                each.length().format(units)))
                .toList());
        if (worth.size() > most) {
            out.add("and %d more".formatted(worth.size() - most));
        }
        return out;
    }
}
