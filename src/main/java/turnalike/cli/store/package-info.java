/** The commands on kept jobs: keep, log, undo, redo, history and give, and those on a whole store, check and move. */
@NullMarked
package turnalike.cli.store;

import org.jspecify.annotations.NullMarked;
