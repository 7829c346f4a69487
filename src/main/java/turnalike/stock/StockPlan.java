package turnalike.stock;

import java.util.List;
import java.util.Locale;
import turnalike.outline.Section;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * The stock of one job: what each blank is, what to saw for it, how many, how much wood.
 *
 * @param need the blank the pattern asks for
 * @param allowances what the rough blank is larger by
 * @param spares how many blanks
 * @param density of the wood as it is sawn
 */
public record StockPlan(BlankNeed need, Allowances allowances, Spares spares, Density density) {
    /** {@return the blank as it goes on the lathe} */
    public Blank finished() {
        return need.blank();
    }

    /** {@return what to saw: always square, since boards are; milling on every face, trimming at each end} */
    public Blank rough() {
        Length size = finished().size().plus(allowances.millingPerFace().times(2));
        Length length = finished().length().plus(allowances.trimmingPerEnd().times(2));
        return new Blank(Section.SQUARE, size, length);
    }

    /** {@return the corner cut on the milled square} */
    public CornerCut cornerCut() {
        return new CornerCut(finished().size());
    }

    /** {@return the wood in all rough blanks, spares included; sawdust between them is not} */
    public Timber timber() {
        return rough().timber().times(spares.blanks());
    }

    /** {@return what one rough blank weighs} */
    public Mass roughMass() {
        return rough().timber().mass(density);
    }

    /**
     * {@return every figure's working, in the order a person needs them}
     *
     * @param units the units to print in
     */
    public List<Working> workings(UnitSystem units) {
        return List.of(
                finishedWorking(units),
                roughWorking(units),
                cornerCut().working(units, need.cornersStay()),
                spares.working(),
                timberWorking(),
                massWorking());
    }

    /** {@return where this work can hurt} */
    public List<Problem> cautions() {
        return List.of(new Problem(
                "stock: corner cut",
                "sawing a corner off leaves a loose three-sided strip beside the blade and little blank to hold",
                "hold the blank in a V cradle, keep guard and push stick in use, let the strip fall free; a plane or drawknife does the"
                        + " same work without the blade"));
    }

    private Working finishedWorking(UnitSystem units) {
        return new Working(
                "Blank",
                "%s, as the pattern's stock says; the run is %s, so %s of its length is for holding and parting off"
                        .formatted(
                                finished().text(units),
                                need.run().format(units),
                                need.waste().format(units)),
                "the job's pattern",
                "exact");
    }

    private Working roughWorking(UnitSystem units) {
        String round = finished().section() == Section.ROUND ? "; sawn square, as boards are" : "";
        return new Working(
                "Rough blank",
                "%s: the blank, and %s for milling on each face and %s for trimming at each end%s"
                        .formatted(
                                rough().text(units),
                                allowances.millingPerFace().format(units),
                                allowances.trimmingPerEnd().format(units),
                                round),
                Working.COMMON_PRACTICE,
                "the allowances are chosen; warped or end-checked stock needs more");
    }

    private Working timberWorking() {
        return new Working(
                "Timber",
                String.format(
                        Locale.ROOT,
                        "%d rough %s of %.4f board feet (%.6f m3): %.2f board feet, %.5f m3, 144 cubic inches to the board foot",
                        spares.blanks(),
                        spares.blanks() == 1 ? "blank" : "blanks",
                        rough().timber().boardFeet(),
                        rough().timber().cubicMetres(),
                        timber().boardFeet(),
                        timber().cubicMetres()),
                "board foot: 1 ft x 1 ft x 1 in (VERIFIED second-hand; the grading rules were not seen)",
                "actual volume of the rough blanks, without saw kerfs and offcuts. A yard bills its own tally: hardwood by surface measure"
                        + " (width in inches x length in feet / 12, rounded to a whole number) x nominal thickness in inches, softwood by"
                        + " nominal sizes");
    }

    private Working massWorking() {
        return new Working(
                "Rough blank's weight",
                String.format(
                        Locale.ROOT,
                        "%.1f cm3 x %.1f kg/m3 = %.0f g (%s)",
                        rough().timber().mm3() / 1000,
                        density.kgPerM3(),
                        roughMass().grams(),
                        roughMass().formatOunces(1)),
                Working.DERIVED,
                "as sure as the density, which varies by about 10 % within one wood; weigh one to know");
    }
}
