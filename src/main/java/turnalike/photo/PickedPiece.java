package turnalike.photo;

import java.util.List;
import java.util.Optional;

/**
 * The piece picked from among much that a picture shows, where it was not found by what is not ground, or could not be traced as found. What is picked is
 * the first that can be traced, if nothing else of about its size can: a pencil beside the piece can be, too.
 */
final class PickedPiece {
    /** Less than this share of the smaller one in common, and two bodies are not the same thing. */
    private static final double SAME = 0.3;

    /** What is shorter than this share of the piece is not mistaken for it. */
    private static final double RIVAL = 0.4;

    /** What was found before may have been longer than the piece by its inverse: a lathe's centres with it, or a shadow. */
    private static final double MOST_OF = 0.5;

    /** Ends farther apart than this share of the length are not the same end. */
    private static final double MOST_APART = 0.04;

    private final Tracing tracing;

    private final List<Cores.Work<BodyFinder.Body>> bodies;

    private PickedPiece(Tracing tracing, List<Cores.Work<BodyFinder.Body>> bodies) {
        this.tracing = tracing;
        this.bodies = bodies;
    }

    /** The rest of the way from a body to the answer, if there is one. */
    interface Tracing {
        Optional<PhotoTrace.Traced> of(BodyFinder.Body body) throws Unsure;
    }

    /**
     * The trace of the one that can be traced, if there is one.
     *
     * @param bodies what may be the piece, the likeliest first
     * @param found what was taken for it before, if anything was: then it is there, whatever else can be traced
     * @param tracing how to trace it
     */
    static Optional<PhotoTrace.Traced> of(
            List<Cores.Work<BodyFinder.Body>> bodies, Optional<BodyFinder.Body> found, Tracing tracing) throws Unsure {
        return new PickedPiece(tracing, bodies).trace(found);
    }

    private Optional<PhotoTrace.Traced> trace(Optional<BodyFinder.Body> found) throws Unsure {
        for (int k = 0; k < bodies.size(); k++) {
            Optional<BodyFinder.Body> body =
                    body(k).filter(each -> found.isEmpty() || mostOf(found.orElseThrow(), each));
            Optional<PhotoTrace.Traced> trace = body.isPresent() ? tracing.of(body.orElseThrow()) : Optional.empty();
            if (trace.isPresent()) {
                return hasRival(body.orElseThrow(), k + 1) ? Optional.empty() : trace;
            }
        }
        return Optional.empty();
    }

    /** Whether what was found before may be this one with something more: no shine on it, nor another thing. */
    private static boolean mostOf(BodyFinder.Body found, BodyFinder.Body body) {
        return same(found, body) && body.to() - body.from() > MOST_OF * (found.to() - found.from());
    }

    /** Whether another thing, about as large, can be traced too, or the same with another end. */
    private boolean hasRival(BodyFinder.Body body, int from) throws Unsure {
        double length = body.to() - body.from();
        for (int k = from; k < bodies.size(); k++) {
            Optional<BodyFinder.Body> rival = body(k).filter(each ->
                    each.to() - each.from() > RIVAL * length && (!same(body, each) || endsElsewhere(body, each)));
            if (rival.isPresent() && tracing.of(rival.orElseThrow()).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static boolean endsElsewhere(BodyFinder.Body body, BodyFinder.Body other) {
        double[] ends = {along(body, other, other.from()), along(body, other, other.to())};
        double most = MOST_APART * (body.to() - body.from());
        return Math.abs(Math.min(ends[0], ends[1]) - body.from()) > most
                || Math.abs(Math.max(ends[0], ends[1]) - body.to()) > most;
    }

    /** Where a place along another one's axis is along the first one's. */
    private static double along(BodyFinder.Body body, BodyFinder.Body other, double place) {
        return (other.x() + place * Math.cos(other.angle()) - body.x()) * Math.cos(body.angle())
                + (other.y() + place * Math.sin(other.angle()) - body.y()) * Math.sin(body.angle());
    }

    private Optional<BodyFinder.Body> body(int k) {
        try {
            return Optional.of(bodies.get(k).done());
        } catch (Unsure none) {
            return Optional.empty();
        }
    }

    private static boolean same(BodyFinder.Body one, BodyFinder.Body other) {
        int both = 0;
        int first = 0;
        int second = 0;
        for (int i = 0; i < one.mask().length; i++) {
            both += one.mask()[i] & other.mask()[i];
            first += one.mask()[i];
            second += other.mask()[i];
        }
        return both > SAME * Math.min(first, second);
    }
}
