/**
 * What this build of the program is: its version, what it changed for whoever used an earlier one, and the libraries it ships with under
 * their licences. Reads what was packed with the program, and one small file beside a store; knows nothing of pages or commands.
 */
@NullMarked
package turnalike.release;

import org.jspecify.annotations.NullMarked;
