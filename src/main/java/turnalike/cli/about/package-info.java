/** What the command line tells of the program itself. */
@NullMarked
package turnalike.cli.about;

import org.jspecify.annotations.NullMarked;
