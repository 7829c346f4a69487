package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.trace.Profile;
import turnalike.units.Length;

/**
 * The piece between two ends that somebody pointed at: where these lie along what was found, and the trace cut down to it. An end pointed at
 * near one that was found is that one, which is seen closer than a hand points.
 */
final class PointedEnds {
    /** A hand on a screen is taken to be off by no more than this share of the piece's length: common practice, no source. */
    private static final double HAND = 0.02;

    /** Further off the axis that was found than this share of the length, somebody means another piece. */
    private static final double BESIDE = 0.08;

    private final double wholeMm;

    private final double fromMm;

    private final double toMm;

    /** Where the cuts stand in the picture, on the axis; empty where all is taken. */
    private final Optional<PhotoWish.Ends> cuts;

    private PointedEnds(double wholeMm, double fromMm, double toMm, Optional<PhotoWish.Ends> cuts) {
        this.wholeMm = wholeMm;
        this.fromMm = fromMm;
        this.toMm = toMm;
        this.cuts = cuts;
    }

    /**
     * Sets the ends on what was found, so far apart as somebody says.
     *
     * @param span the length between the ends pointed at, or of the whole piece where nobody pointed
     * @param view of what was found, its start end on the side of the start pointed at
     * @param lens how the picture bends
     * @param ends in pixels of the picture
     */
    static PointedEnds apart(Length span, ViewFit.View view, Lens lens, Optional<PhotoWish.Ends> ends) throws Unsure {
        return of(span.mm(), false, view, lens, ends);
    }

    /**
     * Sets the ends on what was found, of which the whole length is known.
     *
     * @param wholeMm the length of all that was found
     * @param view of it, its start end on the side of the start pointed at
     * @param lens how the picture bends
     * @param ends in pixels of the picture
     */
    static PointedEnds on(double wholeMm, ViewFit.View view, Lens lens, Optional<PhotoWish.Ends> ends) throws Unsure {
        return of(wholeMm, true, view, lens, ends);
    }

    private static PointedEnds of(
            double lengthMm, boolean isWhole, ViewFit.View view, Lens lens, Optional<PhotoWish.Ends> pointed)
            throws Unsure {
        if (pointed.isEmpty()) {
            return new PointedEnds(lengthMm, 0, lengthMm, Optional.empty());
        }
        Optional<PhotoWish.Ends> ends =
                pointed.map(each -> new PhotoWish.Ends(straight(lens, each.start()), straight(lens, each.end())));
        Sight sight = view.contour().sight();
        RoundOutline whole = RoundOutline.of(view.contour(), view.start(), view.end(), lengthMm);
        double first = whole.alongUnits(0);
        double last = whole.alongUnits(whole.count() - 1);
        double from = place(sight, whole, ends.get().start());
        double to = place(sight, whole, ends.get().end());
        double hand = HAND * (last - first);
        from = isAt(along(sight, ends.get().start()), first, view.start().apex(), hand) ? first : from;
        to = isAt(along(sight, ends.get().end()), last, view.end().apex(), hand) ? last : to;
        if (from < first || to > last) {
            throw new Unsure(
                    PhotoTrace.Reason.NO_PIECE,
                    String.format(
                            Locale.ROOT,
                            "what was found ends short of the end pointed at, by %.0f per cent of its length",
                            100 * Math.max(first - from, to - last) / (last - first)),
                    "point at its ends again, or take it on a plain ground of another colour");
        }
        double mmPerUnit = lengthMm / (isWhole ? last - first : to - from);
        return new PointedEnds(
                mmPerUnit * (last - first),
                mmPerUnit * (from - first),
                mmPerUnit * (to - first),
                from > first || to < last ? Optional.of(onAxis(sight, lens, ends.get())) : Optional.empty());
    }

    private static PixelPoint straight(Lens lens, PixelPoint point) {
        return lens.straight(point.x(), point.y());
    }

    private static PhotoWish.Ends onAxis(Sight sight, Lens lens, PhotoWish.Ends ends) {
        PixelPoint start = sight.pixel(along(sight, ends.start()), 0);
        PixelPoint end = sight.pixel(along(sight, ends.end()), 0);
        return new PhotoWish.Ends(lens.bent(start.x(), start.y()), lens.bent(end.x(), end.y()));
    }

    /** Whether a hand meant that end: of a flat end the face is seen from its place to where its near rim stands. */
    private static boolean isAt(double pointed, double place, double apex, double hand) {
        return pointed > Math.min(place, apex) - hand && pointed < Math.max(place, apex) + hand;
    }

    private static double along(Sight sight, PixelPoint point) {
        return sight.alongOf(point.x(), point.y());
    }

    /** What is pointed at is the side that faces the camera, which is nearer to it by the radius. */
    private static double place(Sight sight, RoundOutline whole, PixelPoint point) throws Unsure {
        double along = along(sight, point);
        double length = whole.alongUnits(whole.count() - 1) - whole.alongUnits(0);
        if (Math.abs(sight.acrossOf(point.x(), point.y())) > BESIDE * length) {
            throw new Unsure(
                    PhotoTrace.Reason.NO_PIECE,
                    "the piece that was found does not lie between the ends pointed at",
                    "point at both ends of one piece, on its axis");
        }
        double best = along;
        for (int round = 0; round < 3; round++) {
            double share = (best - whole.alongUnits(0)) / length;
            int k = (int) Math.round(Math.max(0, Math.min(1, share)) * (whole.count() - 1));
            best = along * (1 - whole.radiusUnits(k));
        }
        return best;
    }

    /** The length of all that was found. */
    double wholeMm() {
        return wholeMm;
    }

    /** The same, if the ends were so far apart. */
    Length wholeFor(Length span) {
        // Where nobody pointed this is one, and what was given stays as it was to the last bit.
        double share = wholeMm / (toMm - fromMm);
        return Length.ofMm(span.mm() * share);
    }

    /** The trace of the part between the ends. */
    PhotoTrace.Traced cut(PhotoTrace.Traced all) {
        if (cuts.isEmpty()) {
            return all;
        }
        PhotoTrace.Overlay lies = all.overlay();
        List<Profile.Station> stations = new ArrayList<>();
        List<Profile.Station> seen = all.profile().stations();
        stations.add(at(seen, fromMm));
        for (Profile.Station each : seen) {
            if (each.place().mm() > fromMm && each.place().mm() < toMm) {
                stations.add(moved(each));
            }
        }
        stations.add(at(seen, toMm));
        List<String> warnings = new ArrayList<>();
        warnings.add(String.format(
                Locale.ROOT,
                "Taken is what lies between the ends pointed at, from %.1f to %.1f mm of what was found; other notes on the picture count from the end that was found.",
                fromMm,
                toMm));
        warnings.addAll(all.warnings());
        Length length = Length.ofMm(toMm - fromMm);
        return new PhotoTrace.Traced(
                new Profile(length, stations, cut(all.profile().hidden())),
                new Profile(length, stations, cut(all.fitted().hidden())),
                cut(all.squares()),
                all.mmPerPixel(),
                all.scaleFrom(),
                all.viewFrom(),
                new PhotoTrace.Overlay(
                        lies.widthPixels(),
                        lies.heightPixels(),
                        cuts.get().start(),
                        cuts.get().end(),
                        lies.leftEdge(),
                        lies.rightEdge()),
                warnings);
    }

    private Profile.Station moved(Profile.Station each) {
        double place = Math.max(0, Math.min(toMm - fromMm, each.place().mm() - fromMm));
        return new Profile.Station(Length.ofMm(place), each.radius(), each.uncertainty());
    }

    private Profile.Station at(List<Profile.Station> seen, double mm) {
        Profile.Station near = seen.get(0);
        for (Profile.Station each : seen) {
            if (Math.abs(each.place().mm() - mm) < Math.abs(near.place().mm() - mm)) {
                near = each;
            }
        }
        return moved(new Profile.Station(Length.ofMm(mm), near.radius(), near.uncertainty()));
    }

    private List<Profile.Stretch> cut(List<Profile.Stretch> stretches) {
        List<Profile.Stretch> out = new ArrayList<>();
        for (Profile.Stretch each : stretches) {
            double from = Math.max(fromMm, each.from().mm()) - fromMm;
            double to = Math.min(toMm, each.to().mm()) - fromMm;
            if (to > from) {
                out.add(new Profile.Stretch(Length.ofMm(from), Length.ofMm(to)));
            }
        }
        return out;
    }
}
