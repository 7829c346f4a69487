/**
 * What to buy and mill for a job: blanks, their allowances, the timber in them and the spares.
 *
 * <p>Words: a <b>blank</b> is what goes on the lathe, milled to its section and trimmed to its length; the <b>rough blank</b> is what
 * is sawn from the board, larger by the milling and trimming allowances; the <b>corner cut</b> turns a square blank into an octagon
 * before turning; a <b>spare</b> is a blank beyond the count, for those that go wrong.
 *
 * <p>How blanks are cut out of boards is in {@code stock.boards}. Uses {@code units} and {@code outline}; knows nothing of members or jobs.
 */
@NullMarked
package turnalike.stock;

import org.jspecify.annotations.NullMarked;
