/**
 * An original copied: what was seen or measured of a piece (a {@link turnalike.trace.Profile}), and the members that explain it.
 *
 * <p>Words: a <em>profile</em> is a list of stations, each a place along the axis with the radius found there and how sure it is; a
 * <em>hidden</em> stretch is one of which nothing was seen. May use {@code units}, {@code outline} and {@code pattern}; a photograph is
 * turned into a profile by {@code photo}, one level up.
 */
@NullMarked
package turnalike.trace;

import org.jspecify.annotations.NullMarked;
