package turnalike.stock.boards;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.units.Length;

/** A cutting written down and laid out again is the same cutting, and nothing else is taken for one. */
class CutRecordTest {
    private static final Sawing SAWING = new Sawing(Length.ofMm(3), Length.ofMm(6), Length.ofMm(12));

    private static Wanted wanted(String job, double size, double length, int count) {
        return new Wanted(job, Length.ofMm(size), Length.ofMm(length), count, Optional.of("ash"));
    }

    private static Board board(String name, double thickness, double width, double length, int count) {
        return new Board(
                name,
                Length.ofMm(thickness),
                Length.ofMm(width),
                Length.ofMm(length),
                count,
                Optional.of(BigDecimal.valueOf(20)),
                Optional.empty(),
                List.of(new Board.Fault(Length.ofMm(700), Length.ofMm(760))));
    }

    private static CuttingOrder order(Random random) {
        return new CuttingOrder(
                List.of(
                        wanted("a", 40, 200 + random.nextInt(100), 3 + random.nextInt(6)),
                        wanted("b", 55, 400 + random.nextInt(200), 2 + random.nextInt(4))),
                List.of(
                        board("A", 85 + random.nextInt(40), 160 + random.nextInt(80), 2_000, 3),
                        board("B", 60, 200, 1_500 + random.nextInt(500), 2)),
                SAWING);
    }

    @Test
    void what_is_written_down_is_laid_out_again() {
        for (int seed = 0; seed < 20; seed++) {
            CuttingOrder order = order(new Random(seed));
            CuttingPlan plan = BoardCutting.plan(order, Effort.ofAsks(20_000));
            assertThat(plan.boards()).as("seed %d", seed).isNotEmpty();
            assertThat(CutRecord.of(plan).on(order)).as("seed %d", seed).contains(plan);
        }
    }

    @Test
    void another_order_is_none_and_the_same_in_other_words_is() {
        CuttingOrder order = order(new Random(1));
        CutRecord record = CutRecord.of(BoardCutting.plan(order, Effort.ofAsks(20_000)));
        Wanted first = order.wanted().get(0);
        Wanted renamed = new Wanted("another title", first.size(), first.length(), first.count(), first.wood());
        Wanted more = new Wanted(first.job(), first.size(), first.length(), first.count() + 1, first.wood());
        Wanted second = order.wanted().get(1);
        assertThat(record.on(new CuttingOrder(List.of(renamed, second), order.boards(), SAWING)))
                .isPresent();
        assertThat(record.on(new CuttingOrder(List.of(more, second), order.boards(), SAWING)))
                .isEmpty();
        Sawing wider = new Sawing(Length.ofMm(4), SAWING.edge(), SAWING.end());
        assertThat(record.on(new CuttingOrder(order.wanted(), order.boards(), wider)))
                .isEmpty();
    }

    @Test
    void a_cutting_that_cannot_be_sawn_is_none() {
        CuttingOrder order = order(new Random(2));
        CutRecord good = CutRecord.of(BoardCutting.plan(order, Effort.ofAsks(20_000)));
        CutRecord.Row row = good.strips().stream()
                .filter(each -> each.blanks().size() > 1)
                .findFirst()
                .orElseThrow();
        List<Length> closer = new ArrayList<>(row.from());
        closer.set(1, closer.get(1).minus(Length.ofMm(2)));
        List<Integer> unknown = new ArrayList<>(row.blanks());
        unknown.set(0, 9);
        CutRecord.Row beyond = new CutRecord.Row(
                row.board(), row.rip(), row.layer(), List.of(row.blanks().get(0)), List.of(Length.ofMm(1_990)));
        CutRecord.Row inFault = new CutRecord.Row(
                row.board(), row.rip(), row.layer(), List.of(row.blanks().get(0)), List.of(Length.ofMm(650)));
        for (CutRecord.Row bad : List.of(
                new CutRecord.Row(row.board(), row.rip(), row.layer(), row.blanks(), closer),
                new CutRecord.Row(row.board(), row.rip(), row.layer(), unknown, row.from()),
                new CutRecord.Row("Z", row.rip(), row.layer(), row.blanks(), row.from()),
                beyond,
                inFault)) {
            assertThat(with(good, good.strips().indexOf(row), bad).on(order))
                    .as("%s", bad)
                    .isEmpty();
        }
        List<CutRecord.Row> twice = new ArrayList<>(good.strips());
        good.strips().stream()
                .filter(each -> !each.board().equals("Z"))
                .forEach(each -> twice.add(
                        new CutRecord.Row(each.board(), each.rip() + 9, each.layer(), each.blanks(), each.from())));
        assertThat(with(good, twice).on(order)).as("wider than the board").isEmpty();
    }

    private static CutRecord with(CutRecord record, int at, CutRecord.Row row) {
        List<CutRecord.Row> rows = new ArrayList<>(record.strips());
        rows.set(at, row);
        return with(record, rows);
    }

    private static CutRecord with(CutRecord record, List<CutRecord.Row> rows) {
        return new CutRecord(
                record.order(), rows, record.bound(), record.proven(), record.longest(), record.longestProven());
    }
}
