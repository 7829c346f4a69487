package turnalike.web.job;

import java.util.List;
import java.util.Optional;
import turnalike.job.fields.KeyType;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.web.kit.FiguresIn;

/**
 * One field of a form.
 *
 * @param name under which it is sent
 * @param label as a person reads it
 * @param value as it was typed
 * @param look how it is filled in
 * @param also beside it: the same in the other unit, or what counts when it is left empty
 * @param choices to choose from or to be reminded of
 * @param problem what is wrong with the value
 * @param held what the job holds, where the value is another because it was refused
 * @param isKept whether it was kept just now
 */
public record FieldView(
        String name,
        String label,
        String value,
        Look look,
        String also,
        List<String> choices,
        Optional<String> problem,
        Optional<String> held,
        boolean isKept) {

    /** How a field is filled in. */
    public enum Look {
        TEXT,
        LENGTH,
        NUMBER,
        CHOICE,
        TICK,
        /** Several figures in one line. */
        FIGURES,
        /** A line each: names, a figure behind each. */
        LINES,
        /** A line each: figures and nothing else. */
        TABLE;

        /** Whether several lines are typed there. */
        public boolean isLines() {
            return this == LINES || this == TABLE;
        }

        /** Where figures stand in it. */
        public FiguresIn figures() {
            return switch (this) {
                case LENGTH, NUMBER, FIGURES, TABLE -> FiguresIn.ALL;
                case LINES -> FiguresIn.LINE_ENDS;
                case TEXT, CHOICE, TICK -> FiguresIn.NOWHERE;
            };
        }

        private static boolean isFigure(KeyType type) {
            return type instanceof KeyType.Size || type.isNumber();
        }

        /** How a value of that type is filled in; an object is not, what it holds is. */
        static Look of(KeyType type) {
            return type.match(new KeyType.Cases<>() {
                @Override
                public Look size(KeyType.Size size) {
                    return LENGTH;
                }

                @Override
                public Look number(KeyType.Number number) {
                    return NUMBER;
                }

                @Override
                public Look whole(KeyType.Whole whole) {
                    return NUMBER;
                }

                @Override
                public Look text(KeyType.Text text) {
                    return TEXT;
                }

                @Override
                public Look word(KeyType.Word word) {
                    return CHOICE;
                }

                @Override
                public Look mark(KeyType.Mark mark) {
                    return TEXT;
                }

                @Override
                public Look list(KeyType.ListOf<?> list) {
                    if (list.item() instanceof KeyType.Group group) {
                        return group.keys().stream().allMatch(key -> isFigure(key.type())) ? TABLE : LINES;
                    }
                    return isFigure(list.item()) ? FIGURES : TEXT;
                }

                @Override
                public Look rows(KeyType.Rows rows) {
                    return isFigure(rows.first().type()) ? TABLE : LINES;
                }

                @Override
                public Look named(KeyType.Named named) {
                    return LINES;
                }

                @Override
                public Look group(KeyType.Group group) {
                    throw new IllegalArgumentException("an object is no field: " + group);
                }

                @Override
                public Look kinds(KeyType.Kinds kinds) {
                    throw new IllegalArgumentException("an object is no field: " + kinds);
                }

                @Override
                public Look members(KeyType.Members members) {
                    throw new IllegalArgumentException("members are no field: " + members);
                }
            });
        }
    }

    public FieldView {
        choices = List.copyOf(choices);
    }

    private FieldView(String name, String label, String value, Look look, String also, List<String> choices) {
        this(name, label, value, look, also, choices, Optional.empty(), Optional.empty(), false);
    }

    static FieldView length(String name, String label, String value, UnitSystem units) {
        String other = value.isBlank()
                ? ""
                : Length.parse(value, units).fold(length -> other(length, value, units), (what, mend) -> "");
        return new FieldView(name, label, value, Look.LENGTH, other, List.of());
    }

    private static String other(Length length, String value, UnitSystem units) {
        boolean inOwn = Length.parse(value, units.other()).fold(length::equals, (what, mend) -> false);
        // What carries the other unit itself is shown in the job's own.
        return length.format(inOwn ? units : units.other());
    }

    static FieldView of(Look look, String name, String label, String value) {
        return new FieldView(name, label, value, look, "", List.of());
    }

    /** A field of that look; a length has the same in the other unit beside it. */
    static FieldView of(Look look, String name, String label, String value, UnitSystem units) {
        return look == Look.LENGTH ? length(name, label, value, units) : of(look, name, label, value);
    }

    FieldView with(List<String> these) {
        return new FieldView(name, label, value, look, also, these);
    }

    FieldView hint(String hint) {
        return also.isEmpty() ? new FieldView(name, label, value, look, hint, choices) : this;
    }

    /** A copy as it was typed last, with what is wrong with it. */
    FieldView typed(Optional<String> last, Optional<String> wrong) {
        return new FieldView(
                name,
                label,
                last.orElse(value),
                look,
                also,
                choices,
                wrong,
                last.filter(typed -> !typed.equals(value)).map(typed -> value),
                isKept);
    }

    FieldView kept(boolean now) {
        return new FieldView(name, label, value, look, also, choices, problem, held, now);
    }

    /** A length's millimetres, for the arrow keys to step from; empty for anything else. */
    public String mm(String units) {
        return look == Look.LENGTH
                ? Length.parse(value, UnitSystem.find(units).orElse(UnitSystem.METRIC))
                        .fold(length -> Double.toString(length.mm()), (what, mend) -> "")
                : "";
    }

    /** The element's id. */
    public String id() {
        return "f-" + name.replace('.', '-');
    }

    public boolean isWrong() {
        return problem.isPresent();
    }

    /** What is wrong, or nothing. */
    public String wrong() {
        return problem.orElse("");
    }
}
