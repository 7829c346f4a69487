/** What a newcomer needs to know, in place: the first steps on the demo, and what a member is, with a picture of each kind. */
@NullMarked
package turnalike.web.help;

import org.jspecify.annotations.NullMarked;
