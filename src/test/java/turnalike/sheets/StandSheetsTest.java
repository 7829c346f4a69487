package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import turnalike.drawing.gauge.LegGuide;
import turnalike.drawing.gauge.RailStick;
import turnalike.drawing.svg.Lettered;
import turnalike.effort.Effort;
import turnalike.frame.LegAngles;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What rails and seats are bored by, read back from the paper. */
class StandSheetsTest {
    private static Plan plan(String kind, String frame) throws IOException {
        String text = Files.readString(Path.of("src/test/resources/turnalike/job/good/" + kind + ".job.json"))
                .replaceFirst("(?s)\"frame\": \\{(?:[^{}]|\\{[^{}]*})*}", "\"frame\": " + frame);
        return Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(2000));
    }

    private static String text(Sheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void a_raked_row_has_a_stick_as_long_as_its_rail_is_along_the_slope() throws IOException {
        Plan plan = plan("row", "{\"kind\": \"row\", \"places\": 6, \"clear\": \"40\", \"rake_deg\": 60}");
        assertThat(PlanSheet.of(plan)).contains(PlanSheet.FRAME, PlanSheet.RAIL_STICK);
        for (Paper paper : Paper.values()) {
            String stick = text(PlanSheet.RAIL_STICK.of(plan, paper));
            assertThat(stick)
                    .contains("end to end: 80 in", "60.0 degrees off square", "3/4 in and 5/8 in", "a scrap first");
        }
        for (PdfPages.Page page : PlanSheet.RAIL_STICK.of(plan, Paper.LETTER).pages()) {
            List<Lettered.Box> boxes = page.drawings().stream()
                    .flatMap(placed -> Lettered.boxes(placed.drawing()).stream()
                            .map(box -> new Lettered.Box(
                                    box.text(),
                                    box.left() + placed.right().mm(),
                                    box.top() + placed.down().mm(),
                                    box.right() + placed.right().mm(),
                                    box.bottom() + placed.down().mm()))
                            .filter(box -> placed.shown().holds(box.left(), box.right())))
                    .toList();
            assertThat(Lettered.overlaps(boxes)).isEmpty();
        }
    }

    @Test
    void the_stick_has_both_faces_and_every_axis() {
        RailStick stick = new RailStick(
                Length.ofMm(500),
                List.of(Length.ofMm(100), Length.ofMm(250), Length.ofMm(400)),
                List.of(Length.ofMm(19)));
        assertThat(stick.listPlaces().stream().map(Length::mm)).containsExactly(0.0, 100.0, 250.0, 400.0, 500.0);
        String svg = stick.svg(UnitSystem.METRIC).file();
        for (Length place : stick.listPlaces()) {
            assertThat(svg)
                    .contains("M%s ".formatted(number(place.plus(stick.datum()).mm())));
        }
    }

    private static String number(double mm) {
        return mm == Math.rint(mm) ? Long.toString((long) mm) : Double.toString(mm);
    }

    /** Each red line of the guide, as it is drawn, stands at its true angle to the upright one. */
    @Test
    void the_guide_draws_both_angles_true() {
        LegAngles angles = new LegAngles(Angle.ofDegrees(13), Angle.ofDegrees(8));
        String svg = new LegGuide(angles, false).svg().file();
        List<Double> drawn = java.util.regex.Pattern.compile(
                        "p-accent\"[^>]*d=\"M([\\d.]+) ([\\d.]+)L([\\d.]+) ([\\d.]+)\"|d=\"M([\\d.]+) ([\\d.]+)L([\\d.]+) ([\\d.]+)\"[^>]*p-accent\"")
                .matcher(svg)
                .results()
                .map(match -> {
                    int at = match.group(1) != null ? 1 : 5;
                    double right = Double.parseDouble(match.group(at + 2)) - Double.parseDouble(match.group(at));
                    double up = Double.parseDouble(match.group(at + 1)) - Double.parseDouble(match.group(at + 3));
                    return Math.toDegrees(Math.atan2(right, up));
                })
                .toList();
        assertThat(drawn).as(svg).hasSize(2);
        assertThat(drawn.get(0)).isCloseTo(angles.sight().degrees(), within(0.01));
        assertThat(drawn.get(1)).isCloseTo(angles.lean().degrees(), within(0.01));
    }

    @Test
    void leaning_legs_have_a_guide_and_upright_ones_none() throws IOException {
        Plan leaning =
                plan("legs", "{\"kind\": \"legs\", \"places\": 4, \"rake_deg\": 12, \"splay_deg\": 9, \"height\": 8}");
        assertThat(text(PlanSheet.LEG_GUIDE.of(leaning, Paper.A4)))
                .contains("36.7 degrees", "14.8 degrees", "Bore a scrap", "licensed practice");
        Plan upright = plan("legs", "{\"kind\": \"legs\", \"places\": 4, \"height\": 8}");
        assertThat(PlanSheet.of(upright)).contains(PlanSheet.FRAME).doesNotContain(PlanSheet.LEG_GUIDE);
    }
}
