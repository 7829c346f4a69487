package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.outline.Outline.Station;
import turnalike.units.Length;

/** Finds the necks of a piece: wherever the outline is thinner than what stands on both sides of it. */
final class Necks {
    private Necks() {}

    /**
     * A thin place.
     *
     * @param from where it begins
     * @param to where it ends; the same place for the bottom of a cove
     * @param diameter its own
     */
    record Neck(Length from, Length to, Length diameter) {
        /** The neck's point farthest from both ends of a piece that long, where it gives most. */
        Length weakest(Length pieceLength) {
            Length middle = pieceLength.times(0.5);
            if (middle.compareTo(from) <= 0) {
                return from;
            }
            return middle.compareTo(to) >= 0 ? to : middle;
        }
    }

    /**
     * Level stretches count once. The piece's own ends are no necks unless the whole piece is one level stretch: a tenon is thinner than its
     * neighbour by nature and is held at its end.
     */
    static List<Neck> of(Outline outline) {
        List<Station> stations = outline.stations();
        List<Neck> out = new ArrayList<>();
        int i = 0;
        while (i < stations.size()) {
            int j = i;
            while (j + 1 < stations.size() && same(stations.get(i), stations.get(j + 1))) {
                j++;
            }
            boolean thickerBefore = i > 0 && thicker(stations.get(i - 1), stations.get(i));
            boolean thickerAfter = j + 1 < stations.size() && thicker(stations.get(j + 1), stations.get(j));
            boolean whole = i == 0 && j == stations.size() - 1;
            if ((thickerBefore && thickerAfter) || whole) {
                Length diameter = stations.get(i).radius().times(2);
                out.add(new Neck(stations.get(i).place(), stations.get(j).place(), diameter));
            }
            i = j + 1;
        }
        return out;
    }

    private static boolean same(Station one, Station other) {
        return one.radius().minus(other.radius()).abs().mm() < 1e-9;
    }

    private static boolean thicker(Station one, Station other) {
        return one.radius().compareTo(other.radius()) > 0;
    }
}
