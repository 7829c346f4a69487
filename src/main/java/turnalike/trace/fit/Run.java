package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Forms set end to end.
 *
 * @param seams both ends and every joint between, in order: one more than the forms
 * @param forms in order
 */
record Run(List<Seam> seams, List<Form> forms) {
    Run {
        seams = List.copyOf(seams);
        forms = List.copyOf(forms);
        if (seams.size() != forms.size() + 1) {
            throw new IllegalArgumentException("%s seams for %s forms".formatted(seams.size(), forms.size()));
        }
    }

    /** The run that ends at the last seam, read back from which seam each was reached. */
    static Run back(List<Seam> seams, int[] before, Form[] reached) {
        List<Seam> places = new ArrayList<>();
        List<Form> forms = new ArrayList<>();
        int at = seams.size() - 1;
        places.add(seams.get(at));
        while (at > 0) {
            forms.add(0, reached[at]);
            at = before[at];
            places.add(0, seams.get(at));
        }
        return new Run(places, forms);
    }

    int size() {
        return forms.size();
    }

    Run withSeam(int index, Seam seam) {
        List<Seam> out = new ArrayList<>(seams);
        out.set(index, seam);
        return new Run(out, forms);
    }

    Run withForm(int index, Form form) {
        List<Form> out = new ArrayList<>(forms);
        out.set(index, form);
        return new Run(seams, out);
    }

    /** One parted in two at a seam within it. */
    Run parted(int index, Seam seam, Form before, Form after) {
        List<Seam> places = new ArrayList<>(seams);
        places.add(index + 1, seam);
        List<Form> more = new ArrayList<>(forms);
        more.set(index, before);
        more.add(index + 1, after);
        return new Run(places, more);
    }

    /** Two neighbours made one. */
    Run merged(int index, Form form) {
        List<Seam> places = new ArrayList<>(seams);
        places.remove(index + 1);
        List<Form> fewer = new ArrayList<>(forms);
        fewer.remove(index + 1);
        fewer.set(index, form);
        return new Run(places, fewer);
    }
}
