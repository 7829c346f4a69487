/** What is printed at full size to lay wood and tools on: the marking stick, the template of the profile, the openings to set. */
@NullMarked
package turnalike.drawing.gauge;

import org.jspecify.annotations.NullMarked;
