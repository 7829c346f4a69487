package turnalike.trace.fit;

/**
 * What a form between two joints makes of the stations there, as the sums that a least-squares fit asks for. They hang on no other form of a
 * run, so that runs which differ in one joint share all others.
 */
final class FormSums {
    private final Data data;
    private final Form form;
    private final Seam from;
    private final Seam to;
    /** Radii are taken from this one on, so that little is lost when sums of squares are set against one another. */
    private final double origin;

    private final double[][] squares = new double[3][3];
    private final double[] timesRadius = new double[3];
    private double radiusSquared;

    FormSums(Data data, Form form, Seam from, Seam to) {
        this.data = data;
        this.form = form;
        this.from = from;
        this.to = to;
        this.origin = data.r[Math.min(from.first(), data.size() - 1)];
        gather();
    }

    boolean isOf(Form otherForm, Seam otherFrom, Seam otherTo) {
        return form == otherForm && from.equals(otherFrom) && to.equals(otherTo);
    }

    /** The first station stands alone, as what lies beyond a joint is another edge, and so do those that a corner smears. */
    private void gather() {
        int sizes = form.sizes();
        double[] here = new double[3];
        double[] before = new double[3];
        double[] row = new double[3];
        boolean linked = false;
        for (int s = from.first(); s <= to.last(); s++) {
            boolean near = isNear(s);
            boolean alone = near || !linked;
            double own = alone ? Math.sqrt(weight(s, near)) : data.together.own[s];
            double back = alone ? 0 : data.together.back[s];
            form.weights(share(s), here);
            double r = own * (data.r[s] - origin) - (alone ? 0 : back * (data.r[s - 1] - origin));
            for (int a = 0; a < sizes; a++) {
                row[a] = own * here[a] - back * before[a];
                before[a] = here[a];
            }
            for (int a = 0; a < sizes; a++) {
                timesRadius[a] += row[a] * r;
                for (int b = 0; b < sizes; b++) {
                    squares[a][b] += row[a] * row[b];
                }
            }
            radiusSquared += r * r;
            linked = !near;
        }
    }

    private double weight(int station, boolean near) {
        boolean half = (station == from.first() && from.isShared()) || (station == to.last() && to.isShared());
        double whole = near ? data.weightAtCorner[station] : data.weight[station];
        return half ? whole / 2 : whole;
    }

    /** Whether a corner of the form, or a joint, is so near. */
    private boolean isNear(int station) {
        return data.together.softMm > 0
                && (data.isNear(station, from.placeMm())
                        || data.isNear(station, to.placeMm())
                        || (form == Form.POINT && data.isNear(station, (from.placeMm() + to.placeMm()) / 2)));
    }

    private double share(int station) {
        double u = (data.x[station] - from.placeMm()) / (to.placeMm() - from.placeMm());
        return Math.min(1, Math.max(0, u));
    }

    /**
     * Adds to the equations of a whole run.
     *
     * @param unknown which of its unknowns each size is
     */
    void addTo(double[][] m, double[] right, int[] unknown) {
        for (int a = 0; a < unknown.length; a++) {
            for (int b = 0; b < unknown.length; b++) {
                m[unknown[a]][unknown[b]] += squares[a][b];
                right[unknown[a]] += squares[a][b] * origin;
            }
            right[unknown[a]] += timesRadius[a];
        }
    }

    /** χ² with these sizes. */
    double chi(double[] solved, int[] unknown) {
        double sum = radiusSquared;
        for (int a = 0; a < unknown.length; a++) {
            double one = solved[unknown[a]] - origin;
            sum -= 2 * one * timesRadius[a];
            for (int b = 0; b < unknown.length; b++) {
                sum += one * squares[a][b] * (solved[unknown[b]] - origin);
            }
        }
        return Math.max(0, sum);
    }
}
