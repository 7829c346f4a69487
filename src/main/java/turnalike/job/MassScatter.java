package turnalike.job;

import java.util.List;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.solid.Sensitivity;
import turnalike.solid.Solid;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How far the masses of pieces of one pattern will scatter, before any is turned.
 *
 * <p>Each member's diameter is off by up to the tolerance all along it, any amount as likely as another and whatever the others are: its
 * standard deviation is t/√3, and the mass follows to first order. The wood adds its own: from blank to blank as one wood varies, and, once
 * blanks are chosen by their weight, what a blank's density does not tell of the piece within it.
 *
 * @param mass of the piece as drawn
 * @param turned standard deviation of the mass from the diameters alone
 * @param byMember the part of each member in that, in the order of the run
 */
public record MassScatter(Mass mass, Mass turned, List<Mass> byMember) {
    /** From blank to blank of one wood: ovendry density's coefficient of variation. Wood Handbook, FPL-GTR-190; VERIFIED, S9 page index 88. */
    public static final double WOOD = 0.1;

    /** What a blank's own density does not tell of the piece in it. Chosen, common practice, no source. */
    public static final double UNEVEN = 0.01;

    public MassScatter {
        byMember = List.copyOf(byMember);
    }

    /**
     * {@return the scatter of pieces of that pattern}
     *
     * @param pattern what every piece copies
     * @param density of its wood
     * @param tolerance how far a finished diameter may be off either way
     */
    public static MassScatter of(Pattern pattern, Density density, Length tolerance) {
        double deviationMm = tolerance.mm() / Math.sqrt(3);
        List<Mass> parts = pattern.placed().stream()
                .map(PlacedMember::outline)
                .map(outline -> Mass.ofGrams(Sensitivity.of(outline, density).linearGPerMm() * deviationMm))
                .toList();
        double squares =
                parts.stream().mapToDouble(part -> part.grams() * part.grams()).sum();
        return new MassScatter(Solid.of(pattern.outline(), density).mass(), Mass.ofGrams(Math.sqrt(squares)), parts);
    }

    static MassScatter of(Job job) {
        return of(job.pattern(), job.wood().density(), job.tolerances().diameter());
    }

    /** {@return the turning's part as a share of the mass} */
    public double turnedShare() {
        return turned.grams() / mass.grams();
    }

    /** {@return the standard deviation of a piece from a blank as it comes, as a share of the mass} */
    public double shareAsItComes() {
        return Math.hypot(turnedShare(), WOOD);
    }

    /** {@return the standard deviation about what its blank's weight foretells, as a share of the mass} */
    public double shareByBlank() {
        return Math.hypot(turnedShare(), UNEVEN);
    }

    /**
     * {@return how it was found}
     *
     * @param tolerance how far a finished diameter may be off
     * @param units to print it in
     */
    public static Working working(Length tolerance, UnitSystem units) {
        return new Working(
                "how far weights scatter",
                ("each member's diameter off by up to %s all along it, any amount as likely as another: the root of the sum of"
                                + " (ρ∫πr dx · t/√3)²; wood 10 %% from blank to blank, 1 %% about what a blank's weight foretells")
                        .formatted(tolerance.format(units)),
                Working.DERIVED
                        + "; the wood's 10 %: Wood Handbook, FPL-GTR-190; VERIFIED, S9 page index 88; the 1 % chosen ("
                        + Working.COMMON_PRACTICE + ")",
                "to first order in the tolerance. A hand that turns everything a little thick moves all pieces alike, which does not part them");
    }
}
