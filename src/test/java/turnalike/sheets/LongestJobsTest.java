package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.drawing.svg.Lettered;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.read.JobReader;
import turnalike.language.Language;
import turnalike.language.Speech;
import turnalike.sheets.PdfReading.Painted;
import turnalike.units.UnitSystem;

/** The longest job of every kind, invented, on both papers: nothing overprints, nothing runs off the page, nothing is lost. */
class LongestJobsTest {
    private static final double MARGIN_MM = 10;
    private static final double HAIR_MM = 0.45; // half the heaviest line

    private static Plan plan(String name) throws IOException {
        String text = Files.readString(Path.of("src/test/resources/turnalike/sheets", name + ".job.json"));
        return Plan.of(JobReader.read(text).job().orElseThrow(), Effort.ofAsks(1000));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "longpost",
                "wheel24",
                "row100",
                "legs8",
                "finial",
                "orders/balusters",
                "orders/post",
                "orders/finial",
                "orders/legs",
                "orders/wheel"
            })
    void nothing_overprints_or_leaves_the_page(String name) throws IOException {
        Plan plan = plan(name);
        for (Paper paper : papers(name, plan)) {
            for (PlanSheet kind : PlanSheet.of(plan)) {
                Sheet english = kind.of(plan, paper);
                assertLettering(english, name);
                assertLines(english, name);
                // Words are measured while a sheet is drawn, so another language is another layout.
                assertLettering(Speech.in(Language.GERMAN, () -> kind.of(plan, paper)), name + " in German");
            }
        }
    }

    private static void assertLettering(Sheet sheet, String name) {
        for (int i = 0; i < sheet.pages().size(); i++) {
            assertLettering(sheet.pages().get(i), "%s, %s, page %d".formatted(sheet.name(), name, i + 1));
        }
    }

    /** The orders stand on their own paper alone. */
    private static List<Paper> papers(String name, Plan plan) {
        boolean inches = plan.job().units() == UnitSystem.INCH;
        return name.startsWith("orders/") ? List.of(inches ? Paper.LETTER : Paper.A4) : List.of(Paper.values());
    }

    private static void assertLettering(PdfPages.Page page, String where) {
        List<Lettered.Box> boxes = new ArrayList<>();
        for (PlacedDrawing placed : page.drawings()) {
            for (Lettered.Box box : Lettered.boxes(placed.drawing())) {
                double right = placed.right().mm();
                double down = placed.down().mm();
                Lettered.Box there = new Lettered.Box(
                        box.text(), box.left() + right, box.top() + down, box.right() + right, box.bottom() + down);
                if (placed.shown().holds(there.left(), there.right())) {
                    boxes.add(there);
                }
            }
        }
        assertThat(Lettered.overlaps(boxes)).as(where).isEmpty();
        double width = page.format().width().mm();
        double height = page.format().height().mm();
        assertThat(boxes).as(where).isNotEmpty().allSatisfy(box -> {
            assertThat(box.left()).as(box.text()).isGreaterThan(MARGIN_MM - HAIR_MM);
            assertThat(box.top()).as(box.text()).isGreaterThan(MARGIN_MM - HAIR_MM);
            assertThat(box.right()).as(box.text()).isLessThan(width - MARGIN_MM + HAIR_MM);
            assertThat(box.bottom()).as(box.text()).isLessThan(height - MARGIN_MM + HAIR_MM);
        });
    }

    private static void assertLines(Sheet sheet, String name) {
        List<Painted> painted = PdfReading.painted(sheet.pdf());
        for (Painted each : painted) {
            Paper.Format format = sheet.pages().get(each.page() - 1).format();
            String where = "%s, %s, page %d".formatted(sheet.name(), name, each.page());
            double right = format.width().mm() - MARGIN_MM + HAIR_MM;
            double bottom = format.height().mm() - MARGIN_MM + HAIR_MM;
            assertThat(Math.max(each.least(0), each.clip().left())).as(where).isGreaterThan(MARGIN_MM - HAIR_MM);
            assertThat(Math.max(each.least(1), each.clip().top())).as(where).isGreaterThan(MARGIN_MM - HAIR_MM);
            assertThat(Math.min(each.most(0), each.clip().right())).as(where).isLessThan(right);
            assertThat(Math.min(each.most(1), each.clip().bottom())).as(where).isLessThan(bottom);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"longpost", "row100"})
    void every_caution_and_every_member_to_size_is_printed_whole(String name) throws IOException {
        Plan plan = plan(name);
        for (Paper paper : Paper.values()) {
            String card = text(PlanSheet.BENCH_CARD.of(plan, paper), "100 mm");
            plan.warnings().forEach(warning -> assertThat(card).contains(squeezed(warning.sentence())));
            assertThat(card).contains(squeezed(plan.job().wood().text()));
            String cuts = text(PlanSheet.CUT_ORDER.of(plan, paper), plan.job().title());
            plan.turning().cuts().forEach(cut -> assertThat(cuts)
                    .contains(squeezed(cut.what().substring(1))));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"longpost", "legs8"})
    void a_stick_in_strips_says_how_long_it_must_be_when_joined(String name) throws IOException {
        Plan plan = plan(name);
        for (Paper paper : Paper.values()) {
            for (PlanSheet kind : List.of(PlanSheet.MARKING_STICK, PlanSheet.CHECKING_TEMPLATE)) {
                Sheet sheet = kind.of(plan, paper);
                for (int page = 1; page <= sheet.pageCount(); page++) {
                    assertThat(PdfReading.text(sheet.pdf(), page))
                            .contains("Joined, end to end: "
                                    + plan.job()
                                            .pattern()
                                            .length()
                                            .formatBoth(plan.job().units()))
                            .contains("within "
                                    + PlanSheets.within(plan)
                                            .formatBoth(plan.job().units()));
                }
            }
        }
    }

    /**
     * Without white space, and without the words set again where a page begins.
     *
     * @param foot what the foot of each page begins with
     */
    private static String text(Sheet sheet, String foot) {
        StringBuilder out = new StringBuilder();
        byte[] pdf = sheet.pdf();
        for (int page = 1; page <= sheet.pageCount(); page++) {
            String words = PdfReading.text(pdf, page);
            out.append(words, 0, words.lastIndexOf(foot));
        }
        return squeezed(out.toString().replace("Cautions, continued", ""));
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "");
    }
}
