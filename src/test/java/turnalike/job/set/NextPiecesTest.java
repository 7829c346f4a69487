package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.language.Language;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Mass;
import turnalike.units.WeighingScale;

/** The weights to turn for are told as the scale will show them, and none is told that is not sure to pass. */
class NextPiecesTest {
    private static final Pattern RANGE = Pattern.compile(
            "more of ([\\d.]+)(?: to ([\\d.]+))? g(?:, between two steps of your scale)?, sure to pass");

    private static List<Piece> weighed(double... grams) {
        List<Piece> out = new ArrayList<>();
        for (double each : grams) {
            out.add(Piece.of("p" + (out.size() + 1), Measures.ofMass(Mass.ofGrams(each))));
        }
        return out;
    }

    @Test
    void where_one_reading_alone_is_sure_that_one_is_told() {
        NextPieces next =
                NextPieces.ofPieces(weighed(57), weighed(57, 58, 56), 4, 2).orElseThrow();
        assertThat(next.inWords(new WeighingScale(Mass.ofGrams(1))))
                .contains("turn 3 more of 57 g, sure to pass together")
                .doesNotContain("57 to 57");
    }

    /** Half a gram that scatters by a twentieth: no turner makes a hundred more for a set within two per cent. */
    @Test
    void work_that_scatters_too_far_is_told_so_and_not_how_many_hundred_to_turn() {
        double[] turned = new double[30];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = 0.54 + 0.01 * (i * 7 % 11 - 5);
        }
        WeighingScale scale = new WeighingScale(Mass.ofGrams(0.01));
        String words = NextPieces.ofPieces(weighed(0.50), weighed(turned), 24, 2)
                .orElseThrow()
                .inWords(scale);
        assertThat(words)
                .contains(
                        "sure of them at best (simulated): let a set's weights differ by more, or keep what is left for repairs")
                .doesNotContain("if you aim");
        assertThat(Language.GERMAN.knows(words.replaceFirst("^[^;]*;[^;]*; ", "")))
                .as(words)
                .isTrue();
        String easy = NextPieces.ofPieces(weighed(0.50), weighed(turned), 4, 20)
                .orElseThrow()
                .inWords(scale);
        assertThat(easy).contains("to be 95 % sure of them").doesNotContain("at best");
    }

    @Test
    void work_that_is_read_alike_scatters_by_less_than_a_step_and_not_by_nothing() {
        String words = NextPieces.ofPieces(weighed(566), weighed(566, 566, 566, 566, 566, 566), 4, 2)
                .orElseThrow()
                .inWords(new WeighingScale(Mass.ofGrams(1)));
        assertThat(words).contains("as your work runs, 566 g give or take under 1 g, it takes 3 to be");
        assertThat(Language.GERMAN.knows(words.replaceFirst("^[^;]*;[^;]*; ", "")))
                .isTrue();
    }

    @Test
    void the_range_told_lies_within_the_one_that_is_sure_and_at_the_scales_steps() {
        int[] betweenSteps = new int[1];
        Seeds.each(60, random -> {
            double stepG = new double[] {0.1, 0.5, 1, 5}[random.nextInt(4)];
            double meanG = 20 + 400 * random.nextDouble();
            double[] grams = new double[2 + random.nextInt(4)];
            boolean finer = random.nextBoolean(); // logged by another scale, in ounces for one
            for (int i = 0; i < grams.length; i++) {
                double each = meanG * (1 + 0.01 * random.nextGaussian());
                grams[i] = finer ? each : stepG * Math.rint(each / stepG);
            }
            NextPieces next = NextPieces.ofPieces(weighed(grams), weighed(grams), 8, 1 + 4 * random.nextDouble())
                    .orElseThrow();
            String words = next.inWords(new WeighingScale(Mass.ofGrams(stepG)));
            Matcher range = RANGE.matcher(words);
            assertThat(range.find()).as(words).isTrue();
            double from = Double.parseDouble(range.group(1));
            double to = range.group(2) == null ? from : Double.parseDouble(range.group(2));
            boolean holdsAStep = Math.ceil(next.next().aimFrom().grams() / stepG - 1e-9)
                    <= Math.floor(next.next().aimTo().grams() / stepG + 1e-9);
            if (!holdsAStep) {
                betweenSteps[0]++; // told finer than the scale shows: no reading tells of it
                assertThat(words).contains("between two steps of your scale");
                double sureFrom = next.next().aimFrom().grams();
                double sureTo = next.next().aimTo().grams();
                assertThat(from).isBetween(sureFrom - 0.0006, sureTo + 0.0006);
                assertThat(to).isBetween(from, sureTo + 0.0006);
                return;
            }
            assertThat(from).isGreaterThanOrEqualTo(next.next().aimFrom().grams() - 1e-9);
            assertThat(to).isLessThanOrEqualTo(next.next().aimTo().grams() + 1e-9);
            for (double each : new double[] {from, to}) {
                assertThat(each / stepG).isCloseTo(Math.rint(each / stepG), within(1e-9));
            }
            // No reading is left out that would be sure too.
            assertThat(from - stepG).isLessThan(next.next().aimFrom().grams());
            assertThat(to + stepG).isGreaterThan(next.next().aimTo().grams());
        });
        assertThat(betweenSteps[0]).as("of 60").isBetween(1, 40);
    }
}
