package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.outline.Outline;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.HalfBead;
import turnalike.pattern.HalfCove;
import turnalike.pattern.Member;
import turnalike.trace.Profile;
import turnalike.units.Length;

/** Runs bettered from a poor beginning; all sizes made up. */
class RefinementTest {
    private static final double PIXEL_MM = 0.5;

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    /** Read every half millimetre, each radius the mean of what lies a pixel to either side. */
    private static Data data(List<Member> members, double sigma) {
        Outline outline = RandomRuns.outline(members);
        double length = outline.end().mm();
        List<Profile.Station> stations = new ArrayList<>();
        for (double x = 0; x <= length; x += 0.5) {
            double sum = 0;
            for (int i = -2; i <= 2; i++) {
                sum += outline.radiusAt(mm(Math.min(length, Math.max(0, x + i * PIXEL_MM / 2))))
                                .mm()
                        / 5;
            }
            stations.add(new Profile.Station(mm(x), mm(sum), mm(sigma)));
        }
        return Data.of(new Profile(outline.end(), stations, List.of()), 0.05, PIXEL_MM, false);
    }

    private static JointFit bettered(Data data, double end, List<Double> joints, Form... forms) {
        List<Seam> seams = new ArrayList<>();
        seams.add(new Seam(0, -1, 0));
        for (double each : joints) {
            seams.add(Seams.between(data, data.firstFrom(each) - 1));
        }
        seams.add(new Seam(end, data.size() - 1, data.size()));
        return new Refinement(data, Math.log(data.size())).of(new Run(seams, List.of(forms)));
    }

    /** A half cove that ends at 17.4 and a half bead that begins at 15: together they run much as an ogee does, but for the notch. */
    @Test
    void a_form_that_passes_over_a_notch_gives_way_to_the_two_that_it_sets_off() {
        Data data = data(
                List.of(
                        new Cylinder(mm(40), mm(24), Details.NONE),
                        new HalfCove(mm(13), mm(28.7), mm(34.8), Details.NONE),
                        new HalfBead(mm(13), mm(30), mm(35.7), Details.NONE),
                        new Cylinder(mm(40), mm(31), Details.NONE)),
                0.1);
        JointFit fit = bettered(data, 106, List.of(40.0, 66.0), Form.LEVEL, Form.S, Form.LEVEL);
        assertThat(fit.run().forms()).containsExactly(Form.LEVEL, Form.LEVEL_AT_START, Form.LEVEL_AT_END, Form.LEVEL);
    }

    @Test
    void a_form_is_doubtful_where_another_explains_what_is_seen_nearly_as_well() {
        List<Member> members = List.of(
                new Cylinder(mm(40), mm(24), Details.NONE),
                new HalfCove(mm(13), mm(28.7), mm(34.8), Details.NONE),
                new Cylinder(mm(40), mm(31), Details.NONE));
        for (double sigma : new double[] {0.05, 0.6}) {
            Data data = data(members, sigma);
            JointFit fit = bettered(data, 93, List.of(40.0, 53.0), Form.LEVEL, Form.LEVEL_AT_START, Form.LEVEL);
            boolean doubtful = new Refinement(data, Math.log(data.size())).isDoubtful(fit, 1);
            assertThat(doubtful).as("radii known to %s mm", sigma).isEqualTo(sigma > 0.5);
        }
    }
}
