package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.trace.Doubt;
import turnalike.units.Length;

/**
 * Which members of a table its rows do not bear out. A caliper tells a radius to tenths and leaves open all that lies between two rows: three rows
 * tell no cove from a vee, and where no row stands at a joint, other members may stand there ({@link OtherRuns}). The figures are choices of ours,
 * tried on tables drawn at random with and without rows at the joints: of wrong names six in seven are doubted, of right ones three in ten where no
 * joint was measured and one in a hundred where all were.
 */
final class RowDoubts {
    /** Two forms whose χ² differ by less may both be it. */
    private static final double TELLING = 6;

    /** Of so many rows another form explains as well only what is hardly a form at all. */
    private static final int FEW_ROWS = 6;

    /** With so many rows it matters less where a member ends. */
    private static final int MANY_ROWS = 8;

    /** As much of a member's length as its ends may move by leaves its form open; of a level, which has none, all of it. */
    private static final double LOOSE = 0.5;

    private static final double LOOSE_LEVEL = 1;

    /** Another run over it and its neighbours whose cost is higher by less than this may be what stands there; one whose ends are so open, by less than that. */
    private static final double OTHERS = 2;

    private static final double OTHERS_OPEN = 10;

    /** Whose ends lie no farther off is the same member. */
    private static final double LEAST_LOOSE_MM = 1.5;

    private static final int FEW_OF_LEVEL = 3;
    /** A step in radius of so much, or so many standard deviations, is one. */
    private static final double STEP_MM = 0.3;

    private static final double STEP_SIGMAS = 3;
    private static final int PLACES = 40;
    /** So many rows more than sizes are needed to tell how far they stray. */
    private static final int TELL_STRAY = 15;

    private final Data data;
    private final List<Part> parts;
    private final OtherRuns others;
    private final boolean jointsMeasured;

    private RowDoubts(Data data, List<Part> parts, double perSize) {
        this.data = data;
        this.parts = parts;
        this.others = new OtherRuns(data, parts, perSize);
        this.jointsMeasured = jointsMeasured();
    }

    static List<Doubt> of(Data data, List<Part> parts, double perSize) {
        RowDoubts doubts = new RowDoubts(data, parts, perSize);
        List<Doubt> out = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (!parts.get(i).isSquare()) {
                doubts.doubt(i).ifPresent(out::add);
            }
        }
        return out;
    }

    /** How far rows stray round the forms found, one standard deviation. */
    static OptionalDouble stray(Data data, List<Part> parts) {
        double squares = 0;
        int free = 0;
        for (Part part : parts) {
            PartRows rows = PartRows.of(data, part);
            if (!part.isCurve() && rows.count() > part.form().sizes()) {
                OptionalDouble miss = rows.squares(part.form());
                squares += miss.orElse(0);
                free += miss.isPresent() ? rows.count() - part.form().sizes() : 0;
            }
        }
        return free < TELL_STRAY ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / free));
    }

    private Optional<Doubt> doubt(int i) {
        Part part = parts.get(i);
        PartRows rows = PartRows.of(data, part);
        if (part.isCurve()) {
            boolean few = rows.count() < 2 * (2 * part.points().size() - 1);
            return few ? told(i, Doubt.Why.FEW) : Optional.empty();
        }
        Optional<Doubt.Rival> rival = rows.count() > FEW_ROWS || part.isLevel() ? Optional.empty() : rival(part, rows);
        if (rival.isPresent()) {
            return Optional.of(new Doubt(i + 1, Doubt.Why.RIVAL, rival));
        }
        if (rows.count() < part.form().sizes() + 1) {
            return told(i, Doubt.Why.FEW);
        }
        return isElsewhere(i, part, rows) ? told(i, Doubt.Why.ENDS) : Optional.empty();
    }

    /** Whether it may as well begin or end elsewhere, or other members stand there. */
    private boolean isElsewhere(int i, Part part, PartRows rows) {
        double loose = (loose(i, true) + loose(i, false)) / part.lengthMm();
        if (part.isLevel()) {
            return rows.count() < FEW_OF_LEVEL && loose > LOOSE_LEVEL;
        }
        boolean open = rows.count() < MANY_ROWS && loose > LOOSE;
        return !jointsMeasured && dearer(i, part) < (open ? OTHERS_OPEN : OTHERS);
    }

    private double dearer(int i, Part part) {
        double start = Math.max(LEAST_LOOSE_MM, gap(part.fromMm()));
        double end = Math.max(LEAST_LOOSE_MM, gap(part.toMm()));
        return others.dearer(i, start, end);
    }

    private static Optional<Doubt> told(int i, Doubt.Why why) {
        return Optional.of(new Doubt(i + 1, why, Optional.empty()));
    }

    /** The form that explains a part's rows best besides its own, where it does so nearly as well. */
    private Optional<Doubt.Rival> rival(Part part, PartRows rows) {
        double most = rows.squares(part.form()).orElse(0) + TELLING * data.sigma * data.sigma;
        Optional<Doubt.Rival> out = Optional.empty();
        for (Form form : Form.values()) {
            if (form == part.form() || form.sizes() != 2) {
                continue;
            }
            List<Double> sizes = rows.sizes(form);
            boolean sound = sizes.size() == 2
                    && sizes.stream().allMatch(each -> each > 0)
                    && (form == Form.STRAIGHT || Math.abs(sizes.get(1) - sizes.get(0)) > data.leastRise())
                    && (form != Form.POINT || sizes.get(1) < sizes.get(0));
            double squares = sound ? rows.squares(form).orElse(Double.POSITIVE_INFINITY) : Double.POSITIVE_INFINITY;
            if (squares < most) {
                most = squares;
                out = Optional.of(
                        new Doubt.Rival(word(form, sizes), rows.count(), Length.ofMm(tells(part, form, sizes))));
            }
        }
        return out;
    }

    private static String word(Form form, List<Double> sizes) {
        Part part = Part.of(form, 0, 10, sizes);
        return Naming.of(List.of(part), STEP_MM, new Grid(0.01), List.of(0.0, 0.0))
                .get(0)
                .kind()
                .word();
    }

    /** Where the two differ most; not beside an end, where what is upright makes a caliper slip. */
    private static double tells(Part part, Form form, List<Double> sizes) {
        double best = 0;
        double most = -1;
        for (int k = PLACES / 5; k <= PLACES - PLACES / 5; k++) {
            double u = (double) k / PLACES;
            double apart = Math.abs(PartRows.radius(part.form(), part.sizes(), u) - PartRows.radius(form, sizes, u));
            if (apart > most) {
                most = apart;
                best = u;
            }
        }
        return part.fromMm() + best * part.lengthMm();
    }

    /**
     * Whether whoever measured set the caliper at the joints: then there are two rows at most steps that were found, and a row where a member
     * begins without one says that it does. Else a joint may lie anywhere between rows.
     */
    private boolean jointsMeasured() {
        int twice = 0;
        int once = 0;
        for (int i = 1; i < parts.size(); i++) {
            double step = Math.abs(parts.get(i - 1).endRadius() - parts.get(i).startRadius());
            if (step > Math.max(STEP_MM, STEP_SIGMAS * data.sigma)) {
                if (rowsAt(parts.get(i).fromMm()) > 1) {
                    twice++;
                } else {
                    once++;
                }
            }
        }
        return twice >= once;
    }

    private int rowsAt(double placeMm) {
        int count = 0;
        for (double x : data.x) {
            count += PartRows.isAt(x, placeMm) ? 1 : 0;
        }
        return count;
    }

    /** By how much an end of a part may lie elsewhere: from the row before it to the row after it. */
    private double loose(int i, boolean atStart) {
        double end = atStart ? parts.get(i).fromMm() : parts.get(i).toMm();
        boolean ofPiece = atStart ? i == 0 : i + 1 == parts.size();
        return ofPiece || jointsMeasured || rowsAt(end) > 1 ? 0 : gap(end);
    }

    /** From the row before a place to the row after it. */
    private double gap(double placeMm) {
        double before = placeMm;
        double after = placeMm;
        for (double x : data.x) {
            if (x < placeMm - PartRows.ALONG_MM) {
                before = x;
            } else if (x > placeMm + PartRows.ALONG_MM && after == placeMm) {
                after = x;
            }
        }
        return after - before;
    }
}
