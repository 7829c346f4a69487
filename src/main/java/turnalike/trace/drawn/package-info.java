/**
 * Drawn outlines: the text of an SVG or DXF file in, an {@link turnalike.trace.Original} out. Lines are kept as places close together, curves
 * cut so finely that nothing shows. May use {@code units} and the words of {@link turnalike.trace}.
 */
@NullMarked
package turnalike.trace.drawn;

import org.jspecify.annotations.NullMarked;
