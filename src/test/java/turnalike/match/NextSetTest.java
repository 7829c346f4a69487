package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Mass;

/** The left-over pieces' promise, held against every group of them and against pieces at both ends of the aim. */
class NextSetTest {
    private static List<Mass> masses(double... grams) {
        List<Mass> out = new ArrayList<>();
        for (double each : grams) {
            out.add(Mass.ofGrams(each));
        }
        return out;
    }

    private static double share(List<Double> grams) {
        var figures = grams.stream().mapToDouble(each -> each).summaryStatistics();
        return (figures.getMax() - figures.getMin()) / figures.getAverage();
    }

    @Test
    void it_keeps_the_largest_group_that_passes_and_the_most_alike_of_those() {
        Seeds.each(200, random -> {
            int count = 1 + random.nextInt(8);
            int places = 1 + random.nextInt(8);
            double[] grams = new double[count];
            for (int i = 0; i < count; i++) {
                grams[i] = 95 + random.nextInt(11);
            }
            double tolerancePct = 1 + random.nextInt(5);
            int largest = 0;
            double alikest = Double.POSITIVE_INFINITY;
            for (int mask = 1; mask < 1 << count; mask++) {
                int size = Integer.bitCount(mask);
                double share = share(chosen(grams, mask));
                if (size <= places && share <= tolerancePct / 100 + 1e-12 && size >= largest) {
                    alikest = size > largest ? share : Math.min(alikest, share);
                    largest = size;
                }
            }
            NextSet next = NextSet.of(masses(grams), places, tolerancePct);
            List<Double> kept = next.pieces().stream().map(i -> grams[i]).toList();
            assertThat(kept).hasSize(largest).isSorted();
            assertThat(next.pieces()).doesNotHaveDuplicates();
            assertThat(share(kept)).isCloseTo(alikest, within(1e-12));
            assertThat(next.missing()).isEqualTo(places - largest);
        });
    }

    private static List<Double> chosen(double[] grams, int mask) {
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < grams.length; i++) {
            if ((mask >> i & 1) == 1) {
                out.add(grams[i]);
            }
        }
        return out;
    }

    @Test
    void pieces_of_one_mass_anywhere_in_the_aim_complete_the_set() {
        Seeds.each(300, random -> {
            double[] grams = random.doubles(1 + random.nextInt(6), 97, 103).toArray();
            double tolerancePct = 0.5 + 4 * random.nextDouble();
            NextSet next = NextSet.of(masses(grams), 8, tolerancePct);
            double from = next.aimFrom().grams();
            double to = next.aimTo().grams();
            List<Double> kept = next.pieces().stream().map(i -> grams[i]).toList();
            assertThat(from).isLessThanOrEqualTo(kept.get(0));
            assertThat(to).isGreaterThanOrEqualTo(kept.get(kept.size() - 1));
            for (double aimed : new double[] {from, (from + to) / 2, to, from + (to - from) * random.nextDouble()}) {
                List<Double> set = new ArrayList<>(kept);
                for (int more = 0; more < next.missing(); more++) {
                    set.add(aimed);
                    assertThat(share(set)).isLessThanOrEqualTo(tolerancePct / 100 + 1e-9);
                }
            }
        });
    }

    /** One spare of 100 g within 2 %: from 100/1.02 to 102. */
    @Test
    void the_aim_is_as_wide_as_can_be_promised() {
        NextSet next = NextSet.of(masses(100), 4, 2);
        assertThat(next.aimFrom().grams()).isCloseTo(100 / 1.02, within(1e-9));
        assertThat(next.aimTo().grams()).isCloseTo(102, within(1e-9));
        assertThat(next.missing()).isEqualTo(3);
    }

    @Test
    void without_spares_a_whole_set_is_missing_and_nothing_aimed_at() {
        assertThat(NextSet.of(List.of(), 4, 2)).isEqualTo(new NextSet(List.of(), 4, Mass.ofGrams(0), Mass.ofGrams(0)));
    }

    @Test
    void exactly_the_tolerance_passes() {
        // (102 - 98) / 100.
        assertThat(NextSet.of(masses(98, 102), 2, 4).missing()).isZero();
        assertThat(NextSet.of(masses(98, 102), 2, 3.99).missing()).isEqualTo(1);
    }
}
