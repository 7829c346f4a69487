/**
 * The store behind {@link turnalike.job.kept.JobStore}: one SQLite file, or a PostgreSQL database that several benches share; a
 * {@code StorePlace} says which. Everything done to a job is a step that is only ever added; what stands now is kept beside it in the same
 * transaction. {@code Database} is the one seam between the rows and the two kinds. Migrations, dated backups of a file, moving a whole store,
 * and what can still be read of a damaged one. Plain JDBC, which nothing else may touch; why no library stands between is in
 * {@code docs/decisions/store-in-plain-jdbc.md}.
 */
@NullMarked
package turnalike.store;

import org.jspecify.annotations.NullMarked;
