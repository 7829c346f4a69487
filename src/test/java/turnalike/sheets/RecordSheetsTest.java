package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.drawing.chart.Charts;
import turnalike.drawing.frame.FrameView;
import turnalike.drawing.frame.PlacesDrawing;
import turnalike.drawing.frame.RowDrawing;
import turnalike.drawing.frame.WheelDrawing;
import turnalike.drawing.frame.Wheels;
import turnalike.drawing.piece.Samples;
import turnalike.drawing.svg.Lettered;
import turnalike.drawing.svg.Svg;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.job.set.SetMatch;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.control.Signal;
import turnalike.units.Length;
import turnalike.units.Mass;

class RecordSheetsTest {
    private static final Mass FINE = Mass.ofGrams(0.1);
    private static final String HOSTILE = "<b>&\"' Räder 木 ".repeat(12);

    private static SetRecordContent wheel(int places, boolean hostile, Mass scale) {
        String title = hostile ? HOSTILE : "Great wheel, invented";
        return SetRecordContent.ofWheel(title, "3 May 2031", Wheels.wheel(places, hostile, scale));
    }

    private static SetRecordContent row(int places, boolean hostile) {
        return SetRecordContent.ofRow(
                "Stair rail, invented", "3 May 2031", Wheels.row(places, hostile, true), 12.3456, List.of("3", "5"));
    }

    private static Sheet control(boolean hostile, Paper paper) {
        return hostile
                ? ControlSheet.of(Charts.hostile(), new ControlSheet.Heading(HOSTILE, HOSTILE, HOSTILE, HOSTILE), paper)
                : ControlSheet.of(
                        Charts.spokes(24),
                        new ControlSheet.Heading("Weight of the spokes", "3 May 2031", "g", ""),
                        paper);
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
    void a_record_of_a_wheel_is_one_page_with_every_place_spare_figure_and_caution() {
        for (Paper paper : Paper.values()) {
            for (int places : new int[] {3, 12, 24}) {
                SetRecordContent content = wheel(places, false, FINE);
                Sheet sheet = SetRecord.of(content, paper);
                assertThat(sheet.pageCount())
                        .as("%d places on %s", places, paper)
                        .isEqualTo(1);
                String text = text(sheet);
                assertThat(text).contains("Great wheel, invented", "3 May 2031", "page 1 of 1");
                assertThat(text).contains("Keep hands, sleeves and hair clear of a spinning wheel");
                assertThat(text).contains("1 (402.1 g), 2 (431.9 g)", "Unbalance", "noise floor", "Counterweight");
                for (PlacesDrawing.Place place : content.drawing().places()) {
                    assertThat(text)
                            .contains(" %d %s %s %s "
                                    .formatted(place.number(), place.angleText(), place.piece(), place.massText()));
                }
            }
        }
    }

    /** With its four figures, its notes and its cautions: nobody pins up a second sheet for two lines. */
    @Test
    void the_record_of_the_demo_is_one_page_on_either_paper_and_its_four_figures_one_row() throws IOException {
        Job job = JobReader.read(shipped("fair-wheel.job.json")).job().orElseThrow();
        List<Piece> pieces =
                PiecesFile.parse(shipped("fair-wheel-pieces.csv"), job.units()).pieces();
        SetMatch set = MatchJob.of(job, pieces, false, Effort.ofAsks(2000));
        for (Paper paper : Paper.values()) {
            Sheet sheet = SetSheets.record(
                    "Harrowmead fair wheel (an invented order)", "2031-05-03", set, job.pattern(), paper);
            assertThat(sheet.pageCount()).as(paper.label()).isEqualTo(1);
            assertThat(factsApartMm(sheet)).isLessThan(3);
            // What is left may as well be the measures' own errors: no weight is to be screwed on for it.
            assertThat(text(sheet)).contains("no side stands out").doesNotContain("Counterweight: add");
            assertClear(sheet);
        }
    }

    @Test
    void figures_too_wide_for_one_row_are_told_uncut_in_two() {
        SetRecordContent content = wheel(12, false, FINE)
                .with(new BenchCardContent.Fact("run-out of the rim", "0.115 in (2.92 mm), likely", "about it"));
        Sheet sheet = SetRecord.of(content, Paper.A4);
        assertThat(text(sheet)).contains("0.115 in (2.92 mm), likely");
        assertThat(factsApartMm(sheet)).isBetween(14.0, 20.0);
        assertClear(sheet);
    }

    /** From the uppermost of the four names to the lowest: a few tenths in one row, 17 in two. */
    private static double factsApartMm(Sheet sheet) {
        List<String> names = List.of("unbalance", "noise floor", "spread", "run-out of the rim");
        DoubleSummaryStatistics found = Lettered.boxes(sheet.drawings().get(0)).stream()
                .filter(box -> names.contains(box.text()))
                .mapToDouble(Lettered.Box::bottom)
                .summaryStatistics();
        assertThat(found.getCount()).isEqualTo(4);
        return found.getMax() - found.getMin();
    }

    private static String shipped(String name) throws IOException {
        return Files.readString(Path.of("src/main/resources/turnalike/demo", name));
    }

    @Test
    void a_record_says_when_the_scale_sees_no_heavy_side() {
        String text = text(SetRecord.of(wheel(12, false, Mass.ofGrams(10_000)), Paper.A4));
        assertThat(text).contains("balanced to within what your scale can see", "the scale sees none");
        assertThat(text).doesNotContain("Counterweight: add");
    }

    @Test
    void a_record_of_a_row_has_every_place() {
        for (Paper paper : Paper.values()) {
            SetRecordContent content = row(24, false);
            Sheet sheet = SetRecord.of(content, paper);
            assertThat(sheet.pageCount()).isEqualTo(1);
            String text = text(sheet);
            assertThat(text).contains("12.3", "Spares 3, 5").doesNotContain("spinning");
            for (PlacesDrawing.Place place : content.drawing().places()) {
                assertThat(text).contains(" %d %s ".formatted(place.number(), place.piece()));
            }
        }
    }

    @Test
    void a_row_or_legs_are_recorded_with_their_own_outline() {
        for (Paper paper : Paper.values()) {
            for (RowDrawing drawing : List.of(Wheels.row(24, false, true), Wheels.legs(2, 4, false))) {
                Length width = paper.portrait().width().minus(Paper.MARGIN.times(2));
                Optional<Svg> frame = FrameView.row(Samples.newel(), drawing, width);
                SetRecordContent content = SetRecordContent.ofRow("Stair rail, invented", "", drawing, 1, List.of());
                Sheet sheet = SetRecord.of(content, frame, paper);
                assertClear(sheet);
                Margins.assertFree(sheet.pdf(), paper.portrait());
                assertThat(sheet.drawings().get(0).file()).contains(body(frame.orElseThrow()));
                String text = text(sheet);
                drawing.places().forEach(place -> assertThat(text).contains(" " + place.piece() + " "));
            }
        }
    }

    /** The first piece's own drawing. */
    private static String body(Svg frame) {
        String file = frame.file();
        int from = file.indexOf("<path");
        return file.substring(from, file.indexOf("</g>", from));
    }

    @Test
    void long_sets_labels_and_notes_go_on_over_as_many_pages_as_they_need() {
        WheelDrawing drawing = Wheels.wheel(61, true, FINE);
        SetRecordContent plain = SetRecordContent.ofWheel(HOSTILE, "", drawing);
        List<String> notes = new ArrayList<>();
        for (int i = 1; i <= 120; i++) {
            notes.add("Note number " + i + ".");
        }
        Sheet sheet = SetRecord.of(
                new SetRecordContent(
                        List.of(), plain.title(), "", drawing, plain.facts(), plain.spares(), notes, plain.cautions()),
                Paper.LETTER);
        assertThat(sheet.pageCount()).isGreaterThan(3);
        assertThat(sheet.drawings()).hasSize(sheet.pageCount());
        String text = text(sheet);
        for (PlacesDrawing.Place place : drawing.places()) {
            assertThat(text).contains(place.piece() + " " + place.massText());
        }
        assertThat(text).contains(notes).contains("Notes, continued");
        assertClear(sheet);
    }

    @Test
    void a_control_sheet_tells_its_signals_in_words() {
        for (Paper paper : Paper.values()) {
            Sheet sheet = control(false, paper);
            assertThat(sheet.pageCount()).isEqualTo(1);
            String text = text(sheet);
            assertThat(text).contains("Weight of the spokes", "upper 423.4", "centre 413.5", "single values, g");
            for (Signal signal : Charts.spokes(24).signals()) {
                assertThat(text).contains(signal.words());
            }
            String still = text(ControlSheet.of(Charts.still(), new ControlSheet.Heading("x", "", "", ""), paper));
            assertThat(still).contains("Too few to tell: 3 pieces", "trial limits");
        }
    }

    @Test
    void no_lettering_covers_other_lettering_and_nothing_reaches_the_margins() {
        for (Paper paper : Paper.values()) {
            for (boolean hostile : new boolean[] {false, true}) {
                for (int places : new int[] {3, 24, 61}) {
                    assertClear(SetRecord.of(wheel(places, hostile, FINE), paper));
                    assertClear(SetRecord.of(row(places, hostile), paper));
                }
                assertClear(control(hostile, paper));
                Margins.assertFree(control(hostile, paper).pdf(), paper.landscape());
                Margins.assertFree(SetRecord.of(wheel(24, hostile, FINE), paper).pdf(), paper.portrait());
            }
            assertClear(SetRecord.of(wheel(400, false, FINE), paper));
            assertClear(SetRecord.of(row(400, true), paper));
        }
    }

    private static void assertClear(Sheet sheet) {
        for (Svg page : sheet.drawings()) {
            List<Lettered.Box> boxes = Lettered.boxes(page);
            assertThat(Lettered.overlaps(boxes)).as(page.title()).isEmpty();
            double edge = Paper.MARGIN.mm() - 0.1;
            for (Lettered.Box box : boxes) {
                assertThat(box.bottom())
                        .as("%s in %s", box.text(), page.title())
                        .isLessThan(page.height().mm() - edge);
                assertThat(box.right())
                        .as("%s in %s", box.text(), page.title())
                        .isLessThan(page.width().mm() - edge);
            }
        }
    }

    @Test
    void the_svg_beside_the_pdf_is_the_same_picture() throws IOException {
        Sheet record = SetRecord.of(wheel(12, false, FINE), Paper.A4);
        SameAsSvgTest.assertAlike(record.drawings().get(0));
        assertThat(record.files().keySet()).containsExactly("set-record-a4.pdf", "set-record-a4.svg");
        assertThat(control(false, Paper.LETTER).name()).isEqualTo("control-chart-us-letter");
        assertThat(SetRecord.of(wheel(12, false, FINE), Paper.A4).pdf()).isEqualTo(record.pdf());
    }
}
