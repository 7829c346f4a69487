package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.TracedRun;
import turnalike.units.Length;

/** Slopes that a picture shows where a shoulder faces away; all sizes made up. */
class WallsTest {
    private static final double PIXEL_MM = 0.4;

    private static Part tenon(double from, double to) {
        return Part.of(Form.LEVEL, from, to, List.of(9.5));
    }

    private static Part slope(double from, double to, double start, double end) {
        return Part.of(Form.S, from, to, List.of(start, end));
    }

    private static List<Part> run(double slopeEnd, double top) {
        return List.of(
                tenon(0, 15),
                slope(15, slopeEnd, 9.5, top),
                Part.of(Form.STRAIGHT, slopeEnd, 100, List.of(top, top - 2)));
    }

    @Test
    void a_short_steep_slope_between_two_members_is_their_shoulder_right_behind_its_edge() {
        List<Part> run = run(18.5, 14);
        assertThat(Walls.of(run, PIXEL_MM)).containsExactly(new Profile.Stretch(Length.ofMm(15), Length.ofMm(18.5)));
        List<Part> parts = Walls.without(run, PIXEL_MM);
        assertThat(parts).hasSize(2);
        assertThat(parts.get(0).form()).isEqualTo(Form.LEVEL);
        assertThat(parts.get(0).toMm()).isCloseTo(18.5 - 1.3 * PIXEL_MM, within(1e-9));
        assertThat(parts.get(1).fromMm()).isEqualTo(parts.get(0).toMm());
        assertThat(parts.get(1).startRadius()).isEqualTo(14);
    }

    @Test
    void where_it_falls_the_edge_comes_first() {
        List<Part> run =
                List.of(Part.of(Form.STRAIGHT, 0, 80, List.of(12.0, 14.0)), slope(80, 83.5, 14, 9.5), tenon(83.5, 100));
        assertThat(Walls.without(run, PIXEL_MM).get(0).toMm()).isCloseTo(80 + 1.3 * PIXEL_MM, within(1e-9));
    }

    @Test
    void what_is_flatter_or_longer_or_at_an_end_or_beside_a_curve_may_be_turned() {
        assertThat(Walls.of(run(18.5, 12.9), PIXEL_MM)).isEmpty();
        assertThat(Walls.of(run(19.2, 14), PIXEL_MM)).isEmpty();
        assertThat(Walls.of(run(18.5, 14), 0.3)).isEmpty();
        assertThat(Walls.of(run(18.5, 14).subList(1, 3), PIXEL_MM)).isEmpty();
        Part curve = Part.curve(List.of(new double[] {18.5, 14}, new double[] {60, 17}, new double[] {100, 12}));
        assertThat(Walls.of(List.of(tenon(0, 15), slope(15, 18.5, 9.5, 14), curve), PIXEL_MM))
                .isEmpty();
    }

    @Test
    void what_is_left_runs_from_end_to_end_without_any() {
        Seeds.each(200, random -> {
            List<Part> run = drawn(random);
            List<Part> left = Walls.without(run, PIXEL_MM);
            double at = 0;
            for (Part each : left) {
                assertThat(each.fromMm()).isEqualTo(at);
                assertThat(each.lengthMm()).isPositive();
                at = each.toMm();
            }
            assertThat(at).isEqualTo(run.get(run.size() - 1).toMm());
            assertThat(left.size())
                    .isGreaterThanOrEqualTo(run.size() - Walls.of(run, PIXEL_MM).size());
            assertThat(Walls.of(left, PIXEL_MM)).isEmpty();
        });
    }

    private static List<Part> drawn(Random random) {
        List<Part> run = new ArrayList<>();
        double at = 0;
        int count = 2 + random.nextInt(8);
        for (int i = 0; i < count; i++) {
            double end = at + 1.5 + 6 * random.nextDouble();
            double start = 5 + 10 * random.nextDouble();
            double other = 5 + 10 * random.nextDouble();
            Form form = List.of(Form.values()).get(random.nextInt(Form.values().length));
            List<Double> sizes = List.of(start, other, 5 + 10 * random.nextDouble());
            run.add(Part.of(form, at, end, sizes.subList(0, form.sizes())));
            at = end;
        }
        return run;
    }

    @Test
    void what_is_hidden_already_and_a_slope_beside_it_are_one_stretch() {
        Profile.Stretch before = new Profile.Stretch(Length.ofMm(12), Length.ofMm(15.5));
        Profile.Stretch far = new Profile.Stretch(Length.ofMm(60), Length.ofMm(63));
        Original original = original(List.of(before, far));
        Original hidden = Walls.hidden(original, Walls.of(run(18.5, 14), PIXEL_MM));
        assertThat(hidden.fitted().hidden())
                .containsExactly(new Profile.Stretch(Length.ofMm(12), Length.ofMm(18.5)), far);
        assertThat(hidden.profile()).isEqualTo(original.profile());
    }

    private static double radius(double x) {
        if (x < 15) {
            return 9.5;
        }
        return x < 18.5 ? 9.5 + 4.5 * (x - 15) / 3.5 : 14 - 2 * (x - 18.5) / 81.5;
    }

    private static Original original(List<Profile.Stretch> hidden) {
        List<Profile.Station> stations = new ArrayList<>();
        for (int i = 0; i <= 200; i++) {
            stations.add(new Profile.Station(Length.ofMm(i * 0.5), Length.ofMm(radius(i * 0.5)), Length.ofMm(0.04)));
        }
        Profile profile = new Profile(Length.ofMm(100), stations, hidden);
        return new Original(profile, List.of(), Length.ofMm(0.04), profile, Length.ofMm(PIXEL_MM));
    }

    @Test
    void a_tenon_whose_shoulder_faces_away_is_a_tenon_and_not_sure_there() {
        TracedRun run = MemberFit.of(original(List.of()), Snap.NONE);
        assertThat(run.members())
                .extracting(each -> each.member().kind().word())
                .containsExactly("tenon", "taper");
        assertThat(run.members().get(1).from().mm()).isCloseTo(18.3, within(0.5));
        assertThat(run.members()).allMatch(each -> each.uncertain());
    }
}
