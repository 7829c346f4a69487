package turnalike.photo;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * A made picture of a spindle with the printed sheet, for POV-Ray; all invented. The bench is the plane that the piece rests on, however it tapers; the
 * pages lie on it. What is rendered is larger than the picture, with twice the pixels, and bent as a lens bends it.
 *
 * @param piece the piece, its ground (the bench), its wood, its camera
 * @param pages where each page lies
 * @param lean of the camera across the piece, degrees
 * @param bend of the lens: what stands at r without it stands at r·(1 − bend·ρ² + bend/4·ρ⁴), ρ over half the diagonal
 * @param printed true lengths on the paper over those meant
 * @param lift how much higher than lying the piece is held, level, mm
 */
record SheetScene(PhotoScene piece, List<Laid> pages, double lean, double bend, double printed, double lift)
        implements RenderedScene {
    private static final double LARGER = 1.12;

    /**
     * One page, seen from above: right and down of the bench below the piece's middle.
     *
     * @param angle degrees
     */
    record Laid(int page, double right, double down, double angle) {}

    SheetScene {
        pages = List.copyOf(pages);
    }

    /** Pages in a row under the piece, laid as well as a hand lays them. */
    static List<Laid> row(int count) {
        List<Laid> row = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            row.add(new Laid(
                    k + 1, 297.6 * (k - (count - 1) / 2.0), k % 2 == 0 ? 0.6 : -0.5, k % 2 == 0 ? 0.15 : -0.2));
        }
        return row;
    }

    @Override
    public String name() {
        return piece.name();
    }

    @Override
    public int width() {
        return piece.width();
    }

    @Override
    public int height() {
        return piece.height();
    }

    @Override
    public double view() {
        return piece.view();
    }

    @Override
    public double blur() {
        return piece.blur();
    }

    @Override
    public double noise() {
        return piece.noise();
    }

    @Override
    public int renderedWidth() {
        return (int) Math.round(1.5 * LARGER * width() / 2) * 2;
    }

    @Override
    public int renderedHeight() {
        return (int) Math.round(1.5 * LARGER * height() / 2) * 2;
    }

    /** Rendered pixels to one of the picture's in its middle. */
    private double finer() {
        return 1.5;
    }

    /** How high the axis of a piece that is held stands above the bench, mm. */
    double axisMm() {
        return LyingPiece.of(piece.shape()).radius() + lift;
    }

    private double focal() {
        return width() / 2.0 / Math.tan(Math.toRadians(view() / 2));
    }

    @Override
    public String pov() {
        double across = 2 * Math.toDegrees(Math.atan(renderedWidth() / 2.0 / finer() / focal()));
        StringBuilder text = new StringBuilder("#version 3.7;\nglobal_settings { assumed_gamma 1.0 }\n");
        text.append(PhotoScene.f(
                "camera { perspective location <0,%.6f,0> direction -y right x*%.8f up z sky z angle %.8f }\n",
                piece.distance(), (double) renderedWidth() / renderedHeight(), across));
        text.append(PhotoScene.f(
                "light_source { <-500,1500,700> rgb %.4f area_light <260,0,0>,<0,0,260>,4,4 adaptive 0 jitter }\n",
                piece.light()));
        text.append(PhotoScene.f("light_source { <700,1300,-400> rgb %.4f shadowless }\n", piece.light() * 0.35));
        text.append("background { rgb <0.3,0.3,0.3> }\nunion {\n").append(piece.lathe());
        bench(text);
        text.append(PhotoScene.f(
                "rotate z*%.6f rotate x*%.6f rotate y*%.6f translate z*%.4f }\n",
                piece.tilt(), lean, -piece.turn(), piece.shift()));
        return text.toString();
    }

    private void bench(StringBuilder text) {
        area(text, -2500, -2500, 5000, 5000, new Laid(0, 0, 0, 0), -0.4);
        text.append("texture { ").append(piece.ground()).append(" } }\n");
        double cell = SheetSquares.SIDE.mm() / SheetSquares.CELLS;
        for (Laid laid : pages) {
            area(text, -148.5 / printed, -105 / printed, 297 / printed, 210 / printed, laid, -0.1);
            text.append("pigment { rgb <0.82,0.82,0.81> } finish { ambient 0 diffuse 0.9 } }\n");
            for (SheetSquares.Place place : SheetSquares.ofPage(laid.page())) {
                for (int row = 0; row < SheetSquares.CELLS; row++) {
                    for (int column = 0; column < SheetSquares.CELLS; column++) {
                        if (SheetSquares.isBlack(place.number(), row, column)) {
                            double x = place.right().mm() - SheetSquares.SIDE.mm() / 2 + column * cell;
                            double y = place.down().mm() - SheetSquares.SIDE.mm() / 2 + row * cell;
                            area(text, x, y, cell + 0.001, cell + 0.001, laid, -0.05);
                            text.append("pigment { rgb 0.03 } finish { ambient 0 diffuse 0.9 } }\n");
                        }
                    }
                }
            }
        }
    }

    /** A rectangle of a page, in its own lengths, so high above the bench. */
    private void area(StringBuilder text, double x, double y, double wide, double high, Laid laid, double above) {
        String[] corners = new String[4];
        for (int k = 0; k < 4; k++) {
            double[] corner = {x + (k == 1 || k == 2 ? wide : 0), y + (k > 1 ? high : 0)};
            corners[k] = point(printed * corner[0], printed * corner[1], laid, above);
        }
        // Two triangles: POV-Ray leaves out a polygon whose corners are not to the last digit on one plane.
        text.append("union { triangle { ").append(String.join(",", corners[0], corners[1], corners[2]));
        text.append(" } triangle { ")
                .append(String.join(",", corners[0], corners[2], corners[3]))
                .append(" } ");
    }

    /** In the piece's own frame: its middle at the origin, x along it, y up; down on the page is −z. */
    private String point(double x, double y, Laid laid, double above) {
        double angle = Math.toRadians(laid.angle());
        double right = laid.right() + Math.cos(angle) * x - Math.sin(angle) * y;
        double down = laid.down() + Math.sin(angle) * x + Math.cos(angle) * y;
        LyingPiece lying = LyingPiece.of(piece.shape());
        double slope = lift > 0 ? 0 : lying.slope();
        double lean = Math.atan(slope);
        double under = -(lying.radius() + slope * (piece.shape().length() / 2 - lying.place())) - lift;
        return PhotoScene.f(
                "<%.5f,%.5f,%.5f>",
                right * Math.cos(lean) + above * Math.sin(lean),
                under - right * Math.sin(lean) + above * Math.cos(lean),
                -down);
    }

    @Override
    public BufferedImage lens(BufferedImage rendered) {
        BufferedImage bent = new BufferedImage(width(), height(), BufferedImage.TYPE_INT_RGB);
        double squared = (width() * width() + height() * height()) / 4.0;
        int parts = 3;
        for (int v = 0; v < height(); v++) {
            for (int u = 0; u < width(); u++) {
                double[] light = new double[3];
                for (int k = 0; k < parts * parts; k++) {
                    int row = k / parts;
                    double x = u + (k % parts + 0.5) / parts - width() / 2.0;
                    double y = v + (row + 0.5) / parts - height() / 2.0;
                    double sx = x;
                    double sy = y;
                    for (int round = 0; bend != 0 && round < 8; round++) {
                        double rho = (sx * sx + sy * sy) / squared;
                        double factor = 1 - bend * rho + bend / 4 * rho * rho;
                        sx = x / factor;
                        sy = y / factor;
                    }
                    add(light, rendered, sx * finer() + renderedWidth() / 2.0, sy * finer() + renderedHeight() / 2.0);
                }
                int rgb = 0;
                for (int c = 0; c < 3; c++) {
                    rgb = (rgb << 8) | (int) Math.round(PhotoRender.toCode(light[c] / (parts * parts)));
                }
                bent.setRGB(u, v, rgb);
            }
        }
        return bent;
    }

    private static void add(double[] light, BufferedImage image, double x, double y) {
        double px = Math.max(0, Math.min(image.getWidth() - 1.001, x - 0.5));
        double py = Math.max(0, Math.min(image.getHeight() - 1.001, y - 0.5));
        int ix = (int) px;
        int iy = (int) py;
        for (int j = 0; j < 2; j++) {
            for (int i = 0; i < 2; i++) {
                int rgb = image.getRGB(ix + i, iy + j);
                double weight = (i == 0 ? 1 - px + ix : px - ix) * (j == 0 ? 1 - py + iy : py - iy);
                for (int c = 0; c < 3; c++) {
                    light[c] += weight * PhotoRender.toLinear((rgb >> (16 - 8 * c)) & 255);
                }
            }
        }
    }

    /** The scenes of the table: pose, lens, pages, printing, and a piece beside or above the sheet. */
    static List<SheetScene> all() {
        List<SheetScene> scenes = new ArrayList<>();
        double far = 920;
        scenes.add(of("sheet, plain", 31, PhotoScene.OAK, 2, 0, far, 3));
        scenes.add(of("sheet, bent lens", 32, PhotoScene.MAPLE, -3, 0, far, 3).with(0, 0.05, 1, 0));
        scenes.add(of("sheet, leaning camera", 33, PhotoScene.OAK, 4, 5, far, 3).with(9, 0.02, 1, 0));
        scenes.add(
                of("sheet printed at 97 %", 35, PhotoScene.MAPLE, 1, 0, far, 3).with(0, 0.03, 0.97, 0));
        scenes.add(of("piece held 60 mm higher", 36, PhotoScene.OAK, -2, 0, far + 60, 3)
                .with(3, 0.03, 1, 60));
        scenes.add(beside("beside one page", 37, PhotoScene.OAK, 0.03));
        return scenes;
    }

    private static SheetScene of(
            String name, long seed, String wood, double turn, double tilt, double distance, int pages) {
        PhotoScene piece = new PhotoScene(
                name,
                TurnedShape.random(seed, 600, 26),
                distance,
                55,
                1200,
                900,
                turn,
                tilt,
                PhotoScene.BLUE_CARD,
                wood,
                0.75,
                "",
                0,
                1,
                0.6);
        return new SheetScene(piece, row(pages), 0, 0, 1, 0);
    }

    private static SheetScene beside(String name, long seed, String wood, double bend) {
        SheetScene scene = of(name, seed, wood, 0, 0, 900, 1);
        PhotoScene p = scene.piece();
        PhotoScene moved = new PhotoScene(
                p.name(),
                TurnedShape.random(seed, 450, 24),
                900,
                55,
                1200,
                900,
                -3,
                1,
                p.ground(),
                wood,
                0.75,
                "",
                120,
                1,
                0.6);
        return new SheetScene(moved, List.of(new Laid(1, 20, 190, 3)), 2, bend, 1, 0);
    }

    private SheetScene with(double newLean, double newBend, double newPrinted, double newLift) {
        return new SheetScene(piece, pages, newLean, newBend, newPrinted, newLift);
    }
}
