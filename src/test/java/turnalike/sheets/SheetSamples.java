package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import turnalike.pattern.Mark;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Invented bench cards: their settings step every mark once from the one before, which is many settings but true ones. */
final class SheetSamples {
    private SheetSamples() {}

    static BenchCardContent card(Pattern pattern, UnitSystem units) {
        Map<Length, List<BenchCardContent.Step>> dividers = new TreeMap<>(java.util.Comparator.reverseOrder());
        List<Mark> marks = pattern.marks();
        for (int i = 1; i < marks.size(); i++) {
            double gap = marks.get(i).place().minus(marks.get(i - 1).place()).mm();
            dividers.computeIfAbsent(Length.ofMm(Math.round(gap * 10) / 10.0), key -> new ArrayList<>())
                    .add(new BenchCardContent.Step(i - 1, i, 1 + i % 3));
        }
        Map<Length, String> calipers = new TreeMap<>(java.util.Comparator.reverseOrder());
        for (PlacedMember placed : pattern.placed()) {
            for (Member.Diameter each : placed.member().diameters()) {
                calipers.merge(
                        each.size(), placed.number() + " " + placed.member().title(), (a, b) -> a + ", " + b);
            }
        }
        Length allowance = Length.ofMm(1);
        return new BenchCardContent(
                "Invented job: " + pattern.name(),
                "12 pieces and 2 spares; black cherry at 8 % moisture; demonstration, not a real order",
                units,
                pattern,
                List.of(
                        new BenchCardContent.Fact(
                                "length",
                                pattern.length().format(units),
                                pattern.length().format(units.other())),
                        new BenchCardContent.Fact(
                                "blank", pattern.stock().size().format(units) + " square", "cut to length"),
                        new BenchCardContent.Fact("weight", "412 g", "14.5 oz"),
                        new BenchCardContent.Fact(
                                "balance point", Length.ofMm(231.4).format(units), "from the datum end")),
                List.of(),
                dividers.entrySet().stream()
                        .map(e -> new BenchCardContent.Divider(e.getKey(), e.getValue()))
                        .toList(),
                calipers.entrySet().stream()
                        .map(e -> new BenchCardContent.Caliper(
                                e.getKey().plus(allowance), e.getKey().format(units), e.getValue()))
                        .toList(),
                Optional.empty(),
                List.of(
                        "Whip: the long taper bends under the skew. Begin slowly, use a steady rest, stand aside when the lathe starts.",
                        "Wear a face shield and keep the dust out of your lungs."));
    }
}
