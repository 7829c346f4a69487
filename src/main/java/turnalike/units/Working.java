package turnalike.units;

/**
 * How a figure was found, shown wherever the figure is.
 *
 * @param figure the figure's name as the user sees it
 * @param how the formula in words or symbols, with what was put into it
 * @param source a published source by name; or {@code common practice, no source}; or {@code derived here}
 * @param sureness what is assumed and how sure the figure is
 */
public record Working(String figure, String how, String source, String sureness) {
    /** The source of what the trade does and nobody we know of has published. */
    public static final String COMMON_PRACTICE = "common practice, no source";

    /** The source of a formula worked out in this project. */
    public static final String DERIVED = "derived here";
}
