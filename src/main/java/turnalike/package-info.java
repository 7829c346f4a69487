/** The program's one entrance and its wiring. */
@NullMarked
package turnalike;

import org.jspecify.annotations.NullMarked;
