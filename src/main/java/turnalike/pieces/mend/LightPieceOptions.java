package turnalike.pieces.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import turnalike.pieces.Piece;
import turnalike.units.Mass;
import turnalike.units.WeighingScale;

/**
 * What can be done about a light piece: the set comes down to it, or it stays a spare and another is turned from a heavier blank.
 *
 * @param piece the light piece's label
 * @param ceiling what every other piece may weigh at most for the set with this one in it to pass; the heaviest's own mass if it passes
 * @param over the other pieces that are above the ceiling, the least of them first
 * @param heavierBlank how many times as heavy a blank from the same board would have to be to give the mass wanted
 */
public record LightPieceOptions(String piece, Mass ceiling, List<Over> over, double heavierBlank) {
    /** More than the halvings that bring two doubles of like size together. */
    private static final int HALVINGS = 100;

    /**
     * A piece that would have to come down.
     *
     * @param piece its label
     * @param tooMuch by how much
     */
    public record Over(String piece, Mass tooMuch) {}

    public LightPieceOptions {
        over = List.copyOf(over);
    }

    /**
     * The ways for a light piece in a set of {@code places}, the others being the lightest that were weighed. A set passes when (heaviest
     * - lightest) / mean is at most {@code massPct} per cent. The ceiling is found by halving, to the last digits of a double.
     *
     * @param light the piece
     * @param others the pieces there are beside it; those not weighed, and the light one itself, are passed over
     * @param places how many pieces a set takes, this one among them; at least 2
     * @param massPct the set's mass tolerance, above 0 and below 100
     * @param target what a piece should weigh
     * @return the ways
     * @throws IllegalArgumentException when the piece was not weighed, or fewer than two places or no tolerance are given
     */
    public static LightPieceOptions of(Piece light, List<Piece> others, int places, double massPct, Mass target) {
        double own = light.mass()
                .orElseThrow(() -> new IllegalArgumentException("piece %s was not weighed".formatted(light.label())))
                .grams();
        if (places < 2 || !(massPct > 0 && massPct < 100)) {
            throw new IllegalArgumentException("no set of %d places within %s %%".formatted(places, massPct));
        }
        List<Piece> set = others.stream()
                .filter(piece -> piece.mass().isPresent() && !piece.label().equals(light.label()))
                .sorted(Comparator.comparingDouble(LightPieceOptions::grams))
                .limit(places - 1L)
                .toList();
        double[] masses = set.stream().mapToDouble(LightPieceOptions::grams).toArray();
        double ceiling = ceiling(own, masses, massPct / 100);
        List<Over> over = new ArrayList<>();
        for (Piece piece : set) {
            if (grams(piece) > ceiling) {
                over.add(new Over(piece.label(), Mass.ofGrams(grams(piece) - ceiling)));
            }
        }
        return new LightPieceOptions(light.label(), Mass.ofGrams(ceiling), over, target.grams() / own);
    }

    /** The largest h with (h - lightest) / mean ≤ share when every mass above h is cut to h; the left side grows with h. */
    private static double ceiling(double own, double[] masses, double share) {
        double lightest = own;
        double heaviest = own;
        for (double mass : masses) {
            lightest = Math.min(lightest, mass);
            heaviest = Math.max(heaviest, mass);
        }
        if (passes(heaviest, own, masses, lightest, share)) {
            return heaviest;
        }
        double low = lightest;
        double high = heaviest;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (passes(middle, own, masses, lightest, share)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static boolean passes(double ceiling, double own, double[] masses, double lightest, double share) {
        double sum = Math.min(own, ceiling);
        for (double mass : masses) {
            sum += Math.min(mass, ceiling);
        }
        return ceiling - lightest <= share * sum / (masses.length + 1);
    }

    private static double grams(Piece piece) {
        return piece.mass().orElseThrow().grams();
    }

    // Not formatted(): the locale would choose the decimal sign.
    private static String fixed(String words, Object... figures) {
        return String.format(Locale.ROOT, words, figures);
    }

    /**
     * {@return the ways in words, one each, and last that no cut mends a light piece}
     *
     * @param scale the others come down by so many of its steps
     */
    public List<String> words(WeighingScale scale) {
        List<String> ways = new ArrayList<>();
        if (over.isEmpty()) {
            ways.add("piece %s passes with the set as it is: place it where the balance wants a light one"
                    .formatted(piece));
        } else {
            List<String> down = over.stream()
                    .map(each -> "%s (%s)".formatted(each.piece(), scale.reading(scale.atLeast(each.tooMuch()))))
                    .toList();
            ways.add("bring the others down to it, each by so much: " + String.join(", ", down));
        }
        ways.add(fixed("keep it as a spare and turn another from a blank %.1f %% heavier", 100 * (heavierBlank - 1)));
        ways.add("nothing can be put back on a turned piece: no cut mends it");
        return ways;
    }
}
