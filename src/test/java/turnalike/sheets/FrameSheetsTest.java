package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import turnalike.cli.match.MatchSummary;
import turnalike.drawing.gauge.PlacedName;
import turnalike.drawing.gauge.RimTemplate;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.TextLine;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelFit;
import turnalike.pieces.PiecesFile;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** A wheel's own sheets, and what every sheet says where it cannot be built. */
class FrameSheetsTest {
    private static Plan plan(String hubRadius) throws IOException {
        String text = Files.readString(Path.of("src/test/resources/turnalike/job/good/wheel.job.json"))
                .replace("\"hub_radius\": \"3\"", "\"hub_radius\": \"" + hubRadius + "\"");
        return Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(2000));
    }

    private static List<String> pages(Sheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
            PDFTextStripper stripper = new PDFTextStripper();
            List<String> out = new java.util.ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                out.add(stripper.getText(document));
            }
            return out;
        }
    }

    @Test
    void a_wheel_has_its_picture_and_a_strip_for_hub_and_rim() throws IOException {
        Plan plan = plan("3");
        assertThat(plan.frame().orElseThrow().buildable()).isTrue();
        assertThat(PlanSheet.of(plan))
                .containsExactlyElementsOf(Stream.of(PlanSheet.values())
                        .filter(each -> !Set.of(
                                        PlanSheet.RAIL_STICK,
                                        PlanSheet.LEG_GUIDE,
                                        PlanSheet.SEAT_TEMPLATE,
                                        PlanSheet.JOINTS)
                                .contains(each))
                        .toList());
        assertThat(String.join("", pages(PlanSheet.FRAME.of(plan, Paper.A4))))
                .contains("a wheel of 5 places", "of wood between two mortises", "bore a scrap")
                .doesNotContain("annot be built");
        String strip = String.join("", pages(PlanSheet.HUB_STRIP.of(plan, Paper.LETTER)));
        assertThat(strip).contains("18 27/32 in", "Bore 3/4 in");
    }

    /** A rim of five places as tall as a man has no template: the chords of a pentagon, 2 R sin 36 and 2 R sin 72, in its place. */
    @Test
    void a_rim_too_large_for_paper_is_told_by_a_trammel() throws IOException {
        assertThat(String.join("", pages(PlanSheet.FRAME.of(plan("3"), Paper.A4))))
                .doesNotContain("trammel");
        Plan plan = plan("90");
        WheelFit fit = (WheelFit) plan.frame().orElseThrow();
        assertThat(PlanSheet.of(plan)).doesNotContain(PlanSheet.RIM_TEMPLATE);
        assertThat(PlanSheet.insteadOf(plan, Paper.A4).get(0)).contains("more than the 40 that anybody joins");
        assertThat(PlanSheet.insteadOf(plan("3"), Paper.A4)).isEmpty();
        double inner = fit.innerRadius().mm();
        String said = String.join("", pages(PlanSheet.FRAME.of(plan, Paper.A4))).replaceAll("\\s+", " ");
        assertThat(said)
                .contains(
                        "more than the 40 that anybody joins",
                        "the other at " + fit.innerRadius().formatBoth(UnitSystem.INCH),
                        "2 and 5, 72°, " + chord(inner, 36),
                        "3 and 4, 144°, " + chord(inner, 72));
    }

    private static String chord(double radiusMm, double halfDegrees) {
        return Length.ofMm(2 * radiusMm * Math.sin(Math.toRadians(halfDegrees))).format(UnitSystem.INCH);
    }

    @Test
    void every_sheet_says_that_it_cannot_be_built() throws IOException {
        Plan plan = plan("3/4");
        assertThat(plan.frame().orElseThrow().buildable()).isFalse();
        for (PlanSheet kind : PlanSheet.of(plan)) {
            for (Paper paper : Paper.values()) {
                assertThat(pages(kind.of(plan, paper)))
                        .as("%s, %s", kind.title(), paper)
                        .allSatisfy(page ->
                                assertThat(page.replaceAll("\\s+", " ")).containsIgnoringCase("cannot be built"));
            }
        }
        for (String page : pages(PlanSheet.HUB_STRIP.of(plan, Paper.LETTER))) {
            assertThat(page).contains("The frame cannot be built: see the bench card");
        }
    }

    /** A record is of a set that has nowhere to stand: that comes before how well it is balanced, in print and on the console. */
    @Test
    void the_record_of_a_set_says_it_before_all_else() throws IOException {
        String text = Files.readString(Path.of("src/test/resources/turnalike/job/good/wheel.job.json"))
                .replace("\"hub_radius\": \"3\"", "\"hub_radius\": \"3/4\"");
        Job job = JobReader.read(text).job().orElseThrow();
        StringBuilder csv = new StringBuilder("piece,mass_g\n");
        for (int i = 1; i <= job.count(); i++) {
            csv.append(i).append(",150\n");
        }
        SetMatch set = MatchJob.of(
                job, PiecesFile.parse(csv.toString(), UnitSystem.INCH).pieces(), false, Effort.ofAsks(1000));
        assertThat(set.unbuildable()).isNotEmpty();
        assertThat(set.otherWarnings()).noneMatch(each -> each.contains("cannot be built"));
        String record = pages(SetSheets.record(job.title(), "", set, job.pattern(), Paper.A4))
                .get(0)
                .replaceAll("\\s+", " ");
        assertThat(record.indexOf("Cannot be built as drawn")).isPositive().isLessThan(record.indexOf("unbalance"));
        assertThat(MatchSummary.text(set).lines().findFirst().orElseThrow()).contains(": cannot be built: ");
    }

    /** Every mouth, on whichever page, taken back round the axle. */
    @Test
    void the_rims_places_are_on_the_paper_where_they_are_in_the_rim() throws IOException {
        Plan plan = plan("3");
        WheelFit fit = (WheelFit) plan.frame().orElseThrow();
        double inner = fit.innerRadius().mm();
        double middle = fit.outerRadius().orElseThrow().mm() + 12;
        for (Paper paper : Paper.values()) {
            Sheet sheet = PlanSheet.RIM_TEMPLATE.of(plan, paper);
            List<String> texts = pages(sheet);
            Set<Integer> found = new TreeSet<>();
            for (PdfReading.Painted each : PdfReading.painted(sheet.pdf())) {
                boolean cross = each.points().size() == 2
                        && Math.abs(Math.hypot(each.width(), each.height()) - 8) < 0.02
                        && each.least(0) > each.clip().left()
                        && each.most(0) < each.clip().right()
                        && each.least(1) > each.clip().top()
                        && each.most(1) < each.clip().bottom();
                if (cross) {
                    PlacedDrawing tile =
                            sheet.pages().get(each.page() - 1).drawings().get(0);
                    assertThat(texts.get(each.page() - 1)).containsPattern(TILE);
                    double x = (each.least(0) + each.most(0)) / 2 - tile.right().mm() - middle;
                    double y = middle
                            - ((each.least(1) + each.most(1)) / 2 - tile.down().mm());
                    assertThat(Math.hypot(x, y)).isCloseTo(inner, within(0.02));
                    double place = Math.toDegrees(Math.atan2(y, x)) / 72;
                    assertThat(place).isCloseTo(Math.rint(place), within(0.001));
                    found.add(Math.floorMod((int) Math.rint(place), 5));
                }
            }
            assertThat(found).containsExactly(0, 1, 2, 3, 4);
            String all = String.join(" ", texts).replaceAll("\\s+", " ");
            assertThat(all).contains("5/8 in (15.9 mm), 3/4 in (19 mm) deep", "a scrap first");
            for (int place = 1; place <= 5; place++) {
                assertThat(texts).as("number %d", place).anyMatch(alone(place));
            }
        }
    }

    private static final Pattern TILE = Pattern.compile("row (\\d+) of \\d+, column (\\d+) of");

    private static Predicate<String> alone(int place) {
        return Pattern.compile("(?m)^\\s*%d\\s*$".formatted(place)).asPredicate();
    }

    /** What one page and its neighbour both show is laid over one another on the same line of the drawing, 6 mm inside of each. */
    @Test
    void neighbours_share_the_line_they_are_joined_on() throws IOException {
        Sheet sheet = PlanSheet.RIM_TEMPLATE.of(plan("3"), Paper.A4);
        List<PlacedDrawing> tiles =
                sheet.pages().stream().map(page -> page.drawings().get(0)).toList();
        for (PlacedDrawing one : tiles) {
            for (PlacedDrawing other : tiles) {
                double shared = one.window()
                        .orElseThrow()
                        .to()
                        .minus(other.window().orElseThrow().from())
                        .mm();
                boolean right = one.window()
                                .orElseThrow()
                                .from()
                                .compareTo(other.window().orElseThrow().from())
                        < 0;
                if (right && shared > 0) {
                    assertThat(shared).isCloseTo(12, within(1e-9));
                }
            }
        }
    }

    /** Wherever the joints of the pages fall, each number stands on a page, and no page is left out that holds any of the drawing. */
    @Test
    void no_number_is_lost_between_two_pages() {
        for (int step = 0; step < 12; step++) {
            RimTemplate template = new RimTemplate(
                    24,
                    Length.ofMm(290 + 7.3 * step),
                    Optional.of(Length.ofMm(340 + 7.3 * step)),
                    Length.ofMm(16),
                    Length.ofMm(20),
                    Optional.empty());
            TiledSheets.Subject subject = new TiledSheets.Subject(
                    "rim",
                    "rim",
                    List.of(),
                    template.whole(),
                    template.bare(),
                    template.numbers().stream().map(PlacedName::of).toList(),
                    template::touches);
            Sheet sheet = TiledSheets.of(subject, Paper.A4);
            assertThat(sheet.pageCount()).isEqualTo(TiledSheets.pages(subject, Paper.A4));
            Set<String> numbers = new TreeSet<>();
            for (PdfPages.Page page : sheet.pages()) {
                page.drawings().stream()
                        .flatMap(placed -> placed.drawing().shapes().stream())
                        .filter(TextLine.class::isInstance)
                        .map(shape -> ((TextLine) shape).text())
                        .filter(text -> text.matches("\\d+"))
                        .forEach(numbers::add);
            }
            assertThat(numbers).as("inside %.1f mm", 290 + 7.3 * step).hasSize(24);
        }
    }

    @Test
    void the_empty_middle_of_a_ring_is_no_page() {
        RimTemplate template = new RimTemplate(
                6, Length.ofMm(300), Optional.of(Length.ofMm(350)), Length.ofMm(16), Length.ofMm(20), Optional.empty());
        // The axle lies at 362 mm both ways; places stand at every 60 degrees, their lines from 292 to 358 mm of it.
        assertThat(template.width().mm()).isCloseTo(724, within(1e-9));
        assertThat(template.touches(new Box(192, 192, 532, 532))).isFalse(); // corners 240 mm from the axle
        assertThat(template.touches(new Box(152, 152, 572, 572))).isFalse(); // corners 297 mm, and no line there
        assertThat(template.touches(new Box(149, 149, 575, 575))).isTrue(); // corners 301 mm, past the inside
        assertThat(template.touches(new Box(646, 352, 656, 372))).isTrue(); // 284 to 294 mm: where a line begins
        assertThat(template.touches(new Box(0, 0, 60, 60))).isFalse(); // 427 mm, beyond the drawing's 362
        assertThat(template.touches(new Box(0, 292, 60, 432))).isTrue();
        // A corner just beyond the ring, between two places: nothing is drawn there.
        assertThat(template.touches(new Box(612, 54, 724, 110))).isFalse(); // from 355 mm, at 45 degrees
        assertThat(template.touches(new Box(714, 352, 724, 372))).isTrue(); // from 352 mm: a line's end
        assertThatThrownBy(() -> new RimTemplate(
                        6, Length.ofMm(8), Optional.empty(), Length.ofMm(16), Length.ofMm(20), Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_job_without_a_wheel_has_none_of_them() throws IOException {
        String text = Files.readString(Path.of("src/test/resources/turnalike/job/good/post.job.json"));
        Plan plan = Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(2000));
        assertThat(PlanSheet.of(plan))
                .containsExactly(
                        PlanSheet.BENCH_CARD,
                        PlanSheet.MARKING_STICK,
                        PlanSheet.CHECKING_TEMPLATE,
                        PlanSheet.CUT_ORDER);
    }
}
