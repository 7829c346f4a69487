package turnalike.trace;

import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Whether sizes that were found are rounded to what a turner would write. */
public enum Snap {
    /** As found, to a hundredth of a millimetre. */
    NONE,
    /** As found, to half a thousandth of an inch: nobody writes a hundredth of a millimetre in inches, and sixteenths stay what they are. */
    HALF_THOUSANDTHS,
    /** To half millimetres. */
    HALF_MM,
    /** To 64ths of an inch. */
    SIXTY_FOURTHS;

    /**
     * {@return the steps that a turner in those units rounds to}
     *
     * @param units the turner's
     */
    public static Snap in(UnitSystem units) {
        return units == UnitSystem.INCH ? SIXTY_FOURTHS : HALF_MM;
    }

    /**
     * {@return as found, to steps that are finer than any tool and still read as figures in those units}
     *
     * @param units the turner's
     */
    public static Snap finest(UnitSystem units) {
        return units == UnitSystem.INCH ? HALF_THOUSANDTHS : NONE;
    }

    /** {@return what places and diameters are rounded to} */
    public Length step() {
        return switch (this) {
            case NONE -> Length.ofMm(0.01);
            case HALF_THOUSANDTHS -> Length.ofInches(0.0005);
            case HALF_MM -> Length.ofMm(0.5);
            case SIXTY_FOURTHS -> Length.ofInches(1 / 64.0);
        };
    }
}
