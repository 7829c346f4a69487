/**
 * The piece as other programs take it: a body to print (STL, 3MF), its outline to draw on with (SVG), and a table of its stations (CSV). What
 * cuts is {@code dxf}.
 */
@NullMarked
package turnalike.drawing.model;

import org.jspecify.annotations.NullMarked;
