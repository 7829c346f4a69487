package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.units.Length;

/**
 * Shoulders that a picture shows aslant. Of what lies behind an edge it shows a bound only, the ray that passes the edge, and where just one of both
 * outlines was seen to be hidden there that counts as seen: a slope, steeper than half a right angle and some pixels wide, which a form explains
 * well. Nobody turned it, and what a bound says of its neighbours is wrong; it is hidden.
 */
final class Walls {
    /** What is as steep and wider may be turned: the lens' softness and the ray together make some eight or nine. */
    private static final double WIDEST_PIXELS = 10;

    /** No farther apart, two stretches are one but for rounding. */
    private static final Length TOUCHING = Length.ofMm(1e-9);

    private Walls() {}

    /** The slopes among the parts that explain a picture, in order. */
    static List<Profile.Stretch> of(List<Part> parts, double pixelMm) {
        List<Profile.Stretch> out = new ArrayList<>();
        for (int i = 1; i + 1 < parts.size(); i++) {
            if (isWall(parts, i, pixelMm)) {
                Part wall = parts.get(i);
                out.add(new Profile.Stretch(Length.ofMm(wall.fromMm()), Length.ofMm(wall.toMm())));
            }
        }
        return out;
    }

    /** An original with these stretches hidden too. */
    static Original hidden(Original original, List<Profile.Stretch> walls) {
        Profile fitted = original.fitted();
        List<Profile.Stretch> all = new ArrayList<>(fitted.hidden());
        all.addAll(walls);
        List<Profile.Stretch> apart = Profile.Stretch.joined(all, TOUCHING);
        return new Original(
                original.profile(),
                original.squares(),
                original.surest(),
                new Profile(fitted.length(), fitted.stations(), apart),
                original.pixel());
    }

    /** Parts without such slopes, their neighbours carried on to the shoulder: right behind the edge that hides the rest. */
    static List<Part> without(List<Part> parts, double pixelMm) {
        List<Part> out = new ArrayList<>(parts);
        for (int i = 1; i + 1 < out.size(); i++) {
            if (isWall(out, i, pixelMm)) {
                Part wall = out.get(i);
                double behind = Gaps.behindEdge(wall.lengthMm(), pixelMm);
                double place = wall.startRadius() > wall.endRadius() ? wall.fromMm() + behind : wall.toMm() - behind;
                out.set(i - 1, out.get(i - 1).between(out.get(i - 1).fromMm(), place));
                out.set(i + 1, out.get(i + 1).between(place, out.get(i + 1).toMm()));
                out.remove(i);
                i--;
            }
        }
        return out;
    }

    private static boolean isWall(List<Part> parts, int i, double pixelMm) {
        Part part = parts.get(i);
        boolean amongForms = isForm(parts.get(i - 1)) && isForm(part) && isForm(parts.get(i + 1));
        return amongForms
                && part.lengthMm() < WIDEST_PIXELS * pixelMm
                && Math.abs(part.endRadius() - part.startRadius()) > part.lengthMm();
    }

    private static boolean isForm(Part part) {
        return !part.isCurve() && !part.isSquare();
    }
}
