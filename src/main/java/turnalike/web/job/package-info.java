/** One job on one page: the spindle as it lies on the lathe, what is selected in it, and everything that follows. */
@NullMarked
package turnalike.web.job;

import org.jspecify.annotations.NullMarked;
