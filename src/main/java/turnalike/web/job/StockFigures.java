package turnalike.web.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.stock.StockPlan;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;
import turnalike.units.Working;

/** What to buy and mill, as figures. */
public final class StockFigures {
    private StockFigures() {}

    public static List<FigureView> of(StockPlan stock, UnitSystem units, WeighingScale scale) {
        List<Working> workings = stock.workings(units);
        var spares = stock.spares();
        String feet =
                String.format(Locale.ROOT, "%.1f board feet", stock.timber().boardFeet());
        String metres = String.format(Locale.ROOT, "%.4f m³", stock.timber().cubicMetres());
        return List.of(
                new FigureView("Blank", stock.finished().text(units), "", find(workings, "Blank")),
                new FigureView("Rough blank", stock.rough().text(units), "to saw", find(workings, "Rough blank")),
                new FigureView(
                        "Rough blank's weight",
                        scale.large(stock.roughMass()),
                        scale.largeOther(stock.roughMass()),
                        find(workings, "Rough blank's weight")),
                new FigureView(
                        "Blanks to make",
                        Integer.toString(spares.blanks()),
                        String.format(Locale.ROOT, "%d wanted, %d spare", spares.good(), spares.spares()),
                        find(workings, spares.working().figure())),
                new FigureView(
                        "Wood in all",
                        units == UnitSystem.METRIC ? metres : feet,
                        units == UnitSystem.METRIC ? feet : metres,
                        find(workings, "Timber")),
                FigureView.of(
                        "Corners off to, each face", stock.cornerCut().face(), units, find(workings, "Corner cut")));
    }

    private static Optional<Working> find(List<Working> workings, String figure) {
        return workings.stream()
                .filter(working -> working.figure().equals(figure))
                .findFirst();
    }
}
