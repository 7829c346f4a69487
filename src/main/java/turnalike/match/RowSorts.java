package turnalike.match;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Problem;

/**
 * Which sort of piece each place of a row wants, where not every piece fits everywhere. Sorts are numbered from 0.
 *
 * @param ofPieces each piece's sort
 * @param ofPlaces the sort that each place wants
 */
public record RowSorts(List<Integer> ofPieces, List<Integer> ofPlaces) {
    public RowSorts {
        ofPieces = List.copyOf(ofPieces);
        ofPlaces = List.copyOf(ofPlaces);
    }

    /** {@return how many sorts the places want} */
    int count() {
        return 1 + ofPlaces.stream().mapToInt(sort -> sort).max().orElse(-1);
    }

    /** The pieces of a sort, ascending. */
    List<Integer> pieces(int sort) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < ofPieces.size(); i++) {
            if (ofPieces.get(i) == sort) {
                out.add(i);
            }
        }
        return out;
    }

    /** How far the pieces placed miss passing, sort by sort, in all; 0 when those of every sort pass among themselves. */
    double misses(double[] massesG, int[] order, double wantedShare) {
        double sum = 0;
        for (int sort = 0; sort < count(); sort++) {
            double lightest = Double.POSITIVE_INFINITY;
            double heaviest = 0;
            double sumG = 0;
            for (int place = 0; place < order.length; place++) {
                if (ofPlaces.get(place) == sort) {
                    double massG = massesG[order[place]];
                    lightest = Math.min(lightest, massG);
                    heaviest = Math.max(heaviest, massG);
                    sumG += massG;
                }
            }
            sum += sumG == 0 ? 0 : SetRule.misses((heaviest - lightest) * places(sort) / sumG, wantedShare);
        }
        return sum;
    }

    /** How many places want a sort. */
    int places(int sort) {
        return (int) ofPlaces.stream().filter(each -> each == sort).count();
    }

    /**
     * {@return what keeps the places from being filled: a sort of which there are too few; empty when nothing does}
     *
     * @param names of the sorts, as a person knows them
     */
    public List<Problem> problems(List<String> names) {
        List<Problem> out = new ArrayList<>();
        for (int sort = 0; sort < count(); sort++) {
            int missing = places(sort) - pieces(sort).size();
            if (missing > 0) {
                out.add(new Problem(
                        "pieces",
                        "%d of %s for %d places".formatted(pieces(sort).size(), names.get(sort), places(sort)),
                        "log %d more of that length".formatted(missing)));
            }
        }
        return out;
    }

    /** {@return whether the places want the same from either end, so that a row may be read from its other end} */
    public boolean isSameReversed() {
        for (int i = 0, j = ofPlaces.size() - 1; i < j; i++, j--) {
            if (!ofPlaces.get(i).equals(ofPlaces.get(j))) {
                return false;
            }
        }
        return true;
    }
}
