package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Betters a run that was found among fixed seams: radii that neighbours may share are shared, joints move to where they fit best, between
 * stations too, and a form gives way to another, or two to one, wherever the whole then costs less. Each step lowers the cost, so it ends.
 */
final class Refinement {
    private static final int SWEEPS = 6;
    private static final int BETWEEN = 9;
    private static final int[] SHIFTS = {-1, 1, -2, 2, -4, 4};
    private static final int[] SHORT = {4, 8, 16};
    private static final int FEW = 200;
    private static final double WORTH = 1e-6;
    /** An exchange that costs no more than so many sizes is looked at again with its joints moved. */
    private static final double NEAR = 20;

    /** Half an ellipse is tried over so much less of the stretch at either end, one of so many parts. */
    private static final int PINCHED = 16;

    /**
     * A form whose rival costs no more than this beside it is not sure: odds of seven to one. On 108 made pictures four names of eleven so told were
     * wrong, and three of the fifty next.
     */
    private static final double LITTLE = 4;

    /** At so many places, up to twice as many, a form is tried to be parted in two. */
    private static final int PLACES = 60;

    private final Data data;
    private final double perSize;
    private final Stretches stretches;
    /** Whether the way from a station to the next is so long that a joint must be placed before it can be judged. */
    private final boolean coarse;

    Refinement(Data data, double perSize) {
        this.data = data;
        this.perSize = perSize;
        this.stretches = Stretches.ofJoints(data, perSize);
        this.coarse = data.size() <= FEW;
    }

    JointFit of(Run start) {
        JointFit fit = JointFit.of(data, start, new boolean[start.size() + 1], perSize);
        // First to where they belong between their stations: radii tied before that would be tied wrongly.
        fit = tie(settle(fit));
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double before = fit.cost();
            fit = tie(move(fit));
            fit = exchange(fit);
            fit = parted(fit);
            fit = halved(fit);
            if (fit.cost() > before - 0.01) {
                break;
            }
        }
        return settle(fit);
    }

    /** Shares radii from the least step up, and parts them again where that has become worth it. */
    private JointFit tie(JointFit start) {
        JointFit fit = start;
        List<Integer> joints = new ArrayList<>();
        for (int i = 1; i < fit.run().size(); i++) {
            joints.add(i);
        }
        JointFit at = fit;
        joints.sort(Comparator.comparingDouble(i -> Math.abs(at.endRadius(i - 1) - at.startRadius(i))));
        for (int joint : joints) {
            boolean[] ties = fit.ties();
            ties[joint] = !ties[joint];
            JointFit other = fit.with(fit.run(), ties);
            if (other.cost() < fit.cost() - WORTH) {
                fit = other;
            }
        }
        return fit;
    }

    private JointFit move(JointFit start) {
        JointFit fit = start;
        for (int i = 1; i < fit.run().size(); i++) {
            fit = moved(fit, i);
        }
        return fit;
    }

    private JointFit moved(JointFit start, int joint) {
        JointFit fit = between(start, joint);
        for (int shift : SHIFTS) {
            fit = shifting(fit, fit, joint, shift);
            if (fit.isTied(joint)) {
                // A radius shared in the wrong place holds the joint there.
                boolean[] ties = fit.ties();
                ties[joint] = false;
                fit = shifting(fit, fit.with(fit.run(), ties), joint, shift);
            }
        }
        return fit;
    }

    private JointFit shifting(JointFit fit, JointFit from, int joint, int shift) {
        JointFit other = shifted(from, joint, shift);
        if (other != from && (coarse || other.cost() < fit.cost() + NEAR * perSize)) {
            other = between(other, joint);
            if (coarse && joint + 1 < other.run().size()) {
                other = between(other, joint + 1);
            }
            if (coarse && joint > 1) {
                other = between(other, joint - 1);
            }
        }
        return other.cost() < fit.cost() - WORTH ? other : fit;
    }

    private JointFit shifted(JointFit fit, int joint, int shift) {
        Seam seam = fit.run().seams().get(joint);
        int last = seam.last() + shift;
        int lowest = fit.run().seams().get(joint - 1).first() + 1;
        int highest = fit.run().seams().get(joint + 1).last() - 2;
        if (!data.swept || last < lowest || last > highest) {
            return fit;
        }
        return fit.with(fit.run().withSeam(joint, Seams.between(data, last)));
    }

    /** The best place between the two stations; where all are as good, the likeliest. */
    private JointFit between(JointFit fit, int joint) {
        Seam seam = fit.run().seams().get(joint);
        if (!data.swept || seam.isShared() || !(data.x[seam.first()] > data.x[seam.last()])) {
            return fit;
        }
        double from = data.x[seam.last()];
        double step = (data.x[seam.first()] - from) / (BETWEEN - 1);
        double[] misfit = new double[BETWEEN];
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < BETWEEN; k++) {
            double place = from + k * step;
            misfit[k] = at(fit, joint, place).chi() + unlikely(fit, joint, place);
            least = Math.min(least, misfit[k]);
        }
        double sum = 0;
        double places = 0;
        for (int k = 0; k < BETWEEN; k++) {
            double likely = Math.exp(-Math.min(500, (misfit[k] - least) / 2));
            sum += likely;
            places += likely * (from + k * step);
        }
        JointFit other = sum > 0 ? at(fit, joint, places / sum) : fit;
        double worth = unlikely(fit, joint, seam.placeMm()) - unlikely(fit, joint, places / sum);
        return other.cost() <= fit.cost() + worth + 0.5 ? other : fit;
    }

    private double unlikely(JointFit fit, int joint, double placeMm) {
        List<Form> forms = fit.run().forms();
        return data.gaps.unlikely(fit.run().seams().get(joint).last(), placeMm, forms.get(joint - 1), forms.get(joint));
    }

    private JointFit at(JointFit fit, int joint, double placeMm) {
        Seam seam = fit.run().seams().get(joint);
        return fit.with(fit.run().withSeam(joint, new Seam(placeMm, seam.last(), seam.first())));
    }

    private JointFit exchange(JointFit start) {
        JointFit fit = start;
        for (int i = 0; i < fit.run().size(); i++) {
            for (Form form : Form.values()) {
                if (form != fit.run().forms().get(i) && stations(fit.run(), i, i) >= form.sizes()) {
                    JointFit other = fit.with(fit.run().withForm(i, form));
                    fit = better(fit, least(other, pinched(other, i)), i);
                }
            }
        }
        for (int i = 0; i + 1 < fit.run().size(); i++) {
            int size = fit.run().size();
            for (Form form : Form.values()) {
                if (fit.run().size() == size) {
                    fit = better(fit, fit.with(fit.run().merged(i, form), without(fit.ties(), i + 1)), i);
                }
            }
        }
        return fit;
    }

    /** A short form put in beside a joint, where the whole then costs less: what is narrow is easily passed over. */
    private JointFit parted(JointFit start) {
        JointFit fit = start;
        for (int i = 0; data.swept && i < fit.run().size(); i++) {
            JointFit best = partedBest(fit, i);
            if (best != fit && best.cost() < fit.cost() + perSize) {
                fit = better(fit, best, i);
            }
        }
        return fit;
    }

    private JointFit partedBest(JointFit fit, int form) {
        JointFit best = fit;
        double least = Double.POSITIVE_INFINITY;
        for (int count : SHORT) {
            for (boolean atStart : new boolean[] {true, false}) {
                if (stations(fit.run(), form, form) < count + SHORT[0]) {
                    continue;
                }
                int first = fit.run().seams().get(form).first();
                int last = fit.run().seams().get(form + 1).last();
                Seam seam = Seams.between(data, atStart ? first + count - 1 : last - count);
                for (Form other : Form.values()) {
                    Form was = fit.run().forms().get(form);
                    Run run = fit.run().parted(form, seam, atStart ? other : was, atStart ? was : other);
                    JointFit next = fit.with(run, untied(fit.ties(), form, atStart));
                    if (next.cost() < least) {
                        least = next.cost();
                        best = next;
                    }
                }
            }
        }
        return best;
    }

    /** A form given up for two wherever the whole then costs less: what sets two off may be a notch, which seams at fixed places pass over where it is steep. */
    private JointFit halved(JointFit start) {
        JointFit fit = start;
        for (int i = 0; data.swept && i < fit.run().size(); i++) {
            Run run = halved(fit.run(), i);
            JointFit other = run.size() > fit.run().size() ? fit.with(run, untied(fit.ties(), i)) : fit;
            if (other != fit && other.cost() < fit.cost() + NEAR * perSize) {
                fit = least(fit, nearby(other, i, 2));
            }
        }
        return fit;
    }

    /** With the radii that joints share chosen anew, and the joints from one on moved. */
    private JointFit nearby(JointFit fit, int first, int more) {
        JointFit out = tie(fit);
        int last = Math.min(first + more, out.run().size() - 1);
        for (int joint = Math.max(1, first); joint <= last; joint++) {
            out = moved(out, joint);
        }
        return tie(out);
    }

    /** With a form parted where the two that then explain its stations best, each by itself, meet; the same run where none do. */
    private Run halved(Run run, int form) {
        Seam from = run.seams().get(form);
        Seam to = run.seams().get(form + 1);
        int step = Math.max(1, (to.last() - from.first()) / PLACES);
        double least = Double.POSITIVE_INFINITY;
        Run best = run;
        for (int k = from.first() + step; k < to.last(); k += step) {
            Seam seam = Seams.between(data, k);
            Stretches.Best before = stretches.best(from, seam);
            Stretches.Best after = stretches.best(seam, to);
            if (before.cost() + after.cost() < least) {
                least = before.cost() + after.cost();
                best = run.parted(form, seam, before.form(), after.form());
            }
        }
        return best;
    }

    /** Of a run with that form parted in two, the radii between them their own. */
    private static boolean[] untied(boolean[] ties, int form) {
        boolean[] out = new boolean[ties.length + 1];
        for (int i = 0; i < out.length; i++) {
            out[i] = i != form + 1 && ties[i <= form ? i : i - 1];
        }
        return out;
    }

    /** The radii on both sides of what was put in are its own. */
    private static boolean[] untied(boolean[] ties, int form, boolean atStart) {
        boolean[] out = untied(ties, form);
        out[atStart ? form : form + 2] = false;
        return out;
    }

    /** With the joints nearer where it stands upright: a quarter or half an ellipse does, and a flatter bow that fits as well runs on. */
    private JointFit pinched(JointFit fit, int form) {
        Form shape = fit.run().forms().get(form);
        int by = (stations(fit.run(), form, form) + PINCHED / 2) / PINCHED;
        JointFit out = shape.steepAtStart() && form > 0 ? shifted(fit, form, by) : fit;
        return shape.steepAtEnd() && form + 1 < fit.run().size() ? shifted(out, form + 1, -by) : out;
    }

    private static int stations(Run run, int from, int to) {
        return run.seams().get(to + 1).last() - run.seams().get(from).first() + 1;
    }

    private JointFit better(JointFit one, JointFit other, int at) {
        if (other.cost() < one.cost() - WORTH) {
            return other;
        }
        // With the radii beside it shared otherwise, and the joints beside it moved, it may be better yet.
        if (!(other.cost() < one.cost() + NEAR * perSize)) {
            return one;
        }
        JointFit settled = tie(other);
        for (int joint = Math.max(1, at);
                joint <= Math.min(at + 1, settled.run().size() - 1);
                joint++) {
            settled = moved(settled, joint);
        }
        return least(one, settled);
    }

    private static JointFit least(JointFit one, JointFit other) {
        return other.cost() < one.cost() - WORTH ? other : one;
    }

    private static boolean[] without(boolean[] ties, int index) {
        boolean[] out = new boolean[ties.length - 1];
        for (int i = 0; i < out.length; i++) {
            out[i] = ties[i < index ? i : i + 1];
        }
        return out;
    }

    /** Whether a run costs little more where another form stands in the place of one. */
    boolean isDoubtful(JointFit fit, int form) {
        double most = fit.cost() + LITTLE;
        for (Form other : Form.values()) {
            if (other != fit.run().forms().get(form) && stations(fit.run(), form, form) >= other.sizes()) {
                JointFit swapped = fit.with(fit.run().withForm(form, other));
                boolean near = swapped.cost() < fit.cost() + NEAR * perSize;
                if (swapped.cost() < most || (near && nearby(swapped, form, 1).cost() < most)) {
                    return true;
                }
            }
        }
        return false;
    }

    private JointFit settle(JointFit fit) {
        JointFit out = fit;
        for (int sweep = 0; sweep < 3; sweep++) {
            for (int i = 1; i < out.run().size(); i++) {
                out = between(out, i);
            }
        }
        return out;
    }
}
