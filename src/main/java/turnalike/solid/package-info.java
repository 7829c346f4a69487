/** What a piece weighs and where: volume, mass, balance point and inertias in closed form. Sees outlines, never members. */
@NullMarked
package turnalike.solid;

import org.jspecify.annotations.NullMarked;
