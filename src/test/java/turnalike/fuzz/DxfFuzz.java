package turnalike.fuzz;

import turnalike.trace.drawn.DrawnOutline;

/** Drawings in DXF, see {@link Drawings}. */
public final class DxfFuzz {
    private DxfFuzz() {}

    /** The fuzzer's way in. */
    public static void fuzzerTestOneInput(byte[] input) {
        Drawings.tryOut(input, DrawnOutline.Format.DXF);
    }
}
