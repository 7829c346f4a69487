package turnalike.job.set;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import turnalike.frame.RowGap;
import turnalike.frame.RowOpening;
import turnalike.frame.RowOpening.Side;
import turnalike.outline.Outline;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/**
 * Neighbours of a row whose pieces are made in several lengths. The upper rail runs straight through all the end shoulders, on its rake; each
 * piece hangs down from it by its own length, so on a stair where a piece is longer than the one before it by as much as the rail rises, both
 * stand level, on one tread. What they stand on counts as running straight from the one start shoulder to the next.
 *
 * @param pairs every two lengths that stand side by side somewhere, once
 * @param own the piece of every place; none where all are as drawn
 * @param end the wider opening beside a post, of the first and of the last piece; empty where all are as drawn
 * @param hidden whether the upper rail leaves nothing of the shortest piece to be seen
 */
record RowOfLengths(List<Pair> pairs, List<RowFit.Own> own, Optional<RowRoom.EndBall> end, boolean hidden) {
    /**
     * Two lengths side by side.
     *
     * @param left index of the one, nearer to the first post
     * @param right of the other
     * @param rise how much higher the right one's start shoulder lies
     * @param ball the largest that passes between them
     * @param gap where they come nearest, on the one that begins lower
     * @param lower the pattern of the one that begins lower, the left one where both begin level
     */
    record Pair(int left, int right, Length rise, RowOpening.Ball ball, RowGap.Nearest gap, Pattern lower) {
        private boolean leftIsLower() {
            return rise.mm() >= 0;
        }

        /** How much of them runs into one another and where, in words; told of the one that begins lower. */
        String touching(RuleSteps steps) {
            Length at = ExposedPart.of(lower).start().plus(gap.at());
            return "%s of length %s runs %s into the %s beside it, %s from its start end"
                    .formatted(
                            ExposedPart.thickest(lower, at).where(),
                            PieceLength.letter(leftIsLower() ? left : right),
                            steps.much(gap.left().abs()),
                            PieceLength.letter(leftIsLower() ? right : left),
                            steps.reckoned(at));
        }
    }

    RowOfLengths {
        pairs = List.copyOf(pairs);
        own = List.copyOf(own);
    }

    /** Of a row between posts whose pieces are so far apart; no pairs where all are as drawn. */
    static RowOfLengths of(InRow frame, Pattern pattern, RowRoom drawn) {
        Optional<Length> pitch = drawn.pitch(frame.places()).filter(Length::isPositive);
        if (frame.lengths().isEmpty() || pitch.isEmpty()) {
            return new RowOfLengths(List.of(), List.of(), Optional.empty(), false);
        }
        List<Pattern> patterns = frame.lengths().stream()
                .map(each -> pattern.stretched(pattern.name(), each.stretch(), each.length()))
                .toList();
        List<Outline> bodies = patterns.stream().map(ExposedPart::of).toList();
        Length inRail = drawn.exposed().length().minus(drawn.height());
        Length shortest = Collections.min(bodies.stream().map(Outline::length).toList(), Comparator.naturalOrder());
        if (shortest.compareTo(inRail) <= 0) {
            return new RowOfLengths(List.of(), List.of(), Optional.empty(), true);
        }
        List<Pair> out = new ArrayList<>();
        List<Integer> wanted = frame.wanted();
        for (List<Integer> each : neighbours(wanted)) {
            out.add(pair(each.get(0), each.get(1), patterns, pitch.get(), drawn.rise(pitch.get()), inRail));
        }
        Outline first = bodies.get(wanted.get(0));
        Outline last = bodies.get(wanted.get(wanted.size() - 1));
        RowOpening.Ball lower = beside(first, Side.POST, Side.PIECE, drawn.first(frame.places()), inRail, drawn);
        RowOpening.Ball upper = beside(last, Side.PIECE, Side.POST, drawn.last(frame.places()), inRail, drawn);
        List<RowFit.Own> own = wanted.stream()
                .map(index -> new RowFit.Own(
                        PieceLength.letter(index),
                        patterns.get(index).outline(),
                        bodies.get(index).start(),
                        drawn.exposed().length().minus(bodies.get(index).length())))
                .toList();
        return new RowOfLengths(out, own, Optional.of(RowRoom.EndBall.wider(lower, upper)), false);
    }

    private static RowOpening.Ball beside(
            Outline body, Side left, Side right, Length apart, Length inRail, RowRoom drawn) {
        return new RowOpening(
                        body,
                        left,
                        right,
                        apart,
                        body.length().minus(inRail),
                        drawn.rails().rake())
                .widest();
    }

    private static LinkedHashSet<List<Integer>> neighbours(List<Integer> wanted) {
        LinkedHashSet<List<Integer>> out = new LinkedHashSet<>();
        for (int i = 1; i < wanted.size(); i++) {
            out.add(List.of(wanted.get(i - 1), wanted.get(i)));
        }
        return out;
    }

    private static Pair pair(
            int left, int right, List<Pattern> patterns, Length pitch, Length railRise, Length inRail) {
        Outline one = ExposedPart.of(patterns.get(left));
        Outline other = ExposedPart.of(patterns.get(right));
        Length rise = railRise.minus(other.length().minus(one.length()));
        RowOpening.Ball ball = RowOpening.ofTwo(one, other, pitch, one.length().minus(inRail), rise, railRise)
                .widest();
        RowGap.Nearest gap =
                rise.mm() >= 0 ? RowGap.of(one, other, pitch, rise) : RowGap.of(other, one, pitch, rise.times(-1));
        return new Pair(left, right, rise, ball, gap, patterns.get(rise.mm() >= 0 ? left : right));
    }

    /** The two between which the largest ball passes. */
    Optional<Pair> widest() {
        return pairs.stream().max(Comparator.comparing(pair -> pair.ball().diameter()));
    }

    /** The two that come nearest. */
    Optional<Pair> nearest() {
        return pairs.stream().min(Comparator.comparing(pair -> pair.gap().left()));
    }
}
