/** The command that serves the page; {@link turnalike.cli.page.PageServer} is the page as the command line knows it. */
@NullMarked
package turnalike.cli.page;

import org.jspecify.annotations.NullMarked;
