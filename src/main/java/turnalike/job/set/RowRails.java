package turnalike.job.set;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.Reading;
import turnalike.job.wood.WoodKeys;
import turnalike.job.wood.WoodReader;
import turnalike.outline.Outline;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.wood.Wood;

/**
 * What a row stands between.
 *
 * @param clear between the two posts' faces, level, if told; the rest has no meaning without
 * @param largestOpening diameter of a ball that must not pass, if there is a limit
 * @param railsApart clear height between the rails, measured upright on an axis; the piece's exposed part if not told
 * @param rake by how much the rails rise; 0 for level ones
 * @param end from a post's face to the first axis, if told
 * @param wood what the rails are made of, if told
 */
record RowRails(
        Optional<Length> clear,
        Optional<Length> largestOpening,
        Optional<Length> railsApart,
        Angle rake,
        Optional<Length> end,
        Optional<Wood> wood) {
    /** Beyond it nobody rakes a rail or a leg. */
    private static final double STEEPEST_DEG = 89;

    static final Key<Size> CLEAR = Key.may(
                    "clear",
                    KeyType.aboveZero(),
                    "between the two posts' faces, measured level",
                    "not told, and nothing is said of how they stand")
            .asked(KeySection.FRAME, "Between the posts", "from face to face, level");

    static final Key<Size> LARGEST_OPENING = Key.may(
                    "largest_opening", KeyType.aboveZero(), "diameter of a ball that must not pass", "no limit")
            .asked(
                    KeySection.FRAME,
                    "Ball that must not pass",
                    "its diameter; of what guards a drop ask your local authority");

    static final Key<Size> RAILS_APART = Key.may(
                    "rails_apart",
                    KeyType.aboveZero(),
                    "clear height between the rails, measured upright on an axis",
                    "the piece's exposed part, which is the most")
            .asked(KeySection.FRAME, "Between the rails", "left empty: what the piece shows");

    static final Key<Number> RAKE_DEG = Key.may(
                    "rake_deg",
                    KeyType.number(0, STEEPEST_DEG, 0),
                    "by how much the rails rise; each piece stands upright; a level landing is a row, and a job, of its own",
                    "0")
            .asked(KeySection.FRAME, "Rake, degrees", "left empty: 0; a landing is a job of its own");

    static final Key<Size> END = Key.may(
                    "end",
                    KeyType.aboveZero(),
                    "from a post's face to the first axis",
                    "such that the gap at the thickest place is the same beside a post as between two pieces")
            .asked(KeySection.FRAME, "First axis from a post", "left empty: the same gap everywhere");

    static final Key<Group> RAIL_WOOD = Key.may(
            "rail_wood",
            WoodKeys.beside(KeySection.FRAME, "Rail"),
            "what the rails are made of",
            "the piece's own wood");

    static final List<Key<?>> KEYS = List.of(CLEAR, LARGEST_OPENING, RAILS_APART, RAKE_DEG, END, RAIL_WOOD);

    static Optional<RowRails> read(Fields fields, OptionalInt places) {
        int before = fields.reading().count();
        Optional<Length> clear = fields.size(CLEAR);
        Optional<Length> largest = fields.size(LARGEST_OPENING);
        Optional<Length> apart = fields.size(RAILS_APART);
        Optional<Double> rake = fields.number(RAKE_DEG);
        Optional<Length> end = fields.size(END);
        Optional<Wood> wood = WoodReader.besideOf(fields, RAIL_WOOD);
        if (fields.reading().count() > before) {
            return Optional.empty();
        }
        if (clear.isEmpty()) {
            boolean raked = rake.filter(degrees -> degrees > 0).isPresent();
            Stream.of(LARGEST_OPENING, RAILS_APART, RAKE_DEG, END)
                    .filter(key -> key.equals(RAKE_DEG) ? raked : fields.has(key))
                    .findFirst()
                    .ifPresent(key -> fields.reading()
                            .problem(
                                    fields.at(key.name()),
                                    "means nothing while nobody knows how far apart the pieces stand",
                                    "give clear, the level distance between the two posts' faces"));
        }
        clear.ifPresent(width -> end.ifPresent(first -> ends(fields, width, first, places)));
        return fields.reading().count() > before
                ? Optional.empty()
                : Optional.of(new RowRails(clear, largest, apart, Angle.ofDegrees(rake.orElseThrow()), end, wood));
    }

    private static void ends(Fields fields, Length clear, Length end, OptionalInt places) {
        boolean alone = places.isPresent() && places.getAsInt() == 1;
        Length most = alone ? clear : clear.times(0.5);
        if (end.compareTo(most) >= 0) {
            fields.reading()
                    .problem(
                            fields.at(END.name()),
                            "is %s, which leaves no room between posts %s apart"
                                    .formatted(end.format(fields.units()), clear.format(fields.units())),
                            "give less than " + most.format(fields.units()));
        }
    }

    RowRails withEnd(Length other) {
        return new RowRails(clear, largestOpening, railsApart, rake, Optional.of(other), wood);
    }

    /** The clear height, over a piece. */
    Length height(Outline exposed) {
        return railsApart.orElse(exposed.length());
    }

    /** Tells what cannot be over a piece. */
    void tell(Outline exposed, Reading reading) {
        railsApart
                .filter(apart -> apart.mm() > exposed.length().mm() + 1e-9)
                .ifPresent(apart -> reading.problem(
                        "frame: " + RAILS_APART.name(),
                        "is %s, but only %s of the piece stands between its shoulders"
                                .formatted(
                                        apart.formatFine(reading.units()),
                                        exposed.length().formatFine(reading.units())),
                        "give %s at most, or lengthen the piece"
                                .formatted(exposed.length().formatFine(reading.units()))));
        Length height = height(exposed);
        largestOpening
                .filter(ball -> ball.mm() > height.mm() + 1e-9)
                .ifPresent(ball -> reading.problem(
                        "frame: " + LARGEST_OPENING.name(),
                        "is %s, but between the rails there is only %s: such a ball never passes"
                                .formatted(ball.formatFine(reading.units()), height.formatFine(reading.units())),
                        "give %s at most".formatted(height.formatFine(reading.units()))));
    }
}
