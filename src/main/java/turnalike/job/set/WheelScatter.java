package turnalike.job.set;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import turnalike.frame.Moment;
import turnalike.frame.Spread;
import turnalike.frame.UnbalanceLaw;
import turnalike.match.Candidate;
import turnalike.match.Expected;
import turnalike.match.ExpectedSearch;
import turnalike.match.Seat;
import turnalike.match.WheelPlacement;
import turnalike.pieces.Piece;
import turnalike.units.Working;

/**
 * What is known of a placed wheel no better than it is: the scale rounds, balance points are measured to a mark's error or not at all, seats
 * and holes are as true as they are bored. To first order each adds its own deviation to the moment of its piece, m·R toward its place θ:
 * R·δm + m·δR toward θ, and m·R·δθ across it. What is off by up to t, any amount as likely as another, has the standard deviation t/√3; a
 * reading rounded to steps of s one of s/√12. Source of these two: JCGM 100:2008 (the GUM), 4.3.7 (from memory).
 */
final class WheelScatter {
    private final SetTerms terms;
    private final BalanceScatter balance;
    private final Set<String> measured = new HashSet<>();
    private final double measuredMm;

    /** The rim's segments, as the scale weighed them. */
    private final Spread rim;

    WheelScatter(SetTerms terms, OnWheel frame, List<Piece> pieces) {
        this.terms = terms;
        rim = frame.rimScatter(terms.pattern(), scaleG());
        balance = BalanceScatter.of(terms.pattern(), terms.tolerances().diameter(), pieces, terms.units());
        pieces.stream()
                .filter(piece -> piece.balance().isPresent())
                .map(Piece::label)
                .forEach(measured::add);
        measuredMm = BalanceScatter.uniformMm(terms.tolerances().mark());
    }

    private double scaleG() {
        return terms.scale().grams() / Math.sqrt(12);
    }

    /** The placed wheel's spreads, one for each thing that scatters, and what the unmeasured balance points share. */
    private final class Sums {
        private Spread scale = Spread.NONE;
        private Spread known = Spread.NONE;
        private Spread unmeasured = Spread.NONE;
        private Spread seats = Spread.NONE;
        private Spread holes = Spread.NONE;
        private double commonX;
        private double commonY;

        Sums(List<Seat> placed) {
            double stepG = scaleG();
            double seatMm = BalanceScatter.uniformMm(terms.seat());
            double holeRad = terms.holeAngle().radians() / Math.sqrt(3);
            for (Seat seat : placed) {
                double cos = Math.cos(seat.angle().radians());
                double sin = Math.sin(seat.angle().radians());
                double grams = seat.piece().mass().grams();
                double mm = seat.reach().mm();
                scale = scale.plus(Spread.along(cos, sin, mm * stepG));
                seats = seats.plus(Spread.along(cos, sin, grams * seatMm));
                holes = holes.plus(Spread.along(-sin, cos, grams * mm * holeRad));
                if (measured.contains(seat.piece().label())) {
                    known = known.plus(Spread.along(cos, sin, grams * measuredMm));
                } else {
                    unmeasured = unmeasured.plus(Spread.along(cos, sin, grams * balance.deviationMm()));
                    commonX += grams * cos;
                    commonY += grams * sin;
                }
            }
        }

        /** All but the balance points that were not measured. */
        Spread rest() {
            return scale.plus(known).plus(seats).plus(holes).plus(rim);
        }

        /** The balance points that were not measured, with how sure their mean is. */
        Spread guessed() {
            return unmeasured.plus(common());
        }

        /** How sure the mean of the measured ones is that all the others are taken to share. */
        Spread common() {
            return balance.freedom() == 0
                    ? Spread.NONE
                    : Spread.along(commonX, commonY, balance.deviationMm() / Math.sqrt(balance.freedom() + 1.0));
        }
    }

    /** What the placement's unbalance is likely to be; {@code outward} says that a balance point farther along stands farther out. */
    Expected of(WheelPlacement placement, boolean outward) {
        Sums sums = new Sums(placement.seats());
        return new Expected(law(placement, outward, sums), shares(sums), next(placement, sums));
    }

    private UnbalanceLaw law(WheelPlacement placement, boolean outward, Sums sums) {
        boolean sampled = balance.freedom() > 0;
        double shift = (outward ? 1 : -1) * balance.shift().orElse(0);
        Moment mean = Moment.ofComponents(
                placement.unbalance().xGMm() + shift * sums.commonX,
                placement.unbalance().yGMm() + shift * sums.commonY);
        Spread guessed = sums.guessed();
        Spread rest = sums.rest();
        return sampled
                ? new UnbalanceLaw(mean, rest, guessed, balance.freedom())
                : new UnbalanceLaw(mean, rest.plus(guessed), Spread.NONE, 1);
    }

    private List<Expected.Share> shares(Sums sums) {
        List<Expected.Share> out = new ArrayList<>();
        out.add(new Expected.Share(
                Expected.SCALE,
                sums.scale.rmsGMm(),
                "steps of " + terms.weighing().stepInWords()));
        out.add(new Expected.Share("balance points not measured", sums.guessed().rmsGMm(), balance.stated()));
        out.add(new Expected.Share(
                "balance points measured",
                sums.known.rmsGMm(),
                "off by up to a mark's " + terms.tolerances().mark().formatMeasured(terms.units())));
        out.add(new Expected.Share(
                "seats", sums.seats.rmsGMm(), "off by up to " + terms.seat().formatMeasured(terms.units())));
        out.add(new Expected.Share(
                "hole directions",
                sums.holes.rmsGMm(),
                String.format(
                        Locale.ROOT, "off by up to %s°", plain(terms.holeAngle().degrees()))));
        out.add(new Expected.Share(
                "rim segments",
                rim.rmsGMm(),
                "weighed in steps of " + terms.weighing().stepInWords()));
        out.removeIf(share -> share.rmsGMm() == 0 && !share.from().equals(Expected.SCALE));
        return out;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(Math.round(value * 1e4) / 1e4)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The heaviest unmeasured pieces gain most; once all are measured the set is placed anew, so nothing but scatter is left. */
    private Optional<Expected.Next> next(WheelPlacement placement, Sums sums) {
        List<String> labels = placement.seats().stream()
                .map(Seat::piece)
                .filter(piece -> !measured.contains(piece.label()))
                .sorted(Comparator.comparingDouble(piece -> -piece.mass().grams()))
                .map(piece -> piece.label())
                .toList();
        if (labels.isEmpty() || balance.deviationMm() <= measuredMm) {
            return Optional.empty();
        }
        double finer = measuredMm / balance.deviationMm();
        Spread then = sums.rest().plus(sums.unmeasured.times(finer * finer));
        Moment least = placement.bestProven() && placement.unbalance().gMm() > placement.noiseFloorGMm()
                ? placement.unbalance()
                : Moment.NONE;
        double expectedGMm = new UnbalanceLaw(least, then, Spread.NONE, 1).expectedGMm();
        return Optional.of(new Expected.Next(labels, expectedGMm));
    }

    /** The expected unbalance of a placement, what is to be smallest. */
    double expectedGMm(WheelPlacement placement, boolean outward) {
        return law(placement, outward, new Sums(placement.seats())).expectedGMm();
    }

    /** By how much a piece's moment scatters for its balance point and the scale, as a variance in (g·mm)²: what differs from piece to piece. */
    double variance(Candidate piece) {
        double grams = piece.mass().grams();
        double known = measured.contains(piece.label()) ? measuredMm : balance.deviationMm();
        double scaled = scaleG() * piece.reach().mm();
        return grams * known * grams * known + scaled * scaled;
    }

    /** What a search for the least of it goes by. */
    ExpectedSearch.Scatter pieceByPiece(boolean outward) {
        double seatMm = BalanceScatter.uniformMm(terms.seat());
        double holeRad = terms.holeAngle().radians() / Math.sqrt(3);
        double shift = (outward ? 1 : -1) * balance.shift().orElse(0);
        double common = balance.freedom() == 0 ? 0 : balance.deviationMm() / Math.sqrt(balance.freedom() + 1.0);
        return new ExpectedSearch.Scatter() {
            @Override
            public double shiftMm(Candidate piece) {
                return measured.contains(piece.label()) ? 0 : shift;
            }

            @Override
            public double sharedMm(Candidate piece) {
                return measured.contains(piece.label()) ? 0 : common;
            }

            @Override
            public double variance(Candidate piece, double reachMm) {
                double grams = piece.mass().grams();
                double point = measured.contains(piece.label()) ? measuredMm : balance.deviationMm();
                double along = grams * grams * (point * point + seatMm * seatMm);
                double scaled = scaleG() * reachMm;
                double across = grams * reachMm * holeRad;
                return along + scaled * scaled + across * across;
            }
        };
    }

    static Working working() {
        return new Working(
                "expected unbalance",
                "the mean length of a vector that scatters: R·δm + m·δR toward each place and m·R·δθ across it, added up as errors that"
                        + " know nothing of one another; nine of ten wheels lie in the range",
                "errors off by up to t taken as t/√3: JCGM 100:2008 (the GUM), 4.3.7 (from memory); the rest derived here",
                "as sure as what is stated of each: scale, balance points, seats and holes, and the scale again for the rim's segments; what the"
                        + " hub and rim pull otherwise is taken as given");
    }
}
