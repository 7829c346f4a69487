package turnalike.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.outline.Section;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Stock;
import turnalike.units.Density;
import turnalike.units.Length;

class MassScatterTest {
    private static final Density DENSITY = Density.ofKgPerM3(700);
    private static final double[][] SIZES = {{40, 30}, {120, 22}, {25, 38}, {200, 26}};

    private static Pattern pattern(double[] more) {
        List<Member> run = new ArrayList<>();
        for (int i = 0; i < SIZES.length; i++) {
            run.add(new Cylinder(Length.ofMm(SIZES[i][0]), Length.ofMm(SIZES[i][1] + more[i]), Details.NONE));
        }
        return new Pattern("Dowel", new Stock(Section.ROUND, Length.ofMm(60), Length.ofMm(400)), run);
    }

    private static double massG(double[] more) {
        return turnalike.solid.Solid.of(pattern(more).outline(), DENSITY).mass().grams();
    }

    @Test
    void each_members_part_is_its_mass_for_a_third_root_of_the_tolerance() {
        MassScatter scatter = MassScatter.of(pattern(new double[4]), DENSITY, Length.ofMm(0.6));
        for (int i = 0; i < 4; i++) {
            double perMm = Math.PI / 2 * SIZES[i][0] * SIZES[i][1] * 700e-6;
            assertThat(scatter.byMember().get(i).grams()).isEqualTo(perMm * 0.6 / Math.sqrt(3), within(1e-9));
        }
        assertThat(scatter.mass().grams()).isEqualTo(massG(new double[4]), within(1e-9));
    }

    /** 40,000 pieces turned with each diameter off by up to the tolerance, the whole solid worked out for each. */
    @Test
    void the_linear_figure_is_what_simulated_pieces_scatter_by() {
        MassScatter scatter = MassScatter.of(pattern(new double[4]), DENSITY, Length.ofMm(0.4));
        Random random = new Random(11);
        int pieces = 40_000;
        double sum = 0;
        double squares = 0;
        double middle = massG(new double[4]);
        for (int i = 0; i < pieces; i++) {
            double[] off = new double[4];
            for (int member = 0; member < 4; member++) {
                off[member] = 0.4 * (2 * random.nextDouble() - 1);
            }
            double more = massG(off) - middle;
            sum += more;
            squares += more * more;
        }
        double deviation = Math.sqrt(squares / pieces - sum / pieces * (sum / pieces));
        assertThat(scatter.turned().grams()).isEqualTo(deviation, within(0.012 * deviation));
        assertThat(scatter.shareAsItComes()).isEqualTo(Math.hypot(deviation / middle, 0.1), within(1e-4));
        assertThat(scatter.shareByBlank()).isEqualTo(Math.hypot(deviation / middle, 0.01), within(1e-4));
    }
}
