/**
 * Tables in plain text: the cells of one that was read, with the line each stands on, and lines to be written. A cell that a spreadsheet
 * would take for a formula stays text. What the columns mean is for whoever reads them. Uses {@code units}; commons-csv stays inside.
 */
@NullMarked
package turnalike.csv;

import org.jspecify.annotations.NullMarked;
