/**
 * Copying an original on the page: a photograph, a table of measured points or a drawing becomes a pattern, or is held against one. What was
 * sent and what was found of it are remembered only until it is taken, and nothing is kept before that.
 */
@NullMarked
package turnalike.web.copy;

import org.jspecify.annotations.NullMarked;
