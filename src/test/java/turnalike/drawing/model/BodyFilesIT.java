package turnalike.drawing.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.drawing.OtherReaders;
import turnalike.drawing.piece.Samples;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.MonotoneCubic;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Square;
import turnalike.pattern.Stock;
import turnalike.solid.Mesh;
import turnalike.solid.Solid;
import turnalike.units.Density;
import turnalike.units.Length;

/**
 * Bodies read by programs that are not ours: STL by admesh (Debian), 3MF by lib3MF, the library of those who made the format (Debian's
 * lib3mf1), in its strict mode.
 */
class BodyFilesIT {
    /** A hundredth of a hundredth, as promised. */
    private static final double PROMISED = 1e-4;

    /** admesh adds a hundred thousand triangles up in single precision, which takes about as much again. */
    private static final double SINGLE_PRECISION = 1.2e-4;

    @TempDir
    Path folder = Path.of("");

    @Test
    void other_programs_find_them_closed_and_of_the_exact_volume() throws IOException, InterruptedException {
        List<Body> bodies = List.of(
                body(Samples.three()),
                body(Samples.spoke()),
                body(Samples.forty(150)),
                body(Samples.newel()),
                finial(),
                body(tiny()));
        List<String> files = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            Mesh mesh = Mesh.of(bodies.get(i).outline());
            files.add(written(i + ".stl", StlFile.of(mesh, bodies.get(i).name())));
            files.add(written(i + ".3mf", ThreeMfFile.of(mesh, bodies.get(i).name())));
        }

        List<String> told = OtherReaders.python(OtherReaders.resource("model/reading.py"), files);

        assertThat(told).hasSize(files.size());
        for (int i = 0; i < bodies.size(); i++) {
            Body body = bodies.get(i);
            double exact = Solid.of(body.outline(), Density.ofKgPerM3(1000)).volumeMm3();
            String[] stl = told.get(2 * i).split(" ", 4);
            assertThat(stl[1]).as("faults of %s found by admesh", body.name()).isEqualTo("0");
            assertThat(Double.parseDouble(stl[2]) / exact).isCloseTo(1, within(PROMISED + SINGLE_PRECISION));
            assertThat(Double.parseDouble(stl[3]) / exact).isCloseTo(1, within(PROMISED));
            String[] threeMf = told.get(2 * i + 1).split(" ", 6);
            assertThat(threeMf).startsWith("3mf", "0", "1", "1").endsWith(body.name());
            assertThat(Double.parseDouble(threeMf[4]) / exact).isCloseTo(1, within(PROMISED));
        }
    }

    private String written(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes).toString();
    }

    private record Body(String name, Outline outline) {}

    private static Body body(Pattern pattern) {
        return new Body(pattern.name(), pattern.outline());
    }

    /** A square, a round of its own width, a curve through points, and a cone that ends in a point. */
    private static Body finial() {
        List<Curve> turned = new ArrayList<>(List.of(Line.level(mm(10), mm(20))));
        turned.addAll(MonotoneCubic.through(List.of(
                new MonotoneCubic.Point(mm(0), mm(10)),
                new MonotoneCubic.Point(mm(15), mm(17)),
                new MonotoneCubic.Point(mm(40), mm(6)))));
        turned.add(new Line(mm(50), mm(6), mm(0)));
        Outline square = Outline.of(mm(0), List.of(Line.level(mm(30), mm(20))), Section.SQUARE);
        return new Body("finial", Outline.join(List.of(square, Outline.of(mm(30), turned, Section.ROUND))));
    }

    /** Too small for any printer, and as true. */
    private static Pattern tiny() {
        List<Member> run = List.of(
                new Square(mm(0.3), mm(0.2), Details.NONE),
                new Bead(mm(0.1), mm(0.1), mm(0.18), Details.NONE),
                new Cylinder(mm(0.1), mm(0.02), Details.NONE));
        return new Pattern("tiny", new Stock(Section.SQUARE, mm(0.3), mm(1)), run);
    }

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }
}
