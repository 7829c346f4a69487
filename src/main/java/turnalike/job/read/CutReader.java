package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import turnalike.effort.Ending;
import turnalike.job.FoundCut;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Word;
import turnalike.job.fields.Values;
import turnalike.job.keys.CutKeys;
import turnalike.stock.boards.CutRecord;
import turnalike.units.Article;
import turnalike.units.Length;

/** How the boards are cut, as a search found it. Whether it still is a cutting of the job's boards is asked where it is laid out again. */
final class CutReader {
    private static final String MEND = "take the whole of \"cut\" out and cut the boards again";

    private CutReader() {}

    static Optional<FoundCut> read(Fields job) {
        if (!job.has(CutKeys.CUT)) {
            return Optional.empty();
        }
        return job.objectOrEmpty(CutKeys.CUT).flatMap(CutReader::found);
    }

    private static Optional<FoundCut> found(Fields fields) {
        int before = fields.reading().count();
        Optional<String> order = text(fields, CutKeys.ORDER.name());
        List<String> with =
                fields.has(CutKeys.WITH) ? list(fields, CutKeys.WITH, CutReader::label, "a job's id") : List.of();
        List<CutRecord.Row> strips = strips(fields);
        Optional<Double> bound = fields.number(CutKeys.BOUND);
        boolean proven = isYes(fields, CutKeys.PROVEN);
        Optional<Double> longest = fields.number(CutKeys.LONGEST);
        boolean longestProven = isYes(fields, CutKeys.LONGEST_PROVEN);
        Optional<String> ended = fields.word(CutKeys.ENDED);
        fields.refuseUnknown(CutKeys.CUT.type());
        if (fields.reading().count() > before) {
            return Optional.empty();
        }
        CutRecord record = new CutRecord(
                order.orElseThrow(),
                strips,
                BigDecimal.valueOf(bound.orElseThrow()),
                proven,
                Length.ofMm(longest.orElseThrow()),
                longestProven);
        return Optional.of(new FoundCut(with, ending(ended.orElseThrow()), record));
    }

    private static Ending ending(String word) {
        for (Ending each : Ending.values()) {
            if (each.word().equals(word)) {
                return each;
            }
        }
        throw new IllegalStateException("no search ends by " + word);
    }

    private static boolean isYes(Fields fields, Key<Word> key) {
        return fields.word(key).filter("yes"::equals).isPresent();
    }

    private static Optional<String> text(Fields fields, String key) {
        if (!fields.has(key)) {
            fields.reading().problem(fields.at(key), "is missing", MEND);
            return Optional.empty();
        }
        return fields.findText(key);
    }

    private static List<CutRecord.Row> strips(Fields fields) {
        List<CutRecord.Row> out = new ArrayList<>();
        List<JsonNode> nodes = fields.list(CutKeys.STRIPS, MEND).orElse(List.of());
        few(fields, CutKeys.STRIPS, nodes);
        for (int i = 0; i < nodes.size(); i++) {
            String place = "%s %d".formatted(CutKeys.STRIPS.name(), i + 1);
            fields.objectAt(place, nodes.get(i), MEND).flatMap(CutReader::strip).ifPresent(out::add);
        }
        return out;
    }

    private static Optional<CutRecord.Row> strip(Fields fields) {
        int before = fields.reading().count();
        Optional<String> board = text(fields, CutKeys.BOARD.name());
        Optional<Integer> rip = fields.whole(CutKeys.RIP);
        Optional<Integer> layer = fields.whole(CutKeys.LAYER);
        int most = CutKeys.BLANKS.type().item().most();
        List<Integer> blanks = list(
                fields,
                CutKeys.BLANKS,
                node -> Optional.of(node)
                        .filter(each -> each.isInt() && each.intValue() >= 1 && each.intValue() <= most)
                        .map(JsonNode::intValue),
                "a blank's number");
        List<Length> from = list(
                fields,
                CutKeys.FROM,
                node -> Optional.of(node)
                        .filter(each -> Values.isIn(CutKeys.FROM.type().item(), each))
                        .map(each -> Length.ofMm(each.doubleValue())),
                "a distance in mm");
        fields.refuseUnknown(CutKeys.STRIP);
        if (fields.reading().count() == before && blanks.size() != from.size()) {
            fields.reading()
                    .problem(
                            fields.at(CutKeys.FROM.name()),
                            "has %s for %s"
                                    .formatted(
                                            Article.count(from.size(), "start"), Article.count(blanks.size(), "blank")),
                            MEND);
        }
        return fields.reading().count() > before
                ? Optional.empty()
                : Optional.of(
                        new CutRecord.Row(board.orElseThrow(), rip.orElseThrow(), layer.orElseThrow(), blanks, from));
    }

    private static Optional<String> label(JsonNode node) {
        return Optional.of(node)
                .filter(each -> each.isTextual() && !each.textValue().isBlank())
                .map(JsonNode::textValue);
    }

    private static <T> List<T> list(
            Fields fields, Key<? extends ListOf<?>> key, Function<JsonNode, Optional<T>> meaning, String what) {
        List<JsonNode> nodes = fields.list(key, MEND).orElse(List.of());
        few(fields, key, nodes);
        List<T> out = new ArrayList<>();
        for (JsonNode node : nodes) {
            Optional<T> meant = meaning.apply(node);
            if (meant.isEmpty()) {
                fields.reading()
                        .problem(
                                fields.at(key.name()),
                                "was to hold %s, was %s".formatted(what, Values.excerpt(node)),
                                MEND);
            }
            meant.ifPresent(out::add);
        }
        return out;
    }

    private static void few(Fields fields, Key<? extends ListOf<?>> key, List<JsonNode> nodes) {
        if (nodes.size() > key.type().most()) {
            fields.reading()
                    .problem(
                            fields.at(key.name()),
                            "has %d entries".formatted(nodes.size()),
                            "give %d at most".formatted(key.type().most()));
        }
    }
}
