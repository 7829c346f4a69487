package turnalike.job.edit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import turnalike.job.FoundCut;
import turnalike.job.kept.JobText;
import turnalike.job.keys.CutKeys;
import turnalike.stock.boards.CutRecord;
import turnalike.units.Article;

/**
 * How the boards are cut, kept with the job.
 *
 * @param found what a search found for the job's boards as they stand
 */
public record CutEdit(FoundCut found) implements JobEdit {
    @Override
    public String what(JobText before) {
        long boards = found.cutting().strips().stream()
                .map(CutRecord.Row::board)
                .distinct()
                .count();
        return "cut the blanks out of " + Article.count((int) boards, "board");
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        ObjectNode cut = JobTree.object();
        CutRecord record = found.cutting();
        cut.put(CutKeys.ORDER.name(), record.order());
        if (!found.with().isEmpty()) {
            ArrayNode with = cut.putArray(CutKeys.WITH.name());
            found.with().forEach(with::add);
        }
        ArrayNode strips = cut.putArray(CutKeys.STRIPS.name());
        for (CutRecord.Row row : record.strips()) {
            ObjectNode strip = strips.addObject();
            strip.put(CutKeys.BOARD.name(), row.board());
            strip.put(CutKeys.RIP.name(), row.rip());
            strip.put(CutKeys.LAYER.name(), row.layer());
            ArrayNode blanks = strip.putArray(CutKeys.BLANKS.name());
            row.blanks().forEach(blanks::add);
            ArrayNode from = strip.putArray(CutKeys.FROM.name());
            row.from().forEach(each -> from.add(digits(each.mm())));
        }
        cut.put(CutKeys.BOUND.name(), digits(record.bound().doubleValue()));
        cut.put(CutKeys.PROVEN.name(), word(record.proven()));
        cut.put(CutKeys.LONGEST.name(), digits(record.longest().mm()));
        cut.put(CutKeys.LONGEST_PROVEN.name(), word(record.longestProven()));
        cut.put(CutKeys.ENDED.name(), found.ended().word());
        tree.root().set(CutKeys.CUT.name(), cut);
        return tree.read();
    }

    private static String word(boolean yes) {
        return yes ? "yes" : "no";
    }

    private static BigDecimal digits(double figure) {
        BigDecimal plain = BigDecimal.valueOf(figure).stripTrailingZeros();
        return plain.setScale(Math.max(0, plain.scale()));
    }
}
