package turnalike.trace.against;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.pattern.Pattern;
import turnalike.trace.Profile;
import turnalike.trace.against.Comparison.Held;
import turnalike.trace.against.Comparison.Off;
import turnalike.units.Length;

/** What a fitted bend tells, as far as it was seen. */
final class Told {
    /** A place that is less sure is not told: half of what a careless line is off (a choice of ours). */
    private static final double SUREST_PLACE_MM = 0.6;

    /** Likewise of a radius. */
    private static final double SUREST_RADIUS_MM = 0.4;

    /** Where no station is nearer than this to a spot, or than a share of its member, nothing was seen of it. */
    private static final double NEAR_MM = 4;

    private static final double NEAR_SHARE = 0.2;
    /** Stations within this of a caliper tell what the bent pattern there still misses. */
    private static final double JAWS_MM = 2;

    private static final double MOSTLY_ACROSS = 0.7;
    private static final double STRAY_MM = 2;

    private final Pattern pattern;
    private final Bend bend;
    private final BendFit fit;
    private final Seen seen;
    private final Against.Manner manner;
    private final double longerMm;
    private final double heldMm;

    Told(Pattern pattern, Bend bend, BendFit fit, Seen seen, Against.Manner manner) {
        this.pattern = pattern;
        this.bend = bend;
        this.fit = fit;
        this.seen = seen;
        this.manner = manner;
        this.longerMm = seen.lengthMm() - pattern.length().mm();
        this.heldMm = manner.held() == Held.END ? longerMm : 0;
    }

    Comparison comparison(Profile profile, boolean turned, boolean eitherWay) {
        List<Off> off = off();
        long strays = off.stream()
                .filter(each -> each.much().value().abs().mm() > STRAY_MM)
                .count();
        return new Comparison(
                manner.held(),
                turned,
                eitherWay,
                profile,
                Length.ofMm(longerMm),
                bend.stretches().stream().map(this::member).toList(),
                spots(),
                off,
                off.isEmpty() ? 0 : (double) strays / off.size(),
                place -> caliper(place.mm()));
    }

    private MemberOff member(Bend.Stretch stretch) {
        int first = stretch.firstSpot();
        int last = stretch.lastSpot();
        int inside = last - first - 1;
        double worse = worse(stretch);
        double[] stands = bend.none();
        double[] longer = bend.none();
        longer[first] = -1;
        longer[last] = 1;
        double[] thicker = bend.none();
        if (inside > 0) {
            int crest = first + (inside + 1) / 2;
            stands[crest] = 1;
            thicker[stretch.growths()[crest - first]] = 2;
        } else {
            stands[first] = 0.5;
            stands[last] = 0.5;
            thicker[stretch.growths()[0]] = 1;
            thicker[stretch.growths()[1]] += 1;
        }
        boolean firstSeen = isSeen(first, stretch);
        boolean lastSeen = isSeen(last, stretch);
        boolean crestSeen = inside > 0 ? isSeen(first + (inside + 1) / 2, stretch) : firstSeen && lastSeen;
        Optional<Figure> shift = told(stands, worse, stretch, crestSeen, SUREST_PLACE_MM);
        return new MemberOff(
                stretch.placed(),
                shift.map(each -> each.less(Length.ofMm(heldMm))),
                told(longer, worse, stretch, firstSeen && lastSeen, SUREST_PLACE_MM),
                told(
                        thicker,
                        worse,
                        stretch,
                        crestSeen || (inside == 0 && stations(stretch) > 0),
                        2 * SUREST_RADIUS_MM),
                deeper(stretch, worse, firstSeen && lastSeen && crestSeen),
                List.of(end(stretch, 0, worse, firstSeen), end(stretch, last - first, worse, lastSeen)),
                stations(stretch));
    }

    private Optional<Figure> end(Bend.Stretch stretch, int spot, double worse, boolean isSeen) {
        double[] row = bend.none();
        row[stretch.growths()[spot]] = 2;
        return told(row, worse, stretch, isSeen, 2 * SUREST_RADIUS_MM);
    }

    /** Of one crest between two ends, when it is the lowest of the three. */
    private Optional<Figure> deeper(Bend.Stretch stretch, double worse, boolean isSeen) {
        if (stretch.growths().length != 3 || !isHollow(stretch)) {
            return Optional.empty();
        }
        double[] row = bend.none();
        row[stretch.growths()[0]] += 0.5;
        row[stretch.growths()[2]] += 0.5;
        row[stretch.growths()[1]] -= 1;
        return told(row, worse, stretch, isSeen, SUREST_RADIUS_MM);
    }

    private boolean isHollow(Bend.Stretch stretch) {
        double crest = stretch.placed()
                .outline()
                .radiusAt(Length.ofMm(bend.spotMm()[stretch.firstSpot() + 1]))
                .mm();
        return crest < stretch.placed().outline().startRadius().mm()
                && crest < stretch.placed().outline().endRadius().mm();
    }

    private Optional<Figure> told(double[] row, double worse, Bend.Stretch stretch, boolean isSeen, double surest) {
        if (!isSeen) {
            return Optional.empty();
        }
        double value = 0;
        for (int k = 0; k < row.length; k++) {
            value += row[k] * fit.figures[k];
        }
        double at = (stretch.placed().start().mm() + stretch.placed().end().mm()) / 2;
        double sigma = Math.hypot(worse * fit.sigma(row), scale(row) * shared(at));
        return sigma <= surest ? Against.figure(value, sigma) : Optional.empty();
    }

    /** A diameter is off by twice what its radius is. */
    private double scale(double[] row) {
        double sum = 0;
        for (int k = bend.spots(); k < row.length; k++) {
            sum += row[k];
        }
        return Math.max(1, Math.abs(sum));
    }

    /** What all stations near a place may be off by together: as many of them are no surer than one. */
    private double shared(double placeMm) {
        if (!manner.together()) {
            return 0;
        }
        int nearest = nearest(placeMm);
        return nearest < 0 ? 0 : seen.acrossSigma()[nearest];
    }

    private int nearest(double placeMm) {
        int best = -1;
        for (int i = 0; i < seen.size(); i++) {
            if (best < 0 || Math.abs(seen.x()[i] - placeMm) < Math.abs(seen.x()[best] - placeMm)) {
                best = i;
            }
        }
        return best;
    }

    private double foundMm(int spot) {
        return bend.spotMm()[spot] + fit.figures[spot];
    }

    private boolean isSeen(int spot, Bend.Stretch stretch) {
        double at = foundMm(spot);
        double near = Math.max(
                NEAR_MM, NEAR_SHARE * stretch.placed().outline().length().mm());
        int nearest = nearest(at);
        return !seen.isHidden(at) && nearest >= 0 && Math.abs(seen.x()[nearest] - at) <= near;
    }

    private int stations(Bend.Stretch stretch) {
        int count = 0;
        for (int i = 0; i < seen.size(); i++) {
            count += isOn(i, stretch) ? 1 : 0;
        }
        return count;
    }

    private boolean isOn(int station, Bend.Stretch stretch) {
        double x = seen.x()[station];
        return foundMm(stretch.firstSpot()) <= x && x <= foundMm(stretch.lastSpot());
    }

    /** How much less sure a member's figures are than its stations say, since it is of another shape than the pattern's. */
    private double worse(Bend.Stretch stretch) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < seen.size(); i++) {
            if (isOn(i, stretch)) {
                double[] miss = fit.miss(i);
                if (miss[2] > 0) {
                    sum += miss[0] * miss[0];
                    count++;
                }
            }
        }
        return count == 0 ? 1 : Math.max(1, Math.sqrt(sum / count));
    }

    private List<Comparison.Spot> spots() {
        List<Comparison.Spot> out = new ArrayList<>();
        for (Bend.Stretch stretch : bend.stretches()) {
            double worse = worse(stretch);
            for (int k = stretch.firstSpot(); k <= stretch.lastSpot(); k++) {
                boolean again = k == stretch.firstSpot() && k > 0;
                if (!again) {
                    spot(k, stretch, worse).ifPresent(out::add);
                }
            }
        }
        return out;
    }

    private Optional<Comparison.Spot> spot(int k, Bend.Stretch stretch, double worse) {
        double[] row = bend.none();
        row[k] = 1;
        Length planned = Length.ofMm(bend.spotMm()[k]);
        return told(row, worse, stretch, isSeen(k, stretch), SUREST_PLACE_MM)
                .map(each -> new Comparison.Spot(planned, new Figure(planned.plus(each.value()), each.uncertainty())));
    }

    private List<Off> off() {
        BentLine asked = new BentLine(bend);
        double[] held = bend.none();
        for (int k = 0; k < bend.spots(); k++) {
            held[k] = heldMm;
        }
        asked.bend(held);
        List<Off> out = new ArrayList<>();
        for (int i = 0; i < seen.size(); i++) {
            BentLine.Nearest nearest = asked.nearest(seen.x()[i], seen.r()[i]);
            if (!asked.isChamfer(nearest) && (manner.squaresTell() || !asked.isSquare(nearest))) {
                double sigma =
                        Math.hypot(nearest.along() * seen.alongSigma()[i], nearest.across() * seen.acrossSigma()[i]);
                boolean proud = seen.r()[i]
                        >= pattern.outline()
                                .radiusAt(Length.ofMm(seen.x()[i] - heldMm))
                                .mm();
                double much = Math.abs(nearest.off()) * (proud ? 1 : -1);
                out.add(new Off(Length.ofMm(seen.x()[i]), new Figure(Length.ofMm(much), Length.ofMm(sigma))));
            }
        }
        return out;
    }

    /** The bent pattern's diameter at a place, and what the stations right there say it still misses. */
    private Optional<Figure> caliper(double placeMm) {
        int nearest = nearest(placeMm);
        if (nearest < 0 || seen.isHidden(placeMm) || placeMm < 0 || placeMm > seen.lengthMm()) {
            return Optional.empty();
        }
        Bend.Stretch stretch = bend.stretches().stream()
                .filter(each -> placeMm <= foundMm(each.lastSpot()))
                .findFirst()
                .orElse(bend.stretches().get(bend.stretches().size() - 1));
        double near = Math.max(
                NEAR_MM, NEAR_SHARE * stretch.placed().outline().length().mm());
        boolean square = stretch.placed().member().section() == turnalike.outline.Section.SQUARE;
        if (Math.abs(seen.x()[nearest] - placeMm) > near || (square && !manner.squaresTell())) {
            return Optional.empty();
        }
        double[] row = bend.none();
        double radius = fit.line().radius(placeMm, row);
        double sigma = Math.hypot(worse(stretch) * fit.sigma(row), shared(placeMm));
        double diameter = 2 * (radius + missed(placeMm));
        return sigma <= SUREST_RADIUS_MM && diameter > 0 ? Against.figure(diameter, 2 * sigma) : Optional.empty();
    }

    private double missed(double placeMm) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < seen.size(); i++) {
            if (Math.abs(seen.x()[i] - placeMm) <= JAWS_MM) {
                double[] miss = fit.miss(i);
                if (miss[2] > MOSTLY_ACROSS) {
                    sum += miss[1];
                    count++;
                }
            }
        }
        return count == 0 ? 0 : sum / count;
    }
}
