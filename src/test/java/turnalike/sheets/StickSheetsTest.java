package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.Samples;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.sheets.PdfReading.Painted;
import turnalike.units.UnitSystem;

/** The stick read back from its PDF: true to 0.1 mm however it is tiled. Asserted to 0.02 mm, a fifth of that. */
class StickSheetsTest {
    private static final double TRUE_MM = 0.02;
    private static final List<Pattern> PATTERNS =
            List.of(Samples.three(), Samples.spoke(), Samples.forty(150), Samples.forty(700), Samples.newel());

    /** One strip: its window on the page, and the upright lines of it that reach the edge, as x on the paper. */
    private record Strip(int page, double left, double right, double edgeY, List<Double> lines, List<Double> joints) {}

    private static List<Strip> strips(byte[] pdf) {
        List<Strip> out = new ArrayList<>();
        List<Painted> painted = PdfReading.painted(pdf);
        for (Painted edge : painted) {
            boolean cut = Math.abs(edge.lineWidthMm() - 0.25) < 1e-3 && edge.height() < 1e-3;
            if (!cut) {
                continue;
            }
            double y = edge.least(1);
            List<Double> lines = new ArrayList<>();
            List<Double> joints = new ArrayList<>();
            for (Painted line : painted) {
                if (line.page() != edge.page() || line.width() > 1e-3) {
                    continue;
                }
                double x = line.least(0);
                boolean shown = x > edge.clip().left() - 1e-3 && x < edge.clip().right() + 1e-3;
                boolean reaches = Math.abs(line.least(1) - y) < 1e-3;
                boolean joint = Math.abs(line.lineWidthMm() - 0.2) < 1e-3 && line.least(1) < y && line.most(1) > y + 2;
                if (shown && reaches && line.clip().equals(edge.clip())) {
                    lines.add(x);
                } else if (shown && joint) {
                    joints.add(x);
                }
            }
            out.add(new Strip(edge.page(), edge.clip().left(), edge.clip().right(), y, lines, joints));
        }
        return out;
    }

    @Test
    void every_mark_stands_at_its_true_place_from_the_datum_across_all_joints() {
        for (Pattern pattern : PATTERNS) {
            for (Paper paper : Paper.values()) {
                for (UnitSystem units : UnitSystem.values()) {
                    byte[] pdf = StickSheets.of(pattern, units, paper).pdf();
                    List<Strip> strips = strips(pdf);
                    TreeSet<Double> seen = new TreeSet<>();
                    double origin = strips.get(0).lines().get(0); // the datum end's own line, on the first strip
                    for (int i = 0; i < strips.size(); i++) {
                        if (i > 0) {
                            // Lay this strip's first joint on the last joint of the strip before.
                            List<Double> before = strips.get(i - 1).joints();
                            origin += strips.get(i).joints().get(0) - before.get(before.size() - 1);
                        }
                        for (double line : strips.get(i).lines()) {
                            seen.add(line - origin);
                        }
                    }
                    List<Mark> marks = pattern.marks();
                    for (Mark mark : marks) {
                        double place = mark.place().mm();
                        assertThat(seen.stream().anyMatch(at -> Math.abs(at - place) < TRUE_MM))
                                .as("%s on %s: mark at %s mm", pattern.name(), paper, place)
                                .isTrue();
                    }
                    for (double at : seen) {
                        assertThat(marks.stream()
                                        .anyMatch(mark -> Math.abs(mark.place().mm() - at) < TRUE_MM))
                                .as("%s on %s: a line at %s mm that is no mark", pattern.name(), paper, at)
                                .isTrue();
                    }
                }
            }
        }
    }

    @Test
    void joints_lie_at_the_round_places_they_name_with_twelve_millimetres_beyond_them() {
        for (Paper paper : Paper.values()) {
            byte[] pdf =
                    StickSheets.of(Samples.newel(), UnitSystem.METRIC, paper).pdf();
            List<Strip> strips = strips(pdf);
            Map<Integer, Double> named = new HashMap<>();
            for (int page = 1; page <= strips.get(strips.size() - 1).page(); page++) {
                Matcher joint = java.util.regex.Pattern.compile("joint (\\d+), at (\\d+) mm")
                        .matcher(PdfReading.text(pdf, page));
                while (joint.find()) {
                    named.put(Integer.parseInt(joint.group(1)), Double.parseDouble(joint.group(2)));
                }
            }
            assertThat(named).hasSize(strips.size() - 1);
            double origin = strips.get(0).lines().get(0);
            for (int i = 0; i < strips.size(); i++) {
                Strip strip = strips.get(i);
                if (i > 0) {
                    List<Double> before = strips.get(i - 1).joints();
                    origin += strip.joints().get(0) - before.get(before.size() - 1);
                    assertThat(strip.joints().get(0) - strip.left()).isCloseTo(12, within(TRUE_MM));
                }
                if (i + 1 < strips.size()) {
                    double last = strip.joints().get(strip.joints().size() - 1);
                    assertThat(last - origin).isCloseTo(named.getOrDefault(i + 1, Double.NaN), within(TRUE_MM));
                    assertThat(named.getOrDefault(i + 1, Double.NaN) % 10)
                            .as("a whole centimetre")
                            .isZero();
                    assertThat(strip.right() - last).isCloseTo(12, within(TRUE_MM));
                }
            }
        }
    }

    @Test
    void no_joint_lies_beside_a_mark_when_there_is_room_elsewhere() {
        for (Strip strip : strips(
                StickSheets.of(Samples.spoke(), UnitSystem.METRIC, Paper.A4).pdf())) {
            for (double joint : strip.joints()) {
                assertThat(strip.lines())
                        .allSatisfy(line -> assertThat(Math.abs(line - joint)).isGreaterThan(5));
            }
        }
    }

    @Test
    void check_bars_are_100_mm_and_4_in_on_every_page() {
        for (Paper paper : Paper.values()) {
            Sheet sheet = StickSheets.of(Samples.newel(), UnitSystem.INCH, paper);
            byte[] pdf = sheet.pdf();
            CheckBarsReading.assertOnEveryPage(pdf, sheet.pageCount());
            assertThat(sheet.pageCount()).isGreaterThan(2);
            for (int page = 1; page <= sheet.pageCount(); page++) {
                assertThat(PdfReading.text(pdf, page))
                        .contains("page %d of %d".formatted(page, sheet.pageCount()))
                        .contains("Print at 100 %");
            }
        }
    }

    @Test
    void nothing_is_printed_in_the_margin() {
        for (Pattern pattern : PATTERNS) {
            for (Paper paper : Paper.values()) {
                Sheet sheet = StickSheets.of(pattern, UnitSystem.INCH, paper);
                Margins.assertFree(sheet.pdf(), sheet.pages().get(0).format());
            }
        }
    }

    /** One strip lies on a page; of a long post's two stand on one. */
    @Test
    void pages_lie_or_stand_whichever_takes_fewer() {
        Sheet shortOne = StickSheets.of(Samples.three(), UnitSystem.METRIC, Paper.A4);
        assertThat(shortOne.pages().get(0).format()).isEqualTo(Paper.A4.landscape());
        for (Paper paper : Paper.values()) {
            Sheet post = StickSheets.of(Samples.newel(), UnitSystem.INCH, paper);
            assertThat(post.pages()).extracting(PdfPages.Page::format).containsOnly(paper.portrait());
            double aStrip =
                    paper.landscape().width().minus(Paper.MARGIN.times(2)).mm();
            int lying = (int) Math.ceil(post.drawings().get(0).width().mm() / aStrip);
            assertThat(post.pageCount()).isLessThan(lying);
            assertThat(PdfReading.text(post.pdf(), 1)).contains("strip 1 of ").contains("strip 2 of ");
        }
    }

    @Test
    void only_a_stick_in_several_strips_has_joints_to_lay() {
        assertThat(PdfReading.text(
                        StickSheets.of(Samples.three(), UnitSystem.METRIC, Paper.A4)
                                .pdf(),
                        1))
                .contains("Full size")
                .doesNotContain("joint");
        String joined = PdfReading.text(
                StickSheets.of(Samples.newel(), UnitSystem.METRIC, Paper.A4).pdf(), 1);
        assertThat(joined.replace('\n', ' ')).contains("Lay joint upon joint, line on line.");
    }

    @Test
    void the_svg_beside_the_pdf_is_the_whole_stick() {
        Sheet sheet = StickSheets.of(Samples.newel(), UnitSystem.METRIC, Paper.LETTER);
        assertThat(sheet.files().keySet())
                .containsExactly("marking-stick-us-letter.pdf", "marking-stick-us-letter.svg");
        assertThat(sheet.drawings().get(0).width().mm()).isGreaterThan(2000);
    }
}
