package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import turnalike.sheets.PdfReading.Painted;

/** Finds the check bars in a PDF. */
final class CheckBarsReading {
    private CheckBarsReading() {}

    /** Two level lines of each length, the upper and lower edge of its bar, and an upright line across each of their ends. */
    static void assertOnEveryPage(byte[] pdf, int pages) {
        List<Painted> painted = PdfReading.painted(pdf);
        for (int number = 1; number <= pages; number++) {
            int page = number;
            for (double length : new double[] {100, 101.6}) {
                List<Painted> edges = painted.stream()
                        .filter(each -> each.page() == page && each.height() < 1e-3)
                        .filter(each -> Math.abs(each.width() - length) < 0.02)
                        .toList();
                assertThat(edges).as("bar of %s mm on page %d", length, page).hasSizeGreaterThanOrEqualTo(2);
                for (double end :
                        new double[] {edges.get(0).least(0), edges.get(0).most(0)}) {
                    assertThat(painted.stream()
                                    .filter(each -> each.page() == page && each.width() < 1e-3)
                                    .filter(each -> Math.abs(each.least(0) - end) < 0.02)
                                    .filter(each -> each.least(1) < edges.get(0).least(1)))
                            .as("end line of the %s mm bar", length)
                            .isNotEmpty();
                }
            }
        }
    }
}
