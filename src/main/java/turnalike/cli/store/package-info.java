/** The commands on kept jobs: keep, log, undo, redo, history, give and check. */
@NullMarked
package turnalike.cli.store;

import org.jspecify.annotations.NullMarked;
