package turnalike.units;

import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * What came of reading one piece of text: a value, or the reason it was refused.
 *
 * @param <T> what is read
 */
public sealed interface Parsed<T> permits Parsed.Value, Parsed.Refused {
    /**
     * The text was good.
     *
     * @param <T> what was read
     * @param value what the text says
     */
    record Value<T>(T value) implements Parsed<T> {}

    /**
     * The text was refused.
     *
     * @param <T> what would have been read
     * @param what what is wrong with it
     * @param mend what would be read
     */
    record Refused<T>(String what, String mend) implements Parsed<T> {}

    /**
     * {@return good text's value}
     *
     * @param <T> what was read
     * @param value what the text says
     */
    static <T> Parsed<T> of(T value) {
        return new Value<>(value);
    }

    /**
     * {@return a refusal}
     *
     * @param <T> what would have been read
     * @param what what is wrong with the text
     * @param mend what would be read
     */
    static <T> Parsed<T> refused(String what, String mend) {
        return new Refused<>(what, mend);
    }

    /**
     * {@return what becomes of the value, or of the refusal's {@code what} and {@code mend}}
     *
     * @param <R> what both become
     * @param value asked when there is a value
     * @param refused asked with {@code what} and {@code mend} when there is none
     */
    default <R> R fold(Function<T, R> value, BiFunction<String, String, R> refused) {
        if (this instanceof Value<T> good) {
            return value.apply(good.value());
        }
        Refused<T> bad = (Refused<T>) this;
        return refused.apply(bad.what(), bad.mend());
    }

    /**
     * {@return the value, or what {@code otherwise} makes of the refusal}
     *
     * @param otherwise makes a value of a refusal
     */
    default T orElse(Function<Refused<T>, T> otherwise) {
        return this instanceof Value<T> good ? good.value() : otherwise.apply((Refused<T>) this);
    }

    /** {@return the value; {@link IllegalArgumentException} with the reason when there is none} For text the program itself wrote. */
    default T get() {
        return orElse(refused -> {
            throw new IllegalArgumentException(refused.what() + "; " + refused.mend());
        });
    }

    /** {@return whether there is a value} */
    default boolean isValue() {
        return this instanceof Value<T>;
    }
}
