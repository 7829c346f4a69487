package turnalike.cli.match;

import static java.lang.String.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.set.LegsSet;
import turnalike.job.set.RowSet;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelSet;
import turnalike.match.WheelPlacement;
import turnalike.pieces.Piece;
import turnalike.units.Article;
import turnalike.units.Listing;
import turnalike.units.Mass;
import turnalike.units.SentenceCase;
import turnalike.units.WeighingScale;

/** A placed set on one screen. */
public final class MatchSummary implements SetMatch.Cases<String> {
    /** A longer list is read by nobody. */
    private static final int MOST_SPARES = 60;

    private static final int IN_A_ROW = 4;

    private final StringBuilder out = new StringBuilder();

    private MatchSummary() {}

    public static String text(SetMatch match) {
        MatchSummary summary = new MatchSummary();
        match.unbuildable().forEach(each -> summary.line("%s", SentenceCase.sentence(each)));
        if (!match.unbuildable().isEmpty()) {
            summary.line("");
        }
        return match.match(summary);
    }

    private void line(String text, Object... values) {
        out.append(format(Locale.ROOT, text, values)).append('\n');
    }

    @Override
    public String wheel(WheelSet set) {
        WheelPlacement placement = set.placement();
        line(
                "Set        %s, going round from place 1 at 0°",
                Article.count(placement.seats().size(), "place"));
        columns(placement.seats().stream()
                .map(seat -> cell(
                        seat.place(),
                        seat.piece().label(),
                        Optional.of(seat.piece().mass()),
                        set.weighing()))
                .toList());
        judged(set);
        new WheelSummary(this::line).text(set);
        notes(set);
        return out.toString();
    }

    @Override
    public String legs(LegsSet set) {
        List<List<Piece>> groups = set.groups();
        line(
                "Set        %s of %d",
                Article.count(groups.size(), "group"), groups.get(0).size());
        set.groupsInWords().forEach(group -> line("  %s", group));
        judged(set);
        notes(set);
        return out.toString();
    }

    @Override
    public String row(RowSet set) {
        List<Piece> order = set.inOrder();
        line("Set        %s, along the row from its first end", Article.count(order.size(), "place"));
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            String length = set.lengths().isEmpty() ? "" : " " + set.lengths().get(i);
            cells.add(cell(i + 1, order.get(i).label(), order.get(i).mass(), set.weighing()) + length);
        }
        columns(cells);
        judged(set);
        notes(set);
        return out.toString();
    }

    private static String cell(int place, String label, Optional<Mass> mass, WeighingScale weighing) {
        String weight = mass.map(weighing::reading).orElse("");
        return format(Locale.ROOT, "%3d: piece %-5s %9s", place, label, weight);
    }

    /** Down the first column, then the next, as one walks round the wheel. */
    private void columns(List<String> cells) {
        int rows = (cells.size() + IN_A_ROW - 1) / IN_A_ROW;
        for (int row = 0; row < rows; row++) {
            StringBuilder text = new StringBuilder();
            for (int i = row; i < cells.size(); i += rows) {
                text.append("  ").append(cells.get(i)).append("  ");
            }
            line("%s", text.toString().stripTrailing());
        }
    }

    /** What is left over, what else is to be said, then how good it is. */
    private void judged(SetMatch set) {
        if (!set.spareLabels().isEmpty()) {
            List<String> spares = set.spareLabels();
            line(
                    "  spare: %s %s%s",
                    spares.size() == 1 ? "piece" : "pieces",
                    Listing.of(spares, MOST_SPARES),
                    spares.size() > MOST_SPARES ? "; --json has them all" : "");
        }
        set.remarks().forEach(remark -> line("  %s", remark));
        List<String> sentences = set.verdict().sentences();
        line("%-11s%s", set.verdict().measure(), sentences.get(0));
        sentences.subList(1, sentences.size()).forEach(sentence -> line("%11s%s", "", sentence));
    }

    private void notes(SetMatch set) {
        set.otherWarnings().forEach(warning -> line("  note: %s", warning));
    }
}
