package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.csv.CsvText;
import turnalike.job.Shop;
import turnalike.job.boards.BoardsFile;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.Values;
import turnalike.job.keys.ShopKeys;
import turnalike.job.keys.ShopKeys.PriceKeys;
import turnalike.job.price.TimesFile;
import turnalike.pieces.blanks.BlanksFile;
import turnalike.pieces.blanks.WeighedBlank;
import turnalike.price.Charges;
import turnalike.price.Timing;
import turnalike.stock.boards.Board;
import turnalike.units.Problem;

/**
 * What stands in the shop, from JSON. A list's rows are first looked at key by key, as the description has them, and then read as the table
 * file of the same columns is: what a board, a blank or a time can be is said in one place.
 */
final class ShopReader {
    private static final Pattern PLACE = Pattern.compile("line (\\d+)(?:, column (.*))?");
    private static final Pattern LINE = Pattern.compile("on line (\\d+)");
    private static final Map<String, String> KEYS = Map.of("mass", "mass_g", "finished", "finished_g");
    private static final int LONGEST_WORD = 40;

    private final Fields fields;

    private ShopReader(Fields fields) {
        this.fields = fields;
    }

    /** @param fields of the whole job */
    static Shop read(Fields fields) {
        ShopReader reader = new ShopReader(fields);
        List<Board> boards = reader.boards();
        List<WeighedBlank> blanks = reader.blanks();
        Map<String, List<Timing>> times = reader.times();
        Optional<Charges> charges = fields.objectOrEmpty(ShopKeys.PRICE).flatMap(ShopReader::charges);
        return new Shop(boards, blanks, times, charges.orElse(Charges.NONE), CutReader.read(fields));
    }

    private List<Board> boards() {
        return table(ShopKeys.BOARDS)
                .map(text -> BoardsFile.read(text, fields.units()))
                .map(read -> told(ShopKeys.BOARDS, read.boards(), read.problems()))
                .orElse(List.of());
    }

    private List<WeighedBlank> blanks() {
        return table(ShopKeys.BLANKS)
                .map(text -> BlanksFile.parse(text, fields.units()))
                .map(read -> told(ShopKeys.BLANKS, read.blanks(), read.problems()))
                .orElse(List.of());
    }

    private Map<String, List<Timing>> times() {
        return table(ShopKeys.TIMES)
                .map(TimesFile::parse)
                .map(read -> told(ShopKeys.TIMES, read.stages(), read.problems()))
                .orElse(Map.of());
    }

    private <T> T told(Key<ListOf<Group>> key, T read, List<Problem> problems) {
        for (Problem each : problems) {
            Matcher place = PLACE.matcher(each.where());
            String where = each.where();
            if (place.matches()) {
                String row = "%s %d".formatted(key.name(), Integer.parseInt(place.group(1)) - 1);
                String column = Optional.ofNullable(place.group(2)).orElse("");
                where = column.isEmpty() ? row : row + ": " + KEYS.getOrDefault(column, column);
            }
            fields.reading().problem(where, LINE.matcher(each.what()).replaceAll(ShopReader::row), each.mend());
        }
        return read;
    }

    private static String row(MatchResult line) {
        return "in row %d".formatted(Integer.parseInt(line.group(1)) - 1);
    }

    /** The list as a table's text; empty where there is none, or where something in it is not as described, which has then been told. */
    private Optional<String> table(Key<ListOf<Group>> key) {
        if (!fields.has(key)) {
            return Optional.empty();
        }
        int before = fields.reading().count();
        List<JsonNode> nodes = fields.list(key, "write it like [{…}, {…}]").orElse(List.of());
        int most = key.type().most();
        if (nodes.size() > most) {
            fields.reading()
                    .problem(key.name(), "has %d rows".formatted(nodes.size()), "give %d at most".formatted(most));
        }
        Group row = key.type().item();
        StringBuilder out =
                new StringBuilder(CsvText.row(row.keys().stream().map(Key::name).toList()));
        for (int i = 0; i < nodes.size(); i++) {
            JsonNode node = nodes.get(i);
            fields.objectAt("%s %d".formatted(key.name(), i + 1), node, "write it in braces")
                    .ifPresent(each -> out.append(CsvText.row(row(row, node, each))));
        }
        return nodes.isEmpty() || fields.reading().count() > before ? Optional.empty() : Optional.of(out.toString());
    }

    private static List<String> row(Group group, JsonNode object, Fields fields) {
        List<String> out = new ArrayList<>();
        for (Key<?> key : group.keys()) {
            if (fields.has(key) || key.isNeeded()) {
                looked(key, object, fields);
            }
            out.add(fields.has(key) ? cell(object.get(key.name())) : "");
        }
        fields.refuseUnknown(group);
        return out;
    }

    @SuppressWarnings("unchecked") // a key is asked for by the type it has
    private static void looked(Key<?> key, JsonNode object, Fields fields) {
        if (key.type() instanceof KeyType.Size) {
            fields.size((Key<KeyType.Size>) key);
        } else if (key.type() instanceof KeyType.Number) {
            fields.number((Key<KeyType.Number>) key);
        } else if (key.type() instanceof KeyType.Whole) {
            fields.whole((Key<KeyType.Whole>) key);
        } else if (key.type() instanceof KeyType.Word) {
            fields.word((Key<KeyType.Word>) key);
        } else if (!fields.has(key)) {
            fields.reading().problem(fields.at(key.name()), "is missing", "write it in quotes");
        } else {
            fields.findText(key.name())
                    .filter(text -> text.chars().anyMatch(Character::isISOControl))
                    .ifPresent(text -> fields.reading()
                            .problem(
                                    fields.at(key.name()),
                                    "was " + Values.excerpt(object.get(key.name())),
                                    "write it on one line"));
        }
    }

    private static String cell(JsonNode node) {
        if (!node.isNumber()) {
            return node.asText();
        }
        BigDecimal plain = node.decimalValue().stripTrailingZeros();
        return plain.setScale(Math.max(0, plain.scale())).toPlainString();
    }

    private static Optional<Charges> charges(Fields fields) {
        int before = fields.reading().count();
        Optional<Double> rate = fields.number(PriceKeys.RATE);
        List<Charges.Other> others = fields.has(PriceKeys.OTHERS) ? others(fields) : List.of();
        Optional<Double> markup = fields.number(PriceKeys.MARKUP);
        Optional<Double> tax = fields.number(PriceKeys.TAX);
        Optional<String> currency = fields.findText(PriceKeys.CURRENCY);
        currency.ifPresent(text -> oneWord(fields, fields.at(PriceKeys.CURRENCY.name()), text));
        fields.refuseUnknown(ShopKeys.PRICE.type());
        return fields.reading().count() > before
                ? Optional.empty()
                : Optional.of(new Charges(
                        rate.map(BigDecimal::valueOf),
                        others,
                        markup.map(BigDecimal::valueOf).orElseThrow(),
                        tax.map(BigDecimal::valueOf).orElseThrow(),
                        currency.orElse("").strip()));
    }

    private static void oneWord(Fields fields, String where, String text) {
        if (text.strip().length() > LONGEST_WORD || text.chars().anyMatch(Character::isISOControl)) {
            fields.reading().problem(where, "is no short name", "give one of 1 to 40 letters");
        }
    }

    private static List<Charges.Other> others(Fields fields) {
        KeyType.Rows rows = PriceKeys.OTHERS.type();
        List<JsonNode> nodes = fields.list(PriceKeys.OTHERS, "write it like [{\"item\": \"wood\", \"amount\": 62.5}]")
                .orElse(List.of());
        String at = fields.at(PriceKeys.OTHERS.name());
        if (nodes.size() > rows.most()) {
            fields.reading()
                    .problem(at, "has %d entries".formatted(nodes.size()), "give %d at most".formatted(rows.most()));
        }
        Map<String, BigDecimal> out = new LinkedHashMap<>();
        Consumer<Charges.Other> add = other -> out.merge(other.item(), other.amount(), BigDecimal::add);
        for (int i = 0; i < nodes.size(); i++) {
            String place = "%s %d".formatted(PriceKeys.OTHERS.name(), i + 1);
            fields.objectAt(place, nodes.get(i), "write it in braces")
                    .flatMap(each -> other(each, rows))
                    .ifPresent(add);
        }
        return out.entrySet().stream()
                .map(each -> new Charges.Other(each.getKey(), each.getValue()))
                .toList();
    }

    @SuppressWarnings("unchecked") // its second key is a number
    private static Optional<Charges.Other> other(Fields fields, KeyType.Rows rows) {
        String item = fields.findText(rows.first().name()).orElse("").strip();
        fields.has(rows.first());
        oneWord(fields, fields.at(rows.first().name()), item);
        Optional<Double> amount = fields.number((Key<KeyType.Number>) rows.second());
        fields.refuseUnknown(rows.row());
        return amount.map(each -> new Charges.Other(item.isEmpty() ? "other" : item, BigDecimal.valueOf(each)));
    }
}
