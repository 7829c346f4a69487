package turnalike.job.edit;

import java.util.List;

/**
 * One member of a starter pattern, in parts of the blank's thickness. Details keep their proportions whatever the length; what is long
 * shares the rest, by its weight.
 *
 * @param kind the member's word
 * @param name what it is called; empty for nothing
 * @param length in parts of the thickness; 0 for what is long
 * @param share its weight among what is long; 0 for a detail
 * @param sizes the member's other lengths by their keys, in the same parts
 */
record StarterPart(String kind, String name, double length, double share, List<Size> sizes) {
    /** A size by its key. */
    record Size(String key, double part) {}

    StarterPart {
        sizes = List.copyOf(sizes);
    }

    private static StarterPart detail(String kind, double length, Size... sizes) {
        return new StarterPart(kind, "", length, 0, List.of(sizes));
    }

    private static StarterPart stretch(String kind, String name, double share, Size... sizes) {
        return new StarterPart(kind, name, 0, share, List.of(sizes));
    }

    static StarterPart tenon(double length, double diameter) {
        return detail("tenon", length, new Size("diameter", diameter), new Size("chamfer", 0.04));
    }

    static StarterPart fillet(double diameter) {
        return detail("fillet", 0.12, new Size("diameter", diameter));
    }

    static StarterPart bead(double length, double root, double crown) {
        return detail("bead", length, new Size("root", root), new Size("crown", crown));
    }

    static StarterPart cove(double length, double rim, double bottom) {
        return detail("cove", length, new Size("rim", rim), new Size("bottom", bottom));
    }

    static StarterPart ogee(double length, double from, double to) {
        return detail("ogee", length, new Size("from", from), new Size("to", to));
    }

    static StarterPart round(double length, double from, double to) {
        return detail("half-bead", length, new Size("from", from), new Size("to", to));
    }

    static StarterPart hollow(double length, double from, double to) {
        return detail("half-cove", length, new Size("from", from), new Size("to", to));
    }

    /** Left square, at the blank's own thickness. */
    static StarterPart block(String name, double length) {
        return new StarterPart("square", name, length, 0, List.of());
    }

    static StarterPart longBlock(String name, double share) {
        return new StarterPart("square", name, 0, share, List.of());
    }

    static StarterPart taper(String name, double share, double from, double to) {
        return stretch("taper", name, share, new Size("from", from), new Size("to", to));
    }

    static StarterPart swell(String name, double share, double from, double middle, double to) {
        return stretch("swell", name, share, new Size("from", from), new Size("middle", middle), new Size("to", to));
    }

    static StarterPart vase(String name, double share, double from, double to) {
        return stretch("ogee", name, share, new Size("from", from), new Size("to", to));
    }
}
