package turnalike.job.pieces;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import turnalike.job.CheckPlace;
import turnalike.job.Job;
import turnalike.outline.Segment;
import turnalike.pattern.Mark;
import turnalike.pattern.PlacedMember;
import turnalike.pieces.Column;
import turnalike.pieces.Likeness;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.mend.LikelySizes;
import turnalike.pieces.mend.Removal;
import turnalike.solid.Sensitivity;
import turnalike.solid.Solid;
import turnalike.units.Length;
import turnalike.units.Working;

/**
 * How one piece differs from the pattern, member by member: measured diameters and marks are the piece's own, the others are inferred.
 *
 * <p>A member's diameters are taken to be off by one figure throughout, the mean of its check places. Before anything is measured each is 0
 * give or take a third of the diameter tolerance, and the wood's density the job's give or take a tenth, or that of the other pieces, if
 * three or more are weighed, give or take a fiftieth. Then the piece's mass and its balance point are read, both linear in these figures, see
 * {@link LikelySizes}: mass less the pattern's = Σ aᵢxᵢ + m·e; balance less the pattern's = Σ aᵢ(cᵢ - b)xᵢ/m, where aᵢ is what a
 * millimetre of diameter weighs, cᵢ where that lies, and e the share by which the wood is denser. Derived here; the thirds, tenths and
 * fiftieths are common practice, no source.
 */
final class OwnSizes {
    private static final double DENSITY_SHARE = 0.1;
    private static final double BOARD_SHARE = 0.02;
    private static final int FEWEST_OTHERS = 3;
    private static final double BALANCE_SD_MM = 0.5;

    private final Job job;
    private final Measures measures;
    private final List<PlacedMember> members;
    private final List<Sensitivity> sensitivities;
    private final double[] centreMm;
    private final boolean[] measured;
    private final LikelySizes likely;
    private final double density;

    private OwnSizes(Job job, Piece piece, List<Piece> others) {
        this.job = job;
        measures = piece.measures();
        members = job.pattern().placed();
        int count = members.size();
        sensitivities = members.stream()
                .map(placed -> Sensitivity.of(placed.outline(), job.wood().density()))
                .toList();
        centreMm = new double[count];
        measured = new boolean[count];
        for (int i = 0; i < count; i++) {
            centreMm[i] = ringCentre(members.get(i));
        }
        double[] deviations = new double[count + 1];
        Arrays.fill(deviations, 0, count, job.tolerances().diameter().mm() / 3);
        Solid solid = Solid.of(job.pattern().outline(), job.wood().density());
        double wood = woodShare(others, solid);
        deviations[count] = wood > 0 ? BOARD_SHARE : DENSITY_SHARE;
        likely = new LikelySizes(deviations);
        double usual = wood > 0 ? wood : 1;
        readDiameters();
        readMass(solid.mass().grams() * usual, usual);
        readBalance(solid);
        density = ownDensity(solid);
    }

    /** Of a weighed piece of the job; {@code others} without it. */
    static OwnSizes of(Job job, Piece piece, List<Piece> others) {
        return new OwnSizes(job, piece, others);
    }

    /** How much denser than the job's the wood of the others is, by their median weight; 0 when too few were weighed. */
    private static double woodShare(List<Piece> others, Solid solid) {
        long weighed = others.stream().filter(each -> each.mass().isPresent()).count();
        return weighed < FEWEST_OTHERS
                ? 0
                : Likeness.reference(Measures.NONE, others).mass().orElseThrow().grams()
                        / solid.mass().grams();
    }

    private void readDiameters() {
        for (int i = 0; i < members.size(); i++) {
            double[] offs = offs(members.get(i));
            if (offs.length > 0) {
                measured[i] = true;
                double[] factors = new double[members.size() + 1];
                factors[i] = 1;
                likely.read(factors, Arrays.stream(offs).average().orElseThrow(), 0);
            }
        }
    }

    /** Of the check places that lie within the member, the diameter measured less the pattern's. */
    private double[] offs(PlacedMember placed) {
        List<CheckPlace> checks = job.checks();
        return IntStream.range(0, checks.size())
                .filter(c -> checks.get(c).at().compareTo(placed.start()) >= 0
                        && checks.get(c).at().compareTo(placed.end()) < 0)
                .mapToObj(c -> measures.length(Column.diameter(c + 1))
                        .map(own -> own.mm()
                                - 2
                                        * job.pattern()
                                                .outline()
                                                .radiusAt(checks.get(c).at())
                                                .mm()))
                .flatMap(Optional::stream)
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private void readMass(double expectedG, double usual) {
        double[] factors = new double[members.size() + 1];
        for (int i = 0; i < members.size(); i++) {
            factors[i] = usual * sensitivities.get(i).linearGPerMm();
        }
        factors[members.size()] = expectedG;
        double scale = job.tolerances().scale().grams() / Math.sqrt(12);
        likely.read(factors, measures.mass().orElseThrow().grams() - expectedG, scale);
    }

    private void readBalance(Solid solid) {
        OptionalDouble balance = measures.figure(Column.BALANCE);
        if (balance.isPresent()) {
            double[] factors = new double[members.size() + 1];
            for (int i = 0; i < members.size(); i++) {
                factors[i] = sensitivities.get(i).linearGPerMm()
                        * (centreMm[i] - solid.balance().mm())
                        / solid.mass().grams();
            }
            double off = balance.getAsDouble() - solid.balance().mm();
            if (likely.isLikely(factors, off, BALANCE_SD_MM)) {
                likely.read(factors, off, BALANCE_SD_MM);
            }
        }
    }

    /** The piece's own, as a share of the job's: its mass over what its own outline would weigh. */
    private double ownDensity(Solid solid) {
        double grams = solid.mass().grams();
        for (int i = 0; i < members.size(); i++) {
            grams += sensitivities.get(i).change(Length.ofMm(likely.mean(i))).grams();
        }
        return measures.mass().orElseThrow().grams() / grams;
    }

    /** Where the mass of one more millimetre of diameter lies: the mean of x weighted by r. */
    private static double ringCentre(PlacedMember placed) {
        double sum = 0;
        double moment = 0;
        for (Segment segment : placed.outline().segments()) {
            double factor = segment.section().areaFactor();
            sum += factor * segment.integralAbout(0, 0, 1);
            moment += factor * segment.integralAbout(0, 1, 1);
        }
        return moment / sum;
    }

    /** How much thicker than the pattern the member is, likely. */
    double offMm(int member) {
        return likely.mean(member);
    }

    /** How far off that it may be; 0 where it was measured. */
    double deviationMm(int member) {
        return likely.deviation(member);
    }

    boolean isMeasured(int member) {
        return measured[member];
    }

    /** Where the member's ring of a cut lies, from the start end. */
    double centreMm(int member) {
        return centreMm[member];
    }

    /** The piece's density over the job's. */
    double density() {
        return density;
    }

    /** What a cut takes off this piece: its own wood, its own diameter, its own length between its marks. */
    Removal removal(int member) {
        Sensitivity pattern = sensitivities.get(member);
        PlacedMember placed = members.get(member);
        double longer = (end(member).mm() - start(member).mm())
                / (placed.end().mm() - placed.start().mm());
        double linear = pattern.linearGPerMm() + 2 * pattern.quadraticGPerMm2() * likely.mean(member);
        return new Removal(density * longer * linear, density * longer * pattern.quadraticGPerMm2());
    }

    Length start(int member) {
        return own(members.get(member).start());
    }

    Length end(int member) {
        return own(members.get(member).end());
    }

    /** A boundary as measured on the piece, else the pattern's; two that were measured out of order are a slip, and not used. */
    private Length own(Length place) {
        List<Mark> marks = job.pattern().marks();
        int at = 0;
        while (at < marks.size() && Math.abs(marks.get(at).place().mm() - place.mm()) > 1e-6) {
            at++;
        }
        Optional<Length> mark = at == 0 || at >= marks.size() ? Optional.empty() : measures.length(Column.mark(at));
        boolean close = mark.isPresent()
                && Math.abs(mark.get().mm() - place.mm())
                        < 4 * job.tolerances().mark().mm();
        return close ? mark.get() : place;
    }

    static Working working() {
        return new Working(
                "own sizes",
                "measured diameters and marks are the piece's own; the others follow from its weight and balance point: a third of the"
                        + " diameter tolerance either way and the wood's spread before, the normal law given both readings after",
                Working.DERIVED,
                "diameters of one member are off alike; its wood is even along its length");
    }
}
