package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * The broken edges of tenons: a level stretch below a shoulder at an end of the piece, whose last bit may fall at 45 degrees.
 *
 * @param parts the run, a chamfer that was found as a part of its own taken into its tenon
 * @param sizes of the chamfer at the start and at the end, zero for none
 */
record Chamfers(List<Part> parts, List<Double> sizes) {
    /** No broken edge is longer: a choice of ours. */
    static final double LONGEST_MM = 6;
    /** A longer end below a shoulder is more than a tenon. */
    private static final double FARTHEST_MM = 120;

    private static final double STEP_MM = 0.1;

    Chamfers {
        parts = List.copyOf(parts);
        sizes = List.copyOf(sizes);
    }

    static Chamfers of(Data data, List<Part> parts, double shoulderMm, double perSize) {
        List<Part> out = new ArrayList<>(parts);
        double start = atStart(data, out, shoulderMm, perSize);
        List<Part> turned = new ArrayList<>();
        double length = out.get(out.size() - 1).toMm();
        for (int i = out.size() - 1; i >= 0; i--) {
            turned.add(mirrored(out.get(i), length));
        }
        double end = atStart(data.mirrored(length), turned, shoulderMm, perSize);
        int merged = out.size() - turned.size();
        if (merged > 0 || turned.get(0).isLevel()) {
            out.subList(out.size() - merged - 1, out.size()).clear();
            out.add(mirrored(turned.get(0), length));
        }
        return new Chamfers(out, List.of(start, end));
    }

    /**
     * The parts from the end to a shoulder become one level part where a tenon explains their stations no worse than chance does: the sum of
     * their squared misses, of mean N and variance 2N when only chance is at work, is no more than three standard deviations above its mean.
     */
    private static double atStart(Data data, List<Part> parts, double shoulderMm, double perSize) {
        List<Part> run = List.copyOf(parts);
        Part first = run.get(0);
        double found = 0;
        for (int i = 1; i < run.size(); i++) {
            Part next = run.get(i);
            double length = next.fromMm() - first.fromMm();
            if (run.get(i - 1).isSquare() || length > FARTHEST_MM) {
                return found;
            }
            Part tenon = level(data, first.fromMm(), next.fromMm());
            if (tenon.startRadius() > 0 && next.startRadius() - tenon.startRadius() >= shoulderMm) {
                double size = fitted(data, tenon);
                double gain = miss(data, tenon, 0) - miss(data, tenon, size);
                double chamfer = gain > perSize ? size : 0;
                int count = data.firstFrom(tenon.toMm() + 1e-9) - data.firstFrom(tenon.fromMm());
                boolean plain = i == 1 && first.isLevel();
                // What is so short may be the broken edge of a level behind it.
                boolean isShort = length <= LONGEST_MM;
                boolean byChance = count > 2 && miss(data, tenon, chamfer) < count + 3 * Math.sqrt(2.0 * count);
                if (plain || (byChance && !(isShort && i == 1))) {
                    parts.clear();
                    parts.add(plain ? first : tenon);
                    parts.addAll(run.subList(i, run.size()));
                    found = chamfer;
                    if (!isShort) {
                        return found;
                    }
                }
            }
        }
        return found;
    }

    /** The level of what lies behind the edge; none where nothing does. */
    private static Part level(Data data, double fromMm, double toMm) {
        double mean = 0;
        double weights = 0;
        double edge = fromMm + Math.min(LONGEST_MM, (toMm - fromMm) / 2);
        for (int k = data.firstFrom(edge); k < data.size() && data.x[k] < toMm - 1e-9; k++) {
            mean += data.weight[k] * data.r[k];
            weights += data.weight[k];
        }
        return Part.of(Form.LEVEL, fromMm, toMm, List.of(weights > 0 ? mean / weights : 0.0));
    }

    /** The size that leaves the least. */
    private static double fitted(Data data, Part tenon) {
        double most = Math.min(LONGEST_MM, Math.min(tenon.lengthMm() / 2, tenon.startRadius()));
        double best = 0;
        for (double size = 0; size <= most; size += STEP_MM) {
            if (miss(data, tenon, size) < miss(data, tenon, best)) {
                best = size;
            }
        }
        return best;
    }

    private static double miss(Data data, Part tenon, double chamfer) {
        int first = data.firstFrom(tenon.fromMm());
        int end = data.firstFrom(tenon.toMm() - 1e-9);
        double[] misses = new double[Math.max(0, end - first)];
        for (int i = first; i < end; i++) {
            double from = data.x[i] - tenon.fromMm();
            misses[i - first] = data.r[i] - (tenon.startRadius() - Math.max(0, chamfer - from));
        }
        return data.chi(first, misses, tenon.fromMm(), tenon.toMm());
    }

    private static Part mirrored(Part part, double length) {
        List<Double> sizes = new ArrayList<>(part.sizes());
        // Only the radii at its ends are asked of any other form; that of the far end stands where the start's is read.
        if (!part.isLevel()) {
            return Part.curve(List.of(
                    new double[] {length - part.toMm(), part.endRadius()},
                    new double[] {length - part.fromMm(), part.startRadius()}));
        }
        return new Part(
                part.form(),
                length - part.toMm(),
                length - part.fromMm(),
                sizes,
                part.isSquare(),
                List.of(),
                part.isDoubtful());
    }
}
