package turnalike.trace.drawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.drawing.dxf.PieceDxf;
import turnalike.drawing.gauge.ProfileTemplate;
import turnalike.job.read.JobReader;
import turnalike.outline.Outline;
import turnalike.pattern.Pattern;
import turnalike.trace.Profile.Station;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class DrawnOutlineTest {
    /** A spindle of two steps: radius 10 for 30, 6 for 70. */
    private static final String WHOLE = "M0 10 H30 V6 H100 V-6 H30 V-10 H0 Z";

    private static final String HALF = "M0 0 V10 H30 V6 H100 V0 Z";

    private static DrawnOutline.Read svg(String head, String body) {
        String text = "<svg xmlns=\"http://www.w3.org/2000/svg\" %s>%s</svg>".formatted(head, body);
        return DrawnOutline.read(text, DrawnOutline.Format.SVG, Optional.empty(), UnitSystem.METRIC);
    }

    private static DrawnOutline.Read dxf(String entities, int units) {
        String text =
                "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n%s\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n%s0\nENDSEC\n0\nEOF\n"
                        .formatted(units, entities);
        return DrawnOutline.read(text, DrawnOutline.Format.DXF, Optional.empty(), UnitSystem.METRIC);
    }

    private static void isTheStep(DrawnOutline.Read read, double times) {
        assertThat(read.problems()).isEmpty();
        List<Station> stations = read.original().orElseThrow().profile().stations();
        assertThat(read.original().orElseThrow().profile().length().mm()).isCloseTo(100 * times, within(1e-6));
        for (Station each : stations) {
            double x = each.place().mm() / times;
            double r = each.radius().mm() / times;
            if (Math.abs(x - 30) < 1e-6) {
                assertThat(List.of(6.0, 10.0)).anyMatch(one -> Math.abs(one - r) < 1e-6);
            } else {
                assertThat(r).isCloseTo(x < 30 ? 10 : 6, within(1e-6));
            }
        }
        assertThat(stations.stream().filter(each -> Math.abs(each.place().mm() / times - 30) < 1e-6))
                .as("a shoulder is two stations")
                .hasSize(2);
    }

    private static final String MM = "width=\"200mm\" height=\"100mm\" viewBox=\"0 0 200 100\"";

    @Test
    void whole_and_half_outlines_give_one_profile() {
        isTheStep(svg(MM, "<path d=\"" + WHOLE + "\"/>"), 1);
        isTheStep(svg(MM, "<path d=\"" + HALF + "\"/>"), 1);
        isTheStep(svg(MM, "<path d=\"M0 0 V-10 H30 V-6 H100 V0 Z\"/>"), 1);
    }

    /** Its flat end, 28 across, is the longest straight edge, and no axis of a half. */
    @Test
    void a_flat_end_may_be_the_longest_edge_of_a_whole_outline() {
        String stout = "M0 14 L12 14 L18 10 L24 13 L40 7 L40 -7 L24 -13 L18 -10 L12 -14 L0 -14 Z";
        for (String turn : List.of("", "rotate(90)", "rotate(30)")) {
            DrawnOutline.Read read = svg(MM, "<path transform=\"%s\" d=\"%s\"/>".formatted(turn, stout));
            assertThat(read.problems()).isEmpty();
            assertThat(read.original().orElseThrow().profile().length().mm())
                    .as(turn)
                    .isCloseTo(40, within(1e-6));
        }
        // Half of a knob that is thicker than long stays a half.
        DrawnOutline.Read knob = svg(MM, "<path d=\"M0 0 V5 L8 20 L12 24 L20 12 V0 Z\"/>");
        assertThat(knob.original().orElseThrow().profile().length().mm()).isCloseTo(20, within(1e-6));
    }

    /** Of many points only corners are joints; whether one is, was asked of what lies beyond the end. */
    @Test
    void a_corner_right_before_the_end_is_one_though_nothing_lies_beyond() {
        StringBuilder path = new StringBuilder("M0 0");
        for (int i = 0; i <= 200; i++) {
            path.append(" L%s 10".formatted(i / 2.0));
        }
        DrawnOutline.Read read = svg(MM, "<path d=\"%s L100.05 0 Z\"/>".formatted(path));
        assertThat(read.problems()).isEmpty();
        double widest = read.original().orElseThrow().fitted().stations().stream()
                .mapToDouble(each -> each.radius().mm())
                .max()
                .orElseThrow();
        assertThat(widest).isCloseTo(10, within(1e-6));
    }

    /** As an elevation is drawn: the line across at the shoulder lies over both sides' own, one parts the thin part, and the axis stands out. */
    @Test
    void lines_across_and_the_axis_are_no_outline() {
        String cross = line(30, -10, 30, 10) + line(70, 6, 70, -6) + line(50, 6, 50, 8) + line(-5, 0, 105, 0);
        String outline = line(0, 10, 30, 10)
                + line(30, 10, 30, 6)
                + line(30, 6, 100, 6)
                + line(100, 6, 100, -6)
                + line(100, -6, 70, -6)
                + line(70, -6, 30, -6)
                + line(30, -6, 30, -10)
                + line(30, -10, 0, -10)
                + line(0, -10, 0, 10);
        isTheStep(dxf(cross + outline, 4), 1);
        isTheStep(dxf(outline + cross, 4), 1);
        String half = line(0, 10, 30, 10) + line(30, 10, 30, 6) + line(30, 6, 100, 6) + line(100, 6, 100, 0);
        isTheStep(dxf(half + line(0, 0, 0, 10) + line(-5, 0, 105, 0) + line(30, 0, 30, 10), 4), 1);
    }

    @Test
    void a_frame_is_not_the_piece() {
        String frame = "<rect x=\"-20\" y=\"-40\" width=\"140\" height=\"80\"/>";
        for (String body : List.of("<path d=\"" + WHOLE + "\"/>", "<path d=\"" + HALF + "\"/>")) {
            DrawnOutline.Read read = svg(MM, frame + frame.replace("-20", "-18") + body);
            isTheStep(read, 1);
            assertThat(read.notes()).anyMatch(line -> line.contains("drawing's frame"));
        }
        String lines =
                line(-20, -40, 120, -40) + line(120, -40, 120, 40) + line(120, 40, -20, 40) + line(-20, 40, -20, -40);
        String piece = "0\nLWPOLYLINE\n8\n0\n90\n6\n70\n1\n" + at(0, 0) + at(0, 10) + at(30, 10) + at(30, 6)
                + at(100, 6) + at(100, 0);
        isTheStep(dxf(lines + piece, 4), 1);
        // A plain cylinder in a frame, or a plain one with a hole through it: either may be.
        refused(
                svg(MM, frame + "<rect x=\"0\" y=\"-5\" width=\"100\" height=\"10\"/>"),
                "either may be the piece: 140 by 80 and 100 by 10");
        DrawnOutline.Read dowel = svg(MM, frame + "<path d=\"M0 0 h4 v4 h-3 z\"/>");
        assertThat(dowel.original().orElseThrow().profile().length().mm()).isCloseTo(140, within(1e-6));
    }

    @Test
    void what_a_dxf_drawing_does_not_show_is_no_outline() {
        String piece = "0\nLWPOLYLINE\n8\n0\n90\n6\n70\n1\n" + at(0, 0) + at(0, 10) + at(30, 10) + at(30, 6)
                + at(100, 6) + at(100, 0);
        String other = "0\nLWPOLYLINE\n8\nAside\n%s90\n4\n70\n1\n" + at(-90, 0) + at(0, 300) + at(30, 310) + at(95, 50);
        String layers =
                "0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n0\nLAYER\n2\nASIDE\n70\n%s\n62\n%s\n0\nENDTAB\n0\nENDSEC\n";
        isTheStep(dxf(piece + other.formatted("67\n1\n"), 4), 1);
        isTheStep(dxf(piece + other.formatted("60\n1\n"), 4), 1);
        for (String layer : List.of(layers.formatted(0, -7), layers.formatted(1, 7))) {
            isTheStep(
                    DrawnOutline.read(
                            layer + "0\nSECTION\n2\nENTITIES\n" + piece + other.formatted("") + "0\nENDSEC\n0\nEOF\n",
                            DrawnOutline.Format.DXF,
                            Optional.empty(),
                            UnitSystem.METRIC),
                    1);
        }
    }

    @Test
    void transforms_and_units_are_followed() {
        isTheStep(svg(MM, "<g transform=\"translate(5 40)\"><path d=\"" + WHOLE + "\"/></g>"), 1);
        isTheStep(svg(MM, "<g transform=\"rotate(90) scale(2)\"><path d=\"" + HALF + "\"/></g>"), 2);
        isTheStep(svg(MM, "<path transform=\"matrix(0.8 0.6 -0.6 0.8 3 4)\" d=\"" + WHOLE + "\"/>"), 1);
        isTheStep(svg("width=\"10in\" height=\"5in\" viewBox=\"0 0 200 100\"", "<path d=\"" + HALF + "\"/>"), 1.27);
        isTheStep(svg("", "<path d=\"" + HALF + "\"/>"), 25.4 / 96);
    }

    @Test
    void polygons_rectangles_and_loose_lines_are_outlines_too() {
        isTheStep(svg(MM, "<polygon points=\"0,0 0,10 30,10 30,6 100,6 100,0\"/>"), 1);
        isTheStep(
                svg(
                        MM,
                        "<polyline points=\"0,0 0,10 30,10\"/><line x1=\"30\" y1=\"10\" x2=\"30\" y2=\"6\"/>"
                                + "<path d=\"m100 6 h-70\"/><polyline points=\"100,6 100,0 0,0\"/>"),
                1);
        DrawnOutline.Read rect = svg(MM, "<rect x=\"3\" y=\"4\" width=\"80\" height=\"20\"/>");
        assertThat(rect.original().orElseThrow().profile().stations())
                .allMatch(each -> Math.abs(each.radius().mm() - 10) < 1e-9);
    }

    @Test
    void arcs_and_curves_of_every_command_lie_where_they_should() {
        // A ball of radius 20 by two arcs, and one by four cubic curves with the usual 0.5523.
        DrawnOutline.Read arcs = svg(MM, "<path d=\"M0 50a20 20 0 01 40 0a20,20,0,0,1-40 0z\"/>");
        String k = "11.0457";
        DrawnOutline.Read curves = svg(
                MM,
                "<path d=\"M0 50c0-%s 8.9543-20 20-20s20 8.9543 20 20-8.9543 20-20 20-20-8.9543-20-20Z\"/>"
                        .formatted(k));
        for (DrawnOutline.Read read : List.of(arcs, curves)) {
            for (Station each : read.original().orElseThrow().profile().stations()) {
                assertThat(Math.hypot(each.place().mm() - 20, each.radius().mm()))
                        .isCloseTo(20, within(0.01));
            }
        }
        // y = 10 − (x − 20)²/40 as a quadratic, from 0 to 40: control point at the height of 20.
        DrawnOutline.Read parabola = svg(MM, "<path d=\"M0 0 Q20 20 40 0 T80 0 V-30 H0Z\"/>");
        assertThat(parabola.problems()).isEmpty();
    }

    @Test
    void dxf_entities_join_into_an_outline_in_their_units() {
        String lines = line(0, 0, 0, 10)
                + line(30, 10, 0, 10)
                + line(30, 10, 30, 6)
                + line(100, 6, 30, 6)
                + line(100, 6, 100, 0)
                + line(0, 0, 100, 0);
        isTheStep(dxf(lines, 4), 1);
        isTheStep(dxf(lines, 1), 25.4);
        isTheStep(dxf(lines, 0), 1);
        String light = "0\nLWPOLYLINE\n8\n0\n90\n6\n70\n1\n" + at(0, 0) + at(0, 10) + at(30, 10) + at(30, 6)
                + at(100, 6) + at(100, 0);
        isTheStep(dxf(light, 4), 1);
    }

    private static String at(double x, double y) {
        return "10\n%s\n20\n%s\n".formatted(x, y);
    }

    private static String line(double x1, double y1, double x2, double y2) {
        return "0\nLINE\n8\n0\n10\n%s\n20\n%s\n11\n%s\n21\n%s\n".formatted(x1, y1, x2, y2);
    }

    @Test
    void a_dxf_block_is_drawn_where_it_is_put_in() {
        String side = "0\nLWPOLYLINE\n8\n0\n90\n6\n70\n1\n" + at(5, 0) + at(5, 10) + at(35, 10) + at(35, 6) + at(105, 6)
                + at(105, 0);
        String half = "0\nBLOCK\n8\n0\n2\nHALF\n70\n0\n" + at(5, 0) + side + "0\nENDBLK\n8\n0\n";
        String outer = "0\nBLOCK\n8\n0\n2\nPIECE\n70\n0\n" + at(0, 0) + put("HALF", 3, 4, 1, 90) + "0\nENDBLK\n8\n0\n";
        String self = "0\nBLOCK\n8\n0\n2\nSELF\n70\n0\n" + at(0, 0) + put("SELF", 1, 0, 1, 0) + "0\nENDBLK\n8\n0\n";
        String blocks = half + outer + self;
        isTheStep(blocked(blocks, put("HALF", 40, 7, 1, 0)), 1);
        isTheStep(blocked(blocks, put("PIECE", 40, 7, 2, -90)), 2);
        refused(blocked(blocks, put("SELF", 0, 0, 1, 0)), "holds no line");
        refused(blocked(blocks, put("NOWHERE", 0, 0, 1, 0)), "holds no line");
    }

    /** Seven deep, ten times each, ten million in all: read to the end it would take minutes. */
    @Test
    void dxf_blocks_in_blocks_without_number_are_not_all_drawn() {
        StringBuilder blocks = new StringBuilder();
        for (int deep = 0; deep < 7; deep++) {
            blocks.append("0\nBLOCK\n2\nB%d\n".formatted(deep)).append(at(0, 0));
            blocks.append(put("B" + (deep + 1), 0, 0, 1, 0).repeat(10)).append("0\nENDBLK\n");
        }
        refused(blocked(blocks.toString(), put("B0", 0, 0, 1, 0)), "holds no line");
        String line = "0\nBLOCK\n2\nB7\n" + at(0, 0) + line(0, 0, 0, 10).repeat(20) + "0\nENDBLK\n";
        refused(blocked(blocks + line, put("B0", 0, 0, 1, 0)), "holds more than 20000 lines");
    }

    private static DrawnOutline.Read blocked(String blocks, String entities) {
        String text = "0\nSECTION\n2\nBLOCKS\n%s0\nENDSEC\n0\nSECTION\n2\nENTITIES\n%s0\nENDSEC\n0\nEOF\n"
                .formatted(blocks, entities);
        return DrawnOutline.read(text, DrawnOutline.Format.DXF, Optional.empty(), UnitSystem.METRIC);
    }

    private static String put(String name, double x, double y, double times, double degrees) {
        return "0\nINSERT\n8\n0\n2\n%s\n%s41\n%s\n42\n%s\n50\n%s\n".formatted(name, at(x, y), times, times, degrees);
    }

    @Test
    void dxf_arcs_bulges_and_splines_are_curves() {
        // Half a ball of radius 20 above its axis, three ways.
        String base = line(0, 0, 40, 0);
        String arc = "0\nARC\n8\n0\n10\n20\n20\n0\n40\n20\n50\n0\n51\n180\n";
        String bulge = "0\nLWPOLYLINE\n8\n0\n90\n2\n70\n1\n10\n0\n20\n0\n42\n-1\n10\n40\n20\n0\n";
        String quarter = "0\nSPLINE\n8\n0\n70\n12\n71\n2\n40\n0\n40\n0\n40\n0\n40\n1\n40\n1\n40\n2\n40\n2\n40\n2\n"
                + spot(0, 0, 1) + spot(0, 20, Math.sqrt(0.5)) + spot(20, 20, 1) + spot(40, 20, Math.sqrt(0.5))
                + spot(40, 0, 1);
        for (String each : List.of(base + arc, bulge, base + quarter)) {
            DrawnOutline.Read read = dxf(each, 4);
            assertThat(read.problems()).as(each).isEmpty();
            assertThat(read.original().orElseThrow().profile().length().mm()).isCloseTo(40, within(1e-6));
            for (Station station : read.original().orElseThrow().profile().stations()) {
                assertThat(Math.hypot(
                                station.place().mm() - 20, station.radius().mm()))
                        .isCloseTo(20, within(0.001));
            }
        }
    }

    private static String spot(double x, double y, double weight) {
        return "10\n%s\n20\n%s\n41\n%s\n".formatted(x, y, weight);
    }

    @Test
    void our_own_outline_and_templates_read_back_within_a_hundredth_of_a_millimetre() throws IOException {
        for (String job : List.of(
                "src/main/resources/turnalike/demo/fair-wheel.job.json",
                "src/test/resources/turnalike/job/good/every.job.json",
                "src/test/resources/turnalike/job/good/wheel.job.json")) {
            Pattern pattern = JobReader.read(Files.readString(Path.of(job)))
                    .job()
                    .orElseThrow()
                    .pattern();
            String svg = ProfileTemplate.of(pattern, UnitSystem.METRIC).svg().file();
            same(pattern, DrawnOutline.read(svg, DrawnOutline.Format.SVG, Optional.empty(), UnitSystem.METRIC), job);
            for (String dxf : List.of(PieceDxf.outline(pattern), PieceDxf.template(pattern, UnitSystem.METRIC))) {
                same(
                        pattern,
                        DrawnOutline.read(dxf, DrawnOutline.Format.DXF, Optional.empty(), UnitSystem.METRIC),
                        job);
            }
        }
    }

    /** Square to the outline: where an arc stands upright, a hair along the piece is any distance across it. */
    private static void same(Pattern pattern, DrawnOutline.Read read, String job) {
        Outline outline = pattern.outline();
        assertThat(read.problems()).as(job).isEmpty();
        assertThat(read.original().orElseThrow().profile().length().mm())
                .isCloseTo(outline.length().mm(), within(0.01));
        for (Station each : read.original().orElseThrow().profile().stations()) {
            double x = each.place().mm();
            double least = Double.POSITIVE_INFINITY;
            double most = 0;
            for (double aside : new double[] {-0.01, -0.005, -1e-6, 0, 1e-6, 0.005, 0.01}) {
                double r = outline.radiusAt(Length.ofMm(x + aside)).mm();
                least = Math.min(least, r);
                most = Math.max(most, r);
            }
            for (Outline.Station turn : outline.stations()) {
                if (Math.abs(turn.place().mm() - x) < 0.01) {
                    least = Math.min(least, turn.radius().mm());
                    most = Math.max(most, turn.radius().mm());
                }
            }
            assertThat(each.radius().mm()).as("%s at %s", job, x).isBetween(least - 0.01, most + 0.01);
        }
    }

    @Test
    void an_outline_that_is_not_symmetrical_is_told_and_a_crooked_one_refused() {
        DrawnOutline.Read uneven = svg(MM, "<path d=\"M0 11 H30 V6 H100 V-6 H30 V-10 H0 Z\"/>");
        assertThat(uneven.notes()).anyMatch(note -> note.contains("not quite symmetrical"));
        DrawnOutline.Read crooked = svg(MM, "<path d=\"M0 10 H30 V20 H60 V6 H100 V-6 H30 V-10 H0 Z\"/>");
        assertThat(crooked.problems()).singleElement().satisfies(each -> assertThat(each.line())
                .contains("is not symmetrical"));
    }

    @Test
    void bad_drawings_are_refused_in_a_line() {
        refused(svg(MM, "<text>none</text>"), "holds no line");
        refused(svg(MM, "<path d=\"M0 0 V10 H30 V6 H100 V3\"/>"), "no closed outline");
        refused(svg(MM, "<path d=\"" + HALF + "\"/><path d=\"M0 50 V60 H30 V56 H100 V50 Z\"/>"), "more than one");
        refused(svg(MM, "<defs><path d=\"" + HALF + "\"/></defs>"), "holds no line");
        refused(svg(MM, "<path d=\"" + HALF + "\""), "is not XML there");
        refused(dxf("0\nLINE\n8\n0\nten\n0\n", 4), "is not DXF there");
        refused(
                DrawnOutline.read("not a drawing", DrawnOutline.Format.DXF, Optional.empty(), UnitSystem.METRIC),
                "is not DXF there");
        refused(
                DrawnOutline.read("<html/>", DrawnOutline.Format.SVG, Optional.empty(), UnitSystem.METRIC),
                "is no SVG");
    }

    @Test
    void outside_entities_are_not_followed() {
        String text = "<!DOCTYPE svg [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>"
                + "<svg xmlns=\"http://www.w3.org/2000/svg\"><title>&e;</title><path d=\"" + HALF + "\"/></svg>";
        DrawnOutline.Read read = DrawnOutline.read(text, DrawnOutline.Format.SVG, Optional.empty(), UnitSystem.METRIC);
        assertThat(read.problems().toString() + read.notes()).doesNotContain("root:");
    }

    @Test
    void a_span_scales_whatever_the_drawing_says() {
        String text = "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"" + HALF + "\"/></svg>";
        isTheStep(
                DrawnOutline.read(text, DrawnOutline.Format.SVG, Optional.of(Length.ofMm(300)), UnitSystem.METRIC), 3);
    }

    private static void refused(DrawnOutline.Read read, String words) {
        assertThat(read.original()).isEmpty();
        assertThat(read.problems()).singleElement().satisfies(each -> assertThat(each.line())
                .contains(words));
    }

    @Test
    void a_broken_document_type_is_no_xml_on_its_line() {
        String text = "\n<!DOCTYPE svg [<!ENTITY a \u0001'aaaa'>]><svg xmlns='http://www.w3.org/2000/svg'/>";
        DrawnOutline.Read read = DrawnOutline.read(text, DrawnOutline.Format.SVG, Optional.empty(), UnitSystem.METRIC);
        assertThat(read.problems()).hasSize(1);
        assertThat(read.problems().get(0).line()).contains("line 2: is not XML there");
    }
}
