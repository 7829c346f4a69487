package turnalike.year;

/**
 * Where the pieces will live, by its two ends of the year.
 *
 * @param dry the driest the wood comes to
 * @param damp the dampest; not drier than {@code dry}, else {@link IllegalArgumentException}
 */
public record Home(Season dry, Season damp) {
    public Home {
        if (dry.moisture().compareTo(damp.moisture()) > 0) {
            throw new IllegalArgumentException(
                    "the dry season's moisture must not exceed the damp one's, were %s and %s"
                            .formatted(dry.moisture().text(), damp.moisture().text()));
        }
    }
}
