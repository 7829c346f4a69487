package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import turnalike.drawing.gauge.LegGuide;
import turnalike.drawing.gauge.RailStick;
import turnalike.drawing.gauge.SeatTemplate;
import turnalike.drawing.svg.Lettered;
import turnalike.drawing.svg.Pen;
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
            assertThat(stick).contains("end to end: 80 in", "60° off square", "3/4 in and 5/8 in", "a scrap first");
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

    /** Of several lengths each stands on a tread of its own: only the upper rail is straight, and only it is marked and sloped. */
    @Test
    void a_stair_of_several_lengths_marks_its_upper_rail_alone() throws IOException {
        String text = Files.readString(Path.of("src/test/resources/turnalike/job/good/post.job.json"))
                .replace("\"count\": 2", """
                        "count": 2, "frame": {"kind": "row", "clear": "30", "rake_deg": 30, "lengths_stand": "in_turn",
                         "lengths": [{"stretch": 0, "length": "12", "count": 1}, {"stretch": 0, "length": "14", "count": 1}]}""");
        Plan plan = Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(2000));
        assertThat(text(PlanSheet.RAIL_STICK.of(plan, Paper.A4)))
                .contains(
                        "Prick every cross on the upper rail; each piece stands plumb below its own.",
                        "Cut its upper end 30° off square, the lower one to what it stands on.")
                .doesNotContain("both rails");
    }

    /** Nothing is bored for a piece that has no tenon. */
    @Test
    void a_row_of_square_ended_pieces_is_told_how_to_cut_them_and_not_to_bore() throws IOException {
        for (String rake : List.of("30", "0")) {
            String post = Files.readString(Path.of("src/test/resources/turnalike/job/good/post.job.json"))
                    .replace(
                            "\"count\": 2",
                            "\"frame\": {\"kind\": \"row\", \"places\": 2, \"clear\": \"40\", \"rake_deg\": " + rake
                                    + "}");
            Plan plan = Plan.of(JobReader.read(post).job().orElseThrow(), Effort.ofAsks(2000));
            String cut = rake.equals("0") ? "Cut its ends square." : "Cut its ends 30° off square.";
            assertThat(text(PlanSheet.RAIL_STICK.of(plan, Paper.LETTER)))
                    .contains("No tenons: each cross is a piece's middle. " + cut)
                    .doesNotContainIgnoringCase("bore");
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

    /** Whoever holds a page of the seat must know which hole it is: three legs whose first hole lies near a joint of the A4 pages. */
    @Test
    void every_page_that_shows_a_hole_names_it() throws IOException {
        Plan plan =
                plan("legs", "{\"kind\": \"legs\", \"places\": 3, \"rake_deg\": 14, \"height\": 17, \"apart\": [9]}");
        for (Paper paper : Paper.values()) {
            Sheet sheet = PlanSheet.SEAT_TEMPLATE.of(plan, paper);
            Set<Integer> bored = new TreeSet<>();
            for (PdfReading.Painted each : PdfReading.painted(sheet.pdf())) {
                boolean hole = Math.abs(each.width() - 19.05) < 0.05
                        && Math.abs(each.most(1) - each.least(1) - 19.05) < 0.05
                        && each.least(0) > each.clip().left()
                        && each.most(0) < each.clip().right()
                        && each.least(1) > each.clip().top()
                        && each.most(1) < each.clip().bottom();
                if (hole) {
                    bored.add(each.page());
                }
            }
            assertThat(bored).hasSizeGreaterThan(1);
            try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
                for (int page = 1; page <= document.getNumberOfPages(); page++) {
                    PDFTextStripper stripper = new PDFTextStripper();
                    stripper.setStartPage(page);
                    stripper.setEndPage(page);
                    boolean named = stripper.getText(document).matches("(?s).*hole [123].*");
                    assertThat(named || !bored.contains(page))
                            .as("%s, page %d", paper, page)
                            .isTrue();
                }
            }
        }
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

    /** Every hole, wherever it lies on whichever page, taken back into the seat; no joint passes through one. */
    @Test
    void the_seats_holes_are_on_the_paper_where_they_are_in_the_seat() throws IOException {
        Plan plan = plan(
                "legs",
                "{\"kind\": \"legs\", \"places\": 4, \"rake_deg\": 12, \"splay_deg\": 9, \"height\": 8, \"apart\": [9, 13]}");
        for (Paper paper : Paper.values()) {
            Sheet sheet = PlanSheet.SEAT_TEMPLATE.of(plan, paper);
            assertThat(text(sheet)).contains("14.8° off upright", "hole 1", "hole 4", "a scrap first");
            assertThat(sheet.pageCount())
                    .as("one for each hole, and none with only centre lines")
                    .isEqualTo(4);
            Set<String> holes = new TreeSet<>();
            Set<Integer> pages = new TreeSet<>();
            for (PdfReading.Painted each : PdfReading.painted(sheet.pdf())) {
                boolean hole = Math.abs(each.width() - 19.05) < 0.05
                        && Math.abs(each.most(1) - each.least(1) - 19.05) < 0.05
                        && each.least(0) > each.clip().left()
                        && each.most(0) < each.clip().right()
                        && each.least(1) > each.clip().top()
                        && each.most(1) < each.clip().bottom();
                if (hole) {
                    PlacedDrawing tile =
                            sheet.pages().get(each.page() - 1).drawings().get(0);
                    double x = (each.least(0) + each.most(0)) / 2 - tile.right().mm();
                    double y = (each.least(1) + each.most(1)) / 2 - tile.down().mm();
                    pages.add(each.page());
                    holes.add(Math.round(10 * (x - 34 - 19.05 / 2)) + " " + Math.round(10 * (y - 34 - 19.05 / 2)));
                }
            }
            // 13 in across and 9 in from front to back, in tenths of a millimetre.
            assertThat(pages).containsExactly(1, 2, 3, 4);
            assertThat(holes).containsExactlyInAnyOrder("0 0", "3302 0", "0 2286", "3302 2286");
        }
    }

    /** The sight line through a hole leaves toward the foot: front right and out at atan(tan 9 / tan 12) from front to back. */
    @Test
    void the_sight_lines_point_outward() {
        SeatTemplate.Hole hole = new SeatTemplate.Hole(
                Length.ofMm(100),
                Length.ofMm(80),
                Length.ofMm(Math.tan(Math.toRadians(9)) * 400),
                Length.ofMm(Math.tan(Math.toRadians(12)) * 400));
        SeatTemplate template = new SeatTemplate(List.of(hole), Length.ofMm(20));
        turnalike.drawing.svg.Path sight = (turnalike.drawing.svg.Path) template.bare().shapes().stream()
                .filter(each -> each instanceof turnalike.drawing.svg.Path path && path.pen() == Pen.ACCENT)
                .findFirst()
                .orElseThrow();
        turnalike.drawing.svg.Path.Straight end =
                (turnalike.drawing.svg.Path.Straight) sight.steps().get(1);
        double right = end.xMm() - template.across(hole).mm();
        double up = template.down(hole).mm() - end.yMm();
        assertThat(Math.toDegrees(Math.atan2(right, up))).isCloseTo(36.69, within(0.01));
        assertThatThrownBy(() -> new SeatTemplate(List.of(), Length.ofMm(20)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void leaning_legs_have_a_guide_and_upright_ones_none() throws IOException {
        Plan leaning =
                plan("legs", "{\"kind\": \"legs\", \"places\": 4, \"rake_deg\": 12, \"splay_deg\": 9, \"height\": 8}");
        assertThat(text(PlanSheet.LEG_GUIDE.of(leaning, Paper.A4)))
                .contains("36.7°", "14.8°", "Bore a scrap", "licensed practice");
        Plan upright = plan("legs", "{\"kind\": \"legs\", \"places\": 4, \"height\": 8, \"apart\": [9, 9]}");
        assertThat(text(PlanSheet.SEAT_TEMPLATE.of(upright, Paper.A4))).contains("(19 mm), upright; a scrap first");
        assertThat(PlanSheet.of(upright)).contains(PlanSheet.FRAME).doesNotContain(PlanSheet.LEG_GUIDE);
    }
}
