package turnalike.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import turnalike.units.Length;

/**
 * The whole piece's shape: segments set end to end from the datum. Where two segments meet at different radii stands a square shoulder.
 *
 * @param segments at least one; the first starts anywhere, each next where the last ends
 */
public record Outline(List<Segment> segments) {
    public Outline {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("an outline has at least one segment");
        }
        for (int i = 1; i < segments.size(); i++) {
            Length gap = segments.get(i).start().minus(segments.get(i - 1).end());
            if (gap.abs().mm() > 1e-9 * segments.get(i).end().mm()) {
                throw new IllegalArgumentException(
                        "segment %d starts %s mm after the last ends".formatted(i, gap.mm()));
            }
        }
    }

    /**
     * {@return curves of one section set end to end from {@code start}}
     *
     * @param start where the first curve begins, from the datum
     * @param curves in order along the axis, at least one
     * @param section the section of all of them
     */
    public static Outline of(Length start, List<? extends Curve> curves, Section section) {
        List<Segment> segments = new ArrayList<>();
        Length at = start;
        for (Curve curve : curves) {
            segments.add(new Segment(at, curve, section));
            at = at.plus(curve.length());
        }
        return new Outline(segments);
    }

    /**
     * {@return several outlines, each already in its place, as one}
     *
     * @param parts in order along the axis, each starting where the last ends, else {@link IllegalArgumentException}
     */
    public static Outline join(List<Outline> parts) {
        return new Outline(
                parts.stream().flatMap(part -> part.segments().stream()).toList());
    }

    /** {@return where the outline begins, from the datum} */
    public Length start() {
        return segments.get(0).start();
    }

    /** {@return where the outline ends, from the datum} */
    public Length end() {
        return segments.get(segments.size() - 1).end();
    }

    /** {@return how far the outline reaches along the axis; above zero} */
    public Length length() {
        return end().minus(start());
    }

    /** {@return the radius where it starts} */
    public Length startRadius() {
        return Length.ofMm(segments.get(0).curve().startRadiusMm());
    }

    /** {@return the radius where it ends} */
    public Length endRadius() {
        return Length.ofMm(segments.get(segments.size() - 1).curve().endRadiusMm());
    }

    /**
     * {@return the radius at a place (half the side of a square section)} On a shoulder: the segment that ends there.
     *
     * @param place from the datum; outside the outline its nearer end counts
     */
    public Length radiusAt(Length place) {
        Segment segment = segmentAt(place);
        return Length.ofMm(segment.curve().radiusMm(place.minus(segment.start()).mm()));
    }

    /**
     * {@return the section at a place; on a shoulder, that of the segment that ends there}
     *
     * @param place from the datum; outside the outline its nearer end counts
     */
    public Section sectionAt(Length place) {
        return segmentAt(place).section();
    }

    private Segment segmentAt(Length place) {
        int low = 0;
        int high = segments.size() - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (segments.get(middle).end().compareTo(place) >= 0) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return segments.get(low);
    }

    /** {@return the largest radius anywhere} */
    public Length largestRadius() {
        return Collections.max(stations().stream().map(Station::radius).toList());
    }

    /** {@return the smallest radius anywhere} */
    public Length smallestRadius() {
        return Collections.min(stations().stream().map(Station::radius).toList());
    }

    /**
     * The radius at a place, taken on one segment: a shoulder has two stations at one place.
     *
     * @param place from the piece's datum end
     * @param radius there; half the side where the segment is square
     */
    public record Station(Length place, Length radius) {}

    /** {@return every place where the radius can be greatest or least: both ends of each segment and where it is level, in order} */
    public List<Station> stations() {
        List<Station> out = new ArrayList<>();
        for (Segment segment : segments) {
            Curve curve = segment.curve();
            out.add(new Station(segment.start(), Length.ofMm(curve.startRadiusMm())));
            for (double x : curve.levelPlacesMm()) {
                out.add(new Station(segment.start().plus(Length.ofMm(x)), Length.ofMm(curve.radiusMm(x))));
            }
            out.add(new Station(segment.end(), Length.ofMm(curve.endRadiusMm())));
        }
        return out;
    }

    /** {@return the same piece turned end for end, its new datum at 0} */
    public Outline reversed() {
        List<Segment> out = new ArrayList<>();
        for (int i = segments.size() - 1; i >= 0; i--) {
            Segment segment = segments.get(i);
            out.add(new Segment(end().minus(segment.end()), segment.curve().reversed(), segment.section()));
        }
        return new Outline(out);
    }
}
