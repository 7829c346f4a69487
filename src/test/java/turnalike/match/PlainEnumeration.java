package turnalike.match;

import java.util.List;
import turnalike.frame.Moment;

/** The smallest unbalance and spread by trying every order of every choice, with nothing clever: what the solver is held against. */
final class PlainEnumeration {
    private final WheelProblem problem;
    private final int places;
    private final int[] chosen;
    private final boolean[] used;
    private final double share;
    double smallestGMm = Double.POSITIVE_INFINITY;

    PlainEnumeration(WheelProblem problem) {
        this.problem = problem;
        places = problem.wheel().places();
        chosen = new int[places];
        used = new boolean[problem.pieces().size()];
        share = Math.max(problem.tolerancePct() / 100, smallestShare(0, 0)) + 1e-12;
        place(0);
    }

    private double smallestShare(int filled, int from) {
        if (filled == places) {
            return share();
        }
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = from; i < used.length; i++) {
            chosen[filled] = i;
            smallest = Math.min(smallest, smallestShare(filled + 1, i + 1));
        }
        return smallest;
    }

    private double share() {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        double sum = 0;
        for (int piece : chosen) {
            double massG = problem.pieces().get(piece).mass().grams();
            low = Math.min(low, massG);
            high = Math.max(high, massG);
            sum += massG;
        }
        return (high - low) / (sum / places);
    }

    private void place(int filled) {
        if (filled == places) {
            if (share() <= share) {
                smallestGMm = Math.min(smallestGMm, unbalanceGMm(problem, chosen));
            }
            return;
        }
        for (int i = 0; i < used.length; i++) {
            if (!used[i]) {
                used[i] = true;
                chosen[filled] = i;
                place(filled + 1);
                used[i] = false;
            }
        }
    }

    static double unbalanceGMm(WheelProblem problem, int[] pieceAt) {
        double x = 0;
        double y = 0;
        for (Moment given : problem.given()) {
            x += given.gMm() * Math.cos(Math.toRadians(given.at().degrees()));
            y += given.gMm() * Math.sin(Math.toRadians(given.at().degrees()));
        }
        for (int k = 0; k < pieceAt.length; k++) {
            Candidate piece = problem.pieces().get(pieceAt[k]);
            double moment = piece.mass().grams() * piece.reach().mm();
            x += moment * Math.cos(2 * Math.PI * k / pieceAt.length);
            y += moment * Math.sin(2 * Math.PI * k / pieceAt.length);
        }
        return Math.hypot(x, y);
    }

    static double unbalanceGMm(WheelProblem problem, List<Seat> seats) {
        int[] pieceAt = new int[seats.size()];
        for (Seat seat : seats) {
            pieceAt[seat.place() - 1] = problem.pieces().indexOf(seat.piece());
        }
        return unbalanceGMm(problem, pieceAt);
    }
}
