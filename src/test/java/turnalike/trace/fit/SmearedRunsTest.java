package turnalike.trace.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.outline.Outline;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.TracedRun;
import turnalike.units.Length;

/** Members of outlines read as a picture's edges are: errors that neighbours share, corners smeared. */
@Tag("long-sums")
class SmearedRunsTest {
    private static final double STEP = 0.5;
    private static final double PIXEL = 0.25;

    /** What a lens and an edge's search make of an outline: the mean of what lies a pixel and a half to either side. */
    private static double smeared(Outline outline, double x) {
        double end = outline.end().mm();
        double sum = 0;
        for (int i = -3; i <= 3; i++) {
            double at = Math.max(0, Math.min(end, x + i * PIXEL / 2));
            sum += outline.radiusAt(Length.ofMm(at)).mm() / 7;
        }
        return sum;
    }

    private static Profile read(Outline outline, double sigma, long seed) {
        Random random = new Random(seed);
        double link = Math.exp(-STEP / (6 * PIXEL));
        double length = outline.end().mm();
        int count = (int) Math.floor(length / STEP);
        double off = sigma * random.nextGaussian();
        List<Profile.Station> stations = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            double x = length * i / count;
            stations.add(new Profile.Station(
                    Length.ofMm(x), Length.ofMm(Math.max(0, smeared(outline, x) + off)), Length.ofMm(sigma)));
            off = link * off + Math.sqrt(1 - link * link) * sigma * random.nextGaussian();
        }
        return new Profile(outline.end(), stations, List.of());
    }

    private static TracedRun traced(Profile profile, double pixel) {
        return MemberFit.of(
                new Original(profile, List.of(), Length.ofMm(0.025), profile, Length.ofMm(pixel)), Snap.NONE);
    }

    /** Over seeds 1 to 12: 119 of 120 members, 121 found; told nothing of the picture 92, with 183 found. */
    @Test
    void of_outlines_read_from_pictures_nineteen_members_in_twenty_come_back_and_none_is_made_of_smears() {
        int right = 0;
        int all = 0;
        int found = 0;
        int blind = 0;
        for (int seed = 1; seed <= 6; seed++) {
            List<Member> truth = new RandomRuns(seed).run(8);
            Profile profile = read(RandomRuns.outline(truth), 0.03, seed);
            TracedRun run = traced(profile, PIXEL);
            Score score = Score.of(truth, run);
            right += score.right();
            all += score.all();
            found += run.members().size();
            blind += Score.of(truth, traced(profile, 0)).right();
        }
        assertThat(right).as("of %s", all).isGreaterThanOrEqualTo((int) Math.ceil(0.95 * all));
        assertThat(found).isLessThanOrEqualTo((int) (1.03 * all));
        assertThat(right).as("beside one that takes every error for its own").isGreaterThan(blind);
    }

    /** Two that share the radius at their joint cost a size less together than one by one: once a bead and its neighbour went for one form. */
    @Test
    void members_that_meet_are_not_taken_for_one() {
        List<Member> truth = new RandomRuns(7).run(8);
        TracedRun run = traced(read(RandomRuns.outline(truth), 0.08, 7), PIXEL);
        assertThat(Score.of(truth, run).right()).isEqualTo(10);
    }

    /** A taper's end alone says nothing of where it ends: what hides the foot of the step is its rim. */
    @Test
    void a_joint_of_which_one_side_was_hidden_stands_at_the_rim_that_hides_it() {
        for (boolean thickFirst : new boolean[] {true, false}) {
            Taper taper = new Taper(Length.ofMm(60), Length.ofMm(34), Length.ofMm(30), Details.NONE);
            Tenon thin = new Tenon(Length.ofMm(40), Length.ofMm(18), Length.ZERO, Details.NONE);
            List<Member> truth = thickFirst ? List.of(taper, thin) : List.of(thin, taper);
            double rim = thickFirst ? 60 : 40;
            Profile seen = read(RandomRuns.outline(truth), 0.03, 4);
            Length from = Length.ofMm(thickFirst ? rim - 0.7 : rim - 5);
            Length to = Length.ofMm(thickFirst ? rim + 5 : rim + 0.7);
            Profile hidden = new Profile(seen.length(), seen.stations(), List.of(new Profile.Stretch(from, to)));
            Score score = Score.of(truth, traced(hidden, PIXEL));
            assertThat(score.wholeRun()).isTrue();
            assertThat(score.right()).as("thick first %s", thickFirst).isEqualTo(2);
        }
    }

    @Test
    void a_smeared_step_is_a_step_and_no_taper() {
        List<Member> truth = List.of(
                new Cylinder(Length.ofMm(40), Length.ofMm(24), Details.NONE),
                new Cylinder(Length.ofMm(40), Length.ofMm(28), Details.NONE));
        Profile profile = read(RandomRuns.outline(truth), 0.02, 1);
        assertThat(traced(profile, 0).members()).hasSizeGreaterThan(2);
        assertThat(traced(profile, PIXEL).members()).hasSize(2);
    }

    @Test
    void errors_taken_apart_are_independent_and_of_one_standard_deviation() {
        int n = 4000;
        double[] x = new double[n];
        double[] weight = new double[n];
        double[] miss = new double[n];
        Random random = new Random(3);
        double link = Math.exp(-STEP / 1.5);
        double off = random.nextGaussian();
        for (int i = 0; i < n; i++) {
            x[i] = STEP * i;
            double sigma = 0.05 + 0.02 * (i % 3);
            weight[i] = 1 / (sigma * sigma);
            miss[i] = sigma * off;
            off = link * off + Math.sqrt(1 - link * link) * random.nextGaussian();
        }
        Together together = Together.of(x, weight, 1.5, 0);
        double squares = 0;
        double products = 0;
        double before = 0;
        for (int i = 1; i < n; i++) {
            double apart = together.own[i] * miss[i] - together.back[i] * miss[i - 1];
            squares += apart * apart;
            products += apart * before;
            before = apart;
        }
        assertThat(squares / n).isCloseTo(1, within(0.08));
        assertThat(products / n).isCloseTo(0, within(0.06));
    }
}
