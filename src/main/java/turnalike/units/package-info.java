/** Lengths first, then masses, angles, densities, speeds and forces: each number with its unit, read and printed as turners write them. */
@NullMarked
package turnalike.units;

import org.jspecify.annotations.NullMarked;
