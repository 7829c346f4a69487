package turnalike.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class PermutationsTest {
    @Test
    void every_order_is_listed_once_and_rising() {
        for (int count = 0; count <= 5; count++) {
            byte[][] all = Permutations.of(count);
            assertThat(all).hasNumberOfRows(Permutations.factorial(count));
            for (int row = 0; row < all.length; row++) {
                assertThat(sorted(all[row])).isEqualTo(identity(count));
                assertThat(row == 0 || Arrays.compare(all[row - 1], all[row]) < 0)
                        .isTrue();
            }
        }
    }

    @Test
    void every_way_to_deal_in_pairs_is_listed_once() {
        int[] counts = {1, 1, 1, 3, 6, 30, 90};
        for (int count = 0; count <= 6; count++) {
            byte[][] all = Permutations.paired(count);
            int[] cells = Permutations.pairedCells(count);
            assertThat(Permutations.pairedCount(count)).isEqualTo(counts[count]);
            assertThat(cells).hasSize(counts[count] * count);
            Set<String> told = new HashSet<>();
            for (int row = 0; row < all.length; row++) {
                assertThat(sorted(all[row])).isEqualTo(identity(count));
                assertThat(told.add(Arrays.toString(all[row]))).isTrue();
                for (int i = 0; i < count; i++) {
                    assertThat(i % 2 == 0 || all[row][i - 1] < all[row][i]).isTrue();
                    assertThat(cells[row * count + i]).isEqualTo(i / 2 * count + all[row][i]);
                }
            }
            assertThat(told).hasSize(counts[count]);
        }
        assertThat(Permutations.pairedCount(12)).isEqualTo(7_484_400);
    }

    @Test
    void masks_and_their_number_are_those_of_counting_bits() {
        for (int n = 0; n <= 8; n++) {
            for (int k = 0; k <= n; k++) {
                int bits = k;
                int[] masks = IntStream.range(0, 1 << n)
                        .filter(mask -> Integer.bitCount(mask) == bits)
                        .toArray();
                assertThat(Permutations.masks(n, k)).isEqualTo(masks);
                assertThat(Permutations.choose(n, k)).isEqualTo(masks.length);
            }
        }
    }

    @Test
    void what_the_mask_names_is_dealt_to_the_one_and_the_rest_to_the_other() {
        int[] named = new int[2];
        int[] others = new int[3];
        Permutations.deal(new int[] {10, 11, 12, 13, 14}, 0b01010, named, others);
        assertThat(named).containsExactly(11, 13);
        assertThat(others).containsExactly(10, 12, 14);
    }

    @Test
    void chances_are_even_and_the_same_in_every_run() {
        SplitMix64 dice = new SplitMix64(0);
        // The first outputs for seed 0 are 0xE220A8397B1DCDAF and 0x6E789E6AA1B965F4 (from memory); the upper bits
        // choose.
        assertThat(dice.below(1 << 16)).isEqualTo(0xE220);
        assertThat(dice.below(1 << 16)).isEqualTo(0x6E78);
        Seeds.each(20, random -> {
            SplitMix64 thrown = new SplitMix64(random.nextLong());
            int bound = 1 + random.nextInt(6);
            int[] times = new int[bound];
            for (int i = 0; i < 600 * bound; i++) {
                times[thrown.below(bound)]++;
            }
            assertThat(times).satisfies(all -> assertThat(Arrays.stream(all)).allMatch(t -> t > 480 && t < 720));
        });
    }

    @Test
    void each_choice_comes_to_the_front_as_often() {
        SplitMix64 dice = new SplitMix64(7);
        int[] times = new int[4 * 4];
        for (int i = 0; i < 4800; i++) {
            int[] numbers = {0, 1, 2, 3};
            dice.bringForward(numbers, 2);
            assertThat(numbers).containsExactlyInAnyOrder(0, 1, 2, 3);
            times[4 * numbers[0] + numbers[1]]++;
        }
        for (int pair = 0; pair < times.length; pair++) {
            assertThat(times[pair]).isBetween(pair % 5 == 0 ? 0 : 330, pair % 5 == 0 ? 0 : 470);
        }
    }

    private static byte[] sorted(byte[] order) {
        byte[] sorted = order.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    private static byte[] identity(int count) {
        byte[] identity = new byte[count];
        for (int i = 0; i < count; i++) {
            identity[i] = (byte) i;
        }
        return identity;
    }
}
