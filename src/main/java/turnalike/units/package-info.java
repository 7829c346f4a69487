/** Lengths first, then masses, angles and densities: each number with its unit, read and printed as turners write them. */
@NullMarked
package turnalike.units;

import org.jspecify.annotations.NullMarked;
