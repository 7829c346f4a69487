package turnalike.year;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Length;
import turnalike.wood.Moisture;
import turnalike.wood.Species;
import turnalike.wood.Woods;

class JointYearTest {
    private static Joint.Part part(String species, double pct) {
        return new Joint.Part(Woods.shipped().find(species).orElseThrow(), Moisture.ofPct(pct));
    }

    private static JointYear year(
            double tenon, Joint.Part peg, double hole, Joint.Part around, double dry, double damp) {
        return new JointYear(
                new Joint(Length.ofMm(tenon), peg, Length.ofMm(hole), around),
                new Home(Season.of(Moisture.ofPct(dry)), Season.of(Moisture.ofPct(damp))));
    }

    /** By hand from the figures of our table: ash C 0.00274 and 0.00169, S 7.8 and 4.9; red oak C 0.00369. */
    @Test
    void an_ash_tenon_in_oak_goes_oval_as_worked_out_by_hand() {
        JointYear year = year(20, part("White ash", 8), 20, part("Northern red oak", 8), 6, 12);
        assertThat(year.dry().tangential().mm()).isEqualTo(20 * (1 - 2 * 0.00274), within(1e-9));
        assertThat(year.dry().radial().mm()).isEqualTo(20 * (1 - 2 * 0.00169), within(1e-9));
        assertThat(year.damp().tangential().mm()).isEqualTo(20 * (1 + 4 * 0.00274), within(1e-9));
        assertThat(year.damp().radial().mm()).isEqualTo(20 * (1 + 4 * 0.00169), within(1e-9));
        assertThat(year.dry().holeAcross().mm()).isEqualTo(20 * (1 - 2 * 0.00369), within(1e-9));
        assertThat(year.damp().holeAcross().mm()).isEqualTo(20 * (1 + 4 * 0.00369), within(1e-9));
        assertThat(year.dry().holeAlong().mm()).isEqualTo(20);
        assertThat(year.damp().oval().mm()).isEqualTo(20 * 4 * (0.00274 - 0.00169), within(1e-9));
        // Tightest: damp, along the rings, where the hole kept its size. Loosest: 0.1096 of play when dry, 0.1600
        // when damp.
        assertThat(year.tightest().mm()).isEqualTo(20 * 4 * 0.00274, within(1e-9));
        assertThat(year.tightestInDry()).isFalse();
        assertThat(year.loosest().mm()).isEqualTo(20 * 4 * (0.00169 - 0.00369), within(1e-9));
        assertThat(year.loosestInDry()).isFalse();
    }

    @Test
    void beyond_six_and_fourteen_percent_the_whole_shrinkage_counts() {
        JointYear year = year(20, part("White ash", 8), 20, part("White ash", 8), 4, 16);
        assertThat(year.dry().tangential().mm()).isEqualTo(20 + 20 * -4 / (3000 / 7.8 - 30 + 8), within(1e-9));
        assertThat(year.damp().radial().mm()).isEqualTo(20 + 20 * 8 / (3000 / 4.9 - 30 + 8), within(1e-9));
    }

    @Test
    void above_fibre_saturation_nothing_moves() {
        JointYear wet = year(20, part("White ash", 45), 20, part("White ash", 8), 6, 30);
        JointYear saturated = year(20, part("White ash", 30), 20, part("White ash", 8), 6, 30);
        assertThat(wet.dry()).isEqualTo(saturated.dry());
        assertThat(wet.damp().tangential().mm()).isEqualTo(20);
        assertThat(wet.damp().radial().mm()).isEqualTo(20);
    }

    private final List<Species> woods =
            Woods.shipped().list().stream().filter(Joint::moves).toList();

    private Joint.Part anyPart(Random random) {
        return new Joint.Part(woods.get(random.nextInt(woods.size())), Moisture.ofPct(5 + 15 * random.nextDouble()));
    }

    private JointYear anyYear(Random random) {
        double dry = 4 + 8 * random.nextDouble();
        double hole = 19.9 + 0.1 * random.nextDouble();
        return year(20, anyPart(random), hole, anyPart(random), dry, dry + 8 * random.nextDouble());
    }

    @Test
    void no_season_and_no_side_is_tighter_than_the_tightest_or_looser_than_the_loosest() {
        Seeds.each(300, random -> {
            JointYear year = anyYear(random);
            for (Joint.Sizes sizes : List.of(year.dry(), year.damp())) {
                for (Length tenon : List.of(sizes.tangential(), sizes.radial())) {
                    for (Length hole : List.of(sizes.holeAcross(), sizes.holeAlong())) {
                        assertThat(tenon.minus(hole)).isBetween(year.loosest(), year.tightest());
                    }
                }
            }
        });
    }

    @Test
    void rings_across_the_grain_are_one_of_the_ways_a_tenon_may_stand() {
        Seeds.each(300, random -> {
            JointYear year = anyYear(random);
            assertThat(year.tightestRingsAcross()).isLessThanOrEqualTo(year.tightest());
            assertThat(year.loosestRingsAcross()).isGreaterThanOrEqualTo(year.loosest());
            double most = Double.NEGATIVE_INFINITY;
            double least = Double.POSITIVE_INFINITY;
            for (Joint.Sizes sizes : List.of(year.dry(), year.damp())) {
                double across = sizes.tangential().mm() - sizes.holeAcross().mm();
                double along = sizes.radial().mm() - sizes.holeAlong().mm();
                most = Math.max(most, Math.max(across, along));
                least = Math.min(least, Math.min(across, along));
            }
            assertThat(year.tightestRingsAcross().mm()).isEqualTo(most, within(1e-12));
            assertThat(year.loosestRingsAcross().mm()).isEqualTo(least, within(1e-12));
        });
    }

    @Test
    void a_tenon_turned_to_the_snug_diameter_is_loose_at_no_side() {
        Seeds.each(300, random -> {
            JointYear year = anyYear(random);
            Length snug = year.joint().snugDiameter(year.home());
            Joint thicker = new Joint(
                    snug,
                    year.joint().tenonWood(),
                    year.joint().hole(),
                    year.joint().holeWood());
            double loosest = new JointYear(thicker, year.home()).loosest().mm();
            if (snug.mm() > 20) {
                assertThat(loosest).isEqualTo(0, within(1e-9));
            } else {
                assertThat(loosest).isGreaterThanOrEqualTo(-1e-9);
            }
        });
    }

    @Test
    void a_tenon_dried_as_told_is_loose_at_no_side_and_one_a_little_wetter_is() {
        int[] found = new int[3];
        Seeds.each(600, random -> {
            JointYear year = anyYear(random);
            Moisture made = year.joint().tenonWood().made();
            Optional<Moisture> snug = year.joint().snugMoisture(year.home());
            if (snug.isEmpty()) {
                found[0]++;
                assertThat(year.turnedAt(Joint.DRIEST).loosest().mm()).isNegative();
                return;
            }
            assertThat(year.turnedAt(snug.get()).loosest().mm()).isGreaterThanOrEqualTo(0);
            if (snug.get().equals(made)) {
                found[1]++;
            } else {
                found[2]++;
                Moisture wetter = Moisture.ofPct(snug.get().pct() + 0.001);
                assertThat(year.turnedAt(wetter).loosest().mm()).isNegative();
            }
        });
        assertThat(found).as("all three answers were met").doesNotContain(0);
    }

    @Test
    void a_home_has_its_dry_season_first_and_a_wood_nothing_is_known_of_makes_no_joint() {
        assertThatThrownBy(() -> new Home(Season.of(Moisture.ofPct(9)), Season.of(Moisture.ofPct(8))))
                .hasMessageContaining("9 %");
        Species unknown = Woods.shipped().list().stream()
                .filter(each -> !Joint.moves(each))
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> new Joint.Part(unknown, Moisture.TWELVE)).hasMessageContaining(unknown.name());
    }
}
