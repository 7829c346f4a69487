package turnalike.pieces;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Says in words what makes a piece unlike: {@code piece 7: its upper bead stands 1.2 mm low}. Low is toward the start end, high toward the
 * other.
 *
 * @param names what the columns measure, as the job calls them ({@code m3} the upper bead, {@code d2} the lower neck); without a name a
 *     mark or check place goes by its number
 * @param keyed the units figures are told in
 */
public record LikenessWords(Map<Column, String> names, KeyedFigure keyed) {
    /** Parts that count less than this against the largest are not worth a word. */
    private static final double WORTH_SAYING = 0.2;

    /** A two-hundredth of a tolerance is no difference anybody measured. */
    private static final double LEAST = 0.005;

    private static final Pattern NAUGHT = Pattern.compile("0(\\.0*)? ");

    public LikenessWords {
        names = Map.copyOf(new TreeMap<>(names));
    }

    /**
     * {@return what makes the piece unlike, in its largest parts, the largest first:
     * {@code piece 7: its upper bead stands 1.2 mm low; it is 3 g heavy}} Parts too small to measure, or small beside the largest, are
     * not said.
     *
     * @param figure the piece beside the pattern or its set
     * @param most how many parts are said at most, 1 or more
     */
    public String of(Likeness.Figure figure, int most) {
        double largest = figure.parts().isEmpty() ? 0 : figure.parts().get(0).counts();
        List<String> said = figure.parts().stream()
                .filter(part -> part.counts() > LEAST && part.counts() >= WORTH_SAYING * largest)
                .filter(this::isSeen)
                .limit(most)
                .map(this::of)
                .toList();
        String what = figure.parts().isEmpty()
                ? "nothing measured to compare"
                : said.isEmpty() ? "just as asked for" : String.join("; ", said);
        return "piece %s: %s".formatted(figure.piece(), what);
    }

    /**
     * {@return one part, as a clause about the piece: {@code its upper bead stands 1.2 mm low}}
     *
     * @param part of a difference of that piece
     */
    public String of(Likeness.Part part) {
        return part.column()
                .map(column -> of(column, part.off()))
                .orElseGet(() -> part.off() == 0
                        ? "its %s is alike".formatted(part.name())
                        : "its %s is noted otherwise".formatted(part.name()));
    }

    /** Whether there is anything left of it as its scale or rule shows it: nothing is 0 g too heavy. */
    private boolean isSeen(Likeness.Part part) {
        return part.column()
                .map(column -> !NAUGHT.matcher(FigureText.figure(column, part.off(), keyed))
                        .lookingAt())
                .orElse(true);
    }

    private String of(Column column, double off) {
        boolean more = off > 0;
        String much = FigureText.figure(column, off, keyed);
        return switch (column.kind()) {
            case MASS -> "it is %s %s".formatted(much, more ? "heavy" : "light");
            case LENGTH -> "it is %s %s".formatted(much, more ? "long" : "short");
            case BALANCE -> "its balance point lies %s %s".formatted(much, more ? "high" : "low");
            case MARK -> "its %s stands %s %s".formatted(name(column, "mark"), much, more ? "high" : "low");
            case DIAMETER ->
                "its %s is %s too %s".formatted(name(column, "check place"), much, more ? "thick" : "thin");
        };
    }

    private String name(Column column, String otherwise) {
        return names.getOrDefault(column, otherwise + " " + column.place());
    }
}
