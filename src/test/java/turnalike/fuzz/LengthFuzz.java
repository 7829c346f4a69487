package turnalike.fuzz;

import java.nio.charset.StandardCharsets;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

/** Whatever is typed for a length is one between zero and 20 m, or refused with a mend. */
public final class LengthFuzz {
    private LengthFuzz() {}

    /** The fuzzer's way in. */
    public static void fuzzerTestOneInput(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        for (UnitSystem units : UnitSystem.values()) {
            Parsed<Length> parsed = Length.parse(text, units);
            parsed.fold(
                    length -> {
                        Fuzz.require(length.mm() >= 0 && length.mm() <= Length.LONGEST.mm(), "a length out of range");
                        return length;
                    },
                    (what, mend) -> {
                        Fuzz.require(!what.isBlank() && !mend.isBlank(), "a refusal that says nothing");
                        return Length.ZERO;
                    });
        }
    }
}
