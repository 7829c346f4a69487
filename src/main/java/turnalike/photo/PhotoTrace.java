package turnalike.photo;

import java.util.List;
import turnalike.effort.Effort;
import turnalike.trace.Profile;

/** What a photograph says of a piece: its profile, or why there is none. A wrong trace is worse than none. */
public sealed interface PhotoTrace permits PhotoTrace.Traced, PhotoTrace.NotSure {
    /**
     * Traces one round piece: lying, standing or between centres, at any angle. The start end is the left one, or the upper one of a piece
     * that stands (more than 45 degrees from level), unless {@link PhotoWish#ends} says otherwise. Nothing is thrown whatever the bytes are.
     *
     * @param picture a JPEG or PNG file, up to 50 megapixels
     * @param wish what is known beforehand
     * @param effort how long it may take; once spent, the answer is a refusal
     * @return the profile or a refusal
     */
    static PhotoTrace of(byte[] picture, PhotoWish wish, Effort effort) {
        return Tracer.trace(picture, wish, effort);
    }

    /**
     * A piece found and measured.
     *
     * @param profile from the start end on, a station every 0.5 mm or closer; each station's uncertainty holds in about two of three places
     * @param fitted the same for members to be fitted to: what is hardly seen beside a step is not hidden there, for it tells where the step is
     * @param squares stretches lit as flats, in order: their radius is half their side
     * @param mmPerPixel how much of the piece, at the middle of its axis, one pixel of the picture shows; where that has much grain,
     *     one of the picture made smaller, as it was traced
     * @param scaleFrom where the scale came from, in words
     * @param viewFrom where the angle of view came from, in words
     * @param overlay where it lies in the picture
     * @param warnings what to know before relying on it, each one sentence; none when all is plain
     */
    record Traced(
            Profile profile,
            Profile fitted,
            List<Profile.Stretch> squares,
            double mmPerPixel,
            String scaleFrom,
            String viewFrom,
            Overlay overlay,
            List<String> warnings)
            implements PhotoTrace {
        public Traced {
            squares = List.copyOf(squares);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Not traced.
     *
     * @param reason which kind of trouble
     * @param what what is wrong, in words
     * @param mend what to do about it
     */
    record NotSure(Reason reason, String what, String mend) implements PhotoTrace {}

    /**
     * Where the piece lies in the upright picture, to be drawn over it.
     *
     * @param widthPixels the picture's width
     * @param heightPixels its height
     * @param start where the axis begins
     * @param end where it ends
     * @param leftEdge the contour on the left of one who looks from start to end, from the start on
     * @param rightEdge the contour on the other side, from the start on
     */
    record Overlay(
            int widthPixels,
            int heightPixels,
            PixelPoint start,
            PixelPoint end,
            List<PixelPoint> leftEdge,
            List<PixelPoint> rightEdge) {
        public Overlay {
            leftEdge = List.copyOf(leftEdge);
            rightEdge = List.copyOf(rightEdge);
        }
    }

    /** The kinds of trouble. */
    enum Reason {
        /** Neither JPEG nor PNG, or of a kind of these that cannot be read. */
        NOT_A_PICTURE,
        /** Cut short, or what its header says is not what it holds. */
        DAMAGED,
        /** More than 50 megapixels. */
        TOO_LARGE,
        /** Too few pixels across the piece. */
        TOO_SMALL,
        /** Hardly any light. */
        TOO_DARK,
        /** Nothing that looks like a turned piece. */
        NO_PIECE,
        /** More than one. */
        TWO_PIECES,
        /** It runs out of the picture. */
        CUT_OFF,
        /** Its edges are too soft to measure. */
        BLURRED,
        /** The two edges do not belong to one round body. */
        NOT_ROUND,
        /** Its edges can hardly be told from what lies behind it. */
        LIKE_GROUND,
        /** Nothing says how long it is. */
        NO_SCALE,
        /** The printed sheet in the picture does not fit: bent, half hidden, or at odds with the length that was given. */
        SHEET,
        /** The effort was spent before the end. */
        STOPPED
    }
}
