package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.photo.SheetSquares;
import turnalike.sheets.PdfReading.Painted;

/** The sheet of squares read back from its PDF. */
class PhotoSheetsTest {
    @Test
    void each_page_has_its_own_squares_at_their_true_places_on_either_paper() {
        for (Paper paper : Paper.values()) {
            byte[] pdf = PhotoSheets.of(2, paper).pdf();
            double middleX = paper.landscape().width().mm() / 2;
            double middleY = paper.landscape().height().mm() / 2;
            for (int number = 1; number <= 2; number++) {
                int page = number;
                List<Painted> squares = PdfReading.painted(pdf).stream()
                        .filter(each -> each.page() == page)
                        .filter(each -> Math.abs(each.width() - SheetSquares.SIDE.mm()) < 0.01
                                && Math.abs(each.height() - SheetSquares.SIDE.mm()) < 0.01)
                        .toList();
                assertThat(squares).hasSize(SheetSquares.ON_PAGE);
                for (SheetSquares.Place place : SheetSquares.ofPage(page)) {
                    double x = middleX + place.right().mm() - SheetSquares.SIDE.mm() / 2;
                    double y = middleY + place.down().mm() - SheetSquares.SIDE.mm() / 2;
                    assertThat(squares)
                            .as("square %d on %s", place.number(), paper)
                            .anySatisfy(each -> {
                                assertThat(each.least(0)).isCloseTo(x, within(0.02));
                                assertThat(each.least(1)).isCloseTo(y, within(0.02));
                            });
                }
            }
        }
    }

    @Test
    void the_check_bars_are_true_and_the_margin_is_free() {
        for (Paper paper : Paper.values()) {
            byte[] pdf = PhotoSheets.of(3, paper).pdf();
            CheckBarsReading.assertOnEveryPage(pdf, 3);
            Margins.assertFree(pdf, paper.landscape());
        }
    }

    @Test
    void pages_say_which_they_are() {
        byte[] pdf = PhotoSheets.of(3, Paper.A4).pdf();
        assertThat(PdfReading.text(pdf, 2)).contains("page 2 of 3").contains("--bar");
    }
}
