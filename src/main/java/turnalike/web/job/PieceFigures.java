package turnalike.web.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.Plan;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/** What a piece comes to, as the page shows it. */
final class PieceFigures {
    /** A kg/m³ in pounds a cubic foot: 0.3048³ / 0.45359237, both exact by definition. */
    private static final double LB_PER_FT3 = 0.3048 * 0.3048 * 0.3048 / 0.45359237;

    private PieceFigures() {}

    /** Length, weight, balance point and density, each with its working. */
    static List<FigureView> of(Plan plan) {
        UnitSystem units = plan.job().units();
        Length length = plan.job().pattern().length();
        Length balance = plan.solid().balance();
        Optional<Working> solid = Optional.of(plan.solid().working());
        return List.of(
                FigureView.of("Length", length, units, Optional.empty()),
                FigureView.of(
                        "Weight", plan.solid().mass(), plan.job().tolerances().weighing(), solid),
                FigureView.of("Balance point", balance, units, solid),
                new FigureView(
                        "Density",
                        String.format(
                                Locale.ROOT,
                                "%.0f kg/m³",
                                plan.solid().density().kgPerM3()),
                        String.format(
                                Locale.ROOT,
                                "%.1f lb/ft³",
                                plan.solid().density().kgPerM3() * LB_PER_FT3),
                        Optional.of(plan.job().wood().working())));
    }
}
