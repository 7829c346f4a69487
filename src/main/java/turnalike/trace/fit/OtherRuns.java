package turnalike.trace.fit;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * By how much less well the rows about a member of a table are explained without it: by the cheapest run over it and its neighbours in which no such
 * form stands so. That nobody measured a joint costs nothing here: where the rows of a table stand at no joints, they all went unmeasured.
 */
final class OtherRuns {
    private final Data data;
    private final List<Part> parts;
    private final double perSize;
    private final Stretches stretches;

    OtherRuns(Data data, List<Part> parts, double perSize) {
        this.data = data;
        this.parts = parts;
        this.perSize = perSize;
        this.stretches = new Stretches(data, perSize);
    }

    /**
     * What the cheapest other run costs more, as χ² counts; infinite where there is none.
     *
     * @param index of a part that is neither square nor a curve
     * @param looseStartMm by how much its start may lie elsewhere before it is another's
     * @param looseEndMm the same of its end
     */
    double dearer(int index, double looseStartMm, double looseEndMm) {
        int from = index > 0 && isForm(index - 1) ? index - 1 : index;
        int to = index + 1 < parts.size() && isForm(index + 1) ? index + 1 : index;
        double startMm = parts.get(from).fromMm();
        double endMm = parts.get(to).toMm();
        int first = data.firstFrom(startMm - PartRows.ALONG_MM);
        int last = data.firstFrom(endMm + PartRows.ALONG_MM) - 1;
        // A row where the window begins or ends may be its neighbour's.
        while (first < last
                && isAt(first, startMm)
                && isOff(first, parts.get(from).startRadius())) {
            first++;
        }
        while (first < last && isAt(last, endMm) && isOff(last, parts.get(to).endRadius())) {
            last--;
        }
        if (last <= first) {
            return Double.POSITIVE_INFINITY;
        }
        List<Seam> seams = Seams.of(data, first, last, startMm, endMm);
        double found = cheapest(seams, (a, b) -> standing(from, to, a, b));
        Part part = parts.get(index);
        double other = cheapest(seams, (a, b) -> {
            boolean same = Math.abs(a.placeMm() - part.fromMm()) <= looseStartMm + PartRows.ALONG_MM
                    && Math.abs(b.placeMm() - part.toMm()) <= looseEndMm + PartRows.ALONG_MM;
            return same ? EnumSet.of(part.form()) : EnumSet.noneOf(Form.class);
        });
        return other - found;
    }

    private boolean isAt(int station, double placeMm) {
        return PartRows.isAt(data.x[station], placeMm);
    }

    private boolean isOff(int station, double radiusMm) {
        return Math.abs(data.r[station] - radiusMm) > PartRows.farMm(data);
    }

    private boolean isForm(int index) {
        return !parts.get(index).isCurve() && !parts.get(index).isSquare();
    }

    /** Of the forms between two seams all but that of the part which stands right there. */
    private Set<Form> standing(int from, int to, Seam a, Seam b) {
        for (int i = from; i <= to; i++) {
            if (PartRows.isAt(a.placeMm(), parts.get(i).fromMm())
                    && PartRows.isAt(b.placeMm(), parts.get(i).toMm())) {
                return EnumSet.complementOf(EnumSet.of(parts.get(i).form()));
            }
        }
        return EnumSet.allOf(Form.class);
    }

    private interface Barred {
        Set<Form> between(Seam from, Seam to);
    }

    private double cheapest(List<Seam> seams, Barred barred) {
        double[] cost = new double[seams.size()];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        cost[0] = 0;
        for (int to = 1; to < cost.length; to++) {
            for (int from = 0; from < to; from++) {
                if (cost[from] + 2 * perSize < cost[to]) {
                    Set<Form> not = barred.between(seams.get(from), seams.get(to));
                    double one =
                            stretches.best(seams.get(from), seams.get(to), not).cost();
                    cost[to] = Math.min(cost[to], cost[from] + one);
                }
            }
        }
        return cost[cost.length - 1];
    }
}
