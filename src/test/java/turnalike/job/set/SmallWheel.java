package turnalike.job.set;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.answer.MatchJson;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.pieces.PiecesFile;
import turnalike.units.UnitSystem;

/**
 * A wheel of a few spokes and every order of them, each judged from the file format's formulas alone: the second route to what
 * {@code match} prints. The pattern has a hub tenon of 20 mm, a body of 100 mm and a rim tenon of 10 mm; the hub's radius is 60 mm.
 */
final class SmallWheel {
    private static final String JOB = """
            {"format": "turnalike-job", "version": 1, "units": "mm",
             "pattern": {"name": "Spoke", "stock": {"section": "square", "size": 40, "length": 160},
              "members": [{"kind": "tenon", "length": 20, "diameter": 16}, {"kind": "cylinder", "length": 100, "diameter": 30},
               {"kind": "tenon", "length": 10, "diameter": 12}]},
             "wood": {"density_kg_m3": 700}, "tolerances": {"mass_pct": 10, "scale_g": %s},
             "frame": %s}
            """;

    final double[] masses;
    final double[] balances;
    final double[] lengths;
    final double[] depths;
    /** Whether the job tells the seats' depths. */
    private boolean seated;

    private SmallWheel(int pieces) {
        masses = new double[pieces];
        balances = new double[pieces];
        lengths = new double[pieces];
        depths = new double[pieces];
    }

    static SmallWheel random(Random random, int pieces) {
        SmallWheel wheel = new SmallWheel(pieces);
        for (int i = 0; i < pieces; i++) {
            wheel.masses[i] = Math.round(500 + 5 * random.nextGaussian()) / 10.0;
            wheel.balances[i] = Math.round(700 + 5 * random.nextGaussian()) / 10.0;
            wheel.lengths[i] = Math.round(13000 + 40 * random.nextGaussian()) / 100.0;
            wheel.depths[i] = Math.round(50 * random.nextDouble()) / 100.0;
        }
        return wheel;
    }

    /** A job whose wheel has a place for each piece, with further keys of the frame. */
    String job(double scaleG, String moreKeys) {
        return framed(
                scaleG,
                "{\"kind\": \"wheel\", \"places\": %d, \"hub_radius\": 60%s}"
                        .formatted(masses.length, moreKeys.isEmpty() ? "" : ", " + moreKeys));
    }

    static String framed(double scaleG, String frame) {
        return JOB.formatted(scaleG, frame);
    }

    String depthsKey() {
        seated = true;
        List<String> each = new ArrayList<>();
        for (double depth : depths) {
            each.add("\"%s mm\"".formatted(depth));
        }
        return "\"seat_depths\": " + each;
    }

    String csv() {
        StringBuilder csv = new StringBuilder("piece,mass_g,balance,length\n");
        for (int i = 0; i < masses.length; i++) {
            csv.append(String.format(Locale.ROOT, "p%d,%s,%s,%s%n", i, masses[i], balances[i], lengths[i]));
        }
        return csv.toString();
    }

    static JsonNode match(String job, String csv, boolean strict) {
        return json(MatchJob.of(
                parsed(job), PiecesFile.parse(csv, UnitSystem.METRIC).pieces(), strict, Effort.ofAsks(2000)));
    }

    /** The same without what the left-over pieces are good for, which takes most of the time. */
    static JsonNode glance(String job, String csv) {
        return json(MatchJob.glance(
                parsed(job), PiecesFile.parse(csv, UnitSystem.METRIC).pieces()));
    }

    private static Job parsed(String job) {
        Job.Read read = JobReader.read(job);
        return read.job().orElseThrow(() -> new AssertionError(read.problems()));
    }

    private static JsonNode json(SetMatch match) {
        try {
            return new ObjectMapper().readTree(MatchJson.print(match, List.of()));
        } catch (IOException notJson) {
            throw new UncheckedIOException(notJson);
        }
    }

    static int[] order(JsonNode labels) {
        List<Integer> out = new ArrayList<>();
        labels.forEach(each -> out.add(Integer.parseInt(
                (each.isTextual() ? each : each.get("piece")).textValue().substring(1))));
        return out.stream().mapToInt(i -> i).toArray();
    }

    List<int[]> everyOrder() {
        return everyOrder(masses.length);
    }

    /** Every set of so many pieces in every order. */
    List<int[]> everyOrder(int places) {
        List<int[]> out = new ArrayList<>();
        extend(new int[places], 0, out);
        return out;
    }

    private void extend(int[] order, int filled, List<int[]> into) {
        if (filled == order.length) {
            into.add(order.clone());
            return;
        }
        for (int piece = 0; piece < masses.length; piece++) {
            boolean used = false;
            for (int k = 0; k < filled; k++) {
                used |= order[k] == piece;
            }
            if (!used) {
                order[filled] = piece;
                extend(order, filled + 1, into);
            }
        }
    }

    double unbalance(int[] order, double givenX, double givenY) {
        double x = givenX;
        double y = givenY;
        for (int place = 0; place < order.length; place++) {
            double seat = seated ? depths[place] : 0;
            double moment = masses[order[place]] * (60 + balances[order[place]] - 20 - seat);
            x += moment * Math.cos(2 * Math.PI * place / order.length);
            y += moment * Math.sin(2 * Math.PI * place / order.length);
        }
        return Math.hypot(x, y);
    }

    double noiseFloor(double scaleG, int[] order) {
        double squares = 0;
        for (int place = 0; place < order.length; place++) {
            double reach = 40 + balances[order[place]] - (seated ? depths[place] : 0);
            squares += reach * reach;
        }
        return scaleG / Math.sqrt(12) * Math.sqrt(squares);
    }

    double[] radii(int[] order) {
        double[] radii = new double[order.length];
        for (int place = 0; place < order.length; place++) {
            radii[place] = 60 - depths[place] + lengths[order[place]] - 20 - 10;
        }
        return radii;
    }

    double runOut(int[] order) {
        return runOut(radii(order));
    }

    /** By the fixed point that a least-squares centre is: c = mean of the points + mean distance × mean direction from them to c. */
    static double runOut(double[] radii) {
        int n = radii.length;
        double cx = 0;
        double cy = 0;
        double least = 0;
        double most = 0;
        for (int step = 0; step < 200; step++) {
            double x = 0;
            double y = 0;
            double ux = 0;
            double uy = 0;
            double distances = 0;
            least = Double.POSITIVE_INFINITY;
            most = 0;
            for (int place = 0; place < n; place++) {
                double px = radii[place] * Math.cos(2 * Math.PI * place / n);
                double py = radii[place] * Math.sin(2 * Math.PI * place / n);
                double distance = Math.hypot(px - cx, py - cy);
                least = Math.min(least, distance);
                most = Math.max(most, distance);
                x += px / n;
                y += py / n;
                ux += (cx - px) / distance / n;
                uy += (cy - py) / distance / n;
                distances += distance / n;
            }
            cx = x + distances * ux;
            cy = y + distances * uy;
        }
        return most - least;
    }
}
