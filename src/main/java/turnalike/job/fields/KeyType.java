package turnalike.job.fields;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import turnalike.units.Length;

/** What the value of a key is. */
public sealed interface KeyType {
    /**
     * One answer for each type.
     *
     * @param <R> the answer
     */
    interface Cases<R> {
        /**
         * A length.
         *
         * @param size what counts as one
         * @return the answer
         */
        R size(Size size);

        /**
         * A number that need not be whole.
         *
         * @param number its range
         * @return the answer
         */
        R number(Number number);

        /**
         * A whole number.
         *
         * @param whole its range
         * @return the answer
         */
        R whole(Whole whole);

        /**
         * A text.
         *
         * @param text what it must be the name of, if anything
         * @return the answer
         */
        R text(Text text);

        /**
         * One word out of a few.
         *
         * @param word the words
         * @return the answer
         */
        R word(Word word);

        /**
         * A mark of the pattern.
         *
         * @param mark that it is one
         * @return the answer
         */
        R mark(Mark mark);

        /**
         * Several values of one type.
         *
         * @param list their type and how many there may be
         * @return the answer
         */
        R list(ListOf<?> list);

        /**
         * Several objects of the same two keys.
         *
         * @param rows the keys and how many there may be
         * @return the answer
         */
        R rows(Rows rows);

        /**
         * Numbers under names of the user's own.
         *
         * @param named their range
         * @return the answer
         */
        R named(Named named);

        /**
         * An object.
         *
         * @param group its keys
         * @return the answer
         */
        R group(Group group);

        /**
         * An object of one of several kinds.
         *
         * @param kinds their keys
         * @return the answer
         */
        R kinds(Kinds kinds);

        /**
         * The run.
         *
         * @param members how many members there may be
         * @return the answer
         */
        R members(Members members);
    }

    /**
     * {@return what the case for this one makes of it}
     *
     * @param <R> what becomes of it
     * @param cases one answer for each type
     */
    <R> R match(Cases<R> cases);

    /** {@return a length of zero or more, for which nothing stands when it is left out} */
    static Size size() {
        return new Size(false, Optional.empty());
    }

    /**
     * {@return a length of zero or more, for which another stands when it is left out}
     *
     * @param otherwise what counts when it is left out
     */
    static Size size(Length otherwise) {
        return new Size(false, Optional.of(otherwise));
    }

    /** {@return a length above zero, for which nothing stands when it is left out} */
    static Size aboveZero() {
        return new Size(true, Optional.empty());
    }

    /**
     * {@return a length above zero, for which another stands when it is left out}
     *
     * @param otherwise what counts when it is left out
     */
    static Size aboveZero(Length otherwise) {
        return new Size(true, Optional.of(otherwise));
    }

    /**
     * {@return a number for which nothing stands when it is left out}
     *
     * @param least the smallest it may be
     * @param most the largest it may be
     */
    static Number number(double least, double most) {
        return new Number(least, most, OptionalDouble.empty());
    }

    /**
     * {@return a number for which another stands when it is left out}
     *
     * @param least the smallest it may be
     * @param most the largest it may be
     * @param otherwise what counts when it is left out
     */
    static Number number(double least, double most, double otherwise) {
        return new Number(least, most, OptionalDouble.of(otherwise));
    }

    /** {@return any text} */
    static Text text() {
        return new Text(List.of());
    }

    /** {@return whether it is one length: a bare number then changes its meaning with the job's units} */
    default boolean isLength() {
        return false;
    }

    /**
     * {@return the keys that stand under it, in objects of which its value is one; none for a value that is no object}
     *
     * @param kind the only kind that is wanted where there are several; empty for all
     */
    default List<Group> objects(Optional<String> kind) {
        return List.of();
    }

    /**
     * {@return what a form offers to choose from, or to be reminded of; none where anything may be typed}
     *
     * @param mayBeEmpty whether nothing may be chosen
     */
    default List<String> choices(boolean mayBeEmpty) {
        return List.of();
    }

    /** {@return whether what is typed for it is written as a number where it reads as one} */
    default boolean isNumber() {
        return false;
    }

    /**
     * A length: a number in the job's units, or a text that may carry its own unit.
     *
     * @param aboveZero whether zero is refused; below zero always is
     * @param otherwise the length that counts when the key is left out, where it is always the same
     */
    record Size(boolean aboveZero, Optional<Length> otherwise) implements KeyType {
        @Override
        public boolean isLength() {
            return true;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.size(this);
        }
    }

    /**
     * A number.
     *
     * @param least the smallest it may be
     * @param most the largest it may be
     * @param otherwise the number that counts when the key is left out, where it is always the same
     */
    @SuppressWarnings("JavaLangClash")
    record Number(double least, double most, OptionalDouble otherwise) implements KeyType {
        @Override
        public boolean isNumber() {
            return true;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.number(this);
        }
    }

    /**
     * A whole number.
     *
     * @param least the smallest it may be
     * @param most the largest it may be
     * @param otherwise the number that counts when the key is left out, where it is always the same
     */
    record Whole(int least, int most, OptionalInt otherwise) implements KeyType {
        @Override
        public boolean isNumber() {
            return true;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.whole(this);
        }
    }

    /**
     * A text of at most {@link Text#LONGEST} letters.
     *
     * @param names what it must name, whole or in part; empty for any text
     */
    record Text(List<String> names) implements KeyType {
        /** Above this a slip or a machine wrote it. */
        public static final int LONGEST = 400;

        public Text {
            names = List.copyOf(names);
        }

        @Override
        public List<String> choices(boolean mayBeEmpty) {
            return names;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.text(this);
        }
    }

    /**
     * One word out of a few; where it may be left out, the first counts.
     *
     * @param words at least one, as they are written
     */
    record Word(List<String> words) implements KeyType {
        public Word {
            words = List.copyOf(words);
        }

        @Override
        public List<String> choices(boolean mayBeEmpty) {
            List<String> out = new ArrayList<>(mayBeEmpty ? List.of("") : List.of());
            out.addAll(words);
            return out;
        }

        /** {@return the words as a problem tells them: {@code "start" or "end"}} */
        public String told() {
            List<String> quoted = words.stream().map(word -> "\"" + word + "\"").toList();
            return words.size() == 1
                    ? quoted.get(0)
                    : String.join(", ", quoted.subList(0, words.size() - 1)) + " or " + quoted.get(words.size() - 1);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.word(this);
        }
    }

    /** A mark of the pattern, by its number or its label. */
    record Mark() implements KeyType {
        @Override
        public boolean isNumber() {
            return true;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.mark(this);
        }
    }

    /**
     * A list of values of one type.
     *
     * @param <T> that type
     * @param item what each of them is
     * @param least how many there are at least
     * @param most how many there are at most
     */
    record ListOf<T extends KeyType>(T item, int least, int most) implements KeyType {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.list(this);
        }
    }

    /**
     * A list of objects of the same two keys, which a form asks for a line each: the first may be left out, the second not.
     *
     * @param first the key that may be left out
     * @param second the key that must be there
     * @param most how many objects there are at most
     */
    record Rows(Key<?> first, Key<?> second, int most) implements KeyType {
        /** {@return one of the objects} */
        public Group row() {
            return new Group(List.of(first, second));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.rows(this);
        }
    }

    /**
     * An object whose keys the user names, each with a number.
     *
     * @param number what each number may be
     */
    record Named(Number number) implements KeyType {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.named(this);
        }
    }

    /**
     * An object.
     *
     * @param keys in the order they are told
     * @param either names of keys that stand in each other's place: all of one entry must be there and none of the others; empty when each key
     *     stands for itself
     */
    record Group(List<Key<?>> keys, List<List<String>> either) implements KeyType {
        public Group {
            keys = List.copyOf(keys);
            either = either.stream().map(List::copyOf).toList();
        }

        /**
         * An object each of whose keys stands for itself.
         *
         * @param keys in the order they are told
         */
        public Group(List<Key<?>> keys) {
            this(keys, List.of());
        }

        @Override
        public List<Group> objects(Optional<String> kind) {
            return List.of(this);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.group(this);
        }
    }

    /**
     * An object whose {@code kind} says which other keys it has.
     *
     * @param kind the key that says which
     * @param keys of each kind, besides that one, in the order of the kinds
     */
    record Kinds(Key<Word> kind, Map<String, Group> keys) implements KeyType {
        public Kinds {
            keys = Collections.unmodifiableMap(new LinkedHashMap<>(keys));
        }

        /**
         * {@return the whole object of one kind, the key that says which first; only that key for a kind that is none}
         *
         * @param word of the kind, as the file says it
         */
        public Group with(String word) {
            List<Key<?>> out = new ArrayList<>(List.of(kind));
            out.addAll(keys.getOrDefault(word, new Group(List.of())).keys());
            return new Group(out);
        }

        @Override
        public List<Group> objects(Optional<String> word) {
            List<Group> out = new ArrayList<>(List.of(new Group(List.of(kind))));
            keys.forEach((each, group) -> {
                if (word.isEmpty() || word.get().equals(each)) {
                    out.add(group);
                }
            });
            return out;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.kinds(this);
        }
    }

    /**
     * The members of the run: their kinds describe themselves, see {@link turnalike.pattern.MemberKind}.
     *
     * @param most how many there are at most
     */
    record Members(int most) implements KeyType {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.members(this);
        }
    }
}
