package turnalike.turning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.outline.Section;
import turnalike.pattern.Pattern;
import turnalike.units.Length;
import turnalike.units.Speed;
import turnalike.units.Working;

/**
 * How fast the piece may turn by common practice, held below its own whip. No promise: the wood, the lathe and the hold decide.
 *
 * @param roughing while it is out of round
 * @param turning once it is round
 * @param whipLimit the share of the weakest stage's first natural speed that is not passed; empty when no stiffness is known
 * @param limit what holds the turning speed down
 * @param roughingSteps the lathe's steps within the roughing range
 * @param turningSteps the lathe's steps within the turning range
 */
public record SpeedAdvice(
        SpeedRange roughing,
        SpeedRange turning,
        Optional<Speed> whipLimit,
        Limit limit,
        List<Speed> roughingSteps,
        List<Speed> turningSteps) {
    /** What sets the upper end of the turning range. */
    public enum Limit {
        /** Nothing but common practice for this diameter. */
        PRACTICE("common practice for this diameter"),

        /** Faster, the piece would come too near its own first natural speed. */
        WHIP("the piece's own whip"),

        /** The lathe goes no faster. */
        LATHE("the lathe's fastest speed");

        private final String text;

        Limit(String text) {
            this.text = text;
        }

        /** {@return the limit in words} */
        public String text() {
            return text;
        }
    }

    /** Diameter times speed for round spindle work, mm · rpm: 3000 to 6000 in inches. Common practice, no source. */
    static final double TURNING_FROM = 3000 * Length.MM_PER_INCH;

    static final double TURNING_TO = 6000 * Length.MM_PER_INCH;

    /** Half of that while the piece is out of round, by its width across the corners. Common practice, no source. */
    static final double ROUGHING_SHARE = 0.5;

    /**
     * No faster than half the first natural speed. Common practice, no source: wood of one kind differs in stiffness by a fifth and more,
     * and centres are not as stiff as they are reckoned.
     */
    public static final double WHIP_SHARE = 0.5;

    public SpeedAdvice {
        roughingSteps = List.copyOf(roughingSteps);
        turningSteps = List.copyOf(turningSteps);
    }

    /**
     * The ranges for a pattern.
     *
     * @param blank the blank's figures, if known: they limit the roughing
     * @param later those of every later stage: the weakest limits the turning
     */
    static SpeedAdvice of(Pattern pattern, Lathe lathe, Optional<Stage> blank, List<Stage> later) {
        SpeedRange rough = practice(blankAcross(pattern), ROUGHING_SHARE);
        Length across = turningAcross(pattern);
        boolean cornersStay = pattern.members().stream().anyMatch(each -> each.section() == Section.SQUARE);
        SpeedRange turn = practice(across, cornersStay ? ROUGHING_SHARE : 1);
        Optional<Speed> whip =
                later.stream().map(Stage::first).min(Speed::compareTo).map(s -> s.times(WHIP_SHARE));
        Limit limit = Limit.PRACTICE;
        if (whip.isPresent() && whip.get().compareTo(turn.to()) < 0) {
            turn = turn.limited(whip.get());
            limit = Limit.WHIP;
        }
        Optional<Speed> fastest = lathe.most().or(() -> last(lathe.steps()));
        if (fastest.isPresent() && fastest.get().compareTo(turn.to()) < 0) {
            turn = turn.limited(fastest.get());
            limit = Limit.LATHE;
        }
        if (blank.isPresent()) {
            rough = rough.limited(blank.get().first().times(WHIP_SHARE));
        }
        if (fastest.isPresent()) {
            rough = rough.limited(fastest.get());
        }
        // Never faster out of round than round.
        rough = rough.limited(turn.to());
        return new SpeedAdvice(rough, turn, whip, limit, within(rough, lathe), within(turn, lathe));
    }

    private static Optional<Speed> last(List<Speed> rising) {
        return rising.isEmpty() ? Optional.empty() : Optional.of(rising.get(rising.size() - 1));
    }

    private static SpeedRange practice(Length across, double share) {
        return new SpeedRange(
                Speed.ofRpm(share * TURNING_FROM / across.mm()), Speed.ofRpm(share * TURNING_TO / across.mm()), across);
    }

    private static Length blankAcross(Pattern pattern) {
        return pattern.stock().size().times(pattern.stock().section().reachFactor());
    }

    /** The widest part of the finished piece, across the corners where it stays square. */
    private static Length turningAcross(Pattern pattern) {
        List<Length> reach = new ArrayList<>();
        pattern.placed()
                .forEach(placed -> reach.add(placed.outline()
                        .largestRadius()
                        .times(2 * placed.member().section().reachFactor())));
        return Collections.max(reach);
    }

    private static List<Speed> within(SpeedRange range, Lathe lathe) {
        return lathe.steps().stream().filter(range::holds).toList();
    }

    Working working() {
        String whip = whipLimit
                .map(speed -> String.format(
                        Locale.ROOT,
                        "; held to %.0f %% of the weakest stage's first natural speed, %.0f rpm",
                        100 * WHIP_SHARE,
                        speed.rpm()))
                .orElse("; whip not known, so not held by it");
        return new Working(
                "Speed",
                String.format(
                        Locale.ROOT,
                        "diameter x speed from %.0f to %.0f mm rpm (3000 to 6000 in rpm), half that out of round or with square"
                                + " parts, by the width across the corners: %.1f mm round and %.1f mm in the rough%s; set by %s",
                        TURNING_FROM,
                        TURNING_TO,
                        turning.diameter().mm(),
                        roughing.diameter().mm(),
                        whip,
                        limit.text()),
                Working.COMMON_PRACTICE,
                "a place to begin below, not a promise: start slow, stand aside, stop at the first shake");
    }
}
