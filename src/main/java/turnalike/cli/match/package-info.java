/** The command that matches a set, and its set in words. */
@NullMarked
package turnalike.cli.match;

import org.jspecify.annotations.NullMarked;
