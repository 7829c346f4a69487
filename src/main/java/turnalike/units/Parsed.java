package turnalike.units;

import java.util.function.BiFunction;
import java.util.function.Function;

/** What came of reading one piece of text: a value, or the reason it was refused. */
public sealed interface Parsed<T> permits Parsed.Value, Parsed.Refused {
    /** The text was good. */
    record Value<T>(T value) implements Parsed<T> {}

    /**
     * The text was refused.
     *
     * @param what what is wrong with it
     * @param mend what would be read
     */
    record Refused<T>(String what, String mend) implements Parsed<T> {}

    static <T> Parsed<T> of(T value) {
        return new Value<>(value);
    }

    static <T> Parsed<T> refused(String what, String mend) {
        return new Refused<>(what, mend);
    }

    /** What becomes of the value, or of the refusal's {@code what} and {@code mend}. */
    default <R> R fold(Function<T, R> value, BiFunction<String, String, R> refused) {
        if (this instanceof Value<T> good) {
            return value.apply(good.value());
        }
        Refused<T> bad = (Refused<T>) this;
        return refused.apply(bad.what(), bad.mend());
    }

    /** The value, or what {@code otherwise} makes of the refusal. */
    default T orElse(Function<Refused<T>, T> otherwise) {
        return this instanceof Value<T> good ? good.value() : otherwise.apply((Refused<T>) this);
    }

    /** The value; {@link IllegalArgumentException} with the reason when there is none. For text the program itself wrote. */
    default T get() {
        return orElse(refused -> {
            throw new IllegalArgumentException(refused.what() + "; " + refused.mend());
        });
    }

    /** Whether there is a value. */
    default boolean isValue() {
        return this instanceof Value<T>;
    }
}
