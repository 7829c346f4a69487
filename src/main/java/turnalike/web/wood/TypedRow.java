package turnalike.web.wood;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.edit.ShopTable;
import turnalike.units.Problem;

/**
 * What was sent and could not be kept; it stays in its cells until it is mended.
 *
 * @param table which it was meant for; empty when nothing was sent
 * @param row its number from 1, one more than there are for a new one; 0 for a paste
 * @param cells as typed, by column
 * @param pasted the whole paste, where it was one
 * @param problems why it was not kept
 */
record TypedRow(Optional<ShopTable> table, int row, Map<String, String> cells, String pasted, List<Problem> problems) {
    static final TypedRow NONE = new TypedRow(Optional.empty(), 0, Map.of(), "", List.of());

    TypedRow {
        cells = Map.copyOf(cells);
        problems = List.copyOf(problems);
    }

    static TypedRow of(ShopTable table, int row, Map<String, String> cells, List<Problem> problems) {
        return new TypedRow(Optional.of(table), row, cells, "", problems);
    }

    static TypedRow paste(ShopTable table, String pasted, List<Problem> problems) {
        return new TypedRow(Optional.of(table), 0, Map.of(), pasted, problems);
    }

    boolean isAbout(ShopTable other, int number) {
        return table.filter(other::equals).isPresent() && row == number;
    }

    /** What is wrong with one cell; empty when nothing is. */
    String wrong(String column) {
        return problems.stream()
                .filter(problem -> problem.where().equals(place(column)))
                .map(problem -> problem.what() + "; " + problem.mend())
                .findFirst()
                .orElse("");
    }

    private String place(String column) {
        return table.map(each -> "%s %d: %s".formatted(each.key(), row, column)).orElse("");
    }

    /** What belongs to no cell of its row. */
    List<Problem> others(List<String> columns) {
        return problems.stream()
                .filter(problem -> row == 0
                        || columns.stream().noneMatch(column -> problem.where().equals(place(column))))
                .toList();
    }
}
