package turnalike.drawing.frame;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;

/**
 * The lettering round a wheel: as full as there is room for. Few places carry piece and mass on two lines, more of them one line each,
 * upright above and below the wheel and level beside it; when even that is too much only every second, fifth, tenth … is lettered.
 *
 * @param numbersAtRim whether the place's number stands in a ring at the rim, else before the piece
 * @param every the first is lettered and each so many after it
 * @param radiusMm of the rim that this leaves room for
 * @param blocks by place, from the first; empty for the unlettered
 */
record WheelLabels(boolean numbersAtRim, int every, double radiusMm, List<List<TextLine>> blocks) {
    /** The radius of a ring with a place's number. */
    static final double NODE_MM = 3.2;

    /** How much larger the first place's dark ring is. */
    static final double DARK_MM = 0.7;

    private static final double AIR_MM = 1;
    private static final double LEAST_RADIUS_MM = 10;

    private enum Style {
        TWO_LINES(Lettering.STRONG, true, 0.2),
        TWO_SHORT(Lettering.STRONG, true, 0.13),
        ONE_LINE(Lettering.SMALL, true, 0.2),
        SMALLEST(Lettering.TINY, true, 0.2),
        NO_MASS(Lettering.SMALL, false, 0.2);

        private final Lettering lettering;
        private final boolean mass;

        /** The longest line, as a share of the picture's width; a longer label is cut. */
        private final double longestShare;

        Style(Lettering lettering, boolean mass, double longestShare) {
            this.lettering = lettering;
            this.mass = mass;
            this.longestShare = longestShare;
        }

        boolean twoLines() {
            return this == TWO_LINES || this == TWO_SHORT;
        }
    }

    /** The fullest lettering in which nothing covers anything, its middle at the origin, in a square of that size. */
    static WheelLabels in(double sizeMm, List<PlacesDrawing.Place> places) {
        for (Style style : List.of(Style.TWO_LINES, Style.TWO_SHORT, Style.ONE_LINE, Style.SMALLEST)) {
            WheelLabels labels = laid(sizeMm, places, style, 1);
            if (labels.isClear()) {
                return labels;
            }
        }
        for (int every = 1; ; every = next(every)) {
            WheelLabels labels = laid(sizeMm, places, Style.NO_MASS, every);
            if (labels.isClear() || every >= places.size()) {
                return labels;
            }
        }
    }

    /** 1, 2, 5, 10, 20, 50 … */
    private static int next(int every) {
        String digits = Integer.toString(every);
        return digits.startsWith("2") ? every / 2 * 5 : every * 2;
    }

    private static WheelLabels laid(double sizeMm, List<PlacesDrawing.Place> places, Style style, int every) {
        boolean numbers = style.twoLines();
        double longest = sizeMm * style.longestShare;
        double node = numbers ? NODE_MM + DARK_MM : 1;
        double widest = 0;
        for (int i = 0; i < places.size(); i += every) {
            for (String line : lines(places.get(i), style, longest)) {
                widest = Math.max(widest, style.lettering.widthMm(line));
            }
        }
        double radius = Math.max(LEAST_RADIUS_MM, sizeMm / 2 - widest - node - 2 * AIR_MM);
        List<List<TextLine>> blocks = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            double angle = 2 * Math.PI * i / places.size();
            blocks.add(
                    i % every == 0
                            ? block(lines(places.get(i), style, longest), style, angle, radius + node + AIR_MM)
                            : List.of());
        }
        return new WheelLabels(numbers, every, radius, blocks);
    }

    private static List<String> lines(PlacesDrawing.Place place, Style style, double longestMm) {
        if (style.twoLines()) {
            List<String> out = new ArrayList<>();
            out.add(TextWrap.cut(place.piece(), style.lettering, longestMm));
            if (!place.massText().isEmpty()) {
                out.add(place.massText());
            }
            return out;
        }
        String number = place.number() + ": ";
        String mass = style.mass && !place.massText().isEmpty() ? ", " + place.massText() : "";
        double room = longestMm - style.lettering.widthMm(number + mass);
        String piece = TextWrap.cut(place.piece(), style.lettering, Math.max(room, longestMm / 3));
        return List.of(number + piece + mass);
    }

    /** Lines beside a point that far from the middle, clear of the circle through it. */
    private static List<TextLine> block(List<String> lines, Style style, double angle, double awayMm) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        if (!style.twoLines()) {
            return List.of(single(lines.get(0), style.lettering, cos, sin, awayMm));
        }
        double cap = style.lettering.capHeightMm();
        double step = Lettering.SMALL.capHeightMm() + 1.3;
        double height = cap + (lines.size() - 1) * step;
        double width = style.lettering.widthMm(lines.get(0));
        for (String line : lines.subList(1, lines.size())) {
            width = Math.max(width, Lettering.SMALL.widthMm(line));
        }
        double support = Math.abs(cos) * width / 2 + Math.abs(sin) * height / 2;
        double x = (awayMm + support) * cos;
        double top = -(awayMm + support) * sin - height / 2;
        List<TextLine> out = new ArrayList<>();
        out.add(TextLine.centred(style.lettering, x, top + cap, lines.get(0)));
        for (int i = 1; i < lines.size(); i++) {
            out.add(TextLine.centred(Lettering.SMALL, x, top + cap + i * step, lines.get(i)));
        }
        return out;
    }

    private static TextLine single(String line, Lettering lettering, double cos, double sin, double awayMm) {
        double half = lettering.capHeightMm() / 2;
        double x = awayMm * cos;
        double y = -awayMm * sin;
        if (Math.abs(cos) >= Math.abs(sin) - 1e-9) {
            return cos > 0 ? TextLine.of(lettering, x, y + half, line) : TextLine.ending(lettering, x, y + half, line);
        }
        return sin > 0
                ? TextLine.upwards(lettering, x + half, y, line)
                : TextLine.upwardsEnding(lettering, x + half, y, line);
    }

    private boolean isClear() {
        if (radiusMm <= LEAST_RADIUS_MM) {
            return false; // the labels leave the wheel no room
        }
        List<Box> boxes = blocks.stream()
                .flatMap(List::stream)
                .map(words -> Box.of(words).grown(AIR_MM / 3))
                .toList();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (boxes.get(i).meets(boxes.get(j))) {
                    return false;
                }
            }
        }
        double nodes = 2 * Math.PI * radiusMm / Math.max(1, blocks.size());
        return !numbersAtRim || nodes >= 2 * NODE_MM + 1;
    }
}
