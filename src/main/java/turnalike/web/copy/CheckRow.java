package turnalike.web.copy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import turnalike.job.pieces.AgainstReport;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Column;
import turnalike.trace.against.Figure;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;

/**
 * One measure as it would go into the log.
 *
 * @param name what is measured
 * @param found as it was seen
 * @param asked as it was to be
 * @param within how far it may be off, one standard deviation
 */
public record CheckRow(String name, String found, String asked, String within) {
    static List<CheckRow> of(AgainstReport report, UnitSystem units) {
        List<CheckRow> out = new ArrayList<>();
        for (Map.Entry<Column, Figure> each : report.figures().entrySet()) {
            out.add(new CheckRow(
                    SentenceCase.capital(ColumnTargets.name(report.job(), each.getKey())),
                    each.getValue().value().formatFine(units),
                    ColumnTargets.shape(report.job())
                            .length(each.getKey())
                            .map(target -> target.formatFine(units))
                            .orElse(""),
                    each.getValue().uncertainty().formatFineUp(units)));
        }
        return out;
    }
}
