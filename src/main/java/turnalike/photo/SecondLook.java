package turnalike.photo;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A picture looked at in other ways before it is refused: what was found without its shadow, then what lies on a card or a cloth of which the picture shows
 * the rim, each as if the picture ended there, then whatever stands out from all round it, as a piece in a lathe does. The first that passes all checks
 * counts.
 */
final class SecondLook {
    /** Why a picture is refused in which a shadow may have been taken for the piece, or a card for its ground. */
    private static final Set<PhotoTrace.Reason> MAY_LIE_OTHERWISE = EnumSet.of(
            PhotoTrace.Reason.NO_PIECE,
            PhotoTrace.Reason.TWO_PIECES,
            PhotoTrace.Reason.CUT_OFF,
            PhotoTrace.Reason.NOT_ROUND,
            PhotoTrace.Reason.LIKE_GROUND);

    private final CoarsePicture whole;

    private final Attempt attempt;

    private SecondLook(CoarsePicture whole, Attempt attempt) {
        this.whole = whole;
        this.attempt = attempt;
    }

    /** What finds a piece, or tells why there is none. */
    interface Search {
        BodySearch.Found found() throws Unsure;
    }

    /** Traces what was found, or tells why it cannot be. */
    interface Attempt {
        /** Traces it with so much care. */
        PhotoTrace trace(BodySearch.Found found, Care care) throws Unsure;
    }

    /** As it is found, or else in one of the other ways. */
    static PhotoTrace trace(CoarsePicture whole, Search search, Attempt attempt) throws Unsure {
        Optional<BodySearch.Found> found = Optional.empty();
        try {
            found = Optional.of(search.found());
            return attempt.trace(found.orElseThrow(), Care.BOTH_SIDES);
        } catch (Unsure why) {
            PhotoTrace.Reason reason = why.answer().reason();
            if (!MAY_LIE_OTHERWISE.contains(reason)) {
                throw why;
            }
            SecondLook look = new SecondLook(whole, attempt);
            Optional<PhotoTrace> other = look.otherwise(found);
            if (other.isEmpty() && reason != PhotoTrace.Reason.TWO_PIECES) {
                other = look.picked(found);
            }
            if (other.isPresent()) {
                return other.orElseThrow();
            }
            if (found.isEmpty() || reason != PhotoTrace.Reason.LIKE_GROUND) {
                throw why;
            }
            // Nothing better: of an end that something lies beside, one half may tell enough.
            return attempt.trace(found.orElseThrow(), Care.USUAL);
        }
    }

    private Optional<PhotoTrace> otherwise(Optional<BodySearch.Found> found) throws Unsure {
        if (found.isPresent()) {
            Optional<PhotoTrace> trace = unshaded(found.orElseThrow());
            if (trace.isPresent()) {
                return trace;
            }
        }
        for (byte[] shows : EvenAreas.of(whole)) {
            Optional<PhotoTrace> trace = onArea(shows);
            if (trace.isPresent()) {
                return trace;
            }
        }
        return Optional.empty();
    }

    private Optional<PhotoTrace> onArea(byte[] shows) throws Unsure {
        Optional<BodySearch.Found> there = within(shows);
        if (there.isEmpty()) {
            return Optional.empty();
        }
        Optional<PhotoTrace> trace = passed(there.orElseThrow(), Care.BOTH_SIDES);
        return trace.isPresent() ? trace : unshaded(there.orElseThrow());
    }

    /** Whatever else stands out from all round it. */
    private Optional<PhotoTrace> picked(Optional<BodySearch.Found> found) throws Unsure {
        return PickedPiece.of(
                OwnColours.of(whole),
                found.map(BodySearch.Found::body),
                body -> passed(new BodySearch.Found(body, whole), Care.PICKED));
    }

    /** What lies wholly within an area, all else painted over. */
    private Optional<BodySearch.Found> within(byte[] shows) {
        CoarsePicture alone = Ground.painted(whole, shows, 0.5);
        try {
            BodyFinder.Body body = BodyFinder.find(alone, Optional.empty());
            return body.reachesOut(shows, whole.width())
                    ? Optional.empty()
                    : Optional.of(new BodySearch.Found(body, alone));
        } catch (Unsure none) {
            return Optional.empty();
        }
    }

    private Optional<PhotoTrace> unshaded(BodySearch.Found found) throws Unsure {
        Optional<BodyFinder.Body> body = Unshaded.of(found.coarse(), found.body());
        return body.isEmpty()
                ? Optional.empty()
                : passed(new BodySearch.Found(body.orElseThrow(), found.coarse()), Care.BOTH_SIDES);
    }

    /** The trace, unless it is refused; an end of the time given is no refusal of this one alone. */
    private Optional<PhotoTrace> passed(BodySearch.Found found, Care care) throws Unsure {
        try {
            return Optional.of(attempt.trace(found, care));
        } catch (Unsure refused) {
            if (refused.answer().reason() == PhotoTrace.Reason.STOPPED) {
                throw refused;
            }
            return Optional.empty();
        }
    }
}
