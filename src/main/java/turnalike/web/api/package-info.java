/**
 * The figures for programs: what the command line answers with {@code --json}, over HTTP, of jobs that are kept. Routes and the description
 * that a program reads are made from one list of {@link turnalike.web.api.Operation}s.
 */
@NullMarked
package turnalike.web.api;

import org.jspecify.annotations.NullMarked;
