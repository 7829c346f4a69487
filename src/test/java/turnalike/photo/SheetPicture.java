package turnalike.photo;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;

/**
 * A small picture of a piece that lies on one page of the printed sheet, or beside it, made ray by ray: the page flat, the light from the camera, the
 * lens bending what is straight. Places are millimetres right and down of the page's middle and, third, into the paper.
 *
 * @param shape of the piece
 * @param right where the middle of its axis lies
 * @param down the same, downward
 * @param turn of its axis on the sheet, degrees
 * @param lift how much higher than lying it is held, level, mm
 * @param distance of the camera from the page's middle
 * @param focal pixels
 * @param width pixels
 * @param height pixels
 * @param leanX how the camera leans sideways, degrees
 * @param leanY how it leans up and down
 * @param bend of the lens: what stands at r without it stands at r·(1 − bend·ρ²), ρ over half the diagonal
 * @param printed true lengths on the paper over those meant
 */
public record SheetPicture(
        TurnedShape shape,
        double right,
        double down,
        double turn,
        double lift,
        double distance,
        double focal,
        int width,
        int height,
        double leanX,
        double leanY,
        double bend,
        double printed) {
    private static final double[] WOOD = {0.40, 0.22, 0.10};

    private static final double[] PAPER = {0.76, 0.77, 0.76};

    private static final double[] INK = {0.03, 0.03, 0.03};

    private static final double[] BENCH = {0.20, 0.24, 0.28};

    public static SheetPicture of(TurnedShape shape) {
        return new SheetPicture(shape, 0, 0, 0, 0, 420, 640, 640, 480, 0, 0, 0, 1);
    }

    public SheetPicture turned(double degrees) {
        return new SheetPicture(
                shape, right, down, degrees, lift, distance, focal, width, height, leanX, leanY, bend, printed);
    }

    public SheetPicture moved(double newRight, double newDown) {
        return new SheetPicture(
                shape, newRight, newDown, turn, lift, distance, focal, width, height, leanX, leanY, bend, printed);
    }

    public SheetPicture lifted(double mm) {
        return new SheetPicture(
                shape, right, down, turn, mm, distance, focal, width, height, leanX, leanY, bend, printed);
    }

    public SheetPicture leaning(double sideways, double upAndDown) {
        return new SheetPicture(
                shape, right, down, turn, lift, distance, focal, width, height, sideways, upAndDown, bend, printed);
    }

    public SheetPicture bent(double share) {
        return new SheetPicture(
                shape, right, down, turn, lift, distance, focal, width, height, leanX, leanY, share, printed);
    }

    public SheetPicture printedAt(double size) {
        return new SheetPicture(
                shape, right, down, turn, lift, distance, focal, width, height, leanX, leanY, bend, size);
    }

    public SheetPicture from(double mm, double pixels) {
        return new SheetPicture(shape, right, down, turn, lift, mm, pixels, width, height, leanX, leanY, bend, printed);
    }

    public double viewDegrees() {
        return 2 * Math.toDegrees(Math.atan(width / 2.0 / focal));
    }

    public BufferedImage image() {
        return new Rays().image();
    }

    /** What is worked out once for all rays. */
    private final class Rays {
        private final double[][] turned = turned();

        private final double[] camera = camera();

        private final double[] axis = new double[3];

        private final double[] start = new double[3];

        private final double[] radii = new double[(int) (shape.length() * 10) + 1];

        private final double widest = shape.widest() + 2;

        Rays() {
            LyingPiece lying = LyingPiece.of(shape);
            double lean = lift > 0 ? 0 : Math.atan(lying.slope());
            double angle = Math.toRadians(turn);
            axis[0] = Math.cos(angle) * Math.cos(lean);
            axis[1] = Math.sin(angle) * Math.cos(lean);
            axis[2] = -Math.sin(lean);
            double[] rest = {
                right + axis[0] * (lying.place() - shape.length() / 2),
                down + axis[1] * (lying.place() - shape.length() / 2),
                -lying.radius() * Math.cos(lean) - lift
            };
            for (int i = 0; i < 3; i++) {
                start[i] = rest[i] - axis[i] * lying.place();
            }
            for (int i = 0; i < radii.length; i++) {
                radii[i] = shape.at(i / 10.0);
            }
        }

        /** Rows: the camera's right, down and forward, as the sheet has them. */
        private double[][] turned() {
            double a = Math.toRadians(leanX);
            double b = Math.toRadians(leanY);
            return new double[][] {
                {Math.cos(a), 0, -Math.sin(a)},
                {Math.sin(a) * Math.sin(b), Math.cos(b), Math.cos(a) * Math.sin(b)},
                {Math.sin(a) * Math.cos(b), -Math.sin(b), Math.cos(a) * Math.cos(b)}
            };
        }

        private double[] camera() {
            return new double[] {-distance * turned[2][0], -distance * turned[2][1], -distance * turned[2][2]};
        }

        private double[] ray(double u, double v) {
            double x = u - width / 2.0;
            double y = v - height / 2.0;
            double squared = (width * width + height * height) / 4.0;
            double sx = x;
            double sy = y;
            for (int round = 0; bend != 0 && round < 12; round++) {
                double factor = 1 - bend * (sx * sx + sy * sy) / squared;
                sx = x / factor;
                sy = y / factor;
            }
            double[] ray = new double[3];
            for (int i = 0; i < 3; i++) {
                ray[i] = turned[0][i] * sx / focal + turned[1][i] * sy / focal + turned[2][i];
            }
            return ray;
        }

        /** How far a ray passes the piece, in pixels; below 0 if it meets it. */
        private double passing(double[] ray) {
            double middle = 0;
            double[] at = new double[3];
            for (int i = 0; i < 3; i++) {
                middle += (start[i] + axis[i] * shape.length() / 2 - camera[i]) * turned[2][i];
            }
            double reach = 1.5 * widest + 8 + shape.length() / 2 * Math.sin(Math.toRadians(Math.abs(leanX) + 2));
            double best = 1e9;
            double step = 0.5;
            for (double t = middle - reach; t <= middle + reach; t += step) {
                double along = 0;
                double squared = 0;
                for (int i = 0; i < 3; i++) {
                    at[i] = camera[i] + ray[i] * t - start[i];
                    along += at[i] * axis[i];
                    squared += at[i] * at[i];
                }
                double across = Math.sqrt(Math.max(0, squared - along * along));
                double end = Math.max(-along, along - shape.length());
                double far = end > 0
                        ? Math.max(end, across - widest)
                        : across - radii[Math.min(radii.length - 1, (int) (along * 10 + 0.5))];
                best = Math.min(best, far * focal / t);
                // Where it is farther off than the thickest part, it comes no nearer than that in one step.
                step = Math.max(0.5, 0.8 * (across - widest));
            }
            return best;
        }

        /** Paper, ink or bench. */
        private double[] flat(double[] ray) {
            double t = -camera[2] / ray[2];
            double x = (camera[0] + t * ray[0]) / printed;
            double y = (camera[1] + t * ray[1]) / printed;
            if (Math.abs(x) * printed > 148.5 || Math.abs(y) * printed > 105) {
                return BENCH;
            }
            double cell = SheetSquares.SIDE.mm() / SheetSquares.CELLS;
            for (SheetSquares.Place place : SheetSquares.ofPage(1)) {
                int column = (int) Math.floor((x - place.right().mm() + SheetSquares.SIDE.mm() / 2) / cell);
                int row = (int) Math.floor((y - place.down().mm() + SheetSquares.SIDE.mm() / 2) / cell);
                if (row >= 0 && column >= 0 && row < SheetSquares.CELLS && column < SheetSquares.CELLS) {
                    return SheetSquares.isBlack(place.number(), row, column) ? INK : PAPER;
                }
            }
            return PAPER;
        }

        BufferedImage image() {
            SplittableRandom dice = new SplittableRandom(11);
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    double[] light = light(x, y);
                    int rgb = 0;
                    for (int c = 0; c < 3; c++) {
                        double code = 255
                                * (light[c] <= 0.0031308
                                        ? 12.92 * light[c]
                                        : 1.055 * Math.pow(light[c], 1 / 2.4) - 0.055);
                        rgb = (rgb << 8) | Math.max(0, Math.min(255, (int) Math.round(code + dice.nextGaussian())));
                    }
                    image.setRGB(x, y, rgb);
                }
            }
            return image;
        }

        private double[] light(int x, int y) {
            double near = passing(ray(x + 0.5, y + 0.5));
            double[] light = new double[3];
            int parts = near < -4 ? 1 : 5;
            for (int j = 0; j < parts; j++) {
                for (int i = 0; i < parts; i++) {
                    double[] ray = ray(x + (i + 0.5) / parts, y + (j + 0.5) / parts);
                    double deep = parts == 1 ? -near : Math.abs(near) > 4 ? -1 : -passing(ray);
                    double[] colour = deep > 0 ? WOOD : flat(ray);
                    double shade = deep > 0 ? 0.25 + 0.75 * Math.min(1, Math.sqrt(deep / 12)) : 1;
                    for (int c = 0; c < 3; c++) {
                        light[c] += shade * colour[c] / (parts * parts);
                    }
                }
            }
            return light;
        }
    }
}
