package turnalike.job.keys;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType;
import turnalike.job.set.FrameKind;

/** The rows of docs/job-file.md's table of keys, from the description. */
final class KeyRows implements KeyType.Cases<String> {
    private KeyRows() {}

    static String table() {
        List<String> out = new ArrayList<>(List.of("| key | holds | meaning | if left out |", "|---|---|---|---|"));
        Map<Key<?>, String> kindOf = new HashMap<>();
        FrameKind.KINDS.keys().forEach((kind, group) -> group.keys().forEach(key -> kindOf.put(key, kind)));
        String kind = "";
        for (KeyPaths.At at : KeyPaths.all()) {
            // What stands under a key of one kind of frame belongs to that kind too.
            kind = at.path().chars().filter(c -> c == '.').count() <= 1 ? kindOf.getOrDefault(at.key(), "") : kind;
            String path = kind.isEmpty() ? "`%s`".formatted(at.path()) : "`%s` of %s".formatted(at.path(), kind);
            Key<?> key = at.key();
            out.add("| %s | %s | %s | %s |"
                    .formatted(
                            path,
                            key.type().match(new KeyRows()),
                            key.meaning(),
                            key.isNeeded() ? "error" : key.leftOut()));
        }
        return String.join("\n", out) + "\n";
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e7
                ? String.valueOf((long) number)
                : new DecimalFormat("0.######E0", DecimalFormatSymbols.getInstance(Locale.ROOT))
                        .format(number)
                        .replace("E", "e");
    }

    @Override
    public String size(KeyType.Size size) {
        return size.aboveZero() ? "length above zero" : "length";
    }

    @Override
    public String number(KeyType.Number number) {
        return "number, %s to %s".formatted(plain(number.least()), plain(number.most()));
    }

    @Override
    public String whole(KeyType.Whole whole) {
        return whole.least() == whole.most()
                ? "`%d`".formatted(whole.least())
                : "whole number, %d to %d".formatted(whole.least(), whole.most());
    }

    @Override
    public String text(KeyType.Text text) {
        return "text";
    }

    @Override
    public String word(KeyType.Word word) {
        return "`" + word.told().replace(", ", "`, `").replace(" or ", "` or `") + "`";
    }

    @Override
    public String mark(KeyType.Mark mark) {
        return "number or label of a mark";
    }

    @Override
    public String list(KeyType.ListOf<?> list) {
        return list.item() instanceof KeyType.Group group
                ? "list of %d to %d, of %s".formatted(list.least(), list.most(), keys(group))
                : "list of %d to %d: %s"
                        .formatted(list.least(), list.most(), list.item().match(this));
    }

    @Override
    public String rows(KeyType.Rows rows) {
        return "list, %d at most, of %s".formatted(rows.most(), keys(rows.row()));
    }

    private String keys(KeyType.Group group) {
        return group.keys().stream()
                .map(key -> "`%s` (%s; %s)".formatted(key.name(), key.type().match(this), key.meaning()))
                .collect(Collectors.joining(", "));
    }

    @Override
    public String named(KeyType.Named named) {
        return "object, a " + number(named.number()) + " under each name";
    }

    @Override
    public String group(KeyType.Group group) {
        return "object";
    }

    @Override
    public String kinds(KeyType.Kinds kinds) {
        return "object";
    }

    @Override
    public String members(KeyType.Members members) {
        return "list of 1 to %d members".formatted(members.most());
    }
}
