package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ProblemTest {
    private static final String LONG = "9".repeat(3_000);

    @Test
    void a_bad_value_is_carried_in_short_wherever_it_stands() {
        assertThat(new Problem("size", "'%s' is not a length".formatted(LONG), "give a size").line())
                .isEqualTo("size: '" + "9".repeat(40) + "…' is not a length; give a size");
        assertThat(new Problem("size", "'%s' is not a length".formatted("9 ".repeat(1_500)), "give a size").line())
                .hasSizeLessThan(100);
        assertThat(new Problem(LONG, "was " + LONG, "not " + LONG).line()).hasSizeLessThan(150);
    }

    @Test
    void a_problem_stays_on_its_line_whatever_it_carries() {
        assertThat(new Problem("line 2", "'1\r\n2' is not a length", "give\ta size").line())
                .isEqualTo("line 2: '1 2' is not a length; give a size");
    }

    @Test
    void words_between_two_apostrophes_are_no_quotation_and_stay() {
        String what =
                "the turner's own width, as it stands in the shop and was measured there by whoever made the blanks of"
                        + " it before the job's pieces were cut to length, is missing";
        assertThat(new Problem("size", what, "give 1' 10\" or the like").what()).isEqualTo(what);
    }

    @Test
    void a_file_in_a_deep_folder_is_still_named() {
        String path = "/home/shop" + "/a-folder-of-many".repeat(12) + "/wheel.job.json";
        assertThat(new Problem(path, "cannot be read", "check it").line()).startsWith(path + ": ");
    }
}
