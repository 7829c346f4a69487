package turnalike.trace.against;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.outline.Section;
import turnalike.pattern.Bead;
import turnalike.pattern.Cove;
import turnalike.pattern.Cylinder;
import turnalike.pattern.Details;
import turnalike.pattern.Fillet;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.Stock;
import turnalike.pattern.Taper;
import turnalike.pattern.Tenon;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Profile.Station;
import turnalike.trace.Profile.Stretch;
import turnalike.trace.against.Comparison.Held;
import turnalike.units.Length;

class AgainstTest {
    private static final Against.Manner TABLE = new Against.Manner(Held.START, false, true);

    /** What a hand may do to each of the invented spindle's sizes, in mm. */
    private record Slip(double tenon, double beadLow, double coveShallow, double taperThin, double crown) {}

    private static final Slip NONE = new Slip(0, 0, 0, 0, 0);

    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static Pattern spindle(Slip slip) {
        List<Member> run = List.of(
                new Tenon(mm(25 + slip.tenon), mm(19), mm(0), Details.NONE),
                new Fillet(mm(6 - slip.beadLow), mm(28), Details.NONE),
                new Bead(mm(18), mm(28), mm(38 + slip.crown), Details.NONE),
                new Cove(mm(20 + slip.beadLow), mm(30), mm(22 + 2 * slip.coveShallow), Details.NONE),
                new Taper(mm(120), mm(30 - slip.taperThin), mm(22 - slip.taperThin), Details.NONE),
                new Bead(mm(12), mm(22), mm(31), Details.NONE),
                new Cylinder(mm(40), mm(24), Details.NONE),
                new Tenon(mm(22), mm(16), mm(0), Details.NONE));
        return new Pattern("invented", new Stock(Section.SQUARE, mm(45), mm(300)), run);
    }

    private static Original read(Pattern piece, double step, double sigma, long seed, List<Stretch> hidden) {
        Random dice = new Random(seed);
        List<Station> out = new ArrayList<>();
        double length = piece.length().mm();
        int parts = (int) Math.ceil(length / step);
        for (int i = 0; i <= parts; i++) {
            double place = length * i / parts;
            double radius = piece.outline().radiusAt(mm(place)).mm();
            out.add(new Station(mm(place), mm(radius + sigma * dice.nextGaussian()), mm(sigma)));
        }
        return new Original(new Profile(mm(length), out, hidden), List.of(), mm(0.02));
    }

    private static Comparison compared(Slip slip, double step, long seed) {
        return Against.of(read(spindle(slip), step, 0.08, seed, List.of()), spindle(NONE), TABLE);
    }

    @Test
    void a_bead_that_stands_low_and_a_shallow_cove_are_told_as_far_as_they_are() {
        Comparison found = compared(new Slip(0, 1.2, 0.8, 0, 0), 0.5, 1);
        MemberOff bead = found.members().get(2);
        assertThat(bead.stands().orElseThrow().value().mm()).isCloseTo(-1.2, within(0.15));
        assertThat(bead.stands().orElseThrow().isSurelyOff()).isTrue();
        assertThat(bead.thicker().orElseThrow().value().mm()).isCloseTo(0, within(0.15));
        MemberOff cove = found.members().get(3);
        assertThat(cove.deeper().orElseThrow().value().mm()).isCloseTo(-0.8, within(0.15));
        assertThat(found.members().get(5).stands().orElseThrow().value().mm()).isCloseTo(0, within(0.15));
        assertThat(found.longer().mm()).isCloseTo(0, within(1e-9));
        assertThat(found.turned()).isFalse();
        assertThat(found.isHardlyThis()).isFalse();
    }

    @Test
    void it_is_found_the_other_way_round_and_then_told_from_its_start_end() {
        Original read = read(spindle(new Slip(0, 1.2, 0, 0, 0)), 0.5, 0.05, 2, List.of());
        Original around = new Original(Seen.turned(read.profile()), List.of(), read.surest());
        Comparison found = Against.of(around, spindle(NONE), TABLE);
        assertThat(found.turned()).isTrue();
        assertThat(found.eitherWay()).isFalse();
        assertThat(found.members().get(2).stands().orElseThrow().value().mm()).isCloseTo(-1.2, within(0.15));
    }

    @Test
    void a_long_tenon_moves_all_after_it_unless_the_far_end_is_held() {
        Slip slip = new Slip(3, 0, 0, 0, 0);
        Comparison fromStart = compared(slip, 0.5, 3);
        assertThat(fromStart.longer().mm()).isCloseTo(3, within(1e-9));
        assertThat(fromStart.members().get(0).longer().orElseThrow().value().mm())
                .isCloseTo(3, within(0.2));
        for (int i = 1; i < 7; i++) {
            fromStart.members().get(i).stands().ifPresent(each -> assertThat(
                            each.value().mm())
                    .isCloseTo(3, within(3 * each.uncertainty().mm() + 0.2)));
        }
        Comparison fromEnd = Against.of(
                read(spindle(slip), 0.5, 0.08, 3, List.of()), spindle(NONE), new Against.Manner(Held.END, false, true));
        assertThat(fromEnd.members().get(5).stands().orElseThrow().value().mm()).isCloseTo(0, within(0.15));
    }

    @Test
    void thicknesses_are_told_and_where_a_caliper_would_be_laid() {
        Comparison found = compared(new Slip(0, 0, 0, 0.9, 1.1), 0.5, 4);
        assertThat(found.members().get(2).thicker().orElseThrow().value().mm()).isCloseTo(1.1, within(0.15));
        assertThat(found.members().get(4).thicker().orElseThrow().value().mm()).isCloseTo(-0.9, within(0.15));
        Figure middle = found.caliper().at(mm(129)).orElseThrow();
        assertThat(middle.value().mm()).isCloseTo(25.1, within(0.15));
    }

    @Test
    void nothing_is_told_of_what_was_hidden() {
        List<Stretch> hidden = List.of(new Stretch(mm(31), mm(69)));
        Comparison found =
                Against.of(read(spindle(new Slip(0, 1.2, 0.8, 0, 0)), 0.5, 0.08, 5, hidden), spindle(NONE), TABLE);
        assertThat(found.members().get(2).stands()).isEmpty();
        assertThat(found.members().get(2).thicker()).isEmpty();
        assertThat(found.members().get(3).deeper()).isEmpty();
        assertThat(found.members().get(3).isSeen()).isFalse();
        assertThat(found.caliper().at(mm(50))).isEmpty();
        assertThat(found.caliper().at(mm(100))).isPresent();
        assertThat(found.placeOf(mm(40))).isEmpty();
        assertThat(found.off())
                .noneMatch(each -> each.place().mm() > 31 && each.place().mm() < 69);
    }

    @Test
    void a_piece_of_another_pattern_is_said_to_be_one() {
        Pattern other = new Pattern(
                "another",
                new Stock(Section.SQUARE, mm(60), mm(300)),
                List.of(
                        new Cylinder(mm(130), mm(44), Details.NONE),
                        new Cove(mm(60), mm(44), mm(15), Details.NONE),
                        new Cylinder(mm(73), mm(44), Details.NONE)));
        Comparison found = Against.of(read(other, 0.5, 0.05, 6, List.of()), spindle(NONE), TABLE);
        assertThat(found.isHardlyThis()).isTrue();
    }

    @Test
    void the_stated_uncertainty_holds_for_dense_and_for_sparse_tables() {
        for (double step : new double[] {0.5, 4}) {
            int within = 0;
            int all = 0;
            int told = 0;
            int surelyWrong = 0;
            double squares = 0;
            for (long seed = 10; seed < 22; seed++) {
                Random dice = new Random(seed);
                Slip slip = new Slip(
                        dice.nextGaussian(),
                        dice.nextGaussian(),
                        0.4 * dice.nextGaussian(),
                        0.6 * dice.nextGaussian(),
                        0.6 * dice.nextGaussian());
                Comparison found = compared(slip, step, seed);
                double[][] truth = {
                    {2, slip.tenon - slip.beadLow}, {3, slip.tenon - slip.beadLow / 2}, {5, slip.tenon},
                };
                for (double[] each : truth) {
                    MemberOff member = found.members().get((int) each[0]);
                    if (member.stands().isPresent()) {
                        Figure figure = member.stands().get();
                        double off = Math.abs(figure.value().mm() - each[1]);
                        squares += off * off;
                        within += off <= figure.uncertainty().mm() ? 1 : 0;
                        surelyWrong += off > 3 * figure.uncertainty().mm() ? 1 : 0;
                        told++;
                    }
                    all++;
                }
            }
            assertThat(told).as("told at " + step).isGreaterThan(all / 2);
            assertThat(within).as("within at " + step).isGreaterThan((int) (0.6 * told));
            assertThat(Math.sqrt(squares / told)).as("off by at " + step).isLessThan(0.15);
            assertThat(surelyWrong).isLessThanOrEqualTo(told / 20);
        }
    }
}
