package turnalike.job.fields;

/**
 * A key of the job file.
 *
 * @param <T> what kind of value it has
 * @param name as it is written
 * @param type what its value is
 * @param isNeeded whether its absence is an error
 * @param meaning for the docs, in a few words
 * @param leftOut what counts when it is not there, in words for the docs; empty when it is needed
 * @param field how a form asks for it
 */
public record Key<T extends KeyType>(
        String name, T type, boolean isNeeded, String meaning, String leftOut, Field field) {
    /**
     * How a form asks for a key.
     *
     * @param section the part of the form; {@link KeySection#NONE} when no form asks for it
     * @param label what it is called there
     * @param hint what stands beside the empty field
     */
    public record Field(KeySection section, String label, String hint) {}

    private static final Field UNASKED = new Field(KeySection.NONE, "", "");

    /**
     * A key that must be there, and that no form asks for.
     *
     * @param <T> what kind of value it has
     * @param name as it is written
     * @param type what its value is
     * @param meaning for the docs, in a few words
     * @return the key
     */
    public static <T extends KeyType> Key<T> needed(String name, T type, String meaning) {
        return new Key<>(name, type, true, meaning, "", UNASKED);
    }

    /**
     * A key that may be left out, and that no form asks for.
     *
     * @param <T> what kind of value it has
     * @param name as it is written
     * @param type what its value is
     * @param meaning for the docs, in a few words
     * @param leftOut what counts when it is not there, in words for the docs
     * @return the key
     */
    public static <T extends KeyType> Key<T> may(String name, T type, String meaning, String leftOut) {
        return new Key<>(name, type, false, meaning, leftOut, UNASKED);
    }

    /**
     * The same, asked for by a form.
     *
     * @param section the part of the form; within it the fields stand in the order of the keys
     * @param label what it is called there
     * @param hint what stands beside the empty field; empty for nothing
     * @return a copy that a form asks for
     */
    public Key<T> asked(KeySection section, String label, String hint) {
        return new Key<>(name, type, isNeeded, meaning, leftOut, new Field(section, label, hint));
    }
}
