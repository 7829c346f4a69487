/** The pages of an order's wood: boards in hand and how they are cut, weighed blanks, times taken and what it comes to. */
@NullMarked
package turnalike.web.wood;

import org.jspecify.annotations.NullMarked;
