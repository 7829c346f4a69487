package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import turnalike.trace.Profile;
import turnalike.units.Length;

/**
 * Places in sight whose radius is as good as not seen: beside a step, where half a pixel along the piece is the whole step across, and right beside what
 * is hidden, whose corner the picture's softness rounds. They are told as hidden too.
 */
final class HardlySeen {
    /** Less sure than this, in pixels, and than so many times what is usual on the piece, a radius was not seen. By trying, on all pictures of {@code docs/photo-accuracy.md}. */
    private static final double UNSURE = 0.35;

    private static final double TIMES = 2;

    /**
     * So many pixels to either side of what is hidden. A tenth of what lies so near held 36 parts in 100 of all squared errors on sixty pictures made by one who had
     * not seen the program, and 30 on ours.
     */
    private static final double BESIDE_PIXELS = 2;

    private HardlySeen() {}

    /**
     * {@return the hidden stretches and those of places hardly seen, in order; those no farther apart than two stations are one}
     *
     * @param hidden stretches of which nothing was seen, in order, apart from one another
     * @param squares stretches lit as flats, which are measured by their light, not by their edges
     * @param stations all along the piece, as far from one another each
     * @param pixelMm what a pixel shows of the piece, in millimetres
     */
    static List<Profile.Stretch> with(
            List<Profile.Stretch> hidden,
            List<Profile.Stretch> squares,
            List<Profile.Station> stations,
            double pixelMm) {
        double most = Math.max(UNSURE * pixelMm, TIMES * usual(hidden, stations));
        double lengthMm = stations.get(stations.size() - 1).place().mm();
        double step = lengthMm / (stations.size() - 1);
        List<Profile.Stretch> all = new ArrayList<>(hidden);
        for (Profile.Station each : stations) {
            double at = each.place().mm();
            if (each.uncertainty().mm() > most && !isWithin(squares, at)) {
                all.add(new Profile.Stretch(
                        Length.ofMm(Math.max(0, at - step / 2)), Length.ofMm(Math.min(lengthMm, at + step / 2))));
            }
        }
        return Profile.Stretch.joined(
                all.stream()
                        .map(each -> widened(each, squares, BESIDE_PIXELS * pixelMm, lengthMm))
                        .toList(),
                Length.ofMm(step));
    }

    /** With what lies beside it, but for a square, which is measured by its flats. */
    private static Profile.Stretch widened(
            Profile.Stretch hidden, List<Profile.Stretch> squares, double besideMm, double lengthMm) {
        double from = hidden.from().mm();
        double to = hidden.to().mm();
        double first = Math.max(0, from - besideMm);
        double last = Math.min(lengthMm, to + besideMm);
        for (Profile.Stretch square : squares) {
            boolean before = square.from().mm() < from;
            first = before ? Math.max(first, Math.min(from, square.to().mm())) : first;
            boolean after = square.to().mm() > to;
            last = after ? Math.min(last, Math.max(to, square.from().mm())) : last;
        }
        return new Profile.Stretch(Length.ofMm(first), Length.ofMm(last));
    }

    private static double usual(List<Profile.Stretch> hidden, List<Profile.Station> stations) {
        double[] seen = stations.stream()
                .filter(each -> !isWithin(hidden, each.place().mm()))
                .mapToDouble(each -> each.uncertainty().mm())
                .sorted()
                .toArray();
        return seen.length == 0 ? Double.POSITIVE_INFINITY : seen[seen.length / 2];
    }

    private static boolean isWithin(List<Profile.Stretch> stretches, double at) {
        return stretches.stream()
                .anyMatch(each -> each.from().mm() <= at && at <= each.to().mm());
    }
}
