package turnalike.drawing.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.Samples;
import turnalike.outline.Outline;
import turnalike.pattern.Pattern;
import turnalike.solid.Mesh;
import turnalike.trace.Profile;
import turnalike.trace.drawn.DrawnOutline;
import turnalike.trace.table.PointTable;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class ExchangeFilesTest {
    private static final List<Pattern> PATTERNS = List.of(Samples.three(), Samples.spoke(), Samples.newel());

    @Test
    void a_body_is_the_same_to_the_byte_each_time() {
        Mesh mesh = Mesh.of(Samples.three().outline());
        assertThat(StlFile.of(mesh, "x")).isEqualTo(StlFile.of(mesh, "x"));
        assertThat(ThreeMfFile.of(mesh, "x")).isEqualTo(ThreeMfFile.of(mesh, "x"));
    }

    @Test
    void an_stl_counts_its_triangles_and_its_normals_look_away_from_the_axis_or_along_it() {
        Mesh mesh = Mesh.of(Samples.spoke().outline());
        ByteBuffer read = ByteBuffer.wrap(StlFile.of(mesh, "solid Spöke\n of any length " + "x".repeat(100)))
                .order(ByteOrder.LITTLE_ENDIAN);
        assertThat(read.getInt(80)).isEqualTo(mesh.facets().size());
        assertThat(read.capacity()).isEqualTo(84 + 50 * mesh.facets().size());
        for (int at = 84; at < read.capacity(); at += 50) {
            double nx = read.getFloat(at);
            double ny = read.getFloat(at + 4);
            double nz = read.getFloat(at + 8);
            assertThat(nx * nx + ny * ny + nz * nz).isCloseTo(1, within(1e-5));
            double outwards = nx * read.getFloat(at + 12) + ny * read.getFloat(at + 16);
            assertThat(outwards).isGreaterThan(-1e-4);
        }
    }

    @Test
    void a_3mf_names_its_unit_and_its_piece_whatever_the_name() throws IOException {
        String model = "";
        byte[] bytes = ThreeMfFile.of(Mesh.of(Samples.three().outline()), "knob <1> & \"two\" \u0007");
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            assertThat(zip.getNextEntry()).hasToString("[Content_Types].xml");
            assertThat(zip.getNextEntry()).hasToString("_rels/.rels");
            assertThat(zip.getNextEntry()).hasToString("3D/3dmodel.model");
            model = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        }
        assertThat(model)
                .contains("unit=\"millimeter\"", "name=\"knob &lt;1&gt; &amp; &quot;two&quot; ?\"")
                .doesNotContain("\u0007");
    }

    @Test
    void stations_read_back_are_the_outline_at_each_of_them_in_either_unit() {
        for (Pattern pattern : PATTERNS) {
            for (UnitSystem units : UnitSystem.values()) {
                String text = StationTable.of(pattern, units, StationTable.usualStep(units));
                PointTable.Read read = PointTable.read(text, units, Length.ofMm(0.1));
                assertThat(read.problems()).isEmpty();
                Profile profile = read.original().orElseThrow().profile();
                assertThat(profile.length().mm()).isCloseTo(pattern.length().mm(), within(2e-3));
                assertFollows(pattern.outline(), profile);
            }
        }
    }

    @Test
    void every_mark_has_a_row_and_a_shoulder_two() {
        String text = StationTable.of(Samples.three(), UnitSystem.METRIC, Length.ofMm(50));
        assertThat(text.lines().filter(line -> line.startsWith("30,"))).hasSize(2);
        assertThat(text).contains("start end", "far end").contains("\r\n100,");
    }

    @Test
    void the_outline_drawn_is_the_pattern_again() {
        for (Pattern pattern : PATTERNS) {
            DrawnOutline.Read read = DrawnOutline.read(
                    OutlineSvg.of(pattern).file(), DrawnOutline.Format.SVG, Optional.empty(), UnitSystem.METRIC);
            assertThat(read.problems()).isEmpty();
            Profile profile = read.original().orElseThrow().profile();
            assertThat(profile.length().mm()).isCloseTo(pattern.length().mm(), within(0.01));
        }
    }

    /** Between the least and the greatest radius within what a printed place may be off; at a shoulder either size will do. */
    private static void assertFollows(Outline outline, Profile profile) {
        for (Profile.Station station : profile.stations()) {
            double place = station.place().mm();
            DoubleSummaryStatistics near = IntStream.rangeClosed(-30, 30)
                    .mapToDouble(i -> outline.radiusAt(Length.ofMm(Math.max(0, place + i * 1e-5)))
                            .mm())
                    .summaryStatistics();
            assertThat(station.radius().mm()).as("at %s", place).isBetween(near.getMin() - 0.02, near.getMax() + 0.02);
        }
    }
}
