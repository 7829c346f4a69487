package turnalike.drawing.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.drawing.OtherReaders;
import turnalike.drawing.piece.DrawingsTest;
import turnalike.pattern.Pattern;
import turnalike.units.UnitSystem;

/**
 * The DXF read by two libraries that share no code with ours or with one another, beside the strict reader of {@link PieceDxfTest}: ezdxf
 * (MIT licence; Debian's python3-ezdxf), which audits it, and dxflib (GPL; Debian's libdxflib-dev), which {@code ./check} compiles a small
 * program against.
 */
class PieceDxfIT {
    private static final String READ = """
            import sys, ezdxf
            from ezdxf.bbox import extents
            doc = ezdxf.readfile(sys.argv[1])
            faults = len(doc.audit().errors)
            lines = doc.modelspace().query('POLYLINE')
            assert len(lines) == 1 and lines[0].is_closed
            low, high = extents(lines)
            print(doc.dxfversion, faults, '%.4f %.4f %.4f' % (low.x, high.x, high.y))
            """;

    @TempDir
    Path folder = Path.of("");

    @Test
    void an_independent_library_finds_no_fault_and_the_true_size() throws IOException, InterruptedException {
        Path script = Files.writeString(folder.resolve("read.py"), READ);
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            double length = pattern.length().mm();
            double radius = pattern.outline().largestRadius().mm();
            Path outline = Files.writeString(folder.resolve("outline.dxf"), PieceDxf.outline(pattern));
            assertThat(OtherReaders.python(script, List.of(outline.toString()))).containsExactly(line(length, radius));
            Path template =
                    Files.writeString(folder.resolve("template.dxf"), PieceDxf.template(pattern, UnitSystem.INCH));
            assertThat(OtherReaders.python(script, List.of(template.toString())))
                    .containsExactly(line(length, radius + 30));
        }
    }

    /** What the second one measures is the area, arcs and all, which ezdxf was not asked for. */
    @Test
    void a_second_library_reads_the_same_vertices_and_the_exact_area() throws IOException, InterruptedException {
        String program = folder.resolve("reading").toString();
        OtherReaders.run(List.of(
                "g++", "-o", program, OtherReaders.resource("dxf/reading.cpp").toString(), "-ldxflib"));
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            Path outline = Files.writeString(folder.resolve("outline.dxf"), PieceDxf.outline(pattern));
            List<String> told = OtherReaders.run(List.of(program, outline.toString()));
            String[] half = told.get(0).split(" ", 6);
            assertThat(half[0]).isEqualTo("OUTLINE");
            assertThat(half[2]).as("closed").isEqualTo("1");
            assertThat(Double.parseDouble(half[3])).isCloseTo(area(pattern), withinPercentage(0.02));
            assertThat(Double.parseDouble(half[5])).isCloseTo(pattern.length().mm(), within(1e-4));
            Path template =
                    Files.writeString(folder.resolve("template.dxf"), PieceDxf.template(pattern, UnitSystem.INCH));
            int inner = pattern.marks().size() - 2;
            assertThat(OtherReaders.run(List.of(program, template.toString())).get(1))
                    .as("lines and texts")
                    .isEqualTo(inner + " " + inner);
        }
    }

    /** ∫ r dx. */
    private static double area(Pattern pattern) {
        return pattern.outline().segments().stream()
                .mapToDouble(segment -> segment.curve().integral(0, 1))
                .sum();
    }

    private static String line(double lengthMm, double mostMm) {
        return String.format(Locale.ROOT, "AC1009 0 %.4f %.4f %.4f", 0.0, lengthMm, mostMm);
    }
}
