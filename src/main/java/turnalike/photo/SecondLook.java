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

    /** A smaller share of the length of what was found first, and what is found otherwise is no more than part of the piece. */
    private static final double LEAST_OF = 0.7;

    private final CoarsePicture whole;

    private final Attempt attempt;

    /** What is shorter, in pixels of the picture, is only a part of the piece. */
    private final double leastLong;

    private SecondLook(CoarsePicture whole, double leastLong, Attempt attempt) {
        this.whole = whole;
        this.leastLong = leastLong;
        this.attempt = attempt;
    }

    /** What finds a piece, or tells why there is none. */
    interface Search {
        BodySearch.Found found() throws Unsure;
    }

    /** Traces what was found, or tells why it cannot be. */
    interface Attempt {
        /** Traces it with so much care. */
        PhotoTrace.Traced trace(BodySearch.Found found, Care care) throws Unsure;
    }

    /** Traces the picture made smaller, if there is much grain in it. */
    interface Smaller {
        /** Of what is no shorter in the picture than so many pixels. */
        Optional<PhotoTrace> trace(double leastLong) throws Unsure;
    }

    /** As it is found, or else in one of the other ways. */
    static PhotoTrace trace(CoarsePicture whole, Search search, Attempt attempt, Smaller smaller) throws Unsure {
        SecondLook look = new SecondLook(whole, 0, attempt);
        Optional<BodySearch.Found> found = Optional.empty();
        try {
            found = Optional.of(search.found());
            return attempt.trace(found.orElseThrow(), Care.BOTH_SIDES);
        } catch (Unsure why) {
            PhotoTrace.Reason reason = why.answer().reason();
            if (!MAY_LIE_OTHERWISE.contains(reason)) {
                throw why;
            }
            Optional<PhotoTrace> inLessGrain = smaller.trace(LEAST_OF * longOf(found));
            if (inLessGrain.isPresent()) {
                return inLessGrain.orElseThrow();
            }
            Optional<PhotoTrace.Traced> other = look.otherwise(found);
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

    /**
     * The same without what takes longest, to pick the piece from among much else.
     *
     * @param whole the picture
     * @param leastLong what is shorter, in pixels of the picture, is only a part of the piece
     * @param attempt at tracing what is found
     * @return none where it is refused
     */
    static Optional<PhotoTrace.Traced> shortly(CoarsePicture whole, double leastLong, Attempt attempt) throws Unsure {
        SecondLook look = new SecondLook(whole, leastLong, attempt);
        Optional<BodySearch.Found> found = look.found();
        if (found.isPresent()) {
            Optional<PhotoTrace.Traced> trace = look.passed(found.orElseThrow(), Care.BOTH_SIDES);
            if (trace.isPresent()) {
                return trace;
            }
        }
        Optional<PhotoTrace.Traced> other = look.otherwise(found);
        return other.isPresent() || found.isEmpty() ? other : look.passed(found.orElseThrow(), Care.USUAL);
    }

    private Optional<BodySearch.Found> found() {
        try {
            return Optional.of(BodySearch.find(whole, Optional.empty(), Optional.empty()));
        } catch (Unsure none) {
            return Optional.empty();
        }
    }

    private Optional<PhotoTrace.Traced> otherwise(Optional<BodySearch.Found> found) throws Unsure {
        if (found.isPresent()) {
            Optional<PhotoTrace.Traced> trace = unshaded(found.orElseThrow());
            if (trace.isPresent()) {
                return trace;
            }
        }
        Optional<PhotoTrace.Traced> inOtherLight = byOther(found);
        if (inOtherLight.isPresent()) {
            return inOtherLight;
        }
        for (byte[] shows : EvenAreas.of(whole)) {
            Optional<PhotoTrace.Traced> trace = onArea(shows);
            if (trace.isPresent()) {
                return trace;
            }
        }
        return Optional.empty();
    }

    private Optional<PhotoTrace.Traced> onArea(byte[] shows) throws Unsure {
        Optional<BodySearch.Found> there = within(shows);
        if (there.isEmpty()) {
            return Optional.empty();
        }
        Optional<PhotoTrace.Traced> trace = passed(there.orElseThrow(), Care.BOTH_SIDES);
        return trace.isPresent() ? trace : unshaded(there.orElseThrow());
    }

    /** What is found by light where hue was asked, or by hue where light was; no smaller part of the piece than what was found before. */
    private Optional<PhotoTrace.Traced> byOther(Optional<BodySearch.Found> found) throws Unsure {
        try {
            BodyFinder.Body body = BodyFinder.otherwise(whole);
            BodySearch.Found other = new BodySearch.Found(body, whole);
            return longOf(other) < LEAST_OF * longOf(found) ? Optional.empty() : passed(other, Care.BOTH_SIDES);
        } catch (Unsure none) {
            stopIfStopped(none);
            return Optional.empty();
        }
    }

    private static void stopIfStopped(Unsure refused) throws Unsure {
        if (refused.answer().reason() == PhotoTrace.Reason.STOPPED) {
            throw refused;
        }
    }

    /** Whatever else stands out from all round it. */
    private Optional<PhotoTrace.Traced> picked(Optional<BodySearch.Found> found) throws Unsure {
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

    private Optional<PhotoTrace.Traced> unshaded(BodySearch.Found found) throws Unsure {
        Optional<BodyFinder.Body> body = Unshaded.of(found.coarse(), found.body());
        return body.isEmpty()
                ? Optional.empty()
                : passed(new BodySearch.Found(body.orElseThrow(), found.coarse()), Care.BOTH_SIDES);
    }

    /** How long in the picture a body is that was found, in its pixels. */
    private static double longOf(BodySearch.Found found) {
        return found.coarse().block() * (found.body().to() - found.body().from());
    }

    private static double longOf(Optional<BodySearch.Found> found) {
        return found.map(SecondLook::longOf).orElse(0.0);
    }

    /** The trace, unless it is refused; an end of the time given is no refusal of this one alone. */
    private Optional<PhotoTrace.Traced> passed(BodySearch.Found found, Care care) throws Unsure {
        if (longOf(found) < leastLong) {
            return Optional.empty();
        }
        try {
            return Optional.of(attempt.trace(found, care));
        } catch (Unsure refused) {
            stopIfStopped(refused);
            return Optional.empty();
        }
    }
}
