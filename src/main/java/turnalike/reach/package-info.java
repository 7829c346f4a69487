/**
 * By which addresses the page is reached where the machine's own are not enough: the operator's certificate, read from its two files, and the
 * address that a server before it is known by. Knows nothing of pages or commands.
 */
@NullMarked
package turnalike.reach;

import org.jspecify.annotations.NullMarked;
