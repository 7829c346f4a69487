package turnalike.job.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import turnalike.job.fields.Key;
import turnalike.job.kept.JobText;
import turnalike.job.price.TimesFile;
import turnalike.pieces.MassText;
import turnalike.units.Article;
import turnalike.units.MassUnit;
import turnalike.units.PlainNumber;
import turnalike.units.Problem;

/**
 * Rows of one of the shop's tables added, changed or taken out, as typed.
 *
 * @param table which
 * @param deed what is done to it
 */
public record TableEdit(ShopTable table, Deed deed) implements JobEdit {
    /** What can be done to a table. */
    public sealed interface Deed permits Add, Put, Remove, Clear {}

    /**
     * Rows added below.
     *
     * @param rows each as typed, by column; a blank cell says nothing
     */
    public record Add(List<Map<String, String>> rows) implements Deed {
        public Add {
            rows = rows.stream().map(Map::copyOf).toList();
        }
    }

    /**
     * A row typed over. One in which nothing is left is taken out.
     *
     * @param row as it was seen; known again by its text, wherever it stands by now
     * @param cells by column; a column that is not named stays as it is
     */
    public record Put(Seen row, Map<String, String> cells) implements Deed {
        public Put {
            cells = Map.copyOf(cells);
        }
    }

    /**
     * A row taken out.
     *
     * @param row as it was seen
     */
    public record Remove(Seen row) implements Deed {}

    /** Every row taken out. */
    public record Clear() implements Deed {}

    /**
     * A row as somebody saw it.
     *
     * @param number from 1
     * @param text the whole of it, as {@link ShopTable.Row} has it
     */
    public record Seen(int number, String text) {}

    @Override
    public String what(JobText before) {
        if (deed instanceof Add add) {
            return add.rows().size() == 1
                    ? "add %s %s".formatted(table.word(), name(add.rows().get(0).getOrDefault(table.label(), "")))
                    : "add " + Article.count(add.rows().size(), table.word());
        } else if (deed instanceof Put put) {
            return "change %s %s".formatted(table.word(), name(had(before, put.row())));
        } else if (deed instanceof Remove remove) {
            return "take out %s %s".formatted(table.word(), name(had(before, remove.row())));
        }
        return "take out all " + table.key();
    }

    private String had(JobText before, Seen seen) {
        List<ShopTable.Row> rows = table.rows(before);
        OptionalPlace at =
                OptionalPlace.of(rows.stream().map(ShopTable.Row::text).toList(), seen);
        return at.index().map(index -> rows.get(index).cell(table.label())).orElse("");
    }

    private static String name(String label) {
        String plain = label.replaceAll("\\p{Cntrl}", " ").strip();
        return plain.isEmpty() ? "without a name" : plain;
    }

    @Override
    public JobText.Read on(JobText text) {
        JobTree tree = JobTree.of(text);
        ArrayNode rows = tree.root().get(table.key()) instanceof ArrayNode there ? there : JobTree.array();
        Optional<Problem> problem = change(rows);
        if (problem.isPresent()) {
            return MemberEdit.refused(problem.get());
        }
        if (rows.isEmpty()) {
            tree.root().remove(table.key());
        } else {
            tree.root().set(table.key(), rows);
        }
        return tree.read();
    }

    private Optional<Problem> change(ArrayNode rows) {
        if (deed instanceof Add add) {
            add.rows().forEach(cells -> fill(rows.addObject(), cells));
            return Optional.empty();
        } else if (deed instanceof Put put) {
            return at(rows, put.row(), index -> {
                ObjectNode row = (ObjectNode) rows.get(index);
                fill(row, put.cells());
                if (row.isEmpty()) {
                    rows.remove(index);
                }
            });
        } else if (deed instanceof Remove remove) {
            return at(rows, remove.row(), rows::remove);
        }
        rows.removeAll();
        return Optional.empty();
    }

    private interface Change {
        void to(int index);
    }

    private Optional<Problem> at(ArrayNode rows, Seen seen, Change change) {
        List<String> texts = IntStream.range(0, rows.size())
                .mapToObj(i -> rows.get(i).toString())
                .toList();
        Optional<Integer> index = OptionalPlace.of(texts, seen).index();
        index.ifPresent(change::to);
        return index.isPresent()
                ? Optional.empty()
                : Optional.of(new Problem(
                        "%s %d".formatted(table.key(), seen.number()),
                        "was changed meanwhile",
                        "look at it as it is now, then do yours again"));
    }

    /** Where a row that was seen stands now: at its number if it is still the same, else wherever its text is. */
    private record OptionalPlace(Optional<Integer> index) {
        static OptionalPlace of(List<String> texts, Seen seen) {
            int at = seen.number() - 1;
            boolean there = at >= 0 && at < texts.size() && texts.get(at).equals(seen.text());
            int found = there ? at : texts.indexOf(seen.text());
            return new OptionalPlace(found < 0 ? Optional.empty() : Optional.of(found));
        }
    }

    /** As the job file has it: in the order of the columns, a number where one is described and typed. */
    private void fill(ObjectNode row, Map<String, String> cells) {
        ObjectNode was = row.deepCopy();
        row.removeAll();
        for (Key<?> key : table.columns()) {
            String typed = cells.getOrDefault(key.name(), "").strip();
            if (!cells.containsKey(key.name())) {
                if (was.has(key.name())) {
                    row.set(key.name(), was.get(key.name()));
                }
            } else if (!typed.isEmpty()) {
                row.set(key.name(), written(key, typed));
            }
        }
    }

    private static JsonNode written(Key<?> key, String typed) {
        String name = key.name();
        String plain = typed;
        if (name.equals("mass_g") || name.equals("finished_g")) {
            plain = MassText.parse(typed, MassUnit.GRAM).fold(MassText::format, (what, mend) -> typed);
        } else if (name.equals("minutes")) {
            plain = TimesFile.minutes(typed).fold(PlainNumber::exact, (what, mend) -> typed);
        } else if (name.equals("price")) {
            plain = typed.replaceAll("\\p{Sc}", "").strip();
        } else if (name.equals("moisture_pct")) {
            plain = typed.replace("%", "").strip();
        } else if (name.equals("lost")) {
            return JobTree.object().textNode(isYes(typed) ? "yes" : typed.toLowerCase(Locale.ROOT));
        }
        return key.type().isNumber() ? JobTree.number(plain) : JobTree.object().textNode(plain);
    }

    private static boolean isYes(String typed) {
        return List.of("yes", "y", "x", "1", "true", "lost").contains(typed.toLowerCase(Locale.ROOT));
    }
}
