package turnalike.job.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import turnalike.job.Job;
import turnalike.job.kept.JobText;
import turnalike.pattern.Member;
import turnalike.solid.Solid;
import turnalike.units.Density;
import turnalike.units.Length;

/** A whole pattern scaled and stretched. */
class ResizeEditsTest {
    private static final JobText TEXT = text("""
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"stock": {"section": "square", "size": 45, "length": 330},
              "members": [{"kind": "tenon", "length": 20, "diameter": 16, "chamfer": 1}, {"kind": "bead", "length": 10, "root": 25, "crown": 32},
               {"kind": "taper", "length": 100, "from": 25, "to": 20}, {"kind": "vee", "length": 4, "rim": 20, "bottom": 15},
               {"kind": "curve", "points": [[0, 20], [50, 30], [150, 18]]}]},
             "checks": [{"at": 80}], "wood": {"density_kg_m3": 700}}
            """);

    private static JobText text(String text) {
        JobText.Read read = JobText.read(text);
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow();
    }

    private static Job after(JobEdit edit) {
        JobText.Read read = edit.on(TEXT);
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow().job();
    }

    private static double grams(Job job) {
        return Solid.of(job.pattern().outline(), Density.ofKgPerM3(700)).mass().grams();
    }

    private static List<Double> lengths(Job job) {
        return job.pattern().members().stream().map(each -> each.length().mm()).toList();
    }

    /** Twice every size is eight times the weight, twice every length twice, twice every diameter four times. */
    @Test
    void what_is_scaled_shows_in_the_weight() {
        double was = grams(TEXT.job());
        assertThat(grams(after(new ScaleEdit(ScaleEdit.What.ALL, 200, false)))).isCloseTo(8 * was, within(1e-6 * was));
        assertThat(grams(after(new ScaleEdit(ScaleEdit.What.LENGTHS, 200, false))))
                .isCloseTo(2 * was, within(0.02 * was));
        assertThat(grams(after(new ScaleEdit(ScaleEdit.What.DIAMETERS, 200, false))))
                .isCloseTo(4 * was, within(0.02 * was));
    }

    @Test
    void the_blank_and_the_check_places_go_along_and_tenons_may_stay() {
        Job job = after(new ScaleEdit(ScaleEdit.What.ALL, 150, true));
        assertThat(job.pattern().members().get(0))
                .isEqualTo(TEXT.job().pattern().members().get(0));
        assertThat(lengths(job)).containsExactly(20.0, 15.0, 150.0, 6.0, 225.0);
        assertThat(job.pattern().stock().size().mm()).isEqualTo(67.5);
        assertThat(job.pattern().stock().length().mm()).isCloseTo(330 + 416 - 284, within(1e-6));
        assertThat(job.checks().get(0).at().mm()).isCloseTo(35 + 75, within(1e-6)); // the middle of the taper still
    }

    @Test
    void a_stretch_goes_into_the_members_chosen_by_their_share_and_ends_exactly() {
        Job job = after(new StretchEdit(Length.ofMm(334.3), new TreeSet<>(Set.of(3, 5))));
        assertThat(job.pattern().length().mm()).isCloseTo(334.3, within(1e-6));
        assertThat(lengths(job).get(1)).isEqualTo(10.0);
        assertThat(lengths(job).get(2)).isCloseTo(100 + 50.3 * 0.4, within(0.05));
        Member curve = job.pattern().members().get(4);
        assertThat(curve.sizes().points().get(1).place().mm())
                .isCloseTo(curve.length().mm() / 3, within(1e-4));
        assertThat(job.pattern().stock().length().mm()).isCloseTo(380.3, within(1e-6));
    }

    @Test
    void what_cannot_be_is_told_and_a_history_says_what_was_done() {
        assertThat(new StretchEdit(Length.ofMm(200), new TreeSet<>(Set.of(2)))
                        .on(TEXT)
                        .problems())
                .first()
                .satisfies(each -> assertThat(each.what()).contains("more than the 10 mm"));
        assertThat(new StretchEdit(Length.ofMm(300), new TreeSet<>(Set.of(9)))
                        .on(TEXT)
                        .problems())
                .hasSize(1);
        assertThat(new ScaleEdit(ScaleEdit.What.LENGTHS, 92.5, true).what(TEXT))
                .isEqualTo("scale its lengths to 92.5 %, tenons as they are");
        assertThat(new StretchEdit(Length.ofMm(300), new TreeSet<>(Set.of(3, 5))).what(TEXT))
                .isEqualTo("stretch the piece to 300 mm by members 3, 5");
        assertThatThrownBy(() -> new ScaleEdit(ScaleEdit.What.ALL, 0, false))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
