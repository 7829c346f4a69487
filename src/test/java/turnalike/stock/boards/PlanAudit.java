package turnalike.stock.boards;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import turnalike.stock.boards.CuttingPlan.CutBlank;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.LeftOver;
import turnalike.stock.boards.CuttingPlan.Rip;
import turnalike.stock.boards.CuttingPlan.Strip;

/** A plan held against the boards themselves, written from the contract and not from the search. */
final class PlanAudit {
    private static final double HAIR = 1e-4;

    private PlanAudit() {}

    static void audit(CuttingPlan plan) {
        plan.boards().forEach(cut -> board(plan, cut));
        plan.leftOver().forEach(each -> leftOver(plan, each));
        for (Wanted wanted : plan.order().wanted()) {
            long cut = plan.boards().stream()
                    .flatMap(board -> board.strips().stream())
                    .flatMap(strip -> strip.blanks().stream())
                    .filter(blank -> blank.of().equals(wanted))
                    .count();
            long missing = plan.missing().stream()
                    .filter(each -> each.of().equals(wanted))
                    .mapToLong(CuttingPlan.Missing::count)
                    .sum();
            assertThat(cut + missing).isEqualTo(wanted.count());
        }
    }

    private static void board(CuttingPlan plan, CutBoard cut) {
        Sawing sawing = plan.order().sawing();
        double from = sawing.edge().mm();
        double kerf = sawing.kerf().mm();
        for (Rip rip : cut.rips()) {
            assertThat(rip.from().mm()).isGreaterThanOrEqualTo(from - HAIR);
            from = rip.from().mm() + rip.size().mm() + kerf;
            double layers = rip.strips().size() * (rip.size().mm() + kerf) - kerf;
            assertThat(layers).isLessThanOrEqualTo(cut.board().thickness().mm() + HAIR);
            rip.strips().forEach(strip -> strip(plan, cut, rip, strip));
        }
        assertThat(from - kerf)
                .isLessThanOrEqualTo(cut.board().width().mm() - sawing.edge().mm() + HAIR);
        assertThat(cut.strips()).anyMatch(strip -> !strip.blanks().isEmpty());
    }

    private static void strip(CuttingPlan plan, CutBoard cut, Rip rip, Strip strip) {
        double kerf = plan.order().sawing().kerf().mm();
        double end = plan.order().sawing().end().mm();
        List<CutBlank> blanks = new ArrayList<>(strip.blanks());
        blanks.sort(Comparator.comparing(CutBlank::from));
        double free = end;
        for (CutBlank blank : blanks) {
            double from = blank.from().mm();
            double to = from + blank.of().length().mm();
            assertThat(blank.of().size()).isEqualTo(rip.size());
            assertThat(from).isGreaterThanOrEqualTo(free - HAIR);
            assertThat(to).isLessThanOrEqualTo(cut.board().length().mm() - end + HAIR);
            for (Board.Fault fault : cut.board().faults()) {
                assertThat(to <= fault.from().mm() + HAIR || from >= fault.to().mm() - HAIR)
                        .isTrue();
            }
            assertThat(blank.of().wood().isEmpty()
                            || cut.board().species().isEmpty()
                            || blank.of().wood().equals(cut.board().species()))
                    .isTrue();
            free = to + kerf;
        }
    }

    /** It is clear wood of a board that is cut, and holds no blank. */
    private static void leftOver(CuttingPlan plan, LeftOver left) {
        CutBoard cut = plan.boards().stream()
                .filter(each -> each.label().equals(left.label()))
                .findFirst()
                .orElseThrow();
        double from = left.from().mm();
        double to = from + left.length().mm();
        assertThat(from).isGreaterThanOrEqualTo(plan.order().sawing().end().mm() - HAIR);
        assertThat(to)
                .isLessThanOrEqualTo(
                        cut.board().length().mm() - plan.order().sawing().end().mm() + HAIR);
        for (Board.Fault fault : cut.board().faults()) {
            assertThat(to <= fault.from().mm() + HAIR || from >= fault.to().mm() - HAIR)
                    .isTrue();
        }
        boolean unripped = cut.rips().stream().noneMatch(rip -> rip.size().equals(left.width()));
        long strips = cut.strips().stream()
                .filter(strip -> strip.size().equals(left.width()))
                .filter(strip -> strip.blanks().stream()
                        .noneMatch(blank -> blank.from().mm() < to - HAIR
                                && blank.from().mm() + blank.of().length().mm() > from + HAIR))
                .count();
        assertThat(unripped || strips > 0).isTrue();
    }
}
