package turnalike.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** CPU time against the number of pieces, both by their logarithm: what grows as the table does rises as steeply as the dashed line. */
final class StoreCurve {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 300;
    private static final int LEFT = 60;
    private static final int TOP = 40;
    private static final List<String> COLOURS = List.of("#7a3b10", "#1f5f8b", "#4c7a34", "#8b1f5f", "#777777");

    private final Map<String, TreeMap<Integer, Double>> series = new LinkedHashMap<>();

    void put(String what, int pieces, double ms) {
        series.computeIfAbsent(what, each -> new TreeMap<>()).put(pieces, ms);
    }

    String svg() {
        StringBuilder out = new StringBuilder("""
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 620 390" font-family="sans-serif" font-size="12">
                <rect width="620" height="390" fill="white"/>
                """);
        out.append(text(LEFT, 24, "start", "CPU milliseconds, by pieces in the table"));
        for (int power = 0; power <= 3; power++) {
            double y = y(Math.pow(10, power));
            out.append(String.format(Locale.ROOT, "<path d=\"M%d %.1fh%d\" stroke=\"#dddddd\"/>%n", LEFT, y, WIDTH));
            out.append(text(LEFT - 6, y + 4, "end", String.valueOf(Math.round(Math.pow(10, power)))));
        }
        for (int pieces : List.of(1000, 2000, 4000, 10_000)) {
            out.append(text(x(pieces), TOP + HEIGHT + 18, "middle", String.valueOf(pieces)));
        }
        out.append(String.format(
                Locale.ROOT,
                "<path d=\"M%.1f %.1fL%.1f %.1f\" stroke=\"#999999\" stroke-dasharray=\"5 4\"/>%n",
                x(1000),
                y(10),
                x(10_000),
                y(100)));
        int at = 0;
        for (Map.Entry<String, TreeMap<Integer, Double>> each : series.entrySet()) {
            String colour = COLOURS.get(at++ % COLOURS.size());
            StringBuilder points = new StringBuilder();
            each.getValue()
                    .forEach((pieces, ms) -> points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(pieces), y(ms))));
            out.append("<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"/>%n"
                    .formatted(points.toString().strip(), colour));
            out.append(text(LEFT + WIDTH + 6, y(each.getValue().lastEntry().getValue()) + 4, "start", each.getKey())
                    .replace("<text", "<text fill=\"%s\"".formatted(colour)));
        }
        return out.append("</svg>\n").toString();
    }

    private static double x(double pieces) {
        return LEFT + WIDTH * Math.log10(pieces / 1000);
    }

    private static double y(double ms) {
        return TOP + HEIGHT * (3 - Math.log10(Math.max(1, ms))) / 3;
    }

    private static String text(double x, double y, String anchor, String words) {
        return String.format(
                Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n", x, y, anchor, words);
    }
}
