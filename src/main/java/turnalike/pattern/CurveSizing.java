package turnalike.pattern;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import turnalike.outline.Chords;
import turnalike.pattern.CurveTurns.Turn;
import turnalike.pattern.FreeCurve.Point;
import turnalike.pattern.Member.Crest;
import turnalike.pattern.Member.Diameter;
import turnalike.units.Length;

/**
 * Where a curve through points is sized: both ends, every peak, hollow and step, and the fewest places between at which it must be sized for
 * the straight line from each to the next to stay within the tolerance, some millimetres apart. Each has a mark, since nobody finds a place on a curve without
 * one; only the head of a step that is as good as upright shares the line at its foot.
 */
final class CurveSizing {
    private final List<Point> points;
    private final Chords curve;
    private final double withinMm;
    private final CurveRules rules;
    private final List<Turn> places = new ArrayList<>();

    private CurveSizing(FreeCurve member, Length within, CurveRules rules) {
        this.rules = rules;
        this.points = member.points();
        this.curve = Chords.of(member.pieces());
        this.withinMm = within.mm();
    }

    /** Every place, in order along the member, both ends included. */
    static Member.Sizing of(FreeCurve member, Length within, CurveRules rules) {
        if (!within.isPositive()) {
            throw new IllegalArgumentException(
                    "a curve is sized within something above zero, was %s mm".formatted(within.mm()));
        }
        CurveSizing sizing = new CurveSizing(member, within, rules);
        sizing.fill();
        return sizing.told();
    }

    private void fill() {
        List<Turn> must = new ArrayList<>(CurveTurns.of(points, withinMm, rules));
        end(must, 0, 0, "start");
        end(must, must.size() - 1, points.get(points.size() - 1).place().mm(), "end");
        List<Double> own = points.stream().map(point -> point.place().mm()).toList();
        places.add(must.get(0));
        for (int i = 1; i < must.size(); i++) {
            Turn from = must.get(i - 1);
            Turn to = must.get(i);
            if (!from.stepFollows()) {
                // The tolerance is one of the diameter, the gap one of the radius.
                for (double x :
                        FairPlaces.between(curve, from.xMm(), to.xMm(), own, withinMm / 2, FairPlaces.APART_MM)) {
                    places.add(new Turn(x, "place", true, false));
                }
            }
            places.add(to);
        }
    }

    /** A step may stand at an end already; the end keeps its own word. */
    private static void end(List<Turn> must, int at, double xMm, String word) {
        boolean there = !must.isEmpty() && must.get(at).xMm() == xMm;
        Turn end = new Turn(xMm, word, false, there && must.get(at).stepFollows());
        if (there) {
            must.set(at, end);
        } else {
            must.add(word.equals("start") ? 0 : must.size(), end);
        }
    }

    private Member.Sizing told() {
        List<Diameter> diameters = new ArrayList<>();
        List<Crest> crests = new ArrayList<>();
        List<String> words = words();
        for (int i = 0; i < places.size(); i++) {
            double x = places.get(i).xMm();
            diameters.add(new Diameter(words.get(i), Length.ofMm(x), Length.ofMm(2 * curve.radiusMm(x))));
            if (places.get(i).marked()) {
                crests.add(new Crest(Length.ofMm(x), words.get(i)));
            }
        }
        return new Member.Sizing(diameters, crests);
    }

    /** Words that come more than once are numbered along the member. */
    private List<String> words() {
        Map<String, Integer> all = new HashMap<>();
        places.forEach(each -> all.merge(each.word(), 1, Integer::sum));
        Map<String, Integer> met = new HashMap<>();
        List<String> out = new ArrayList<>();
        for (Turn each : places) {
            int number = met.merge(each.word(), 1, Integer::sum);
            out.add(all.getOrDefault(each.word(), 0) == 1 ? each.word() : each.word() + " " + number);
        }
        return out;
    }
}
