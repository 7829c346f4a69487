package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;
import turnalike.units.LengthMessage;
import turnalike.units.UnitSystem;

/** Gathers what is wrong with a member's sizes. Every member kind states its rules once with this, for its maker and for the reader. */
final class Faults {
    private final List<Fault> found = new ArrayList<>();

    static Faults in(Length length) {
        return new Faults().positive("length", length);
    }

    /** Below this a size is zero to any tool, and two marks would fall on one place: a millionth of a millimetre. */
    static final double LEAST_MM = 1e-6;

    Faults positive(String key, Length size) {
        if (size.mm() < LEAST_MM) {
            found.add(new Fault(key, LengthMessage.of("must be above zero, was %s", size), "give a size above zero"));
        }
        return this;
    }

    Faults notNegative(String key, Length size) {
        if (size.mm() < 0) {
            found.add(new Fault(key, LengthMessage.of("must not be below zero, was %s", size), "give zero or more"));
        }
        return this;
    }

    Faults larger(String key, Length size, String otherKey, Length other) {
        if (size.isPositive() && other.isPositive() && size.compareTo(other) <= 0) {
            found.add(new Fault(
                    key,
                    LengthMessage.of("must exceed the %s, was %s with a %s of %s", otherKey, size, otherKey, other),
                    "make the %s larger or the %s smaller".formatted(key, otherKey)));
        }
        return this;
    }

    Faults when(boolean wrong, String key, LengthMessage what, String mend) {
        if (wrong) {
            found.add(new Fault(key, what, mend));
        }
        return this;
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    List<Fault> list() {
        return List.copyOf(found);
    }

    /** For a maker of an invalid member: our own fault, since the reader asks first. */
    static void refuse(String kind, List<Fault> faults) {
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(kind + " " + faults.get(0).key() + " "
                    + faults.get(0).what().in(UnitSystem.METRIC));
        }
    }
}
