/**
 * The store: one SQLite file behind {@link turnalike.job.kept.JobStore}. Everything done to a job is a step that is only ever added; what
 * stands now is kept beside it in the same transaction. Migrations, dated backups, and what can still be read of a damaged file. Plain JDBC,
 * which nothing else may touch; why no library stands between is in {@code docs/decisions/store-in-plain-jdbc.md}.
 */
@NullMarked
package turnalike.store;

import org.jspecify.annotations.NullMarked;
