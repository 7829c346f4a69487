package turnalike.drawing.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Svg;
import turnalike.frame.SegmentedRim;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What is pricked and sawn by: places at their true distances along the strip and inside the rim. */
class WheelGaugesTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    @Test
    void a_strip_is_as_long_as_the_work_is_round_and_its_places_stand_evenly() {
        PlaceStrip strip = new PlaceStrip("hub", mm(2 * Math.PI * 90), 14, mm(30));
        List<Length> places = strip.listPlaces();
        assertThat(places).hasSize(15);
        for (int i = 0; i < 14; i++) {
            assertThat(places.get(i + 1).minus(places.get(i)).mm()).isCloseTo(2 * Math.PI * 90 / 14, within(1e-9));
        }
        Svg svg = strip.svg(UnitSystem.METRIC);
        assertThat(svg.width().mm())
                .isCloseTo(2 * Math.PI * 90 + 2 * strip.datum().mm(), within(1e-9));
        // A cross on the first row at place 3, on the second at place 4.
        double first = strip.edge().mm() + 12;
        assertThat(svg.file())
                .contains(crossLevel(strip, places.get(2), first))
                .contains(crossLevel(strip, places.get(3), first + 30));
        assertThat(svg.file()).doesNotContain(crossLevel(strip, places.get(2), first + 30));
    }

    private static String crossLevel(PlaceStrip strip, Length place, double row) {
        return line(
                strip.datum().plus(place).mm() - 3,
                row,
                strip.datum().plus(place).mm() + 3,
                row);
    }

    private static String line(double x1, double y1, double x2, double y2) {
        return "M%s %sL%s %s".formatted(figure(x1), figure(y1), figure(x2), figure(y2));
    }

    private static String figure(double mm) {
        return BigDecimal.valueOf(Math.round(mm * 1000) / 1000.0)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The mortises of the first segment, laid back round the axle, are places of the wheel between its two joints, and all of them. */
    @Test
    void a_segment_has_the_mortises_that_stand_between_its_joints() {
        for (int places = 3; places <= 16; places++) {
            for (int segments = 3; segments <= 12; segments++) {
                SegmentedRim rim = SegmentedRim.of(segments, places, mm(300), Optional.of(mm(350)), mm(16));
                SegmentTemplate template = new SegmentTemplate(rim, mm(300), mm(350), places);
                List<Length> listed = template.listPlaces();
                double half = Math.PI / segments;
                double from = rim.jointAt().radians();
                int there = 0;
                for (int k = 0; k < places; k++) {
                    double angle = 2 * Math.PI * k / places;
                    there += angle > from + 1e-9 && angle < from + 2 * half - 1e-9 ? 1 : 0;
                }
                assertThat(listed.size() - 2)
                        .as("%d places, %d segments", places, segments)
                        .isEqualTo(there);
                for (Length at : listed.subList(1, listed.size() - 1)) {
                    double aside = Math.asin((at.mm() - template.chord().mm() / 2) / 300);
                    double angle = from + half - aside;
                    double off = Math.IEEEremainder(angle, 2 * Math.PI / places);
                    assertThat(off)
                            .as("%d places, %d segments", places, segments)
                            .isCloseTo(0, within(1e-9));
                }
            }
        }
    }
}
