package turnalike.cli.match;

import static java.lang.String.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.frame.Counterweight;
import turnalike.job.set.LegsSet;
import turnalike.job.set.Roundness;
import turnalike.job.set.RowSet;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelSet;
import turnalike.match.Candidate;
import turnalike.match.WheelPlacement;
import turnalike.pieces.Piece;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;

/** A placed set on one screen. */
public final class MatchSummary implements SetMatch.Cases<String> {
    private static final int IN_A_ROW = 4;

    private final StringBuilder out = new StringBuilder();

    private MatchSummary() {}

    public static String text(SetMatch match) {
        return match.match(new MatchSummary());
    }

    private void line(String text, Object... values) {
        out.append(format(Locale.ROOT, text, values)).append('\n');
    }

    @Override
    public String wheel(WheelSet set) {
        WheelPlacement placement = set.placement();
        line(
                "Set        %d places, going round from place 1 at 0 degrees",
                placement.seats().size());
        columns(placement.seats().stream()
                .map(seat -> cell(
                        seat.place(),
                        seat.piece().label(),
                        Optional.of(seat.piece().mass())))
                .toList());
        spares(placement.spares().stream().map(Candidate::label).toList());
        line("  masses within %.1f g of one another", placement.massSpread().grams());
        nextSet(set);
        balance(set);
        new WheelSummary(this::line).text(set);
        notes(set);
        return out.toString();
    }

    @Override
    public String legs(LegsSet set) {
        List<List<Piece>> groups = set.groups();
        line("Set        %d groups of %d", groups.size(), groups.get(0).size());
        for (int g = 0; g < groups.size(); g++) {
            String labels =
                    String.join(", ", groups.get(g).stream().map(Piece::label).toList());
            line("  group %d: pieces %s%s", g + 1, labels, masses(groups.get(g)));
        }
        spares(set.spares().stream().map(Piece::label).toList());
        nextSet(set);
        String sure =
                set.grouping().bestProven() ? "no other grouping has less" : "the best found; less may be possible";
        line(
                "Likeness   pieces of one group differ by %.4g in all; %s",
                set.grouping().totalDifference(), sure);
        notes(set);
        return out.toString();
    }

    private static String masses(List<Piece> group) {
        double[] massesG = group.stream()
                .flatMap(piece -> piece.mass().stream())
                .mapToDouble(Mass::grams)
                .sorted()
                .toArray();
        return massesG.length < group.size()
                ? ""
                : format(Locale.ROOT, " (%.1f to %.1f g)", massesG[0], massesG[massesG.length - 1]);
    }

    private void nextSet(SetMatch set) {
        set.nextSet().ifPresent(next -> {
            String keep = "  next set: keep piece " + String.join(", ", next.pieces());
            String turn = next.missing() == 0
                    ? "they make a set as they are"
                    : format(
                            Locale.ROOT,
                            "turn %d more of %.1f to %.1f g",
                            next.missing(),
                            next.aimFrom().grams(),
                            next.aimTo().grams());
            line("%s; %s", keep, turn);
        });
    }

    @Override
    public String row(RowSet set) {
        List<Piece> order = set.inOrder();
        line("Set        %d places, along the row from its first end", order.size());
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            cells.add(cell(i + 1, order.get(i).label(), order.get(i).mass()));
        }
        columns(cells);
        spares(set.spares().stream().map(Piece::label).toList());
        nextSet(set);
        String sure = set.placement().bestProven()
                ? "no other choice or order has less"
                : format(
                        Locale.ROOT,
                        "the best found; none can be below %.4g",
                        set.placement().bound());
        line("Likeness   neighbours differ by %.4g in all; %s", set.placement().totalDifference(), sure);
        notes(set);
        return out.toString();
    }

    private static String cell(int place, String label, Optional<Mass> mass) {
        String weight =
                mass.map(each -> format(Locale.ROOT, "%7.1f g", each.grams())).orElse("");
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

    private void spares(List<String> labels) {
        if (!labels.isEmpty()) {
            line("  spare: piece %s", String.join(", ", labels));
        }
    }

    private void notes(SetMatch set) {
        set.warnings().forEach(warning -> line("  note: %s", warning));
    }

    private void balance(WheelSet set) {
        WheelPlacement placement = set.placement();
        double unbalance = placement.unbalance().gMm();
        boolean rounder = set.roundness().map(Roundness::choseOrder).orElse(false);
        String less = rounder ? "another order has less" : "the best found; less may be possible";
        String sure = placement.bestProven() ? "no other choice or order has less" : less;
        line(
                "Balance    %.3g g mm left, heavy at %.0f degrees; %s",
                unbalance, placement.unbalance().at().degrees(), sure);
        boolean below = unbalance <= placement.noiseFloorGMm();
        String seen = below ? "balanced to within what your scale can see" : "more than the scale's own noise";
        line("           the scale's noise alone is %.3g g mm: %s", placement.noiseFloorGMm(), seen);
        if (below) {
            return; // a counterweight would correct the scale's error, not the wheel's
        }
        set.frame().counterweightRadius().ifPresent(radius -> {
            Counterweight weight = placement.unbalance().counterweight(radius);
            line(
                    "           to cancel it: %.3g g at %.0f degrees, %s from the axle, or as much off at %.0f degrees",
                    weight.mass().grams(),
                    weight.at().degrees(),
                    radius.formatBoth(UnitSystem.METRIC),
                    weight.removeAt().degrees());
        });
    }
}
