/**
 * The one drawing language: every picture is an {@link turnalike.drawing.svg.Svg} made of the shapes and letters here. A picture's user
 * unit is the millimetre, so its numbers are sizes on paper; x runs to the right and y down, as in SVG.
 */
@NullMarked
package turnalike.drawing.svg;

import org.jspecify.annotations.NullMarked;
