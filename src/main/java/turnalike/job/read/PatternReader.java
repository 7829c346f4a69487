package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Reading;
import turnalike.job.keys.JobKeys;
import turnalike.job.keys.PatternKeys;
import turnalike.outline.Section;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Stock;
import turnalike.units.Length;
import turnalike.units.Problem;

/** The pattern from JSON: its stock, then its members, then what only shows when both are known. */
final class PatternReader {
    private PatternReader() {}

    static Optional<Pattern> read(Fields fields, String titleOfJob) {
        Reading reading = fields.reading();
        String name = fields.findText(PatternKeys.NAME).orElse(titleOfJob);
        Optional<Stock> stock = fields.object(PatternKeys.STOCK, "say what it is turned from: section, size and length")
                .flatMap(PatternReader::stock);
        Optional<List<JsonNode>> nodes = fields.list(PatternKeys.MEMBERS, "list the members from the datum end");
        fields.refuseUnknown(JobKeys.PATTERN.type());
        int most = PatternKeys.MEMBERS.type().most();
        if (nodes.isPresent() && nodes.get().size() > most) {
            reading.problem(
                    fields.at(PatternKeys.MEMBERS.name()),
                    "are %d".formatted(nodes.get().size()),
                    "use %d at most".formatted(most));
            return Optional.empty();
        }
        Length side = stock.map(Stock::size).orElse(Length.ofMm(1)); // without stock the file is refused anyway
        List<Member> members = new ArrayList<>();
        List<JsonNode> all = nodes.orElse(List.of());
        for (int i = 0; i < all.size(); i++) {
            MemberReader.read(i + 1, all.get(i), side, reading).ifPresent(members::add);
        }
        if (stock.isEmpty() || nodes.isEmpty() || members.size() < all.size()) {
            return Optional.empty();
        }
        List<Problem> problems = Pattern.problems(stock.get(), members, fields.units());
        problems.forEach(reading::problem);
        return problems.isEmpty() ? Optional.of(new Pattern(name, stock.get(), members)) : Optional.empty();
    }

    private static Optional<Stock> stock(Fields fields) {
        Optional<Section> section =
                fields.word(PatternKeys.SECTION).map(word -> word.equals("square") ? Section.SQUARE : Section.ROUND);
        Optional<Length> size = fields.size(PatternKeys.SIZE);
        Optional<Length> length = fields.size(PatternKeys.LENGTH);
        fields.refuseUnknown(PatternKeys.STOCK.type());
        return section.flatMap(
                s -> size.flatMap(across -> length.filter(along -> fields.sound(Stock.faults(across, along)))
                        .map(along -> new Stock(s, across, along))));
    }
}
