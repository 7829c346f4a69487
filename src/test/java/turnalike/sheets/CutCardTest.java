package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.Samples;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettered;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.pattern.Pattern;
import turnalike.turning.Cut;
import turnalike.turning.Turning;
import turnalike.turning.Works;
import turnalike.units.UnitSystem;

class CutCardTest {
    private static final List<Pattern> PATTERNS =
            List.of(Samples.three(), Samples.spoke(), Samples.forty(150), Samples.forty(700), Samples.newel());

    private static final Map<Pattern, Turning> TURNINGS = new HashMap<>();

    private static CutCardContent content(Pattern pattern, UnitSystem units) {
        Turning turning = TURNINGS.computeIfAbsent(pattern, each -> Turning.of(Works.stiff(each)));
        return new CutCardContent(
                "Invented job: " + pattern.name(),
                "demonstration, not a real order",
                units,
                pattern,
                List.of(
                        new BenchCardContent.Fact("round, no faster than", "2400 rpm", "from 1200"),
                        new BenchCardContent.Fact("a steady helps most at", "300 mm", "")),
                turning.cuts(),
                turning.cautions().stream().map(each -> each.what()).toList());
    }

    private static String text(Sheet sheet) {
        StringBuilder out = new StringBuilder();
        byte[] pdf = sheet.pdf();
        for (int page = 1; page <= sheet.pageCount(); page++) {
            out.append(PdfReading.text(pdf, page));
        }
        return out.toString().replaceAll("\\s+", " ");
    }

    @Test
    void every_cut_can_be_read_out_of_the_file_with_its_tool_and_setting() {
        for (Paper paper : Paper.values()) {
            CutCardContent content = content(Samples.spoke(), UnitSystem.INCH);
            String text = text(CutCard.of(content, paper));
            for (Cut cut : content.cuts()) {
                String tool = cut.tool().text();
                assertThat(text)
                        .contains(cut.order() + " " + tool.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                                + tool.substring(1));
                cut.setting().ifPresent(setting -> assertThat(text)
                        .contains("set " + setting.format(UnitSystem.INCH) + " (" + setting.format(UnitSystem.METRIC)
                                + ")"));
            }
            assertThat(text).contains("Heavy details", "Slender stretches", "Why in this order", "Cautions");
        }
    }

    @Test
    void the_margin_stays_white_and_no_lettering_covers_other_lettering() {
        for (Pattern pattern : PATTERNS) {
            for (Paper paper : Paper.values()) {
                Sheet sheet = CutCard.of(content(pattern, UnitSystem.METRIC), paper);
                Margins.assertFree(sheet.pdf(), paper.portrait());
                for (Svg page : sheet.drawings()) {
                    assertThat(Lettered.overlaps(Lettered.boxes(page)))
                            .as(page.title())
                            .isEmpty();
                }
            }
        }
    }

    /** 14 pt are 4.94 mm. */
    @Test
    void what_to_do_is_set_in_fourteen_points_and_more() {
        Sheet sheet = CutCard.of(content(Samples.spoke(), UnitSystem.INCH), Paper.A4);
        List<TextLine> words = new ArrayList<>();
        sheet.drawings().forEach(page -> collect(page.shapes(), words));
        assertThat(words).anyMatch(each -> each.text().startsWith("Roughing gouge"));
        for (String said : List.of("Roughing gouge", "Bring the square", "Slow while out of", "mark 0 to", "set")) {
            assertThat(words)
                    .filteredOn(each -> each.text().startsWith(said))
                    .isNotEmpty()
                    .allSatisfy(each -> assertThat(each.lettering().sizeMm()).isGreaterThanOrEqualTo(4.94));
        }
        assertThat(Lettering.LATHE.sizeMm()).isGreaterThanOrEqualTo(4.94);
    }

    private static void collect(List<Shape> shapes, List<TextLine> out) {
        for (Shape shape : shapes) {
            if (shape instanceof TextLine words) {
                out.add(words);
            } else if (shape instanceof Group group) {
                collect(group.shapes(), out);
            }
        }
    }

    @Test
    void the_svg_beside_the_pdf_is_the_same_picture() throws IOException {
        Sheet sheet = CutCard.of(content(Samples.three(), UnitSystem.METRIC), Paper.A4);
        SameAsSvgTest.assertAlike(sheet.drawings().get(0));
        assertThat(sheet.name()).isEqualTo("cut-order-a4");
        assertThat(sheet.files()).hasSize(1 + sheet.pageCount());
        assertThat(CutCard.of(content(Samples.three(), UnitSystem.METRIC), Paper.LETTER)
                        .name())
                .isEqualTo("cut-order-us-letter");
    }
}
