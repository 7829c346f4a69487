package turnalike.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.chart.TradeOffDrawing;
import turnalike.drawing.frame.FrameView;
import turnalike.drawing.frame.PlacesDrawing;
import turnalike.drawing.frame.RowDrawing;
import turnalike.drawing.frame.WheelDrawing;
import turnalike.drawing.svg.Svg;
import turnalike.frame.Counterweight;
import turnalike.job.Job;
import turnalike.job.JobFrame;
import turnalike.job.set.LegsSet;
import turnalike.job.set.RowSet;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelSet;
import turnalike.pattern.Pattern;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** What is drawn and printed of a set in its places, whatever its frame. */
public final class SetSheets {
    private static final Length WIDTH = Length.ofMm(180);
    private static final Length CURVE_HEIGHT = Length.ofMm(110);

    private SetSheets() {}

    /**
     * The record of the set, to hang in the shop or hand over.
     *
     * @param date as it is to be printed; may be empty
     */
    public static Sheet record(String title, String date, SetMatch match, Paper paper) {
        return SetRecord.of(match.match(new Content(title, date)), paper);
    }

    /** The pictures by themselves, by the name of their file. */
    public static Map<String, Svg> drawings(SetMatch match) {
        return match.match(new Drawings());
    }

    /** The wheel with its pieces and the counterweight, if it has one. */
    public static WheelDrawing wheel(WheelSet set) {
        Optional<Counterweight> weight = set.frame()
                .counterweightRadius()
                .map(radius -> set.placement().unbalance().counterweight(radius));
        return new WheelDrawing(set.placement(), set.frame().wheel().hubRadius(), weight);
    }

    private static List<PlacesDrawing.Place> places(List<Piece> order) {
        List<PlacesDrawing.Place> out = new ArrayList<>();
        for (Piece piece : order) {
            out.add(new PlacesDrawing.Place(out.size() + 1, Optional.empty(), piece.label(), piece.mass()));
        }
        return out;
    }

    /** Balance against roundness; empty where there is no choice between them. */
    public static Optional<Svg> curve(WheelSet set, Length width, Length height) {
        return set.roundness()
                .filter(round -> round.curve().size() > 1)
                .map(round -> TradeOffDrawing.svg(round.curve(), set.placement().noiseFloorGMm(), width, height));
    }

    /** The row with its pieces. */
    public static RowDrawing row(RowSet set) {
        return RowDrawing.along(places(set.inOrder()));
    }

    /** The legs, group by group. */
    public static RowDrawing legs(LegsSet set) {
        return RowDrawing.ofGroups(
                places(set.groups().stream().flatMap(List::stream).toList()),
                set.groups().get(0).size());
    }

    private record Content(String title, String date) implements SetMatch.Cases<SetRecordContent> {
        @Override
        public SetRecordContent wheel(WheelSet set) {
            SetRecordContent content = SetRecordContent.ofWheel(title, date, SetSheets.wheel(set));
            List<BenchCardContent.Fact> facts = new ArrayList<>(content.facts());
            set.roundness()
                    .ifPresent(round -> facts.add(new BenchCardContent.Fact(
                            "run-out of the rim",
                            round.placed().rim().runOut().formatFineBoth(UnitSystem.METRIC),
                            "about its best centre")));
            return content.with(facts, set.warnings());
        }

        @Override
        public SetRecordContent row(RowSet set) {
            SetRecordContent content = SetRecordContent.ofRow(
                    title, date, SetSheets.row(set), set.placement().totalDifference(), labels(set.spares()));
            return content.with(content.facts(), set.warnings());
        }

        @Override
        public SetRecordContent legs(LegsSet set) {
            SetRecordContent content = SetRecordContent.ofLegs(
                    title, date, SetSheets.legs(set), set.grouping().totalDifference(), labels(set.spares()));
            return content.with(content.facts(), set.warnings());
        }

        private static List<String> labels(List<Piece> pieces) {
            return pieces.stream().map(Piece::label).toList();
        }
    }

    /** The frame as it will look, with its pieces in place; empty when they are too many to be seen. */
    public static Optional<Svg> frame(Job job, SetMatch match, Length width) {
        Pattern pattern = job.pattern();
        return match.match(new SetMatch.Cases<Optional<Svg>>() {
            @Override
            public Optional<Svg> wheel(WheelSet set) {
                boolean startInHub = set.frame().hubEnd() == JobFrame.HubEnd.START;
                return FrameView.wheel(pattern, startInHub, SetSheets.wheel(set), width);
            }

            @Override
            public Optional<Svg> row(RowSet set) {
                return FrameView.row(pattern, SetSheets.row(set), width);
            }

            @Override
            public Optional<Svg> legs(LegsSet set) {
                return FrameView.row(pattern, SetSheets.legs(set), width);
            }
        });
    }

    private static final class Drawings implements SetMatch.Cases<Map<String, Svg>> {
        @Override
        public Map<String, Svg> wheel(WheelSet set) {
            Map<String, Svg> out = new LinkedHashMap<>();
            out.put("wheel.svg", SetSheets.wheel(set).svg(WIDTH));
            SetSheets.curve(set, WIDTH, CURVE_HEIGHT).ifPresent(curve -> out.put("balance-and-roundness.svg", curve));
            return out;
        }

        @Override
        public Map<String, Svg> row(RowSet set) {
            return Map.of("row.svg", SetSheets.row(set).svg(WIDTH));
        }

        @Override
        public Map<String, Svg> legs(LegsSet set) {
            return Map.of("legs.svg", SetSheets.legs(set).svg(WIDTH));
        }
    }
}
