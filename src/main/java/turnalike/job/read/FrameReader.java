package turnalike.job.read;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import turnalike.frame.Legs;
import turnalike.frame.Row;
import turnalike.job.JobFrame;
import turnalike.job.keys.FrameKeys;
import turnalike.job.keys.FrameKeys.LegsKeys;
import turnalike.job.keys.FrameKeys.RowKeys;

/** The frame from JSON. A new frame is one case in {@link #read} and one method. */
final class FrameReader {
    private FrameReader() {}

    static Optional<JobFrame> read(Fields fields) {
        Optional<Function<Fields, Optional<JobFrame>>> kind =
                fields.choice(FrameKeys.KIND.name(), FrameKeys.KIND.type().told(), word -> switch (word) {
                    case FrameKeys.WHEEL -> Optional.of(WheelReader::read);
                    case FrameKeys.ROW -> Optional.of(FrameReader::row);
                    case FrameKeys.LEGS -> Optional.of(FrameReader::legs);
                    default -> Optional.empty();
                });
        return kind.flatMap(reader -> reader.apply(fields));
    }

    private static Optional<JobFrame> row(Fields fields) {
        Optional<Integer> places = fields.whole(RowKeys.PLACES);
        Optional<JobFrame.SeenFrom> seenFrom = fields.word(RowKeys.SEEN_FROM)
                .map(word -> word.equals(FrameKeys.START) ? JobFrame.SeenFrom.START : JobFrame.SeenFrom.END);
        fields.refuseUnknown(FrameKeys.of(FrameKeys.ROW));
        return places.flatMap(n -> seenFrom.map(end -> new JobFrame.InRow(new Row(n), end)));
    }

    private static Optional<JobFrame> legs(Fields fields) {
        Optional<Integer> size = fields.whole(LegsKeys.PLACES);
        OptionalInt groups = fields.whole(LegsKeys.GROUPS).map(OptionalInt::of).orElse(OptionalInt.empty());
        fields.refuseUnknown(FrameKeys.of(FrameKeys.LEGS));
        return size.map(n -> new JobFrame.InLegs(new Legs(n), groups));
    }
}
