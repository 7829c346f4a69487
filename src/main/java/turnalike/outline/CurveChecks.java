package turnalike.outline;

import turnalike.units.Length;

/** What every curve holds its makers to. */
final class CurveChecks {
    private CurveChecks() {}

    static void positive(String what, Length length) {
        if (!length.isPositive()) {
            throw new IllegalArgumentException("%s must be above zero, was %s mm".formatted(what, length.mm()));
        }
    }

    static void notNegative(String what, double mm) {
        if (!(mm >= 0)) {
            throw new IllegalArgumentException("%s must not be below zero, was %s mm".formatted(what, mm));
        }
    }

    /** The place, or the nearer end when rounding has carried it past one. */
    static double within(double xMm, Length length) {
        return Math.min(Math.max(xMm, 0), length.mm());
    }
}
