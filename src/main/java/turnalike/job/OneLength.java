package turnalike.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.set.ByHand;
import turnalike.job.set.Frame;
import turnalike.job.set.PieceLength;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * One of the lengths that a job's pieces are made in, as an order of its own: the same turning with one member longer or shorter, so many
 * pieces, and no frame.
 *
 * @param letter that tells it from the others: A for the first
 * @param told what the frame says of it
 * @param job the order
 */
public record OneLength(String letter, PieceLength told, Job job) {
    /**
     * {@return each length of a job's frame, in the order told; none where all pieces are as drawn}
     *
     * @param job whose pieces they are
     */
    public static List<OneLength> of(Job job) {
        List<PieceLength> lengths = job.frame().map(Frame::lengths).orElse(List.of());
        List<OneLength> out = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            out.add(new OneLength(PieceLength.letter(i), lengths.get(i), job(job, lengths.get(i), i)));
        }
        return out;
    }

    private static Job job(Job job, PieceLength length, int index) {
        Pattern drawn = job.pattern();
        Pattern same = drawn.stretched(drawn.name(), length.stretch(), length.length());
        String words =
                "%s, %s long".formatted(PieceLength.letter(index), same.length().format(job.units()));
        Pattern pattern = drawn.stretched(drawn.name() + ", " + words, length.stretch(), length.length());
        return new Job(
                job.title() + ": " + words,
                job.units(),
                pattern,
                job.wood(),
                length.count(),
                job.lossRate(),
                job.tolerances(),
                job.cutting(),
                job.wishes(),
                job.likeness(),
                checks(job, length, pattern),
                job.lathe(),
                Optional.empty(),
                Shop.EMPTY,
                Optional.empty(),
                ByHand.NONE);
    }

    /** A check place keeps its place on the turning: what lies beyond the stretch moves with it, what lies on it keeps its share of it. */
    private static List<CheckPlace> checks(Job job, PieceLength length, Pattern pattern) {
        PlacedMember drawn = job.pattern().placed().get(length.stretch());
        Length more = pattern.length().minus(job.pattern().length());
        double ratio = length.length().mm() / drawn.member().length().mm();
        List<CheckPlace> out = new ArrayList<>();
        for (CheckPlace each : job.checks()) {
            Length at = each.at();
            if (at.compareTo(drawn.end()) >= 0) {
                at = at.plus(more);
            } else if (at.compareTo(drawn.start()) > 0) {
                at = drawn.start().plus(at.minus(drawn.start()).times(ratio));
            }
            out.add(new CheckPlace(each.name(), at));
        }
        return out;
    }
}
