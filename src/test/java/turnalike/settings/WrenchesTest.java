package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import org.junit.jupiter.api.Test;
import turnalike.units.Length;

class WrenchesTest {
    /**
     * ASME B18.2.2, appendix, as printed in Machinery's Handbook, 31st edition: at least 1.005 W + 0.001 in, and 0.005 W + 0.004 in more
     * at most. VERIFIED there; the printed openings were worked from rounded
     * widths and rounded again, so they stand up to 0.0014 in off it.
     */
    @Test
    void inch_openings_follow_the_standard_s_rule() {
        for (Wrench wrench : Wrenches.all()) {
            wrench.opening().ifPresent(opening -> {
                double width = wrench.nominal().inches();
                double least = 1.005 * width + 0.001;
                assertThat(opening.least().inches()).as(wrench.name()).isCloseTo(least, within(0.0015));
                assertThat(opening.most().inches())
                        .as(wrench.name())
                        .isCloseTo(least + 0.005 * width + 0.004, within(0.0015));
            });
        }
        assertThat(Wrenches.all())
                .filteredOn(wrench -> wrench.opening().isPresent())
                .hasSize(27);
    }

    /** Printed in the 27th and 31st editions: 1/2 in opens 0.504 to 0.510 in. VERIFIED. */
    @Test
    void a_half_inch_wrench_opens_as_printed() {
        Wrench half = Wrenches.forHole(Length.ofInches(0.5)).get(0);
        assertThat(half.name()).isEqualTo("1/2 in");
        Wrench.Opening opening = half.opening().orElseThrow();
        assertThat(opening.least().inches()).isCloseTo(0.504, within(1e-12));
        assertThat(opening.most().inches()).isCloseTo(0.510, within(1e-12));
    }

    @Test
    void a_hole_may_have_a_wrench_of_each_system_or_none() {
        assertThat(Wrenches.forHole(Length.ofInches(0.75)))
                .extracting(Wrench::name)
                .containsExactly("3/4 in", "19 mm");
        assertThat(Wrenches.forHole(Length.ofMm(19))).extracting(Wrench::name).containsExactly("19 mm", "3/4 in");
        assertThat(Wrenches.forHole(Length.ofMm(13))).extracting(Wrench::name).containsExactly("13 mm");
        assertThat(Wrenches.forHole(Length.ofMm(13.4))).isEmpty();
    }

    @Test
    void every_wrench_opens_wider_than_its_size() {
        assertThat(Wrenches.all()).allMatch(wrench -> wrench.opening()
                .map(opening -> opening.least().compareTo(wrench.nominal()) > 0)
                .orElse(true));
        assertThat(Wrenches.all().subList(0, 27)).isSortedAccordingTo(Comparator.comparing(Wrench::nominal));
    }
}
