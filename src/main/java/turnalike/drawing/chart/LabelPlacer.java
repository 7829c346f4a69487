package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;

/**
 * Finds room for labels beside points. A label never covers another, nor anything it was told to keep clear of; it is set across lines
 * only when every free spot near its point lies on one.
 */
final class LabelPlacer {
    private static final double AIR_MM = 0.5;
    private static final double FARTHER_MM = 3.5;
    private static final int RINGS = 5;
    private static final double CROSSING_COSTS_MM = 9;
    private static final int[][] WAYS = {{0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}, {1, 0}, {-1, 0}};

    private final Box bounds;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box.Stroke> lines = new ArrayList<>();
    private final List<Box.Stroke> leaders = new ArrayList<>();

    LabelPlacer(Box bounds) {
        this.bounds = bounds;
    }

    /** Nothing may be set here. */
    void take(Box box) {
        taken.add(box);
    }

    /** A line that a label would rather not be set across. */
    void avoid(double x1, double y1, double x2, double y2) {
        lines.add(new Box.Stroke(x1, y1, x2, y2));
    }

    private record Spot(TextLine words, Optional<Box.Stroke> leader, double cost) {}

    /**
     * The label of a point, with a leader when it stands off; empty when there is no room.
     *
     * @param clearMm how far round the point nothing is to be lettered
     */
    List<Shape> label(Lettering lettering, double xMm, double yMm, double clearMm, String text) {
        Optional<Spot> best = Optional.empty();
        for (int ring = 0; ring < RINGS; ring++) {
            for (int[] way : WAYS) {
                Spot spot = spot(lettering, xMm, yMm, clearMm, ring, way, text);
                if (fits(spot) && best.map(found -> spot.cost() < found.cost()).orElse(true)) {
                    best = Optional.of(spot);
                }
            }
        }
        return best.map(this::settle).orElse(List.of());
    }

    private Spot spot(Lettering lettering, double x, double y, double clear, int ring, int[] way, String text) {
        double away = clear + ring * FARTHER_MM;
        double diagonal = way[0] != 0 && way[1] != 0 ? 0.8 : 1;
        double cap = lettering.capHeightMm();
        double atX = x + way[0] * away * diagonal;
        double atY = y + way[1] * away * diagonal;
        double baseline = way[1] < 0 ? atY : way[1] > 0 ? atY + cap : atY + cap / 2;
        TextLine words =
                switch (way[0]) {
                    case 1 -> TextLine.of(lettering, atX, baseline, text);
                    case -1 -> TextLine.ending(lettering, atX, baseline, text);
                    default -> TextLine.centred(lettering, atX, baseline, text);
                };
        Optional<Box.Stroke> leader = Optional.empty();
        if (ring > 0) {
            double near = clear * 0.8 * diagonal;
            leader = Optional.of(new Box.Stroke(x + way[0] * near, y + way[1] * near, atX, atY));
        }
        Box box = Box.of(words);
        long crossed =
                lines.stream().filter(line -> line.crosses(box.grown(0.2))).count();
        return new Spot(words, leader, away + crossed * CROSSING_COSTS_MM);
    }

    private boolean fits(Spot spot) {
        Box box = Box.of(spot.words()).grown(AIR_MM);
        return bounds.holds(Box.of(spot.words()))
                && taken.stream().noneMatch(box::meets)
                && leaders.stream().noneMatch(leader -> leader.crosses(box))
                && spot.leader()
                        .map(leader -> taken.stream().noneMatch(leader::crosses))
                        .orElse(true);
    }

    private List<Shape> settle(Spot spot) {
        taken.add(Box.of(spot.words()));
        List<Shape> out = new ArrayList<>();
        spot.leader().ifPresent(leader -> {
            leaders.add(leader);
            out.add(Path.line(Pen.FINE, leader.x1(), leader.y1(), leader.x2(), leader.y2()));
        });
        out.add(spot.words());
        return out;
    }
}
