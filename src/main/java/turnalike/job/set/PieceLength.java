package turnalike.job.set;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Whole;
import turnalike.job.fields.Reading;
import turnalike.pattern.Fault;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * One of several lengths that the pieces of a frame are made in: one turning, and one member of it longer or shorter.
 *
 * @param stretch which member differs, by its index from 0
 * @param length of that member in these pieces
 * @param count how many pieces are so long, at least 1
 */
public record PieceLength(int stretch, Length length, int count) {
    /** As many as there are letters to tell them apart by. */
    private static final int MOST = 26;

    private static final int MOST_MEMBERS = 200;

    private static final Key<Whole> STRETCH = Key.needed(
            "stretch",
            new Whole(0, MOST_MEMBERS - 1, OptionalInt.empty()),
            "the member that differs, counted from 0 at the start end");

    private static final Key<Size> LENGTH = Key.needed("length", KeyType.aboveZero(), "of that member in these pieces");

    private static final Key<Whole> COUNT = Key.needed(
            "count", new Whole(1, FrameKind.MOST_PLACES, OptionalInt.empty()), "how many pieces are so long");

    private static final Group ROW = new Group(List.of(STRETCH, LENGTH, COUNT));

    private static final String MEND = "write it like [{\"stretch\": 1, \"length\": \"8 1/2\", \"count\": 12}, …]";

    static final Key<ListOf<Group>> LENGTHS = Key.may(
                    "lengths",
                    new ListOf<>(ROW, 1, MOST),
                    "the lengths that the pieces are made in, where one turning serves several: A is the first, B the second",
                    "all are as drawn")
            .asked(
                    KeySection.FRAME,
                    "Several lengths: member ; its length ; how many",
                    "of a row; a line each: 0 ; 6 1/2 ; 12. Members count from 0 here");

    public PieceLength {
        if (stretch < 0 || count < 1) {
            throw new IllegalArgumentException("no stretch %d or no count %d".formatted(stretch, count));
        }
    }

    /**
     * {@return the letter that tells a length from the others}
     *
     * @param index of the length in its list, from 0, below 26
     */
    public static String letter(int index) {
        return String.valueOf((char) ('A' + index));
    }

    /** {@return so many pieces in all} */
    static int count(List<PieceLength> lengths) {
        return lengths.stream().mapToInt(PieceLength::count).sum();
    }

    /** What the keys of a frame say; none where they say nothing or something wrong, which has then been told. */
    static List<PieceLength> read(Fields frame) {
        if (!frame.has(LENGTHS)) {
            return List.of();
        }
        List<JsonNode> nodes = frame.list(LENGTHS, MEND).orElse(List.of());
        if (nodes.isEmpty() || nodes.size() > MOST) {
            frame.reading()
                    .problem(
                            frame.at(LENGTHS.name()),
                            "has %d entries".formatted(nodes.size()),
                            "give 1 to %d, or leave lengths out".formatted(MOST));
            return List.of();
        }
        List<PieceLength> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            String place = "%s %d".formatted(LENGTHS.name(), i + 1);
            frame.objectAt(place, nodes.get(i), MEND).flatMap(PieceLength::one).ifPresent(out::add);
        }
        return out;
    }

    private static Optional<PieceLength> one(Fields fields) {
        Optional<Integer> stretch = fields.whole(STRETCH);
        Optional<Length> length = fields.size(LENGTH);
        Optional<Integer> count = fields.whole(COUNT);
        fields.refuseUnknown(ROW);
        return stretch.flatMap(s -> length.flatMap(l -> count.map(c -> new PieceLength(s, l, c))));
    }

    /** Tells what these lengths cannot be of that pattern. */
    static void tell(List<PieceLength> lengths, Pattern pattern, Reading reading) {
        List<Length> overall = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            lengths.get(i).tell("frame: %s %d".formatted(LENGTHS.name(), i + 1), pattern, overall, reading);
        }
    }

    private void tell(String where, Pattern pattern, List<Length> before, Reading reading) {
        List<PlacedMember> run = pattern.placed();
        if (stretch >= run.size()) {
            reading.problem(
                    where + ": " + STRETCH.name(),
                    "was %d, but the pattern has %d members".formatted(stretch, run.size()),
                    "give 0 for the first to %d for the last".formatted(run.size() - 1));
            return;
        }
        List<Fault> faults = pattern.stretchFaults(stretch, length);
        for (Fault fault : faults) {
            reading.problem(
                    "%s: %s, of %s"
                            .formatted(where, fault.key(), run.get(stretch).where()),
                    fault.what().in(reading.units()),
                    fault.mend());
        }
        Member drawn = pattern.members().get(stretch);
        Length whole = pattern.length().plus(length).minus(drawn.length());
        Optional<Length> same = before.stream()
                .filter(each -> each.minus(whole).abs().mm() < 1e-6)
                .findFirst();
        if (faults.isEmpty() && same.isPresent()) {
            reading.problem(
                    where,
                    "makes pieces of %s, as one before it does".formatted(whole.formatFinestBoth(reading.units())),
                    "add its count to that one, or give another length");
        }
        before.add(whole);
    }

    /** Tells where the lengths' counts do not add up to a number that is wanted. */
    static void tellSum(List<PieceLength> lengths, int wanted, String ofWhat, Reading reading) {
        int sum = count(lengths);
        if (!lengths.isEmpty() && sum != wanted) {
            reading.problem(
                    "frame: " + LENGTHS.name(),
                    "count %d pieces in all, but %s %d".formatted(sum, ofWhat, wanted),
                    "make the counts add up to %d, or change that to %d".formatted(wanted, sum));
        }
    }
}
