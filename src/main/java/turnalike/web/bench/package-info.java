/** The view at the lathe: one cut at a time in large type, and the weighing at its end. May use everything {@code web} may. */
@NullMarked
package turnalike.web.bench;

import org.jspecify.annotations.NullMarked;
