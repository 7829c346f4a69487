package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;

/** Piece labels below a chart: level where they fit, else upright, and every second, fifth, tenth … where they would crowd. */
record PieceAxis(List<String> labels) {
    private static final Lettering LETTERING = Lettering.SMALL;
    private static final double AIR_MM = 1.4;
    private static final double TICK_MM = 1.2;

    /** Level labels are kept while no more than so many in a row are left out. */
    private static final int MOST_SKIPPED_LEVEL = 5;

    PieceAxis {
        labels = List.copyOf(labels);
    }

    /**
     * The labels as they will stand.
     *
     * @param every the first is lettered and each so many after it
     */
    record Laid(List<String> labels, int every, boolean upright, double heightMm) {
        /** Below a field on which piece i, from 0, stands at i + 1. */
        List<Shape> shapes(Plot plot) {
            double bottom = plot.field().bottom();
            List<Shape> out = new ArrayList<>();
            for (int i = 0; i < labels.size(); i += every) {
                double x = plot.xMm(i + 1);
                out.add(Path.line(Pen.FINE, x, bottom, x, bottom + TICK_MM));
                double cap = LETTERING.capHeightMm();
                out.add(
                        upright
                                ? TextLine.upwardsEnding(LETTERING, x + cap / 2, bottom + TICK_MM + 0.8, labels.get(i))
                                : TextLine.centred(LETTERING, x, bottom + TICK_MM + 0.8 + cap, labels.get(i)));
            }
            return out;
        }
    }

    /**
     * Chooses how to letter them.
     *
     * @param pitchMm from one piece to the next
     * @param longestMm a longer label is cut short
     */
    Laid lay(double pitchMm, double longestMm) {
        List<String> cut = labels.stream()
                .map(label -> TextWrap.cut(label, LETTERING, longestMm))
                .toList();
        double widest = cut.stream().mapToDouble(LETTERING::widthMm).max().orElse(0);
        int level = every(pitchMm, widest + AIR_MM);
        if (level <= MOST_SKIPPED_LEVEL) {
            return new Laid(cut, level, false, TICK_MM + 0.8 + LETTERING.capHeightMm() + 1);
        }
        int upright = every(pitchMm, LETTERING.capHeightMm() + AIR_MM);
        return new Laid(cut, upright, true, TICK_MM + 0.8 + widest + 1);
    }

    /** 1, 2, 5, 10, 20, 50 …: the first that keeps labels of that size apart. */
    static int every(double pitchMm, double sizeMm) {
        int unit = 1;
        while (true) {
            for (int k : new int[] {1, 2, 5}) {
                if (k * unit * Math.max(pitchMm, 0.01) >= sizeMm) {
                    return k * unit;
                }
            }
            unit *= 10;
        }
    }
}
