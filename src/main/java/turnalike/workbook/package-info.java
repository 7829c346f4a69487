/**
 * Tables as spreadsheets keep them: the first sheet of a workbook (.xlsx) as the CSV that every reader of ours takes, and a CSV of ours as a
 * workbook. Only this package may use fastexcel. Bytes in, text out: no files.
 */
@NullMarked
package turnalike.workbook;

import org.jspecify.annotations.NullMarked;
