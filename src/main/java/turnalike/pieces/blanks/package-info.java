/**
 * Blanks that were weighed before they are turned: the file that carries them, what each finished piece will weigh and how sure that is,
 * and which to turn.
 *
 * <p>Words: an <em>expected</em> mass is what a blank gives by its own density and the pattern's solid; a <em>share</em> is a finished mass
 * over the expected one. Uses {@code pieces}, {@code wood}, {@code csv} and {@code units}.
 */
@NullMarked
package turnalike.pieces.blanks;

import org.jspecify.annotations.NullMarked;
