package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import turnalike.units.Length;

/**
 * A kind of member as it describes itself: its word and its keys in a job file, how one is made of sizes, what a new one starts from, and
 * what is told and shown of it. Every record of the {@link Member} family holds its own; two kinds are equal when they are the same.
 */
public final class MemberKind {
    private final String word;
    private final Told told;
    private final List<Entry> entries;
    private final Function<Sizes, List<Fault>> faults;
    private final Function<Sizes, Member> maker;

    /**
     * What is told and shown of a kind.
     *
     * @param words what it is and which sizes it is given by, for the help
     * @param shape its outline in a few words, for the table of the job file
     * @param narrow whether a new one is a third as long as others
     * @param example one between parts of 30 mm, as the help draws it
     */
    private record Told(String words, String shape, boolean narrow, Supplier<? extends Member> example) {}

    /** A key; how its value is read off a member, and what it starts from: each adds to the sizes. */
    private record Entry(
            MemberKey key, BiFunction<Sizes, Member, Sizes> written, BiFunction<Sizes, Room, Sizes> start) {}

    private MemberKind(
            String word,
            Told told,
            List<Entry> entries,
            Function<Sizes, List<Fault>> faults,
            Function<Sizes, Member> maker) {
        this.word = word;
        this.told = told;
        this.entries = List.copyOf(entries);
        this.faults = faults;
        this.maker = maker;
    }

    /** {@return every kind, in the order a turner meets them} */
    public static List<MemberKind> all() {
        return Member.kinds();
    }

    /**
     * {@return the kind written so, letter for letter; empty when there is none}
     *
     * @param word as in a job file
     */
    public static Optional<MemberKind> find(String word) {
        return all().stream().filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** {@return the word in a job file: {@code half-bead}; no other kind has it} */
    public String word() {
        return word;
    }

    /** {@return what it is and which sizes it is given by, in sentences, for the help} */
    public String words() {
        return told.words();
    }

    /** {@return its outline in a few words, for the table of the job file} */
    public String shape() {
        return told.shape();
    }

    /** {@return whether a new one is given a third of the usual length} */
    public boolean isNarrow() {
        return told.narrow();
    }

    /** {@return one that shows what the kind is for, between parts of 30 mm, in the middle of a blank of 42 mm} */
    public Member example() {
        return told.example().get();
    }

    /**
     * {@return the keys it is given by, in the order in which a form asks for them} Besides these, any member may have a name and be turned
     * by eye.
     */
    public List<MemberKey> keys() {
        return entries.stream().map(Entry::key).toList();
    }

    /**
     * {@return the key of that type and name, if it is one of these}
     *
     * @param type what its value is
     * @param name as in a job file
     */
    public Optional<MemberKey> find(MemberKey.Type type, String name) {
        return keys().stream()
                .filter(key -> key.type() == type && key.name().equals(name))
                .findFirst();
    }

    /**
     * {@return why no member of this kind can have these sizes, in the order of its keys; empty when one can}
     *
     * @param sizes a value for every key that is needed or has a value otherwise, else {@link IllegalArgumentException}
     */
    public List<Fault> faults(Sizes sizes) {
        return faults.apply(sizes);
    }

    /**
     * {@return the member of these sizes}
     *
     * @param sizes a value for every key that is needed or has a value otherwise
     * @throws IllegalArgumentException when there are {@link #faults}, or a value is not there
     */
    public Member make(Sizes sizes) {
        return maker.apply(sizes);
    }

    /**
     * {@return what a new one is given there: the sizes of a member that can exist, but for keys that may be left out, which are}
     *
     * @param room where it is to stand
     */
    public Sizes blank(Room room) {
        Sizes out = Sizes.NONE;
        for (Entry entry : entries) {
            out = entry.start().apply(out, room);
        }
        return out;
    }

    /** The sizes that a member of this kind is made from; the inverse of {@link #make}. */
    Sizes sizes(Member member) {
        Sizes out = Sizes.NONE.with(member.details());
        for (Entry entry : entries) {
            out = entry.written().apply(out, member);
        }
        return out;
    }

    @Override
    public String toString() {
        return word;
    }

    /** A kind about to be described; every step returns the description itself. */
    static <M extends Member> Description<M> of(String word, Class<M> type) {
        return new Description<>(word, type);
    }

    /** Gathers what a kind says of itself. Keys are told in the order in which a form asks for them. */
    static final class Description<M extends Member> {
        private final String word;
        private final Class<M> type;
        private final List<Entry> entries = new ArrayList<>();
        private String words = "";
        private String shape = "";
        private boolean narrow;

        private Description(String word, Class<M> type) {
            this.word = word;
            this.type = type;
        }

        Description<M> words(String these) {
            words = these;
            return this;
        }

        Description<M> shape(String these) {
            shape = these;
            return this;
        }

        Description<M> narrow() {
            narrow = true;
            return this;
        }

        /** The key of its length, which nearly every kind has. */
        Description<M> length() {
            return size(MemberKey.LENGTH, "Length", Member::length, Room::length);
        }

        /** A length that is needed, and what a new member starts from. */
        Description<M> size(String key, String label, Function<M, Length> of, Function<Room, Length> start) {
            return add(
                    MemberKey.needed(key, MemberKey.Type.LENGTH, label),
                    (sizes, member) -> sizes.with(key, of.apply(type.cast(member))),
                    (sizes, room) -> sizes.with(key, start.apply(room)));
        }

        /** A length that may be left out; a new member leaves it out. */
        Description<M> may(MemberKey key, Function<M, Optional<Length>> of) {
            return add(
                    key,
                    (sizes, member) -> of.apply(type.cast(member))
                            .map(length -> sizes.with(key.name(), length))
                            .orElse(sizes),
                    (sizes, room) -> sizes);
        }

        /** Points that are needed, and what a new member starts from. */
        Description<M> points(
                MemberKey key, Function<M, List<FreeCurve.Point>> of, Function<Room, List<FreeCurve.Point>> start) {
            return add(
                    key,
                    (sizes, member) -> sizes.with(of.apply(type.cast(member))),
                    (sizes, room) -> sizes.with(start.apply(room)));
        }

        private Description<M> add(
                MemberKey key, BiFunction<Sizes, Member, Sizes> written, BiFunction<Sizes, Room, Sizes> start) {
            entries.add(new Entry(key, written, start));
            return this;
        }

        /** Ends the description with what cannot exist, how one is made, and one to show. */
        MemberKind made(Function<Sizes, List<Fault>> faults, Function<Sizes, M> maker, Supplier<M> example) {
            return new MemberKind(word, new Told(words, shape, narrow, example), entries, faults, maker::apply);
        }
    }
}
