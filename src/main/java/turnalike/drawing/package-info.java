/**
 * The one drawing language: every picture of the program is an {@link turnalike.drawing.Svg} made here, used on the page, on paper and in
 * files. A picture's user unit is the millimetre, so its numbers are sizes on paper; x runs to the right and y down, as in SVG. May use
 * the levels below it and no third-party code.
 */
@NullMarked
package turnalike.drawing;

import org.jspecify.annotations.NullMarked;
