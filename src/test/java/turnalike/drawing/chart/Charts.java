package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import turnalike.pieces.control.ChartPoint;
import turnalike.pieces.control.ControlChart;

/** Invented charts for looking at. */
public final class Charts {
    private Charts() {}

    /** Weights in grams of spokes, numbered from 1: one jumps out, the last climb. */
    public static ControlChart spokes(int pieces) {
        Random random = new Random(7);
        List<ChartPoint> points = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            double jump = i == pieces / 3 ? 13 : 0;
            double drift = Math.max(0, i - 0.7 * pieces) * 12 / pieces;
            double mass = 412 + 2.2 * random.nextGaussian() + jump + drift;
            points.add(new ChartPoint(Integer.toString(i + 1), Math.round(mass * 10) / 10.0));
        }
        return chart(points);
    }

    /** Every value the same. */
    public static ControlChart still() {
        return chart(List.of(new ChartPoint("a", 5), new ChartPoint("b", 5), new ChartPoint("c", 5)));
    }

    /** Labels nobody should choose but somebody will, and a signal at most of them. */
    public static ControlChart hostile() {
        List<ChartPoint> points = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String label = i % 3 == 0 ? "<b>&\"'" + i : "Zierwulst am Treppenpfosten, linke Seite, Nr. " + i;
            points.add(new ChartPoint(label, i < 30 ? 1000 + i % 2 : 1100 + i % 3 + i));
        }
        return chart(points);
    }

    public static ControlChart chart(List<ChartPoint> points) {
        return ControlChart.of(points).fold(chart -> chart, (what, mend) -> {
            throw new AssertionError(what);
        });
    }
}
