package turnalike.drawing.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.frame.Counterweight;
import turnalike.frame.Moment;
import turnalike.match.Expected;
import turnalike.match.WheelPlacement;
import turnalike.units.Angle;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/**
 * A wheel with its pieces in their places: place 1 at 0° points to the right, the others follow anticlockwise. An arrow points to the heavy
 * side when the unbalance is more than all that may be off; the words beneath say so either way. Directions are true; how far out things stand is
 * not to scale.
 *
 * @param hubRadius from the axle to the shoulder of the hub tenon
 * @param counterweight the weight that ends the unbalance, if one is wanted; not shown while the unbalance is within the noise
 * @param weighing how masses are told
 * @param units in which lengths are told
 */
public record WheelDrawing(
        WheelPlacement placement,
        Length hubRadius,
        Optional<Counterweight> counterweight,
        WeighingScale weighing,
        UnitSystem units)
        implements PlacesDrawing {
    private static final double LINE_MM = 4.4;
    private static final double SYMBOL_MM = 7;

    /** Beyond so many places a spoke is a line. */
    private static final int MOST_BODIES = 40;

    @Override
    public List<Place> places() {
        return placement.seats().stream()
                .map(seat -> new Place(
                        seat.place(),
                        Optional.of(seat.angle()),
                        seat.piece().label(),
                        Optional.of(weighing.reading(seat.piece().mass()))))
                .toList();
    }

    /** Whether the heavy side stands out from all that may be off. */
    public boolean isHeavyOnOneSide() {
        return placement.isHeavyOnOneSide();
    }

    /** The balance in words, one statement each: the unbalance and what the scale can see of it; the counterweight. */
    public List<String> statements() {
        List<String> out = new ArrayList<>();
        String floor = "the scale's noise alone is %s".formatted(moment(placement.noiseFloorGMm()));
        Expected expected = placement.expected();
        String likely = expected.unseenGMm() == 0
                ? ""
                : " With all that may be off expect %s; nine wheels of ten lie between %s and %s."
                        .formatted(moment(expected.meanGMm()), moment(expected.fromGMm()), moment(expected.toGMm()));
        String seen = placement.isWithinScale()
                ? "balanced to within what your scale can see; %s.".formatted(floor)
                : "no side stands out from what may be off; %s.".formatted(floor);
        out.add(
                isHeavyOnOneSide()
                        ? "Unbalance %s, heavy at %s; %s."
                                        .formatted(
                                                placement.left(),
                                                placement.unbalance().at().formatDirection(),
                                                floor)
                                + likely
                        : "Unbalance %s: %s".formatted(placement.left(), seen) + likely);
        weight().ifPresent(
                        weight -> out.add("Counterweight: add %s at %s, %s from the axle; or take the same off at %s."
                                .formatted(
                                        weighing.reckoned(weight.mass()),
                                        weight.at().formatDirection(),
                                        weight.radius().formatBoth(units),
                                        weight.removeAt().formatDirection())));
        return out;
    }

    private static String moment(double gMm) {
        return Moment.figure(gMm) + " g·mm";
    }

    private Optional<Counterweight> weight() {
        return isHeavyOnOneSide() ? counterweight : Optional.empty();
    }

    @Override
    public Svg svg(Length width) {
        if (width.mm() < 60 || placement.seats().isEmpty()) {
            throw new IllegalArgumentException("a wheel needs 60 mm and a place, was %s mm and %d places"
                    .formatted(width.mm(), placement.seats().size()));
        }
        List<Place> places = places();
        WheelLabels labels = WheelLabels.in(width.mm() - 2, places);
        Extent extent = Extent.of(labels);
        double middleY = 1 - extent.top();
        List<Shape> out = new ArrayList<>();
        out.add(Group.at(width.mm() / 2, middleY, wheel(labels, places)));
        double end = legend(out, middleY + extent.bottom() + 6, width.mm(), labels);
        String title = "wheel of %d places: %s".formatted(places.size(), String.join(" ", statements()));
        return new Svg(width, Length.ofMm(end), title, out);
    }

    /** How far the lettering and the rim reach up and down from the middle. */
    private record Extent(double top, double bottom) {
        static Extent of(WheelLabels labels) {
            double reach = labels.radiusMm() + WheelLabels.NODE_MM + WheelLabels.DARK_MM;
            double top = -reach;
            double bottom = reach;
            for (List<TextLine> block : labels.blocks()) {
                for (TextLine words : block) {
                    top = Math.min(top, Box.of(words).top());
                    bottom = Math.max(bottom, Box.of(words).bottom());
                }
            }
            return new Extent(top, bottom);
        }
    }

    private List<Shape> wheel(WheelLabels labels, List<Place> places) {
        WheelParts work = new WheelParts(labels.radiusMm(), hubRadius, placement.seats());
        List<Shape> out = new ArrayList<>();
        out.add(work.rim());
        for (int i = 0; i < places.size(); i++) {
            Place place = places.get(i);
            Angle angle = placement.seats().get(i).angle();
            boolean first = i == 0;
            String number = labels.numbersAtRim() ? Integer.toString(place.number()) : "";
            List<Shape> shapes = new ArrayList<>();
            shapes.addAll(places.size() <= MOST_BODIES ? work.body(angle, first) : List.of(work.stroke(angle, first)));
            shapes.addAll(work.node(angle, number, first));
            shapes.addAll(labels.blocks().get(i));
            Map<String, String> attributes = Map.of("class", "place", "data-place", Integer.toString(place.number()));
            out.add(new Group(0, 0, attributes, Optional.of(place.tip()), shapes));
        }
        out.addAll(work.hub());
        weight().ifPresent(weight -> {
            out.addAll(WheelParts.addMark(work.place(weight.at(), weight.radius())));
            out.addAll(WheelParts.takeMark(work.place(weight.removeAt(), weight.radius())));
        });
        if (isHeavyOnOneSide()) {
            out.addAll(work.arrow(placement.unbalance().at()));
        }
        return out;
    }

    /** The words below the wheel, with the symbols they explain; gives where they end. */
    private double legend(List<Shape> out, double fromY, double widthMm, WheelLabels labels) {
        String lettered = labels.every() == 1 ? "" : " Every %s is lettered.".formatted(ordinal(labels.every()));
        String order = "Place 1 has the thick ring, at 0°; places go round anticlockwise." + lettered;
        double y = entry(out, fromY, widthMm, WheelParts.smallNode(), order);
        List<String> statements = statements();
        y = entry(out, y, widthMm, isHeavyOnOneSide() ? WheelParts.smallArrow() : List.of(), statements.get(0));
        if (statements.size() > 1) {
            y = entry(out, y, widthMm, WheelParts.addMark(new WheelParts.Spot(2.2, -1.2)), statements.get(1));
        }
        return y - LINE_MM + 1.5;
    }

    private static double entry(List<Shape> out, double fromY, double widthMm, List<Shape> symbol, String text) {
        double y = fromY;
        out.add(Group.at(0, y, symbol));
        for (String line : TextWrap.wrap(text, Lettering.SMALL, widthMm - SYMBOL_MM)) {
            out.add(TextLine.of(Lettering.SMALL, SYMBOL_MM, y, line));
            y += LINE_MM;
        }
        return y + 0.6;
    }

    private static String ordinal(int every) {
        return every == 2 ? "second" : Article.ordinal(every);
    }
}
