package turnalike.photo;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Finds where the camera stood before the sheet, its focal length, how its lens bends and where the other pages lie beside the first, all at once, by
 * least squares over the corners of all squares seen. Unknowns: turn (3), place (3), log of the focal length over the guess, the lens' two
 * coefficients, how far black spreads over white, and three for each page but the one most seen. What corners leave open is held by what
 * was known before.
 */
final class SheetFit {
    private static final int OWN = 10;

    /** Lenses of phones bend by a few hundredths at the picture's corner; from memory. */
    private static final double LENS = 0.03;

    /** A printer's black, or a camera's, spreads over the white by about this, mm; from memory. */
    private static final double SPREAD_MM = 0.2;

    /** A corner is not taken to be found better than this, pixels. */
    private static final double LEAST_PIXELS = 0.05;

    private static final double[] OWN_STEPS = {1e-6, 1e-6, 1e-6, 1e-3, 1e-3, 1e-3, 1e-6, 1e-6, 1e-6, 1e-3};

    private static final double[] PAGE_STEPS = {1e-3, 1e-3, 1e-6};

    private final List<SeenSquare> squares;

    private final int[] pages;

    private final int width;

    private final int height;

    private final FocalGuess focal;

    private final double size;

    private double noise = 0.15;

    /**
     * Takes what was seen.
     *
     * @param squares at least one
     * @param size true lengths on the sheet over those that were meant, 1 for one printed at its size
     */
    SheetFit(List<SeenSquare> squares, int width, int height, FocalGuess focal, double size) {
        this.squares = squares;
        this.width = width;
        this.height = height;
        this.focal = focal;
        this.size = size;
        pages = pages(squares);
    }

    /** The page most seen first, the others in order. */
    private static int[] pages(List<SeenSquare> squares) {
        int[] counts = new int[SheetSquares.MOST_PAGES + 1];
        TreeSet<Integer> all = new TreeSet<>();
        for (SeenSquare square : squares) {
            counts[SheetSquares.page(square.number())]++;
            all.add(SheetSquares.page(square.number()));
        }
        return all.stream()
                .sorted((one, other) -> counts[one] != counts[other] ? counts[other] - counts[one] : one - other)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    SheetView fit() {
        double[] unknown = start();
        double[] uncertain = new double[unknown.length];
        for (int pass = 0; pass < 3; pass++) {
            uncertain = settle(unknown);
            noise = Math.max(LEAST_PIXELS, rms(unknown));
        }
        return new SheetView(
                rotation(unknown),
                new double[] {unknown[3], unknown[4], unknown[5]},
                focal.pixels() * Math.exp(unknown[6]),
                uncertain[6],
                lens(unknown),
                rms(unknown),
                squares.size(),
                placed(unknown));
    }

    private List<SheetView.Page> placed(double[] unknown) {
        SheetView.Page[] placed = new SheetView.Page[pages.length];
        for (int k = 0; k < pages.length; k++) {
            double[] at = page(unknown, k);
            placed[k] = new SheetView.Page(pages[k], at[0], at[1], at[2], size);
        }
        return List.of(placed);
    }

    /** Levenberg's and Marquardt's damped steps, in place; what each unknown is uncertain by. */
    private double[] settle(double[] unknown) {
        int n = unknown.length;
        double damping = 1e-3;
        double[] here = residuals(unknown);
        double cost = sum(here);
        double[][] normal = normal(unknown, here);
        for (int round = 0; round < 60; round++) {
            double[][] rows = copy(normal);
            for (int i = 0; i < n; i++) {
                rows[i][i] *= 1 + damping;
            }
            double[] move = LeastSquares.solve(rows);
            double[] next = unknown.clone();
            for (int i = 0; i < n; i++) {
                next[i] -= move[i];
            }
            double[] there = residuals(next);
            double less = sum(there);
            if (less < cost) {
                boolean done = cost - less < 1e-9 * cost;
                System.arraycopy(next, 0, unknown, 0, n);
                here = there;
                cost = less;
                damping = Math.max(1e-9, damping / 5);
                normal = normal(unknown, here);
                if (done) {
                    break;
                }
            } else {
                damping *= 8;
                if (damping > 1e9) {
                    break;
                }
            }
        }
        double[] uncertain = new double[n];
        for (int i = 0; i < n; i++) {
            double[][] rows = copy(normal);
            for (int k = 0; k < n; k++) {
                rows[k][n] = k == i ? 1 : 0;
            }
            uncertain[i] = Math.sqrt(Math.max(0, LeastSquares.solve(rows)[i]));
        }
        return uncertain;
    }

    private double[][] normal(double[] unknown, double[] here) {
        int n = unknown.length;
        double[][] slopes = new double[n][];
        for (int i = 0; i < n; i++) {
            double step = i < OWN ? OWN_STEPS[i] : PAGE_STEPS[(i - OWN) % 3];
            double[] moved = unknown.clone();
            moved[i] += step;
            double[] there = residuals(moved);
            for (int k = 0; k < there.length; k++) {
                there[k] = (there[k] - here[k]) / step;
            }
            slopes[i] = there;
        }
        double[][] rows = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < here.length; k++) {
                for (int j = 0; j < n; j++) {
                    rows[i][j] += slopes[i][k] * slopes[j][k];
                }
                rows[i][n] += slopes[i][k] * here[k];
            }
        }
        return rows;
    }

    private static double[][] copy(double[][] rows) {
        return Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
    }

    private static double sum(double[] values) {
        return Arrays.stream(values).map(v -> v * v).sum();
    }

    /** What is off at each corner, over the noise, and how far each unknown strays from what was known of it. */
    private double[] residuals(double[] unknown) {
        double[] off = new double[8 * squares.size() + 4];
        double[] misses = misses(unknown);
        for (int k = 0; k < misses.length; k++) {
            off[k] = misses[k] / noise;
        }
        off[misses.length] = unknown[6] / focal.uncertainty();
        off[misses.length + 1] = unknown[7] / LENS;
        off[misses.length + 2] = unknown[8] / LENS;
        off[misses.length + 3] = unknown[9] / SPREAD_MM;
        return off;
    }

    /** In pixels of the straightened picture. */
    private double[] misses(double[] unknown) {
        double[][] turn = rotation(unknown);
        double f = focal.pixels() * Math.exp(unknown[6]);
        Lens lens = lens(unknown);
        double[] off = new double[8 * squares.size()];
        int to = 0;
        for (SeenSquare square : squares) {
            for (int k = 0; k < 4; k++) {
                double[] place = place(unknown, square.number(), k);
                double[] seen = new double[3];
                for (int i = 0; i < 3; i++) {
                    seen[i] = turn[i][0] * place[0] + turn[i][1] * place[1] + unknown[3 + i];
                }
                PixelPoint straight = lens.straight(square.x()[k], square.y()[k]);
                double depth = Math.max(1, seen[2]);
                off[to++] = width / 2.0 + f * seen[0] / depth - straight.x();
                off[to++] = height / 2.0 + f * seen[1] / depth - straight.y();
            }
        }
        return off;
    }

    /** Of one coordinate. */
    private double rms(double[] unknown) {
        double[] misses = misses(unknown);
        // Each unknown takes up one of the misses.
        return Math.sqrt(sum(misses) / Math.max(4, misses.length - unknown.length));
    }

    private Lens lens(double[] unknown) {
        return new Lens(unknown[7], unknown[8], width / 2.0, height / 2.0);
    }

    private double[] page(double[] unknown, int rank) {
        int at = OWN + 3 * (rank - 1);
        return rank == 0 ? new double[3] : new double[] {unknown[at], unknown[at + 1], unknown[at + 2]};
    }

    private int rank(int number) {
        int rank = 0;
        while (pages[rank] != SheetSquares.page(number)) {
            rank++;
        }
        return rank;
    }

    /** A corner on the sheet of the page most seen, mm to the right and down. */
    private double[] place(double[] unknown, int number, int corner) {
        SheetSquares.Place middle =
                SheetSquares.ofPage(SheetSquares.page(number)).get(number % SheetSquares.ON_PAGE);
        double half = SheetSquares.SIDE.mm() / 2 * size + unknown[9];
        double x = middle.right().mm() * size + (corner == 0 || corner == 3 ? -half : half);
        double y = middle.down().mm() * size + (corner < 2 ? -half : half);
        double[] at = page(unknown, rank(number));
        double cos = Math.cos(at[2]);
        double sin = Math.sin(at[2]);
        return new double[] {at[0] + cos * x - sin * y, at[1] + sin * x + cos * y};
    }

    private static double[][] rotation(double[] vector) {
        return rotation(vector[0], vector[1], vector[2]);
    }

    /** Rodrigues' formula. */
    private static double[][] rotation(double x, double y, double z) {
        double angle = Math.sqrt(x * x + y * y + z * z);
        double s = angle < 1e-9 ? 1 : Math.sin(angle) / angle;
        double c = angle < 1e-9 ? 0.5 : (1 - Math.cos(angle)) / (angle * angle);
        double[][] k = {{0, -z, y}, {z, 0, -x}, {-y, x, 0}};
        double[][] turn = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double twice = k[i][0] * k[0][j] + k[i][1] * k[1][j] + k[i][2] * k[2][j];
                turn[i][j] = (i == j ? 1 : 0) + s * k[i][j] + c * twice;
            }
        }
        return turn;
    }

    /** From the flat maps of the pages onto the picture, the lens taken to bend nothing. */
    private double[] start() {
        double[] unknown = new double[OWN + 3 * (pages.length - 1)];
        double[] flat = flatMap(0);
        double f = focal.pixels();
        double[][] columns = new double[3][3];
        for (int j = 0; j < 3; j++) {
            columns[j] = new double[] {
                (flat[j] - width / 2.0 * flat[6 + j]) / f, (flat[3 + j] - height / 2.0 * flat[6 + j]) / f, flat[6 + j]
            };
        }
        double scale = 2 / (size(columns[0]) + size(columns[1])) * Math.signum(columns[2][2]);
        double[] x = unit(columns[0], scale);
        double[] y = unit(columns[1], scale);
        double[] z = {x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]};
        double long3 = size(z);
        y = new double[] {
            (z[1] * x[2] - z[2] * x[1]) / long3,
            (z[2] * x[0] - z[0] * x[2]) / long3,
            (z[0] * x[1] - z[1] * x[0]) / long3
        };
        vector(unknown, x, y, new double[] {z[0] / long3, z[1] / long3, z[2] / long3});
        for (int i = 0; i < 3; i++) {
            unknown[3 + i] = columns[2][i] * scale;
        }
        for (int rank = 1; rank < pages.length; rank++) {
            placePage(unknown, flat, rank);
        }
        return unknown;
    }

    private static double size(double[] a) {
        return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
    }

    private static double[] unit(double[] a, double sign) {
        double by = Math.signum(sign) / size(a);
        return new double[] {a[0] * by, a[1] * by, a[2] * by};
    }

    /** The turning as a vector, of the three axes as the camera has them. */
    private static void vector(double[] unknown, double[] x, double[] y, double[] z) {
        double cos = Math.max(-1, Math.min(1, (x[0] + y[1] + z[2] - 1) / 2));
        double angle = Math.acos(cos);
        double[] axis = {y[2] - z[1], z[0] - x[2], x[1] - y[0]};
        double long3 = size(axis);
        if (long3 > 1e-6) {
            for (int i = 0; i < 3; i++) {
                unknown[i] = axis[i] / long3 * angle;
            }
        } else if (cos < 0) {
            // Half a turn: the axis from what it leaves in place.
            double[] whole = {x[0] + 1, y[1] + 1, z[2] + 1};
            for (int i = 0; i < 3; i++) {
                unknown[i] = Math.PI * Math.sqrt(Math.max(0, whole[i] / 2));
            }
            unknown[1] *= x[1] + y[0] < 0 ? -1 : 1;
            unknown[2] *= x[2] + z[0] < 0 ? -1 : 1;
        }
    }

    /** The nine numbers that map places of a page onto the picture, the last one 1. */
    private double[] flatMap(int rank) {
        double[][] rows = new double[8][9];
        double[] none = new double[OWN + 3 * (pages.length - 1)];
        // Of numbers near one, so that elimination keeps its digits.
        double perMm = 100;
        for (SeenSquare square : squares) {
            if (rank(square.number()) != rank) {
                continue;
            }
            for (int k = 0; k < 4; k++) {
                double[] at = pagePlace(none, square.number(), k);
                double x = at[0] / perMm;
                double y = at[1] / perMm;
                double u = (square.x()[k] - width / 2.0) / width;
                double v = (square.y()[k] - height / 2.0) / width;
                add(rows, new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y}, u);
                add(rows, new double[] {0, 0, 0, x, y, 1, -v * x, -v * y}, v);
            }
        }
        double[] h = LeastSquares.solve(rows);
        double[] map = new double[9];
        double[] last = {h[6] / perMm, h[7] / perMm, 1};
        for (int j = 0; j < 3; j++) {
            double by = j < 2 ? width / perMm : width;
            map[j] = h[j] * by + width / 2.0 * last[j];
            map[3 + j] = h[3 + j] * by + height / 2.0 * last[j];
            map[6 + j] = last[j];
        }
        return map;
    }

    /** A corner on its own page. */
    private double[] pagePlace(double[] none, int number, int corner) {
        return place(none, number, corner);
    }

    private static void add(double[][] rows, double[] terms, double value) {
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j < 8; j++) {
                rows[i][j] += terms[i] * terms[j];
            }
            rows[i][8] += terms[i] * value;
        }
    }

    /** Where a further page lies on the first one's plane: the turn and move that bring its corners where the first one's map says they are. */
    private void placePage(double[] unknown, double[] flat, int rank) {
        double[] none = new double[unknown.length];
        double[] sums = new double[6];
        int count = 0;
        for (SeenSquare square : squares) {
            for (int k = 0; k < 4 && rank(square.number()) == rank; k++) {
                double[] own = pagePlace(none, square.number(), k);
                double[] there = onPlane(flat, square.x()[k], square.y()[k]);
                sums[0] += own[0];
                sums[1] += own[1];
                sums[2] += there[0];
                sums[3] += there[1];
                count++;
            }
        }
        for (SeenSquare square : squares) {
            for (int k = 0; k < 4 && rank(square.number()) == rank; k++) {
                double[] own = pagePlace(none, square.number(), k);
                double[] there = onPlane(flat, square.x()[k], square.y()[k]);
                double x = own[0] - sums[0] / count;
                double y = own[1] - sums[1] / count;
                double u = there[0] - sums[2] / count;
                double v = there[1] - sums[3] / count;
                sums[4] += x * u + y * v;
                sums[5] += x * v - y * u;
            }
        }
        double angle = Math.atan2(sums[5], sums[4]);
        int at = OWN + 3 * (rank - 1);
        unknown[at] = (sums[2] - Math.cos(angle) * sums[0] + Math.sin(angle) * sums[1]) / count;
        unknown[at + 1] = (sums[3] - Math.sin(angle) * sums[0] - Math.cos(angle) * sums[1]) / count;
        unknown[at + 2] = angle;
    }

    /** Back from the picture onto the plane. */
    private static double[] onPlane(double[] m, double u, double v) {
        double a = m[0] - u * m[6];
        double b = m[1] - u * m[7];
        double c = m[3] - v * m[6];
        double d = m[4] - v * m[7];
        double e = u * m[8] - m[2];
        double f = v * m[8] - m[5];
        double determinant = a * d - b * c;
        return new double[] {(e * d - b * f) / determinant, (a * f - e * c) / determinant};
    }
}
