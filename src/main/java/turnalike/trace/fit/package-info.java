/**
 * From a profile to members: which forms, how many and of what sizes explain the stations within their uncertainty. Plain numbers in
 * millimetres inside; in and out go {@link turnalike.trace.Original} and {@link turnalike.trace.TracedRun}.
 */
@NullMarked
package turnalike.trace.fit;

import org.jspecify.annotations.NullMarked;
