package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** The squares of a traced piece, and what may be one, each with its ends in millimetres and what is to be said of it. */
final class FoundSquares {
    /** What a square's side is uncertain by: how it is turned and which corner is nearer is not known exactly. */
    private static final double SIDE = 0.03;

    /** The same where the rim of its end tells how it is turned: what is left is the view's. Of thirteen made pictures the worst was off by 0.014. */
    private static final double SIDE_BY_RIM = 0.015;

    /** An end so near the piece's own, pixels, is the same. */
    private static final double SAME_PIXELS = 6;

    private final List<Found> all;

    private final RoundOutline outline;

    private FoundSquares(List<Found> all, RoundOutline outline) {
        this.all = all;
        this.outline = outline;
    }

    /** The same piece as it would be seen from elsewhere. */
    record Seen(SquaredContour contour, RoundOutline outline) {}

    /**
     * Finds them.
     *
     * @param flats as they are lit
     * @param view the best one
     * @param others each with something moved by what it is uncertain by: where squares end there says how sure their places are
     * @param scale what all lengths are uncertain by, as a share
     */
    static FoundSquares of(List<FlatSections.Flat> flats, Seen view, List<Seen> others, double scale) {
        List<Found> all = new ArrayList<>();
        for (FlatSections.Flat flat : flats) {
            Place from = place(flat, true, view, others, scale);
            Place to = place(flat, false, view, others, scale);
            if (to.mm > from.mm) {
                all.add(new Found(flat, from, to, flat.round(view.outline(), -1), flat.round(view.outline(), 1)));
            }
        }
        return new FoundSquares(all, view.outline());
    }

    /** An end, mm from the start; its doubt, one standard deviation; and where beyond it the piece is seen again. */
    private record Place(double mm, double doubt, double seenAgain) {}

    /**
     * One of them.
     *
     * @param roundBefore the first step at which its shoulder keeps some of its flats
     * @param roundAfter and the last
     */
    private record Found(FlatSections.Flat flat, Place from, Place to, int roundBefore, int roundAfter) {
        boolean holds(double mm) {
            return from.mm <= mm && mm <= to.mm;
        }

        boolean keepsFlats(int k) {
            return flat.sure() && roundBefore <= k && k <= roundAfter;
        }
    }

    private static Place place(FlatSections.Flat flat, boolean start, Seen view, List<Seen> others, double scale) {
        RoundOutline outline = view.outline();
        double length = outline.placeMm(outline.count() - 1);
        double told = outline.placeMm(start ? flat.from() : flat.to());
        Optional<SquareEnd> read = flat.sure() ? flat.end(view.contour(), outline, start) : Optional.empty();
        if (read.isEmpty()) {
            // By the round that it would be, which is too far out by half a side's share of the camera's distance.
            return new Place(told, flat.share() * outline.acrossUnits(flat.middle()) * told, told);
        }
        SquareEnd end = read.orElseThrow();
        double mm = Math.max(0, Math.min(length, outline.ofUnitsMm(end.place())));
        if ((start ? mm : length - mm) < SAME_PIXELS * outline.mmPerPixel()) {
            return new Place(start ? 0 : length, 0, start ? 0 : length);
        }
        double squares = Math.pow(end.doubt() * outline.mmPerUnit(), 2) + Math.pow(scale * mm, 2);
        for (Seen other : others) {
            Optional<SquareEnd> moved = flat.end(other.contour(), other.outline(), start);
            double by = moved.map(each -> other.outline().ofUnitsMm(each.place()) - mm)
                    .orElse(0.0);
            squares += by * by;
        }
        return new Place(mm, Math.sqrt(squares), Math.max(0, Math.min(length, outline.ofUnitsMm(end.foot()))));
    }

    /** What a radius that a round of that width would have is to be taken by at a step. */
    double radiusMm(int k) {
        Optional<Found> found = at(k);
        if (found.isEmpty() || !found.get().flat.sure()) {
            return Math.min(outline.radiusMm(k), shoulderMm(k));
        }
        // Beside its ends other rays bound it than those along its arrises.
        FlatSections.Flat flat = found.get().flat;
        int beside = (flat.to() - flat.from()) / 8;
        return flat.share() * outline.acrossMm(Math.max(flat.from() + beside, Math.min(flat.to() - beside, k)));
    }

    /** A shoulder keeps some of a square's flats up to where it is turned below them: it is no thicker there than half the side. */
    private double shoulderMm(int k) {
        return all.stream()
                .filter(each -> each.keepsFlats(k))
                .map(Found::flat)
                .mapToDouble(flat -> flat.share() * outline.acrossMm(flat.middle()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** What a square and its shoulder leave open there, and what one does that may be none. */
    double doubtMm(int k) {
        Optional<Found> found = at(k);
        return found.or(() -> all.stream().filter(each -> each.keepsFlats(k)).findFirst())
                        .map(each -> doubt(each.flat))
                        .orElse(0.0)
                * outline.radiusMm(k);
    }

    /** As a share of the radius. */
    private static double doubt(FlatSections.Flat flat) {
        return flat.byRim() ? SIDE_BY_RIM : flat.sure() ? SIDE : Math.max(SIDE, 1 - flat.share());
    }

    private Optional<Found> at(int k) {
        return all.stream().filter(each -> each.holds(outline.placeMm(k))).findFirst();
    }

    /** The sure ones. */
    List<Profile.Stretch> stretches() {
        return all.stream()
                .filter(each -> each.flat.sure())
                .map(each -> new Profile.Stretch(Length.ofMm(each.from.mm), Length.ofMm(each.to.mm)))
                .toList();
    }

    /**
     * Where nothing was seen: not in a square, whose flats are seen, but between its end and where the piece is seen again.
     *
     * @param round what would be hidden of a round
     * @param least mm; shorter ones are left out
     */
    List<Profile.Stretch> hidden(List<Profile.Stretch> round, double least) {
        boolean[] dark = new boolean[outline.count()];
        for (int k = 0; k < dark.length; k++) {
            double mm = outline.placeMm(k);
            dark[k] = all.stream()
                            .filter(each -> each.flat.sure())
                            .anyMatch(each -> isBetween(mm, each.from) || isBetween(mm, each.to))
                    || round.stream()
                            .anyMatch(each ->
                                    each.from().mm() <= mm && mm <= each.to().mm());
            dark[k] &= all.stream().noneMatch(each -> each.flat.sure() && each.holds(mm));
        }
        List<Profile.Stretch> stretches = new ArrayList<>();
        int from = -1;
        for (int k = 0; k <= dark.length; k++) {
            boolean here = k < dark.length && dark[k];
            if (here && from < 0) {
                from = k;
            } else if (!here && from >= 0) {
                if (outline.placeMm(k - 1) - outline.placeMm(from) >= least) {
                    stretches.add(new Profile.Stretch(
                            Length.ofMm(outline.placeMm(from)), Length.ofMm(outline.placeMm(k - 1))));
                }
                from = -1;
            }
        }
        return stretches;
    }

    private static boolean isBetween(double mm, Place end) {
        return Math.min(end.mm, end.seenAgain) <= mm && mm <= Math.max(end.mm, end.seenAgain);
    }

    List<String> words() {
        return all.stream().map(this::words).toList();
    }

    private String words(Found found) {
        FlatSections.Flat flat = found.flat;
        String lit = flat.faceOn() ? "a flat that faces the camera" : "two flats with an arris between";
        double side = 2 * flat.share() * outline.acrossMm(flat.middle());
        return flat.sure()
                ? String.format(
                        Locale.ROOT,
                        "From %.0f to %.0f mm it is lit as %s, and taken for a square of %.1f mm, its ends known to %.1f mm if its shoulders are cut square; the corners of a rounded or sloping one end sooner than is seen: measure it.",
                        found.from.mm,
                        found.to.mm,
                        lit,
                        side,
                        Math.max(found.from.doubt, found.to.doubt))
                : String.format(
                        Locale.ROOT,
                        "From %.0f to %.0f mm it may be square, lit somewhat as %s; not sure, so it is taken for a round: if it is square, its side is some %.1f mm.",
                        found.from.mm,
                        found.to.mm,
                        lit,
                        side);
    }
}
