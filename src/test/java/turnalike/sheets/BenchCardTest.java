package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.Samples;
import turnalike.drawing.svg.Lettered;
import turnalike.drawing.svg.Svg;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.sheets.PdfReading.Painted;
import turnalike.units.UnitSystem;

class BenchCardTest {
    private static final List<Pattern> PATTERNS =
            List.of(Samples.three(), Samples.spoke(), Samples.forty(150), Samples.forty(700), Samples.newel());

    private static List<Sheet> all(Paper paper) {
        List<Sheet> out = new ArrayList<>();
        for (Pattern pattern : PATTERNS) {
            for (UnitSystem units : UnitSystem.values()) {
                out.add(BenchCard.of(SheetSamples.card(pattern, units), paper));
            }
        }
        return out;
    }

    private static String text(Sheet sheet) {
        StringBuilder out = new StringBuilder();
        byte[] pdf = sheet.pdf();
        for (int page = 1; page <= sheet.pageCount(); page++) {
            out.append(PdfReading.text(pdf, page));
        }
        return out.toString();
    }

    @Test
    void every_mark_setting_and_caution_can_be_read_out_of_the_file() {
        for (Paper paper : Paper.values()) {
            BenchCardContent content = SheetSamples.card(Samples.spoke(), UnitSystem.INCH);
            String text = text(BenchCard.of(content, paper));
            assertThat(text)
                    .contains(content.title())
                    .contains(content.subtitle())
                    .contains("Scale 1 : 2.5");
            for (Mark mark : content.pattern().marks()) {
                assertThat(text).contains(mark.place().format(UnitSystem.INCH));
                assertThat(text).contains(mark.place().format(UnitSystem.METRIC));
            }
            for (BenchCardContent.Divider divider : content.dividers()) {
                assertThat(text).contains(divider.opening().format(UnitSystem.INCH));
                for (BenchCardContent.Step step : divider.steps()) {
                    assertThat(text).contains(step.from() + " → " + step.to());
                }
            }
            for (BenchCardContent.Caliper caliper : content.calipers()) {
                assertThat(text).contains(caliper.opening().format(UnitSystem.INCH));
                assertThat(text).contains(caliper.finished());
            }
            assertThat(text).contains("Cautions").contains("face shield");
        }
    }

    @Test
    void divider_bars_are_as_long_as_their_openings() {
        for (Paper paper : Paper.values()) {
            BenchCardContent content = SheetSamples.card(Samples.spoke(), UnitSystem.METRIC);
            List<Painted> painted =
                    PdfReading.painted(BenchCard.of(content, paper).pdf());
            for (BenchCardContent.Divider divider : content.dividers()) {
                double opening = divider.opening().mm();
                assertThat(painted.stream()
                                .filter(each -> each.height() < 1e-3 && Math.abs(each.lineWidthMm() - 0.15) < 1e-3)
                                .anyMatch(each -> Math.abs(each.width() - opening) < 0.02))
                        .as("a bar of %s mm on %s", opening, paper)
                        .isTrue();
            }
        }
    }

    @Test
    void the_piece_is_drawn_at_the_stated_scale() {
        List<Painted> painted =
                PdfReading.painted(BenchCard.of(SheetSamples.card(Samples.spoke(), UnitSystem.INCH), Paper.A4)
                        .pdf());
        Painted body = painted.stream()
                .filter(each -> Math.abs(each.lineWidthMm() - 0.4) < 1e-3)
                .findFirst()
                .orElseThrow();
        assertThat(body.width() * 2.5).isCloseTo(Samples.spoke().length().mm(), within(0.05));
        assertThat(body.height() * 2.5).isCloseTo(1.75 * 25.4, within(0.05));
    }

    @Test
    void check_bars_are_true_on_every_page_and_the_margin_stays_white() {
        for (Paper paper : Paper.values()) {
            for (Sheet sheet : all(paper)) {
                byte[] pdf = sheet.pdf();
                CheckBarsReading.assertOnEveryPage(pdf, sheet.pageCount());
                Margins.assertFree(pdf, paper.portrait());
            }
        }
    }

    @Test
    void no_lettering_covers_other_lettering() {
        for (Paper paper : Paper.values()) {
            for (Sheet sheet : all(paper)) {
                for (Svg page : sheet.drawings()) {
                    assertThat(Lettered.overlaps(Lettered.boxes(page)))
                            .as(page.title())
                            .isEmpty();
                }
            }
        }
    }

    @Test
    void the_svg_beside_the_pdf_is_the_same_picture() throws IOException {
        Sheet sheet = BenchCard.of(SheetSamples.card(Samples.spoke(), UnitSystem.INCH), Paper.A4);
        SameAsSvgTest.assertAlike(sheet.drawings().get(0));
        assertThat(sheet.files().keySet()).contains("bench-card-a4.pdf", "bench-card-a4-1.svg");
        assertThat(sheet.files()).hasSize(1 + sheet.pageCount());
    }

    @Test
    void the_same_card_gives_the_same_bytes() {
        BenchCardContent content = SheetSamples.card(Samples.forty(700), UnitSystem.METRIC);
        assertThat(BenchCard.of(content, Paper.A4).pdf())
                .isEqualTo(BenchCard.of(content, Paper.A4).pdf());
    }

    @Test
    void hostile_and_foreign_names_are_printed_or_told_by_question_marks() {
        Pattern pattern = Samples.forty(700);
        BenchCardContent plain = SheetSamples.card(pattern, UnitSystem.METRIC);
        BenchCardContent odd = new BenchCardContent(
                "Ножки <b>&\"'</b> 椅子 🪵\u0000\n".repeat(8),
                "שלום λόγος",
                plain.units(),
                pattern,
                List.of(new BenchCardContent.Fact("𝔄".repeat(200), "", "\uD800")),
                List.of("Ж".repeat(900)),
                List.of(),
                List.of(),
                Optional.of("Ж".repeat(900)),
                List.of("x".repeat(900), ""));
        String text = text(BenchCard.of(odd, Paper.A4));
        assertThat(text).contains("Ножки <b>&\"'</b> ??").contains("λόγος").contains("?");
    }
}
