package turnalike.trace;

import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** Whether sizes that were found are rounded to what a turner would write. */
public enum Snap {
    /** As found, to a hundredth of a millimetre. */
    NONE,
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

    /** {@return what places and diameters are rounded to} */
    public Length step() {
        return switch (this) {
            case NONE -> Length.ofMm(0.01);
            case HALF_MM -> Length.ofMm(0.5);
            case SIXTY_FOURTHS -> Length.ofInches(1 / 64.0);
        };
    }
}
