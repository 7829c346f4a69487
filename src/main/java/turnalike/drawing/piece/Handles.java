package turnalike.drawing.piece;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.OutlinePath;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKey;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What one member is dragged by: the end it shares with the next, and each of its diameters. A page finds in a handle's attributes which
 * size it is, along which way it goes, and how large a millimetre of wood is drawn; on paper there are none.
 */
final class Handles {
    private static final double RADIUS_MM = 1.7;

    private Handles() {}

    /** For the member in its place, drawn as the path draws it; points, which are typed, have none. */
    static List<Shape> of(PlacedMember placed, OutlinePath path, UnitSystem units) {
        List<Shape> out = new ArrayList<>();
        Set<String> undone = placed.member().kind().keys().stream()
                .filter(key -> key.type() == MemberKey.Type.LENGTH)
                .map(MemberKey::name)
                .collect(Collectors.toCollection(HashSet::new));
        if (undone.remove(MemberKey.LENGTH)) {
            Length length = placed.member().length();
            double endX = path.x(placed.end().mm());
            out.add(handle(placed, MemberKey.LENGTH, length, endX, path.axisMm(), path.scale(), units));
        }
        for (Member.Diameter each : placed.member().diameters()) {
            if (undone.remove(each.key())) {
                double x = path.x(placed.start().mm() + each.place().mm());
                double y = path.axisMm() - path.scale() * each.size().mm() / 2;
                out.add(handle(placed, each.key(), each.size(), x, y, path.scale(), units));
            }
        }
        return out;
    }

    private static Group handle(
            PlacedMember placed, String key, Length size, double xMm, double yMm, double scale, UnitSystem units) {
        Map<String, String> attributes = Map.of(
                "class", "handle " + (key.equals(MemberKey.LENGTH) ? "along" : "across"),
                "data-number", Integer.toString(placed.number()),
                "data-key", key,
                "data-mm", Double.toString(size.mm()),
                "data-scale", Double.toString(scale));
        String tip = "drag: %s of %s, now %s".formatted(key, placed.where(), size.formatBoth(units));
        return new Group(
                0,
                0,
                attributes,
                Optional.of(tip),
                List.of(
                        Path.circle(Pen.PAPER, xMm, yMm, RADIUS_MM),
                        Path.circle(Pen.ACCENT_FILL, xMm, yMm, RADIUS_MM * 0.6)));
    }
}
