/** What this release changed, and the libraries it ships with. */
@NullMarked
package turnalike.web.news;

import org.jspecify.annotations.NullMarked;
