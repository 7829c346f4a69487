/**
 * Paper: the drawings set on pages at their true size. A sheet is made of the same {@link turnalike.drawing.svg.Svg} that the page shows and
 * that is written beside the PDF; only headings, joints and the order of things on a page are decided here. Only this package may use
 * PDFBox.
 */
@NullMarked
package turnalike.sheets;

import org.jspecify.annotations.NullMarked;
