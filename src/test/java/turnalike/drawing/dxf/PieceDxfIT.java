package turnalike.drawing.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.drawing.piece.DrawingsTest;
import turnalike.pattern.Pattern;
import turnalike.units.UnitSystem;

/**
 * The DXF read and audited by an independent library, ezdxf (MIT licence; Debian's python3-ezdxf), beside the strict reader of
 * {@link PieceDxfTest}.
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
        assertThat(run("-c", "import ezdxf").code())
                .as("ezdxf is not installed; on Debian: apt-get install python3-ezdxf")
                .isZero();
        Path script = Files.writeString(folder.resolve("read.py"), READ);
        for (Pattern pattern : DrawingsTest.PATTERNS) {
            double length = pattern.length().mm();
            double radius = pattern.outline().largestRadius().mm();
            Path outline = Files.writeString(folder.resolve("outline.dxf"), PieceDxf.outline(pattern));
            assertThat(run(script.toString(), outline.toString()).out()).isEqualTo(line(length, radius));
            Path template =
                    Files.writeString(folder.resolve("template.dxf"), PieceDxf.template(pattern, UnitSystem.INCH));
            assertThat(run(script.toString(), template.toString()).out()).isEqualTo(line(length, radius + 30));
        }
    }

    private static String line(double lengthMm, double mostMm) {
        return String.format(Locale.ROOT, "AC1009 0 %.4f %.4f %.4f", 0.0, lengthMm, mostMm);
    }

    private record Run(int code, String out) {}

    private static Run run(String... arguments) throws IOException, InterruptedException {
        String[] command = new String[arguments.length + 1];
        command[0] = Files.exists(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";
        System.arraycopy(arguments, 0, command, 1, arguments.length);
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String out = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            return new Run(process.waitFor(), out.strip());
        } catch (IOException noPython) {
            return new Run(127, "");
        }
    }
}
