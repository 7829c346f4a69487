package turnalike.stock.boards;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.stock.boards.CuttingPlan.Lack;
import turnalike.units.Length;

class BoardCuttingTest {
    private static final Sawing SAWING = new Sawing(mm(3), mm(6), mm(12));

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Board board(String name, double thick, double wide, double longMm, Board.Fault... faults) {
        return new Board(name, mm(thick), mm(wide), mm(longMm), 1, Optional.empty(), Optional.empty(), List.of(faults));
    }

    private static Wanted wanted(double size, double length, int count) {
        return new Wanted("set", mm(size), mm(length), count, Optional.empty());
    }

    private static CuttingPlan plan(List<Wanted> wanted, List<Board> boards) {
        CuttingPlan plan = BoardCutting.plan(new CuttingOrder(wanted, boards, SAWING), Effort.ofAsks(2_000_000));
        PlanAudit.audit(plan);
        return plan;
    }

    /** Layers ⌊(110 + 3)/(50 + 3)⌋ = 2, strips ⌊(180 - 12 + 3)/53⌋ = 3, and 4 blanks of 290 in 1200 - 24 with 3 kerfs: 24 from one board. */
    @Test
    void a_board_gives_what_the_contract_counts() {
        CuttingPlan all = plan(List.of(wanted(50, 290, 24)), List.of(board("A", 110, 180, 1200)));
        assertThat(all.missing()).isEmpty();
        assertThat(all.used()).isEqualTo(1);
        assertThat(all.proven()).isTrue();
        CuttingPlan more = plan(List.of(wanted(50, 290, 25)), List.of(board("A", 110, 180, 1200)));
        assertThat(more.missing()).singleElement().satisfies(each -> assertThat(each.count())
                .isEqualTo(1));
        assertThat(more.proven()).isTrue();
    }

    @Test
    void blanks_that_fill_a_stretch_to_the_last_sixty_fourth_fit() {
        double sixtyFourth = 25.4 / 64;
        double blank = 1111 * sixtyFourth;
        double board = 3 * blank + 2 * 3.175 + 2 * 12.7;
        Sawing inches = new Sawing(mm(3.175), mm(6.35), mm(12.7));
        CuttingOrder order =
                new CuttingOrder(List.of(wanted(50, blank, 3)), List.of(board("A", 52, 65, board)), inches);
        CuttingPlan plan = BoardCutting.plan(order, Effort.ofAsks(100_000));
        PlanAudit.audit(plan);
        assertThat(plan.missing()).isEmpty();
        CuttingOrder shorter =
                new CuttingOrder(List.of(wanted(50, blank, 3)), List.of(board("A", 52, 65, board - 0.001)), inches);
        assertThat(BoardCutting.plan(shorter, Effort.ofAsks(100_000)).missing()).hasSize(1);
    }

    @Test
    void every_small_order_is_cut_as_well_as_trying_all_ways_finds() {
        Seeds.each(150, random -> {
            CuttingOrder order = small(random);
            CuttingPlan plan = BoardCutting.plan(order, Effort.ofAsks(2_000_000));
            PlanAudit.audit(plan);
            EveryCutting.Best best = EveryCutting.of(order);
            int wanted = order.wanted().stream().mapToInt(Wanted::count).sum();
            int missing =
                    plan.missing().stream().mapToInt(CuttingPlan.Missing::count).sum();
            assertThat(wanted - missing).isEqualTo(best.blanks());
            assertThat(order.isPriced() ? plan.cost().doubleValue() : plan.used())
                    .isEqualTo(best.cost(), Offset.offset(1e-9));
            assertThat(plan.proven()).isTrue();
            assertThat(plan.bound().doubleValue()).isEqualTo(best.cost(), Offset.offset(1e-9));
            double longest = plan.leftOver().isEmpty()
                    ? 0
                    : plan.leftOver().get(0).length().mm();
            assertThat(longest).isEqualTo(Math.max(0, best.longestMm()), Offset.offset(2e-3));
            assertThat(plan.longestProven()).isTrue();
        });
    }

    private static CuttingOrder small(Random random) {
        List<Wanted> wanted = new ArrayList<>();
        int kinds = 1 + random.nextInt(3);
        for (int kind = 0; kind < kinds; kind++) {
            double length = 200 + random.nextInt(400);
            wanted.add(new Wanted("job " + kind, mm(40), mm(length), 1 + random.nextInt(2), Optional.empty()));
        }
        boolean priced = random.nextBoolean();
        List<Board> boards = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            double length = 400 + random.nextInt(900);
            double from = random.nextInt((int) length - 60);
            List<Board.Fault> faults = random.nextInt(3) == 0
                    ? List.of(new Board.Fault(mm(from), mm(from + 5 + random.nextInt(50))))
                    : List.of();
            Optional<BigDecimal> price =
                    priced ? Optional.of(BigDecimal.valueOf(1 + random.nextInt(40), 1)) : Optional.empty();
            boards.add(new Board(
                    "board " + i,
                    mm(random.nextInt(4) == 0 ? 90 : 42),
                    mm(random.nextBoolean() ? 60 : 96),
                    mm(length),
                    1,
                    price,
                    Optional.empty(),
                    faults));
        }
        return new CuttingOrder(wanted, boards, SAWING);
    }

    @Test
    void two_sections_share_a_board_side_by_side() {
        List<Wanted> two = List.of(wanted(60, 500, 1), wanted(30, 500, 1));
        CuttingPlan plan = plan(two, List.of(board("A", 65, 12 + 60 + 3 + 30, 524)));
        assertThat(plan.missing()).isEmpty();
        assertThat(plan.boards().get(0).rips()).hasSize(2);
        assertThat(plan(two, List.of(board("A", 65, 12 + 60 + 2 + 30, 524))).missing())
                .hasSize(1);
    }

    @Test
    void a_board_of_another_wood_serves_only_its_own() {
        Wanted cherry = new Wanted("cherry set", mm(40), mm(300), 1, Optional.of("Cherry"));
        Board oak = new Board("oak", mm(45), mm(60), mm(400), 1, Optional.empty(), Optional.of("Oak"), List.of());
        CuttingPlan plan = plan(List.of(cherry), List.of(oak));
        assertThat(plan.missing().get(0).nearest())
                .hasValueSatisfying(each -> assertThat(each.lack()).isEqualTo(Lack.SPECIES));
        Wanted any = new Wanted("any", mm(40), mm(300), 1, Optional.empty());
        assertThat(plan(List.of(any), List.of(oak)).missing()).isEmpty();
    }

    @Test
    void where_no_board_can_give_one_the_nearest_is_named_with_what_it_lacks() {
        CuttingPlan thin =
                plan(List.of(wanted(50, 300, 2)), List.of(board("A", 40, 90, 900), board("B", 48.5, 20, 100)));
        assertThat(thin.missing().get(0).nearest()).hasValueSatisfying(each -> {
            assertThat(each.board().name()).isEqualTo("B");
            assertThat(each.lack()).isEqualTo(Lack.THICKNESS);
            assertThat(each.by().mm()).isEqualTo(1.5, Offset.offset(1e-9));
        });
        CuttingPlan brief =
                plan(List.of(wanted(50, 300, 2)), List.of(board("A", 60, 90, 320), board("B", 60, 90, 323)));
        assertThat(brief.missing().get(0).nearest()).hasValueSatisfying(each -> {
            assertThat(each.board().name()).isEqualTo("B");
            assertThat(each.lack()).isEqualTo(Lack.LENGTH);
            assertThat(each.by().mm()).isEqualTo(1, Offset.offset(1e-9));
        });
    }

    /** 199 to a strip: more than a signed byte counts. */
    @Test
    void short_blanks_out_of_a_long_board_are_all_counted() {
        CuttingPlan plan = plan(List.of(wanted(20, 97, 199)), List.of(board("A", 21, 33, 199 * 100 - 3 + 24)));
        assertThat(plan.missing()).isEmpty();
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void without_boards_all_is_missing() {
        CuttingPlan plan = plan(List.of(wanted(50, 300, 2)), List.of());
        assertThat(plan.used()).isZero();
        assertThat(plan.missing().get(0).count()).isEqualTo(2);
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void a_price_decides_where_there_is_one_and_free_boards_are_not_cut_for_nothing() {
        Board dear = new Board(
                "dear", mm(45), mm(60), mm(2000), 1, Optional.of(new BigDecimal("20")), Optional.empty(), List.of());
        Board cheap = new Board(
                "cheap", mm(45), mm(60), mm(700), 3, Optional.of(new BigDecimal("6.50")), Optional.empty(), List.of());
        Board free = board("offcut", 45, 60, 700);
        CuttingPlan plan = plan(List.of(wanted(40, 300, 4)), List.of(dear, cheap, free));
        assertThat(plan.cost()).isEqualByComparingTo("6.50");
        assertThat(plan.boards()).extracting(CuttingPlan.CutBoard::label).containsExactly("cheap", "offcut");
        assertThat(plan(List.of(wanted(40, 300, 2)), List.of(dear, cheap, free, board("offcut 2", 45, 60, 700)))
                        .used())
                .isEqualTo(1);
    }

    @Test
    void boards_alike_are_told_apart_by_number() {
        Board three = new Board("A", mm(45), mm(60), mm(340), 3, Optional.empty(), Optional.empty(), List.of());
        CuttingPlan plan = plan(List.of(wanted(40, 300, 3)), List.of(three));
        assertThat(plan.boards()).extracting(CuttingPlan.CutBoard::label).containsExactly("A", "A#2", "A#3");
    }

    /** Ten thousand boards, no two alike, of which two are needed: proven within a count of steps that takes some seconds. */
    @Test
    void ten_thousand_boards_are_looked_through() {
        Random random = new Random(1);
        List<Board> boards = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            boards.add(board("b" + i, 20 + random.nextInt(40), 60 + random.nextInt(150), 500 + random.nextInt(2500)));
        }
        CuttingPlan plan = plan(List.of(wanted(45, 420, 30), wanted(45, 350, 14)), boards);
        assertThat(plan.missing()).isEmpty();
        assertThat(plan.proven()).isTrue();
    }

    @Test
    void the_same_order_and_count_of_steps_give_the_same_plan() {
        Random random = new Random(5);
        List<Board> boards = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            boards.add(board("b" + i, 48, 60 + random.nextInt(150), 500 + random.nextInt(2500)));
        }
        CuttingOrder order =
                new CuttingOrder(List.of(wanted(45, 420, 30), wanted(45, 353, 14), wanted(45, 611, 9)), boards, SAWING);
        assertThat(BoardCutting.plan(order, Effort.ofAsks(3_000)))
                .isEqualTo(BoardCutting.plan(order, Effort.ofAsks(3_000)));
    }
}
