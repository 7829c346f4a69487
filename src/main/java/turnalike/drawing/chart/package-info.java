/** Figures over an axis: control charts, and what a better balance costs. */
@NullMarked
package turnalike.drawing.chart;

import org.jspecify.annotations.NullMarked;
