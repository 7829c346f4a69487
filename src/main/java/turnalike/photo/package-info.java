/**
 * An original traced from a photograph: the picture's bytes in, a {@link turnalike.trace.Profile} out, or why none could be had.
 *
 * <p>Words: the <em>body</em> is the piece as it lies in the picture; its <em>contour</em> is where the sight rays just touch it, which on a
 * round body is not the outline through its axis; an <em>edge</em> is one of the contour's two long sides; the <em>view</em> is where the
 * camera stood and how it looked. Places in the picture are pixels of the upright picture (turned as its camera says), from its upper left
 * corner, x to the right and y downward; the middle of the first pixel is at 0.5, 0.5. The mathematics are in {@code docs/photo.md}. May use
 * {@code units}, {@code outline}, {@code trace} and {@code effort}; it alone touches BoofCV, the reader of camera data, and Java's picture
 * decoders.
 */
@NullMarked
package turnalike.photo;

import org.jspecify.annotations.NullMarked;
