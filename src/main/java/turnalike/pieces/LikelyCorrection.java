package turnalike.pieces;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.PlainNumber;

/**
 * What was probably meant by a figure that does not fit.
 *
 * @param kind the mistake
 * @param figure what was meant, in grams for the mass and millimetres for the rest
 * @param how the mistake in a few words
 */
record LikelyCorrection(Slip.Kind kind, double figure, String how) {
    private static final int DECIMALS = 4;

    /** A unit somebody may have read the figure in, and by how much that makes it too small. */
    private record Unit(String name, double factor) {}

    private static final List<Unit> MASS_UNITS = List.of(
            new Unit("ounces", Mass.GRAMS_PER_OUNCE),
            new Unit("pounds", 16 * Mass.GRAMS_PER_OUNCE),
            new Unit("kilograms", 1000),
            new Unit("grams", 1));
    private static final List<Unit> LENGTH_UNITS =
            List.of(new Unit("inches", Length.MM_PER_INCH), new Unit("centimetres", 10), new Unit("millimetres", 1));

    /** The likeliest mistake that makes the figure fit. */
    static Optional<LikelyCorrection> find(Column column, double figure, UsualRange usual, KeyedFigure keyed) {
        return unit(column, figure, usual, keyed)
                .or(() -> point(figure, usual))
                .or(() -> digits(column, figure, usual, keyed));
    }

    /** Another unit than the bare one explains the figure. */
    static Optional<LikelyCorrection> unit(Column column, double figure, UsualRange usual, KeyedFigure keyed) {
        double count = count(column, figure, keyed);
        return (column.isMass() ? MASS_UNITS : LENGTH_UNITS)
                .stream()
                        .map(unit -> new LikelyCorrection(
                                Slip.Kind.WRONG_UNIT, count * unit.factor(), "is it in " + unit.name()))
                        .filter(meant -> meant.figure() != figure && usual.fits(meant.figure()))
                        .findFirst();
    }

    private static Optional<LikelyCorrection> point(double figure, UsualRange usual) {
        return DoubleStream.of(10, 0.1, 100, 0.01, 1000, 0.001)
                .map(factor -> figure * factor)
                .filter(usual::fits)
                .mapToObj(meant -> new LikelyCorrection(Slip.Kind.DECIMAL_POINT, meant, "did the decimal point slip"))
                .findFirst();
    }

    private static Optional<LikelyCorrection> digits(
            Column column, double figure, UsualRange usual, KeyedFigure keyed) {
        String typed = PlainNumber.toDecimals(count(column, figure, keyed), DECIMALS);
        DoubleUnaryOperator inside = count -> figure(column, count, keyed);
        return nearest(Typing.swaps(typed), inside, usual, "did two digits change places")
                .or(() -> nearest(Typing.drops(typed), inside, usual, "is there a digit too many"))
                .or(() -> nearest(Typing.changes(typed), inside, usual, "is one digit wrong"));
    }

    private static Optional<LikelyCorrection> nearest(
            DoubleStream counts, DoubleUnaryOperator inside, UsualRange usual, String how) {
        OptionalDouble best = counts.map(inside)
                .filter(usual::fitsWell)
                .reduce((a, b) -> Math.abs(b - usual.centre()) < Math.abs(a - usual.centre()) ? b : a);
        return best.isEmpty()
                ? Optional.empty()
                : Optional.of(new LikelyCorrection(Slip.Kind.DIGIT, best.getAsDouble(), how));
    }

    /** How the figure was typed: a number of the bare units. */
    static double count(Column column, double figure, KeyedFigure keyed) {
        return column.isMass()
                ? keyed.mass().count(Mass.ofGrams(figure))
                : figure / keyed.units().length(1).mm();
    }

    /** The inverse of {@link #count}. */
    static double figure(Column column, double count, KeyedFigure keyed) {
        return column.isMass()
                ? keyed.mass().mass(count).grams()
                : keyed.units().length(count).mm();
    }

    /** What a hand does to a typed number. */
    private static final class Typing {
        static DoubleStream swaps(String typed) {
            return IntStream.range(0, typed.length())
                    .filter(i -> isDigit(typed, i))
                    .filter(i -> nextDigit(typed, i) < typed.length())
                    .mapToObj(i -> {
                        StringBuilder swapped = new StringBuilder(typed);
                        swapped.setCharAt(i, typed.charAt(nextDigit(typed, i)));
                        swapped.setCharAt(nextDigit(typed, i), typed.charAt(i));
                        return swapped.toString();
                    })
                    .mapToDouble(Double::parseDouble);
        }

        static DoubleStream drops(String typed) {
            return IntStream.range(0, typed.length())
                    .filter(i -> isDigit(typed, i))
                    .mapToObj(i -> "0" + typed.substring(0, i) + typed.substring(i + 1))
                    .mapToDouble(Double::parseDouble);
        }

        static DoubleStream changes(String typed) {
            return IntStream.range(0, typed.length())
                    .filter(i -> isDigit(typed, i))
                    .boxed()
                    .flatMap(i -> IntStream.rangeClosed(0, 9)
                            .mapToObj(digit -> typed.substring(0, i) + digit + typed.substring(i + 1)))
                    .mapToDouble(Double::parseDouble);
        }

        private static int nextDigit(String typed, int i) {
            return i + 1 < typed.length() && typed.charAt(i + 1) == '.' ? i + 2 : i + 1;
        }

        private static boolean isDigit(String typed, int i) {
            return typed.charAt(i) != '.';
        }
    }
}
