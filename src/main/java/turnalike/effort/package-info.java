/** How long a search may go on and what it says meanwhile. The clock stays outside: whoever holds one makes an {@link turnalike.effort.Effort}. */
@NullMarked
package turnalike.effort;

import org.jspecify.annotations.NullMarked;
