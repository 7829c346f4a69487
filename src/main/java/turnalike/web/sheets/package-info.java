/** What one job prints, to be looked at and taken away. */
@NullMarked
package turnalike.web.sheets;

import org.jspecify.annotations.NullMarked;
