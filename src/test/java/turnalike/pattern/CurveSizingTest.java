package turnalike.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static turnalike.pattern.Samples.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Chords;
import turnalike.outline.Section;

class CurveSizingTest {
    private static final double WITHIN_MM = 0.4;

    /** A curve through these places and diameters, two by two. */
    private static FreeCurve curve(double... placesAndDiameters) {
        List<FreeCurve.Point> points = new ArrayList<>();
        for (int i = 0; i < placesAndDiameters.length; i += 2) {
            points.add(new FreeCurve.Point(mm(placesAndDiameters[i]), mm(placesAndDiameters[i + 1])));
        }
        return new FreeCurve(points, Details.NONE);
    }

    private static FreeCurve random(Random random, double stepMm, int most) {
        List<FreeCurve.Point> points = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < 2 + random.nextInt(most); i++) {
            points.add(new FreeCurve.Point(mm(at), mm(10 + 6 * random.nextDouble())));
            at += stepMm * (0.2 + random.nextDouble());
        }
        return new FreeCurve(points, Details.NONE);
    }

    private static List<String> words(FreeCurve curve) {
        return curve.sizing(mm(WITHIN_MM)).crests().stream()
                .map(Member.Crest::word)
                .toList();
    }

    private static double gapMm(DoubleUnaryOperator radius, double from, double to) {
        double first = radius.applyAsDouble(from);
        double last = radius.applyAsDouble(to);
        double most = 0;
        for (int i = 0; i <= 300; i++) {
            double u = i / 300.0;
            double line = first * (1 - u) + last * u;
            most = Math.max(most, Math.abs(radius.applyAsDouble(from + u * (to - from)) - line));
        }
        return most;
    }

    /**
     * Steps excepted, since nothing is turned to the line between their foot and head, and what is too short for one more sizing cut with wood left
     * on both its sides.
     */
    @Test
    void between_two_sized_places_the_straight_line_stays_within_the_tolerance() {
        Seeds.each(100, random -> {
            FreeCurve curve = random(random, 20, 7);
            DoubleUnaryOperator radius = Samples.shape(curve, Member.Ends.NEITHER);
            List<Member.Diameter> sized = curve.sizing(mm(WITHIN_MM)).diameters();
            for (int i = 0; i + 1 < sized.size(); i++) {
                double from = sized.get(i).place().mm();
                double to = sized.get(i + 1).place().mm();
                assertThat(sized.get(i).size().mm()).isCloseTo(2 * radius.applyAsDouble(from), within(1e-9));
                boolean room = to - from >= 2 * FairPlaces.APART_MM + 0.5;
                if (room
                        && !(sized.get(i).key().startsWith("step")
                                || sized.get(i + 1).key().startsWith("step"))) {
                    assertThat(2 * gapMm(radius, from, to))
                            .as("%s %s", curve, sized.get(i))
                            .isLessThanOrEqualTo(WITHIN_MM + 1e-6);
                }
            }
            assertThat(sized.get(0).place().mm()).isZero();
            assertThat(sized.get(sized.size() - 1).place()).isEqualTo(curve.length());
        });
    }

    /** A bead measured by its points: none of its places a hair beside the peak or the hollow, where the same cut of the tool would be. */
    @Test
    void no_place_stands_where_its_sizing_cut_would_run_into_the_next() {
        FreeCurve copied = curve(
                0, 20, 6, 21.5, 14, 28.5, 20, 30.2, 26, 28, 30, 22, 33, 19.4, 36, 21, 40, 24, 43, 21.6, 50, 18, 80,
                19.6);
        List<Double> places = copied.sizing(mm(WITHIN_MM)).crests().stream()
                .map(crest -> crest.place().mm())
                .toList();
        assertThat(places).hasSizeBetween(7, 9);
        for (int i = 0; i + 1 < places.size(); i++) {
            assertThat(places.get(i + 1) - places.get(i)).as("%s", places).isGreaterThanOrEqualTo(6);
        }
        // However truly it is to be sized: a curve that bends on the spot is cut to the template there.
        Seeds.each(100, random -> {
            List<Member.Diameter> sized = random(random, 12, 7).sizing(mm(0.05)).diameters();
            for (int i = 0; i + 1 < sized.size(); i++) {
                if (sized.get(i).key().startsWith("place")
                        || sized.get(i + 1).key().startsWith("place")) {
                    assertThat(sized.get(i + 1)
                                    .place()
                                    .minus(sized.get(i).place())
                                    .mm())
                            .as("%s", sized)
                            .isGreaterThanOrEqualTo(6 - 1e-6);
                }
            }
        });
    }

    /** Every subset of the stations, by samples of the curve: those with a hair less room bound the number from above, with more from below. */
    @Test
    void no_choice_of_stations_has_fewer_places() {
        int[] withPlaces = {0};
        Seeds.each(150, random -> {
            FreeCurve curve = random(random, 2, 4);
            Chords chords = Chords.of(curve.pieces());
            double length = curve.length().mm();
            if (length > 5) {
                return;
            }
            List<Double> own =
                    curve.points().stream().map(point -> point.place().mm()).toList();
            double withinMm = 0.02 + 0.3 * random.nextDouble();
            List<Double> found = FairPlaces.between(chords, 0, length, own, withinMm, 0);
            DoubleUnaryOperator radius = Samples.shape(curve, Member.Ends.NEITHER);
            double[] stations = FairPlaces.stations(0, length, own);
            Optional<Integer> most = fewest(radius, stations, withinMm - 1e-5);
            Optional<Integer> least = fewest(radius, stations, withinMm + 1e-5);
            most.ifPresent(count -> assertThat(found.size()).as("%s", curve).isLessThanOrEqualTo(count));
            if (most.isPresent()) {
                assertThat(found.size()).as("%s", curve).isGreaterThanOrEqualTo(least.orElseThrow());
                withPlaces[0] += found.size() > 1 ? 1 : 0;
            }
        });
        assertThat(withPlaces[0]).isGreaterThan(20);
    }

    private static Optional<Integer> fewest(DoubleUnaryOperator radius, double[] stations, double withinMm) {
        int inner = stations.length - 2;
        boolean[][] stands = new boolean[stations.length][stations.length];
        for (int i = 0; i < stations.length; i++) {
            for (int k = i + 1; k < stations.length; k++) {
                stands[i][k] = gapMm(radius, stations[i], stations[k]) <= withinMm;
            }
        }
        int best = Integer.MAX_VALUE;
        for (int subset = 0; subset < 1 << inner; subset++) {
            int at = 0;
            boolean sound = true;
            for (int i = 1; i <= inner && sound; i++) {
                if ((subset >> (i - 1) & 1) == 1) {
                    sound = stands[at][i];
                    at = i;
                }
            }
            if (sound && stands[at][inner + 1]) {
                best = Math.min(best, Integer.bitCount(subset));
            }
        }
        return best == Integer.MAX_VALUE ? Optional.empty() : Optional.of(best);
    }

    /** Past a bend the shorter chord can lead further: the furthest reach each time would need one place more here than the fewest. */
    @Test
    void going_as_far_as_possible_each_time_is_not_always_the_fewest() {
        int[] worse = {0};
        Seeds.each(400, random -> {
            FreeCurve curve = random(random, 12, 6);
            Chords chords = Chords.of(curve.pieces());
            double length = curve.length().mm();
            List<Double> own =
                    curve.points().stream().map(point -> point.place().mm()).toList();
            double[] stations = FairPlaces.stations(0, length, own);
            int fewest =
                    FairPlaces.between(chords, 0, length, own, WITHIN_MM, 0).size();
            int greedy = greedy(chords, stations);
            assertThat(fewest).isLessThanOrEqualTo(greedy);
            worse[0] += fewest < greedy ? 1 : 0;
        });
        assertThat(worse[0]).isPositive();
    }

    private static int greedy(Chords chords, double[] stations) {
        int places = 0;
        int at = 0;
        while (true) {
            int next = at + 1;
            for (int to = at + 1; to < stations.length; to++) {
                if (chords.gapMm(stations[at], stations[to]) <= WITHIN_MM) {
                    next = to;
                }
            }
            if (next == stations.length - 1) {
                return places;
            }
            places++;
            at = next;
        }
    }

    @Test
    void peaks_and_hollows_are_marked_where_the_curve_turns_and_ripples_within_the_tolerance_are_not() {
        FreeCurve vase = curve(0, 22, 20, 38, 60, 18, 80, 24);
        assertThat(vase.sizing(mm(WITHIN_MM)).crests().stream()
                        .filter(crest -> !crest.word().startsWith("place"))
                        .map(crest -> crest.word() + " " + crest.place().mm()))
                .containsExactly("peak 20.0", "hollow 60.0");
        FreeCurve rippled = curve(0, 20, 5, 20.2, 10, 20.1, 15, 20.3, 20, 20.2, 25, 20.4, 30, 20.3);
        assertThat(words(rippled)).isEmpty();
        FreeCurve onSlope = curve(0, 20, 10, 24, 20, 23.8, 30, 30, 40, 26);
        assertThat(words(onSlope)).filteredOn(word -> !word.startsWith("place")).containsExactly("peak");
    }

    @Test
    void a_level_peak_is_marked_in_its_middle_and_a_long_one_at_both_its_ends() {
        assertThat(curve(0, 20, 10, 30, 12, 30, 22, 20).sizing(mm(WITHIN_MM)).crests().stream()
                        .filter(crest -> crest.word().equals("peak"))
                        .map(crest -> crest.place().mm()))
                .containsExactly(11.0);
        assertThat(curve(0, 20, 10, 30, 14, 30, 24, 20).sizing(mm(WITHIN_MM)).crests().stream()
                        .filter(crest -> crest.word().startsWith("peak"))
                        .map(crest -> crest.word() + " " + crest.place().mm()))
                .containsExactly("peak 1 10.0", "peak 2 14.0");
    }

    @Test
    void a_step_is_marked_at_its_foot_and_head_or_by_one_line_where_it_is_as_good_as_upright() {
        assertThat(words(curve(0, 20, 10, 20, 11, 26, 20, 26))).containsExactly("step foot", "step head");
        FreeCurve upright = curve(0, 20, 10, 20, 10.2, 26, 20, 26);
        assertThat(upright.sizing(mm(WITHIN_MM)).crests().stream()
                        .map(crest -> crest.word() + " " + crest.place().mm()))
                .containsExactly("step foot 10.0");
        assertThat(upright.sizing(mm(WITHIN_MM)).diameters().stream()
                        .map(each -> each.key() + " " + each.size().mm()))
                .containsExactly("start 20.0", "step foot 20.0", "step head 26.0", "end 26.0");
        assertThat(words(curve(0, 26, 10, 26, 10.2, 20, 20, 20))).containsExactly("step foot");
        assertThat(words(curve(0, 20, 0.2, 26, 20, 26))).isEmpty();
        assertThat(words(curve(0, 26, 19.8, 26, 20, 20))).isEmpty();
    }

    /** Half a tolerance of sag is straight; ten times as much is not, and its places are spread evenly. */
    @Test
    void a_straight_run_of_points_needs_no_place_and_a_bow_as_many_as_its_sag_asks_for() {
        assertThat(words(curve(0, 20, 50, 25, 100, 30, 200, 40))).isEmpty();
        assertThat(words(curve(0, 20, 50, 25.1, 100, 30))).isEmpty();
        List<Double> places = curve(0, 20, 50, 30, 100, 33).sizing(mm(WITHIN_MM)).crests().stream()
                .map(crest -> crest.place().mm())
                .toList();
        assertThat(places).hasSizeGreaterThan(1).isSorted();
    }

    @Test
    void turned_end_for_end_it_is_sized_at_as_many_places() {
        Seeds.each(60, random -> {
            FreeCurve curve = random(random, 20, 7);
            assertThat(curve.mirrored().sizing(mm(WITHIN_MM)).diameters())
                    .as("%s", curve)
                    .hasSameSizeAs(curve.sizing(mm(WITHIN_MM)).diameters());
        });
    }

    @Test
    void a_pattern_marks_its_curves_once_it_is_told_how_truly_they_are_sized_and_never_by_eye() {
        FreeCurve vase = curve(0, 22, 20, 38, 60, 18, 80, 24);
        Stock stock = new Stock(Section.SQUARE, mm(50), mm(100));
        Pattern untold = new Pattern("vase", stock, List.of(vase));
        assertThat(untold.marks()).hasSize(2);
        Pattern told = untold.sizedWithin(mm(WITHIN_MM));
        assertThat(told).isNotEqualTo(untold).isEqualTo(untold.sizedWithin(mm(WITHIN_MM)));
        assertThat(told.marks()).hasSize(2 + vase.sizing(mm(WITHIN_MM)).crests().size());
        assertThat(told.marks().stream().map(Mark::label)).contains("1 curve peak", "1 curve hollow");
        assertThat(told.mirrored().marks()).hasSameSizeAs(told.marks());
        FreeCurve byEye = new FreeCurve(vase.points(), new Details(Optional.empty(), true));
        assertThat(new Pattern("vase", stock, List.of(byEye))
                        .sizedWithin(mm(WITHIN_MM))
                        .marks())
                .hasSize(2);
        assertThatThrownBy(() -> untold.sizedWithin(mm(0))).hasMessageContaining("above zero");
    }

    /** Each rule that a job may set changes what it names and nothing else. */
    @Test
    void what_is_a_long_level_a_step_and_one_line_goes_by_the_rules() {
        FreeCurve level = curve(0, 20, 10, 30, 14, 30, 24, 20);
        assertThat(words(level, CurveRules.USUAL)).contains("peak 1", "peak 2");
        assertThat(words(level, new CurveRules(mm(5), 2, mm(0.5))))
                .contains("peak")
                .doesNotContain("peak 1");
        FreeCurve slope = curve(0, 20, 20, 20.5, 22, 26, 42, 26.5);
        assertThat(words(slope, CurveRules.USUAL)).doesNotContain("step foot");
        assertThat(words(slope, new CurveRules(mm(3), 1.2, mm(0.5)))).contains("step foot", "step head");
        FreeCurve upright = curve(0, 20, 20, 20.5, 20.8, 30, 42, 30.5);
        assertThat(words(upright, CurveRules.USUAL)).contains("step foot", "step head");
        assertThat(words(upright, new CurveRules(mm(3), 2, mm(1))))
                .contains("step foot")
                .doesNotContain("step head");
    }

    private static List<String> words(FreeCurve curve, CurveRules rules) {
        return curve.sizing(mm(WITHIN_MM), rules).crests().stream()
                .map(Member.Crest::word)
                .toList();
    }
}
