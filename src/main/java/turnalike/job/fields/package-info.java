/**
 * The keys of the job file as such: what a {@link turnalike.job.fields.Key} may hold, how a form asks for it, and how its value is taken from
 * JSON, every problem told with its place. Which keys there are is said where they belong: with the job, with each kind of frame.
 */
@NullMarked
package turnalike.job.fields;

import org.jspecify.annotations.NullMarked;
