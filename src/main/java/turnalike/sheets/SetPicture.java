package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.chart.TradeOffDrawing;
import turnalike.drawing.frame.FrameView;
import turnalike.drawing.frame.PlacesDrawing;
import turnalike.drawing.frame.RowDrawing;
import turnalike.drawing.frame.WheelDrawing;
import turnalike.drawing.svg.Svg;
import turnalike.frame.Counterweight;
import turnalike.job.set.End;
import turnalike.job.set.LegsSet;
import turnalike.job.set.RowSet;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelSet;
import turnalike.pattern.Pattern;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.WeighingScale;

/** A set in its frame, as it is drawn and printed: all that the pictures know of the kind of frame. */
public sealed interface SetPicture {
    /** What the file of the places' picture is called, without its ending. */
    String name();

    /** The places with their pieces. */
    PlacesDrawing places();

    /** How wide they are drawn on the page. */
    Length width();

    /** The frame as it will look, with its pieces in place; empty when they are too many to be seen. */
    Optional<Svg> frame(Pattern pattern, Length width);

    /** Balance against roundness; empty where there is no choice between them. */
    default Optional<Svg> curve(Length width, Length height) {
        return Optional.empty();
    }

    /**
     * What the record says, but for the set's own warnings.
     *
     * @param date as it is to be printed; may be empty
     */
    SetRecordContent record(String title, String date);

    /** The picture of that set. */
    static SetPicture of(SetMatch set) {
        return set.match(new SetMatch.Cases<>() {
            @Override
            public SetPicture wheel(WheelSet wheel) {
                return new OfWheel(wheel);
            }

            @Override
            public SetPicture row(RowSet row) {
                return new OfRow(row);
            }

            @Override
            public SetPicture legs(LegsSet legs) {
                return new OfLegs(legs);
            }
        });
    }

    private static List<PlacesDrawing.Place> places(List<Piece> order, WeighingScale weighing) {
        List<PlacesDrawing.Place> out = new ArrayList<>();
        for (Piece piece : order) {
            out.add(new PlacesDrawing.Place(
                    out.size() + 1,
                    Optional.empty(),
                    piece.label(),
                    piece.mass().map(weighing::reading)));
        }
        return out;
    }

    /** Spokes round a hub, with the counterweight if there is one. */
    record OfWheel(WheelSet set) implements SetPicture {
        @Override
        public String name() {
            return "wheel";
        }

        @Override
        public WheelDrawing places() {
            Optional<Counterweight> weight = set.frame()
                    .counterweightRadius()
                    .map(radius -> set.placement().unbalance().counterweight(radius));
            return new WheelDrawing(
                    set.placement(), set.frame().wheel().hubRadius(), weight, set.weighing(), set.units());
        }

        @Override
        public Length width() {
            return Length.ofMm(150);
        }

        @Override
        public Optional<Svg> frame(Pattern pattern, Length width) {
            return FrameView.wheel(pattern, set.frame().hubEnd() == End.START, places(), width);
        }

        @Override
        public Optional<Svg> curve(Length width, Length height) {
            return set.roundness()
                    .filter(round -> round.curve().size() > 1)
                    .map(round ->
                            TradeOffDrawing.svg(round.curve(), set.placement().noiseFloorGMm(), width, height));
        }

        @Override
        public SetRecordContent record(String title, String date) {
            SetRecordContent wheel = SetRecordContent.ofWheel(title, date, places());
            SetRecordContent content = set.partsInWords()
                    .map(words -> wheel.with(List.of(words.replaceFirst("^it", "the unbalance"))))
                    .orElse(wheel)
                    .with(set.rockingInWords().stream().toList());
            return set.roundness()
                    .map(round -> content.with(new BenchCardContent.Fact(
                            "run-out of " + round.theRim(),
                            round.placed().rim().runOut().formatMeasuredBoth(round.units()),
                            "about its best centre")))
                    .orElse(content);
        }
    }

    /** Side by side. */
    record OfRow(RowSet set) implements SetPicture {
        @Override
        public String name() {
            return "row";
        }

        @Override
        public RowDrawing places() {
            List<PlacesDrawing.Place> places = SetPicture.places(set.inOrder(), set.weighing());
            return RowDrawing.along(set.lengths().isEmpty() ? places : lettered(places));
        }

        /** Each label with the letter of its length, where it does not begin with it. */
        private List<PlacesDrawing.Place> lettered(List<PlacesDrawing.Place> places) {
            List<PlacesDrawing.Place> out = new ArrayList<>();
            for (int i = 0; i < places.size(); i++) {
                PlacesDrawing.Place each = places.get(i);
                String letter = set.lengths().get(i);
                String label = each.piece().startsWith(letter) ? each.piece() : each.piece() + " " + letter;
                out.add(new PlacesDrawing.Place(each.number(), each.angle(), label, each.mass()));
            }
            return out;
        }

        @Override
        public Length width() {
            return Length.ofMm(230);
        }

        @Override
        public Optional<Svg> frame(Pattern pattern, Length width) {
            return FrameView.row(pattern, places(), width);
        }

        @Override
        public SetRecordContent record(String title, String date) {
            SetRecordContent content = SetRecordContent.ofRow(
                    title, date, places(), set.placement().totalDifference(), set.spareLabels());
            return set.lengths().isEmpty()
                    ? content
                    : content.with(List.of("every piece is pictured at the drawn length; its letter tells its own"));
        }
    }

    /** Legs, group by group. */
    record OfLegs(LegsSet set) implements SetPicture {
        @Override
        public String name() {
            return "legs";
        }

        @Override
        public RowDrawing places() {
            List<List<Piece>> groups = set.groups();
            return RowDrawing.ofGroups(
                    SetPicture.places(groups.stream().flatMap(List::stream).toList(), set.weighing()),
                    groups.get(0).size());
        }

        @Override
        public Length width() {
            return Length.ofMm(150);
        }

        @Override
        public Optional<Svg> frame(Pattern pattern, Length width) {
            return FrameView.row(pattern, places(), width);
        }

        @Override
        public SetRecordContent record(String title, String date) {
            return SetRecordContent.ofLegs(title, date, places(), set.grouping().totalDifference(), set.spareLabels());
        }
    }
}
