package turnalike.fuzz;

import turnalike.trace.drawn.DrawnOutline;

/** Drawings in SVG, see {@link Drawings}. */
public final class SvgFuzz {
    private SvgFuzz() {}

    /** The fuzzer's way in. */
    public static void fuzzerTestOneInput(byte[] input) {
        Drawings.tryOut(input, DrawnOutline.Format.SVG);
    }
}
