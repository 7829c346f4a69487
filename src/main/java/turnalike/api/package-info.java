/**
 * The program as a library: a job file's text in, figures out; and pieces in, a placed set out. Start at {@link
 * turnalike.api.SpindleOrder#read}. This package and the types of {@link turnalike.units} that it names are the promise that versions
 * keep (see docs/library.md); all other packages may change in any version.
 *
 * <p>Nothing here reads a file, asks the clock or keeps anything; every type is immutable and may be used by several threads. Lengths are
 * {@link turnalike.units.Length}, masses {@link turnalike.units.Mass}; places count along the piece from its start end.
 */
@NullMarked
package turnalike.api;

import org.jspecify.annotations.NullMarked;
