package turnalike.job.read;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import turnalike.frame.Legs;
import turnalike.frame.Row;
import turnalike.job.JobFrame;

/** The frame from JSON. A new frame is one case in {@link #read} and one method. */
final class FrameReader {
    static final int MOST_PLACES = 400;

    private static final int LARGEST_GROUP = 8;

    private FrameReader() {}

    static Optional<JobFrame> read(Fields fields) {
        Optional<Function<Fields, Optional<JobFrame>>> kind =
                fields.choice("kind", "\"wheel\", \"row\" or \"legs\"", word -> switch (word) {
                    case "wheel" -> Optional.of(WheelReader::read);
                    case "row" -> Optional.of(FrameReader::row);
                    case "legs" -> Optional.of(FrameReader::legs);
                    default -> Optional.empty();
                });
        return kind.flatMap(reader -> reader.apply(fields));
    }

    private static Optional<JobFrame> row(Fields fields) {
        Optional<Integer> places = fields.wholeNumber("places", 1, MOST_PLACES);
        Optional<JobFrame.SeenFrom> seenFrom = fields.has("seen_from")
                ? fields.choice("seen_from", "\"start\" or \"end\"", word -> switch (word) {
                    case "start" -> Optional.of(JobFrame.SeenFrom.START);
                    case "end" -> Optional.of(JobFrame.SeenFrom.END);
                    default -> Optional.empty();
                })
                : Optional.of(JobFrame.SeenFrom.START);
        fields.refuseUnknown();
        return places.flatMap(n -> seenFrom.map(end -> new JobFrame.InRow(new Row(n), end)));
    }

    private static Optional<JobFrame> legs(Fields fields) {
        Optional<Integer> size = fields.wholeNumber("places", 2, LARGEST_GROUP);
        OptionalInt groups = fields.has("groups")
                ? fields.wholeNumber("groups", 1, MOST_PLACES)
                        .map(OptionalInt::of)
                        .orElse(OptionalInt.empty())
                : OptionalInt.empty();
        fields.refuseUnknown();
        return size.map(n -> new JobFrame.InLegs(new Legs(n), groups));
    }
}
