package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Nine of ten wheels lie in the range that is told: some 10,000 simulated wheels of each kind, made from the file format's formulas and this test's
 * own draws alone. What is drawn: how each reading was rounded, where each true balance point is (from members turned off their diameters,
 * or scattered about a mean that the pattern does not have), how deep each seat came out, where its hole points, and what each segment of
 * a rim weighs. Other draws with {@code -Dturnalike.simulation=NUMBER}.
 */
class ExpectedUnbalanceTest {
    private static final int WHEELS = 75;
    private static final int DRAWS = 134;
    private static final double HUB = 60;
    private static final double MARK = 0.3;

    /** What one kind of wheel is like. */
    private record Kind(
            int places,
            int pieces,
            int measured,
            double givenGMm,
            double scaleG,
            double diameter,
            double seat,
            double holeDeg,
            double scatterMm,
            int segments) {
        String job() {
            return """
                    {"format": "turnalike-job", "version": 1, "units": "mm",
                     "pattern": {"name": "Spoke", "stock": {"section": "square", "size": 40, "length": 160},
                      "members": [{"kind": "tenon", "length": 20, "diameter": 16}, {"kind": "cylinder", "length": 40, "diameter": 24},
                       {"kind": "cylinder", "length": 60, "diameter": 30}, {"kind": "tenon", "length": 10, "diameter": 12}]},
                     "wood": {"density_kg_m3": 700},
                     "tolerances": {"mass_pct": 20, "scale_g": %s, "mark": %s, "diameter": %s, "seat": %s, "hole_angle_deg": %s},
                     "frame": {"kind": "wheel", "places": %d, "hub_radius": 60, "given_moments": [{"g_mm": %s, "at_deg": 70}]%s}}
                    """.formatted(scaleG, MARK, diameter, seat, holeDeg, places, givenGMm, rim());
        }

        private String rim() {
            return segments == 0
                    ? ""
                    : ", \"rim_width\": 40, \"segments\": %d, \"rim_segments_g\": [%s]"
                            .formatted(segments, String.join(", ", Collections.nCopies(segments, "" + SEGMENT_G)));
        }
    }

    /** A rim of even segments, read off the scale alike: what each weighs beyond that reading is drawn. */
    private static final double SEGMENT_G = 200;

    private static final double RIM_INNER = HUB + 100;
    private static final double RIM_OUTER = RIM_INNER + 40;

    /** From the axle to a segment's balance point, by summing small pieces of the ring. */
    private static double segmentAway(int segments) {
        double mass = 0;
        double moment = 0;
        for (int i = 0; i < 400; i++) {
            double r = RIM_INNER + (RIM_OUTER - RIM_INNER) * (i + 0.5) / 400;
            for (int k = 0; k < 400; k++) {
                double angle = Math.PI / segments * (2 * (k + 0.5) / 400 - 1);
                mass += r;
                moment += r * r * Math.cos(angle);
            }
        }
        return moment / mass;
    }

    /** The pattern's members: length and diameter. */
    private static final double[][] MEMBERS = {{20, 16}, {40, 24}, {60, 30}, {10, 12}};

    private static double balance(double[] off) {
        double mass = 0;
        double moment = 0;
        double x = 0;
        for (int i = 0; i < MEMBERS.length; i++) {
            double d = MEMBERS[i][1] + off[i];
            double part = MEMBERS[i][0] * d * d;
            mass += part;
            moment += part * (x + MEMBERS[i][0] / 2);
            x += MEMBERS[i][0];
        }
        return moment / mass;
    }

    private static double uniform(Random random, double most) {
        return most * (2 * random.nextDouble() - 1);
    }

    @ParameterizedTest
    @CsvSource({
        "8,  8,  0,    0, 0.1, 0.4,  0.25, 0.25, 0, 0",
        "8,  10, 0,    0, 1,   0.05, 0.05, 0.01, 0, 0",
        "7,  7,  0, 5000, 0.1, 0.4,  0.25, 0.25, 0, 0",
        "9,  9,  9,    0, 0.1, 0.4,  0.25, 0.1,  1.2, 0",
        "7,  9,  5,    0, 0.1, 0.4,  0.1,  0.05, 1.2, 0",
        "8,  8,  6,  300, 0.1, 0.4,  0.1,  0.05, 0.8, 0",
        "6,  6,  2,    0, 0.1, 0.4,  0.5,  0.3,  0, 0",
        "4,  5,  0,   20, 2,   0.4,  0.25, 1,    0, 0",
        "8,  8,  8,    0, 1,   0.1,  0.05, 0.02, 0, 4",
        "9,  9,  0,    0, 5,   0.05, 0.05, 0.01, 0, 3"
    })
    void nine_of_ten_wheels_lie_in_the_range_told(
            int places,
            int pieces,
            int measured,
            double givenGMm,
            double scaleG,
            double diameter,
            double seat,
            double holeDeg,
            double scatterMm,
            int segments) {
        Kind kind = new Kind(places, pieces, measured, givenGMm, scaleG, diameter, seat, holeDeg, scatterMm, segments);
        double segmentAway = segments == 0 ? 0 : segmentAway(segments);
        Random random = new Random(Long.getLong("turnalike.simulation", 20261128) * 7919 + pieces);
        int inside = 0;
        double sum = 0;
        double told = 0;
        for (int wheel = 0; wheel < WHEELS; wheel++) {
            double[] truth = new double[pieces]; // balance points of the measured; the others are drawn below
            double[] readings = new double[pieces];
            StringBuilder csv = new StringBuilder("piece,mass_g,balance\n");
            for (int i = 0; i < pieces; i++) {
                double mass = 60 + 1.5 * random.nextGaussian();
                readings[i] = Math.rint(mass / scaleG) * scaleG;
                truth[i] = drawn(random, kind);
                double read = truth[i] + uniform(random, MARK);
                csv.append(String.format(
                        Locale.ROOT,
                        "p%d,%.6f,%s%n",
                        i,
                        readings[i],
                        i < measured ? String.format(Locale.ROOT, "%.6f", read) : ""));
            }
            JsonNode match = SmallWheel.glance(kind.job(), csv.toString());
            int[] order = SmallWheel.order(match.get("places"));
            double from = match.at("/unbalance_range_g_mm/0").doubleValue();
            double to = match.at("/unbalance_range_g_mm/1").doubleValue();
            told += match.get("expected_unbalance_g_mm").doubleValue() / WHEELS;
            for (int draw = 0; draw < DRAWS; draw++) {
                double x = givenGMm * Math.cos(Math.toRadians(70));
                double y = givenGMm * Math.sin(Math.toRadians(70));
                for (int k = 0; k < places; k++) {
                    double mass = readings[order[k]] + uniform(random, scaleG / 2);
                    double point = order[k] < measured ? truth[order[k]] : drawn(random, kind);
                    double reach = HUB + point - 20 - uniform(random, seat);
                    double at = 2 * Math.PI * k / places + Math.toRadians(uniform(random, holeDeg));
                    x += mass * reach * Math.cos(at);
                    y += mass * reach * Math.sin(at);
                }
                for (int k = 0; k < segments; k++) {
                    double mass = SEGMENT_G + uniform(random, scaleG / 2);
                    double at = 2 * Math.PI * (k + 0.5) / segments;
                    x += mass * segmentAway * Math.cos(at);
                    y += mass * segmentAway * Math.sin(at);
                }
                double unbalance = Math.hypot(x, y);
                sum += unbalance / WHEELS / DRAWS;
                inside += unbalance >= from && unbalance <= to ? 1 : 0;
            }
        }
        assertThat(100.0 * inside / WHEELS / DRAWS).as(kind.toString()).isBetween(88.0, 92.0);
        assertThat(told).as("the mean that was told, %s", kind).isBetween(0.92 * sum, 1.08 * sum);
    }

    /** Where a scatter is told it is about a mean 0.7 mm from the pattern's; else the members are off their diameters. */
    private static double drawn(Random random, Kind kind) {
        if (kind.scatterMm() > 0) {
            return balance(new double[4]) + 0.7 + kind.scatterMm() * random.nextGaussian();
        }
        double[] off = new double[MEMBERS.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = uniform(random, kind.diameter());
        }
        return balance(off);
    }
}
