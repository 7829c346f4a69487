package turnalike.job.nudge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import turnalike.job.Job;
import turnalike.job.edit.NudgeEdit.Shift;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.settings.Calipers;
import turnalike.units.Length;

/**
 * The least sum of moves of diameters with which one caliper opening fewer sizes them all. An opening serves the diameters of a window whose
 * width the tolerances give, so it is asked for windows, one fewer than now, and for each diameter the least whole number of steps that takes
 * it into its window. Looked for are choices in which the diameters of one window follow each other in order of size (a diameter goes to the
 * nearest window, and would go past it only where a step is wider than the window); and a best window can be pushed up until a diameter, moved
 * or not, stands at its lower edge, so only such edges are tried. Among these the least sum is found exactly, prefix by prefix. Equal
 * diameters move alike, so that what was flush stays flush.
 */
final class CaliperMerge {
    private static final double SLACK_MM = 1e-9;
    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final List<Sized> rising;
    private final double widthMm;
    private final List<Length> steps;

    /** A diameter as the job says it, and how often it is sized. */
    private record Sized(int number, String key, Length size, boolean free, int places) {}

    private CaliperMerge(List<Sized> rising, double widthMm, List<Length> steps) {
        this.rising = rising;
        this.widthMm = widthMm;
        this.steps = steps;
    }

    /** The moves, in order of member; empty when no moves within the tolerance save an opening. */
    static Optional<List<Shift>> find(Job job, int openings) {
        Length tolerance = job.tolerances().diameter();
        double widthMm =
                tolerance.mm() + Math.min(tolerance.mm(), job.cutting().sizing().mm());
        List<Sized> rising = new ArrayList<>(sized(job));
        rising.sort(Comparator.comparing(Sized::size));
        return new CaliperMerge(rising, widthMm, Moves.sizes(tolerance, job.units())).with(openings - 1);
    }

    private static List<Sized> sized(Job job) {
        List<Sized> out = new ArrayList<>();
        for (PlacedMember placed : job.pattern().placed()) {
            if (placed.member().details().byEye()) {
                continue;
            }
            Set<String> told = new HashSet<>();
            for (Member.Diameter each : placed.diameters()) {
                if (!Calipers.canSize(each.size())) {
                    continue;
                }
                boolean own = placed.member().sizes().find(each.key()).isPresent();
                boolean free = own && Moves.isFree(placed);
                if (!own || told.add(each.key())) {
                    int places = (int) placed.diameters().stream()
                            .filter(other -> own && other.key().equals(each.key()))
                            .count();
                    out.add(new Sized(placed.number(), each.key(), each.size(), free, Math.max(1, places)));
                }
            }
        }
        return out;
    }

    private Optional<List<Shift>> with(int windows) {
        int count = rising.size();
        if (windows < 1 || count == 0) {
            return Optional.empty();
        }
        double[][] least = new double[windows + 1][count + 1];
        int[][] from = new int[windows + 1][count + 1];
        double[][] edge = new double[windows + 1][count + 1];
        for (double[] row : least) {
            Arrays.fill(row, NEVER);
        }
        least[0][0] = 0;
        Set<Double> edges = edges();
        for (int window = 1; window <= windows; window++) {
            for (int start = 0; start < count; start++) {
                for (double low : least[window - 1][start] < NEVER ? edges : Set.<Double>of()) {
                    extend(least, from, edge, window, start, low);
                }
            }
        }
        return least[windows][count] == NEVER ? Optional.empty() : Optional.of(moves(from, edge, windows));
    }

    private void extend(double[][] least, int[][] from, double[][] edge, int window, int start, double low) {
        double cost = least[window - 1][start];
        for (int end = start; end < rising.size(); end++) {
            cost += cost(rising.get(end), low);
            if (cost == NEVER) {
                return;
            }
            if (!isSame(end, end + 1) && cost < least[window][end + 1] - SLACK_MM) {
                least[window][end + 1] = cost;
                from[window][end + 1] = start;
                edge[window][end + 1] = low;
            }
        }
    }

    /** Whether both are there and of one size. */
    private boolean isSame(int one, int other) {
        return other < rising.size()
                && rising.get(other).size().minus(rising.get(one).size()).mm() <= SLACK_MM;
    }

    private List<Shift> moves(int[][] from, double[][] edge, int windows) {
        List<Shift> out = new ArrayList<>();
        int end = rising.size();
        for (int window = windows; window >= 1; window--) {
            double low = edge[window][end];
            for (int i = from[window][end]; i < end; i++) {
                Length by = move(rising.get(i), low).orElseThrow();
                if (by.mm() != 0) {
                    out.add(new Shift(rising.get(i).number(), rising.get(i).key(), by));
                }
            }
            end = from[window][end];
        }
        out.sort(Comparator.comparing(Shift::number).thenComparing(Shift::key));
        return out;
    }

    private double cost(Sized sized, double low) {
        return move(sized, low).map(by -> by.abs().mm() * sized.places()).orElse(NEVER);
    }

    /** The least move that takes it into the window; empty when none does. */
    private Optional<Length> move(Sized sized, double low) {
        double mm = sized.size().mm();
        if (isIn(mm, low)) {
            return Optional.of(Length.ZERO);
        }
        double sign = mm < low ? 1 : -1;
        return steps.stream()
                .filter(step -> sized.free() && isIn(mm + sign * step.mm(), low))
                .findFirst()
                .map(step -> step.times(sign));
    }

    private boolean isIn(double mm, double low) {
        return mm >= low - SLACK_MM && mm <= low + widthMm + SLACK_MM;
    }

    private Set<Double> edges() {
        Set<Double> out = new TreeSet<>();
        for (Sized each : rising) {
            out.add(each.size().mm());
            if (each.free()) {
                for (Length step : steps) {
                    out.add(each.size().mm() + step.mm());
                    out.add(each.size().mm() - step.mm());
                }
            }
        }
        return out;
    }
}
