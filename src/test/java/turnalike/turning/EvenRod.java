package turnalike.turning;

import java.util.ArrayList;
import java.util.List;

/**
 * A rod even all along, exactly: the beam's four equations of the first order have constant coefficients, so the state at the end is a
 * matrix exponential times that at the start; a natural speed is where the two ends' conditions leave a solution. Pinned at both ends the
 * shapes are sines and there is a quadratic equation for each.
 *
 * @param shearN modulus of shear times the part of the area that shear counts with
 */
record EvenRod(
        double lengthMm,
        double areaMm2,
        double inertiaMm4,
        double moeMpa,
        double shearN,
        double tonnesPerMm3,
        double thrustN) {
    /** Which of deflection, turn, moment and force across a support leaves open; the others are nought. */
    private static int[] open(Support support) {
        return switch (support) {
            case PINNED -> new int[] {1, 3};
            case FIXED -> new int[] {2, 3};
            case FREE -> new int[] {0, 1};
        };
    }

    private static int[] zero(Support support) {
        return switch (support) {
            case PINNED -> new int[] {0, 2};
            case FIXED -> new int[] {0, 1};
            case FREE -> new int[] {2, 3};
        };
    }

    static EvenRod round(
            double lengthMm, double diameterMm, double moeMpa, double shearMpa, double tonnesPerMm3, double thrustN) {
        double area = Math.PI * diameterMm * diameterMm / 4;
        double inertia = Math.PI * Math.pow(diameterMm, 4) / 64;
        return new EvenRod(lengthMm, area, inertia, moeMpa, 0.9 * shearMpa * area, tonnesPerMm3, thrustN);
    }

    static EvenRod square(
            double lengthMm, double sideMm, double moeMpa, double shearMpa, double tonnesPerMm3, double thrustN) {
        double area = sideMm * sideMm;
        return new EvenRod(lengthMm, area, area * area / 12, moeMpa, shearMpa * area * 5 / 6, tonnesPerMm3, thrustN);
    }

    /** The sag in the middle of a rod on two centres under a force there, without thrust. */
    double sagMm(double forceN) {
        return forceN * Math.pow(lengthMm, 3) / (48 * moeMpa * inertiaMm4) + forceN * lengthMm / (4 * shearN);
    }

    /** The n-th speed on two centres, radians a second: both equations with w = W sin kx, t = T cos kx have a solution. */
    double pinned(int n) {
        double k2 = Math.pow(n * Math.PI / lengthMm, 2);
        double massTurn = tonnesPerMm3 * inertiaMm4;
        double massAside = tonnesPerMm3 * areaMm2;
        double turn = moeMpa * inertiaMm4 * k2 + shearN;
        double aside = (shearN - thrustN) * k2;
        double b = turn / massTurn + aside / massAside;
        double c = (turn * aside - shearN * shearN * k2) / (massTurn * massAside);
        return Math.sqrt(2 * c / (b + Math.sqrt(b * b - 4 * c)));
    }

    /** π²EI/(kL)² and what shear takes of it (S. Timoshenko, Theory of Elastic Stability; from memory). */
    double buckling(double k) {
        double euler = moeMpa * inertiaMm4 * Math.pow(Math.PI / (k * lengthMm), 2);
        return euler / (1 + euler / shearN);
    }

    /** The first {@code count} natural speeds with these ends, radians a second, to 12 digits. */
    List<Double> speeds(Supports ends, int count) {
        List<Double> out = new ArrayList<>();
        double step = pinned(1) / 50;
        double from = step / 1000;
        while (out.size() < count) {
            if (left(ends, from) * left(ends, from + step) < 0) {
                out.add(between(ends, from, from + step));
            }
            from += step;
        }
        return out;
    }

    private double between(Supports ends, double low, double high) {
        double a = low;
        double b = high;
        for (int i = 0; i < 60; i++) {
            double middle = (a + b) / 2;
            if (left(ends, a) * left(ends, middle) <= 0) {
                b = middle;
            } else {
                a = middle;
            }
        }
        return (a + b) / 2;
    }

    /** Nought where a solution keeps both ends' conditions. */
    private double left(Supports ends, double omega) {
        double[][] over = exponential(omega);
        int[] open = open(ends.start());
        int[] zero = zero(ends.end());
        return over[zero[0]][open[0]] * over[zero[1]][open[1]] - over[zero[0]][open[1]] * over[zero[1]][open[0]];
    }

    private double[][] exponential(double omega) {
        double lean = 1 / (1 - thrustN / shearN);
        double[][] a = new double[4][4];
        a[0][1] = lean;
        a[0][3] = lean / shearN;
        a[1][2] = 1 / (moeMpa * inertiaMm4);
        a[2][1] = -thrustN * lean - omega * omega * tonnesPerMm3 * inertiaMm4;
        a[2][3] = -1 - thrustN * lean / shearN;
        a[3][0] = -omega * omega * tonnesPerMm3 * areaMm2;
        int halvings = 10;
        double h = lengthMm / (1 << halvings);
        double[][] out = identity();
        double[][] term = identity();
        for (int n = 1; n < 16; n++) {
            term = times(term, a);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    term[i][j] *= h / n;
                    out[i][j] += term[i][j];
                }
            }
        }
        for (int i = 0; i < halvings; i++) {
            out = times(out, out);
        }
        return out;
    }

    private static double[][] identity() {
        return new double[][] {{1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}};
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] out = new double[4][4];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                for (int k = 0; k < 4; k++) {
                    out[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return out;
    }
}
