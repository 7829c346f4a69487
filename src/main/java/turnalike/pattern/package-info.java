/**
 * The pattern: the run of members that every piece copies, with its marks, what cannot exist and what is unwise to turn. A new member
 * kind is one record here, named in {@link turnalike.pattern.Member}: it says of itself whatever the rest of the program asks.
 */
@NullMarked
package turnalike.pattern;

import org.jspecify.annotations.NullMarked;
