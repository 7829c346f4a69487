/**
 * The true shape of a turned piece: radius over place along the axis, as straight lines, ellipse arcs and polynomials set end to end.
 * Mathematics is written here once per curve, so that no member, drawing or weight works it out again. Knows lengths and nothing else.
 */
@NullMarked
package turnalike.outline;

import org.jspecify.annotations.NullMarked;
