package turnalike.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.units.Length;

class OutlineTest {
    @Test
    void it_starts_and_ends_with_the_radii_of_its_first_and_last_curve() {
        Outline outline = Outline.of(
                Length.ofMm(7),
                List.of(
                        new Line(Length.ofMm(10), Length.ofMm(4), Length.ofMm(5)),
                        new Line(Length.ofMm(10), Length.ofMm(8), Length.ofMm(6))),
                Section.ROUND);
        assertThat(outline.startRadius()).isEqualTo(Length.ofMm(4));
        assertThat(outline.endRadius()).isEqualTo(Length.ofMm(6));
        assertThat(outline.reversed().startRadius()).isEqualTo(Length.ofMm(6));
        assertThat(outline.reversed().endRadius()).isEqualTo(Length.ofMm(4));
    }
}
