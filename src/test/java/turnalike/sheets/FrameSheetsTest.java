package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;

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

    @Test
    void every_sheet_says_that_it_cannot_be_built() throws IOException {
        Plan plan = plan("3/4");
        assertThat(plan.frame().orElseThrow().buildable()).isFalse();
        for (PlanSheet kind : PlanSheet.of(plan)) {
            assertThat(pages(kind.of(plan, Paper.A4)).get(0).replaceAll("\\s+", " "))
                    .as(kind.title())
                    .containsIgnoringCase("cannot be built");
        }
        for (String page : pages(PlanSheet.HUB_STRIP.of(plan, Paper.LETTER))) {
            assertThat(page).contains("The frame cannot be built: see the bench card");
        }
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
