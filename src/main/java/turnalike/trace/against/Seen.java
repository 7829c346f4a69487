package turnalike.trace.against;

import java.util.ArrayList;
import java.util.List;
import turnalike.trace.Profile;
import turnalike.trace.Profile.Station;
import turnalike.trace.Profile.Stretch;

/**
 * The stations that were seen, as plain numbers in millimetres.
 *
 * @param x places from the start end, rising
 * @param r radii there
 * @param acrossSigma how far each radius may be off, one standard deviation
 * @param alongSigma how far each place may be off, likewise
 * @param lengthMm the whole piece's
 * @param hidden stretches of which nothing was seen
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Seen(double[] x, double[] r, double[] acrossSigma, double[] alongSigma, double lengthMm, List<Stretch> hidden) {
    /** A place is no better known than this whatever was measured with: a pencil line's half width (common practice, no source). */
    private static final double SUREST_PLACE_MM = 0.1;

    /** {@return the visible stations of a profile, none of them surer than {@code surestMm}} */
    static Seen of(Profile profile, double surestMm) {
        List<Station> visible = profile.stations().stream()
                .filter(each -> !isHidden(profile.hidden(), each.place().mm()))
                .toList();
        int n = visible.size();
        Seen seen = new Seen(
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                profile.length().mm(),
                profile.hidden());
        for (int i = 0; i < n; i++) {
            Station each = visible.get(i);
            seen.x[i] = each.place().mm();
            seen.r[i] = each.radius().mm();
            seen.acrossSigma[i] = Math.max(surestMm, each.uncertainty().mm());
            // A diameter is told within twice that of a radius, and the rule along it is read no better.
            seen.alongSigma[i] = Math.max(SUREST_PLACE_MM, 2 * seen.acrossSigma[i]);
        }
        return seen;
    }

    /** {@return the same piece laid the other way round} */
    static Profile turned(Profile profile) {
        List<Station> stations = new ArrayList<>();
        for (int i = profile.stations().size() - 1; i >= 0; i--) {
            Station each = profile.stations().get(i);
            stations.add(new Station(profile.length().minus(each.place()), each.radius(), each.uncertainty()));
        }
        List<Stretch> hidden = new ArrayList<>();
        for (int i = profile.hidden().size() - 1; i >= 0; i--) {
            Stretch each = profile.hidden().get(i);
            hidden.add(new Stretch(
                    profile.length().minus(each.to()), profile.length().minus(each.from())));
        }
        return new Profile(profile.length(), stations, hidden);
    }

    int size() {
        return x.length;
    }

    /**
     * How much one station tells of those around it whose errors are its own too: of so many as stand within {@code togetherMm} it is one.
     *
     * @param togetherMm how far along the piece errors go together; nothing where each is its own
     */
    double share(double togetherMm) {
        double spacing = lengthMm / Math.max(1, size());
        return togetherMm > 0 ? Math.min(1, spacing / togetherMm) : 1;
    }

    boolean isHidden(double placeMm) {
        return isHidden(hidden, placeMm);
    }

    private static boolean isHidden(List<Stretch> hidden, double placeMm) {
        return hidden.stream()
                .anyMatch(gap -> gap.from().mm() < placeMm && placeMm < gap.to().mm());
    }
}
