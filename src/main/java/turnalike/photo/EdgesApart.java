package turnalike.photo;

import java.util.Arrays;
import java.util.List;

/**
 * What the two edges' disagreement leaves open of the radius. A square that is turned is seen farther out on the side where its arris is nearer to the
 * camera, which is no disagreement.
 */
final class EdgesApart {
    private final RoundOutline outline;

    private final double[] open;

    EdgesApart(RoundOutline outline, List<FlatSections.Flat> flats) {
        this.outline = outline;
        open = new double[outline.count()];
        for (int k = 0; k < open.length; k++) {
            open[k] = outline.openMm(k);
        }
        for (FlatSections.Flat flat : flats) {
            // The arrises that bound it stand at depths 1 ∓ d·sin φ and d·cos φ out: 2·d²·sin φ·cos φ apart, so d² at
            // most, whatever its turn.
            double half = flat.share() * outline.acrossUnits(flat.middle());
            double most = flat.sure() ? 2 * half * half * outline.mmPerUnit() : 0;
            double inside = Math.max(0, Math.abs(outline.apartMm(flat.middle())) - most);
            for (int k = flat.round(outline, -1); k <= flat.round(outline, 1); k++) {
                double apart = Math.abs(outline.apartMm(k));
                double more = Math.max(0, apart - most);
                // Where its width is no longer even, rays that graze its end bound either edge as if it were a round's.
                boolean even = !flat.sure() || (flat.evenFrom() <= k && k <= flat.evenTo());
                open[k] *= more == 0 ? 0 : (even ? more : Math.min(more, inside)) / apart;
            }
        }
    }

    /** At a step, one standard deviation. */
    double openMm(int k) {
        return open[k];
    }

    /** Around a step, root mean square. */
    double nearMm(int k, int reach) {
        double sum = 0;
        int count = 0;
        for (int i = Math.max(0, k - reach); i <= Math.min(open.length - 1, k + reach); i++) {
            sum += open[i] * open[i];
            count++;
        }
        return Math.sqrt(sum / count);
    }

    /** Twice, which is all that they are apart where both are as sure; in pixels, the least first. */
    double[] pixels() {
        double[] apart =
                Arrays.stream(open).map(each -> 2 * each / outline.mmPerPixel()).toArray();
        Arrays.sort(apart);
        return apart;
    }
}
