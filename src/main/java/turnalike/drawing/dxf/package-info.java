/** The piece as a DXF file, for programs that draw and machines that cut. */
@NullMarked
package turnalike.drawing.dxf;

import org.jspecify.annotations.NullMarked;
