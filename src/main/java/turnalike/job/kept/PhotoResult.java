package turnalike.job.kept;

/**
 * What was read from one photograph, kept as the reading printed it.
 *
 * @param name the photograph's name; not blank, one line
 * @param json one JSON object, on one line as {@link #of} makes it
 */
public record PhotoResult(String name, String json) {
    public PhotoResult {
        if (name.isBlank() || name.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("a photograph's name is one line of text, was '%s'".formatted(name));
        }
        if (!KeptJson.line(KeptJson.object(json)).equals(json)) {
            throw new IllegalArgumentException("a photograph's result is one JSON object on one line");
        }
    }

    /**
     * {@return the result with its JSON, however that is spaced; {@link IllegalArgumentException} when it is no JSON object}
     *
     * @param name the photograph's; not blank, one line
     * @param json one JSON object
     */
    public static PhotoResult of(String name, String json) {
        return new PhotoResult(name, KeptJson.line(KeptJson.object(json)));
    }
}
