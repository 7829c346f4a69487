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

        /** Long work is turned slower than its diameter alone would have it. */
        LENGTH("common practice for work this long"),

        /** The turner goes no faster, whatever the diameter. */
        CEILING("the ceiling on any speed"),

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

    /** Rounding alone holds nothing. */
    private static final double SLACK = 1e-9;

    public SpeedAdvice {
        roughingSteps = List.copyOf(roughingSteps);
        turningSteps = List.copyOf(turningSteps);
    }

    /**
     * The ranges for a pattern. While it is roughed the blank's own stiffness counts, and the roughed cylinder's that it becomes; the turning
     * range holds until the last cut, so the weakest of the later stages counts.
     *
     * @param blank the blank's figures, if known
     * @param later those of every later stage, the roughed cylinder first; empty if not known
     */
    static SpeedAdvice of(Pattern pattern, Lathe lathe, Optional<Stage> blank, List<Stage> later) {
        ShopRules rules = lathe.rules();
        Optional<Speed> longest = Optional.of(rules.mostFor(pattern.stock().length()));
        Optional<Speed> fastest = lathe.most().or(() -> last(lathe.steps()));
        List<Stage> early = new ArrayList<>(blank.stream().toList());
        later.stream().findFirst().ifPresent(early::add);
        Optional<Speed> whip = whip(later, rules);
        boolean cornersStay = pattern.members().stream().anyMatch(each -> each.section() == Section.SQUARE);
        Bounded turn = practice(across(pattern), turningReach(pattern), cornersStay ? rules.outOfRound() : 1, rules)
                .byLength(longest)
                .by(Optional.of(rules.ceiling()), Limit.CEILING)
                .by(whip, Limit.WHIP)
                .by(fastest, Limit.LATHE);
        Length flats = pattern.stock().size();
        Length corners = flats.times(pattern.stock().section().reachFactor());
        SpeedRange rough = practice(flats, corners, rules.outOfRound(), rules)
                .byLength(longest)
                .by(Optional.of(rules.ceiling()), Limit.CEILING)
                .by(whip(early, rules), Limit.WHIP)
                .by(fastest, Limit.LATHE)
                .range();
        return new SpeedAdvice(
                rough, turn.range(), whip, turn.limit(), within(rough, lathe), within(turn.range(), lathe));
    }

    /** A range and what holds its fast end. */
    private record Bounded(SpeedRange range, Limit limit) {
        Bounded by(Optional<Speed> most, Limit why) {
            return most.filter(speed -> speed.rpm() < range.to().rpm() * (1 - SLACK))
                    .map(speed -> new Bounded(range.limited(speed), why))
                    .orElse(this);
        }

        /** Long work begins at half its most: 300 to 600 rpm for seven feet. */
        Bounded byLength(Optional<Speed> most) {
            Bounded held = by(most, Limit.LENGTH);
            if (held.limit != Limit.LENGTH) {
                return this;
            }
            Speed from = held.range.from().orSlower(held.range.to().times(0.5));
            return new Bounded(new SpeedRange(from, held.range.to(), held.range.diameter()), Limit.LENGTH);
        }
    }

    private static Optional<Speed> whip(List<Stage> stages, ShopRules rules) {
        return stages.stream().map(Stage::first).min(Speed::compareTo).map(speed -> speed.times(rules.whipShare()));
    }

    private static Optional<Speed> last(List<Speed> rising) {
        return rising.isEmpty() ? Optional.empty() : Optional.of(rising.get(rising.size() - 1));
    }

    /** @param reach the width that passes the tool, across the corners where there are some */
    private static Bounded practice(Length across, Length reach, double share, ShopRules rules) {
        SpeedRange chart = rules.chart().at(across);
        return new Bounded(new SpeedRange(chart.from().times(share), chart.to().times(share), reach), Limit.PRACTICE);
    }

    /** The widest part of the finished piece, across the flats where it stays square. */
    private static Length across(Pattern pattern) {
        return pattern.outline().largestRadius().times(2);
    }

    /** The widest part of the finished piece, across the corners where it stays square. */
    private static Length turningReach(Pattern pattern) {
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

    Working working(ShopRules rules) {
        String whip = whipLimit
                .map(speed -> String.format(
                        Locale.ROOT,
                        "; held to %.0f %% of the weakest stage's first natural speed, %.0f rpm; roughing by the blank's and the"
                                + " roughed cylinder's",
                        100 * rules.whipShare(),
                        speed.rpm()))
                .orElse("; whip not known, so not held by it");
        return new Working(
                "Speed",
                String.format(
                        Locale.ROOT,
                        "a chart by diameter (%s), by a power of the diameter in between, by diameter x speed beyond; %.0f %% of it"
                                + " out of round or with square parts, by the width across the flats; no faster than %.0f rpm x 2133.6"
                                + " mm / length and than %.0f rpm%s; set by %s",
                        rules.chart().text(),
                        100 * rules.outOfRound(),
                        rules.longWork().rpm(),
                        rules.ceiling().rpm(),
                        whip,
                        limit.text()),
                Working.COMMON_PRACTICE,
                "a place to begin below, not a promise: start slow, stand aside, stop at the first shake");
    }
}
