package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.Samples;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Details;
import turnalike.pattern.Fillet;
import turnalike.pattern.Pattern;
import turnalike.pattern.Stock;
import turnalike.sheets.PdfReading.Painted;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The template read back from its PDF: its profile true to 0.02 mm on every strip. */
class TemplateSheetsTest {
    private static final double TRUE_MM = 0.02;

    @Test
    void the_profile_is_true_to_size_on_every_strip() {
        for (Pattern pattern : List.of(Samples.three(), Samples.spoke(), Samples.newel())) {
            Outline outline = pattern.outline();
            List<Outline.Station> stations = outline.stations();
            for (Paper paper : Paper.values()) {
                double seen = 0;
                for (Painted card : cards(TemplateSheets.of(pattern, UnitSystem.METRIC, paper))) {
                    // The whole card is painted on every strip and clipped; its own box tells the datum and the back.
                    assertThat(card.width()).isCloseTo(pattern.length().mm(), within(TRUE_MM));
                    double axis = card.most(1) + outline.smallestRadius().mm();
                    double datum = card.least(0);
                    double back = card.least(1);
                    for (double[] point : card.points()) {
                        double x = point[0] - datum;
                        boolean profile = point[1] > back + 1
                                && x > 0.05
                                && x < pattern.length().mm() - 0.05;
                        assertThat(!profile || onOutline(outline, stations, x, axis - point[1]))
                                .as("%s at %s mm, radius %s", pattern.name(), x, axis - point[1])
                                .isTrue();
                    }
                    double left = Math.max(card.clip().left(), card.least(0));
                    double right = Math.min(card.clip().right(), card.most(0));
                    seen += right - left;
                }
                assertThat(seen)
                        .as("strips overlap and leave nothing out")
                        .isGreaterThanOrEqualTo(pattern.length().mm() - TRUE_MM);
            }
        }
    }

    /** Flattened curves may stray by a hair more than lines do; upright shoulders are met within a hair along the axis. */
    private static boolean onOutline(Outline outline, List<Outline.Station> stations, double xMm, double radiusMm) {
        List<Double> near = new ArrayList<>();
        for (double hair = -0.02; hair <= 0.0201; hair += 0.004) {
            near.add(outline.radiusAt(Length.ofMm(xMm + hair)).mm());
        }
        // Both sides of a shoulder, and the ends of arcs, which stand upright there.
        stations.stream()
                .filter(station -> Math.abs(station.place().mm() - xMm) < 0.02)
                .forEach(station -> near.add(station.radius().mm()));
        double least = Collections.min(near);
        double most = Collections.max(near);
        return radiusMm > least - TRUE_MM && radiusMm < most + TRUE_MM;
    }

    private static List<Painted> cards(Sheet sheet) {
        return PdfReading.painted(sheet.pdf()).stream()
                .filter(painted -> Math.abs(painted.lineWidthMm() - 0.4) < 1e-3 && painted.width() > 50)
                .toList();
    }

    @Test
    void nothing_is_printed_in_the_margin_and_the_check_bars_are_on_every_page() {
        for (Pattern pattern : List.of(Samples.three(), Samples.spoke(), Samples.forty(700), Samples.newel())) {
            for (Paper paper : Paper.values()) {
                Sheet sheet = TemplateSheets.of(pattern, UnitSystem.INCH, paper);
                byte[] pdf = sheet.pdf();
                Margins.assertFree(pdf, sheet.pages().get(0).format());
                CheckBarsReading.assertOnEveryPage(pdf, sheet.pageCount());
            }
        }
    }

    @Test
    void diameters_are_written_where_they_are_taken_and_joints_named() {
        Sheet sheet = TemplateSheets.of(Samples.newel(), UnitSystem.METRIC, Paper.A4);
        byte[] pdf = sheet.pdf();
        StringBuilder text = new StringBuilder();
        for (int page = 1; page <= sheet.pageCount(); page++) {
            text.append(PdfReading.text(pdf, page));
        }
        assertThat(text).contains("Ø", "joint 1, at ", "strip 1 of ");
        assertThat(sheet.files().keySet()).containsExactly("checking-template-a4.pdf", "checking-template-a4.svg");
    }

    @Test
    void a_profile_too_deep_for_the_paper_says_what_to_do() {
        Pattern deep = new Pattern(
                "deep",
                new Stock(Section.ROUND, Length.ofMm(460), Length.ofMm(100)),
                List.of(
                        new Fillet(Length.ofMm(50), Length.ofMm(450), Details.NONE),
                        new Fillet(Length.ofMm(50), Length.ofMm(20), Details.NONE)));
        Sheet sheet = TemplateSheets.of(deep, UnitSystem.METRIC, Paper.A4);
        assertThat(sheet.pageCount()).isOne();
        assertThat(PdfReading.text(sheet.pdf(), 1))
                .contains("more than this paper takes")
                .contains("DXF");
        Margins.assertFree(sheet.pdf(), Paper.A4.landscape());
    }
}
