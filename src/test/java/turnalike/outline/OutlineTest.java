package turnalike.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.outline.Outline.Station;
import turnalike.units.Length;

class OutlineTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    /** From 7 mm on: a cone 4 to 5, a shoulder up to 8, a bead of 10 in its middle, a cone 8 to 6. */
    private static Outline run() {
        return Outline.of(
                mm(7),
                List.of(
                        new Line(mm(10), mm(4), mm(5)),
                        new EllipseArc(mm(6), mm(3), mm(3), mm(8), mm(2)),
                        new Line(mm(20), mm(8), mm(6))),
                Section.ROUND);
    }

    @Test
    void it_starts_and_ends_with_its_first_and_last_curve() {
        Outline outline = run();
        assertThat(outline.start()).isEqualTo(mm(7));
        assertThat(outline.end()).isEqualTo(mm(43));
        assertThat(outline.length()).isEqualTo(mm(36));
        assertThat(outline.startRadius()).isEqualTo(mm(4));
        assertThat(outline.endRadius()).isEqualTo(mm(6));
        assertThat(outline.reversed().start()).isEqualTo(mm(0));
        assertThat(outline.reversed().length()).isEqualTo(mm(36));
        assertThat(outline.reversed().startRadius()).isEqualTo(mm(6));
        assertThat(outline.reversed().endRadius()).isEqualTo(mm(4));
    }

    @Test
    void its_stations_are_the_ends_of_each_curve_and_where_it_is_level() {
        assertThat(run().stations())
                .containsExactly(
                        new Station(mm(7), mm(4)),
                        new Station(mm(17), mm(5)),
                        new Station(mm(17), mm(8)),
                        new Station(mm(20), mm(10)),
                        new Station(mm(23), mm(8)),
                        new Station(mm(23), mm(8)),
                        new Station(mm(43), mm(6)));
        assertThat(run().largestRadius()).isEqualTo(mm(10));
        assertThat(run().smallestRadius()).isEqualTo(mm(4));
    }

    /** Held against going through the segments one by one. */
    @Test
    void the_radius_at_a_place_is_that_of_the_first_segment_that_reaches_it() {
        Seeds.each(200, random -> {
            int count = 1 + random.nextInt(9);
            List<Line> lines = new java.util.ArrayList<>();
            for (int i = 0; i < count; i++) {
                lines.add(Line.level(mm(1 + random.nextInt(5)), mm(1 + random.nextInt(20))));
            }
            Outline outline = Outline.of(mm(3), lines, Section.ROUND);
            for (double place = 0; place <= 60; place += 0.5) {
                double expected = 0;
                double end = 3;
                for (Line line : lines) {
                    if (place > end || expected == 0) {
                        expected = line.from().mm();
                    }
                    end += line.length().mm();
                }
                assertThat(outline.radiusAt(mm(place)).mm()).as("at %s", place).isCloseTo(expected, within(1e-12));
            }
        });
    }

    @Test
    void turned_end_for_end_every_place_keeps_its_radius_and_section() {
        Outline mixed =
                Outline.join(List.of(run(), Outline.of(mm(43), List.of(Line.level(mm(9), mm(11))), Section.SQUARE)));
        Outline turned = mixed.reversed();
        assertThat(mixed.end()).isEqualTo(mm(52));
        for (double place = 7.25; place < 52; place += 0.5) {
            Length mirrored = mm(52 - place);
            assertThat(turned.radiusAt(mirrored).mm())
                    .isCloseTo(mixed.radiusAt(mm(place)).mm(), within(1e-12));
            assertThat(turned.sectionAt(mirrored)).isEqualTo(mixed.sectionAt(mm(place)));
        }
    }

    @Test
    void segments_may_miss_each_other_by_rounding_and_by_no_more() {
        Segment first = new Segment(mm(0), Line.level(mm(500), mm(3)), Section.ROUND);
        for (double sign : new double[] {-1, 1}) {
            Segment rounded = new Segment(mm(500 + sign * 0.9e-6), Line.level(mm(500), mm(3)), Section.ROUND);
            assertThat(new Outline(List.of(first, rounded)).segments()).hasSize(2);
            Segment apart = new Segment(mm(500 + sign * 1.2e-6), Line.level(mm(500), mm(3)), Section.ROUND);
            assertThatThrownBy(() -> new Outline(List.of(first, apart))).hasMessageContaining("segment 1");
        }
    }

    /** ∫ (x − o)ᵏ rᵖ dx of a cylinder is rᵖ ((b − o)ᵏ⁺¹ − (a − o)ᵏ⁺¹) / (k + 1). */
    @Test
    void moments_are_taken_about_the_origin_asked_for() {
        Segment segment = new Segment(mm(5), Line.level(mm(4), mm(3)), Section.ROUND);
        for (double origin : new double[] {-2, 0, 6, 11}) {
            for (int k = 0; k <= 2; k++) {
                double expected = 9 * (Math.pow(9 - origin, k + 1) - Math.pow(5 - origin, k + 1)) / (k + 1);
                assertThat(segment.integralAbout(origin, k, 2)).isCloseTo(expected, within(1e-9));
            }
        }
        assertThatThrownBy(() -> segment.integralAbout(0, 3, 2)).hasMessageContaining("power of x");
        assertThatThrownBy(() -> segment.integralAbout(0, -1, 2)).hasMessageContaining("power of x");
    }

    /** A circle and a square of side 2 r: areas πr² and 4r²; second moments πr⁴/4 and s⁴/12 (any handbook of mechanics). */
    @Test
    void a_section_has_its_handbook_factors() {
        assertThat(Section.ROUND.areaFactor()).isEqualTo(Math.PI);
        assertThat(Section.SQUARE.areaFactor()).isEqualTo(4);
        assertThat(Section.ROUND.secondMomentFactor()).isEqualTo(Math.PI / 4);
        assertThat(Section.SQUARE.secondMomentFactor()).isEqualTo(Math.pow(2, 4) / 12);
        assertThat(Section.ROUND.reachFactor()).isEqualTo(1);
        assertThat(Section.SQUARE.reachFactor()).isEqualTo(Math.hypot(1, 1));
    }
}
