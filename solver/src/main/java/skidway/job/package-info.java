/**
 * The job folder: reads and checks a person's files, and reads and writes plan files. Everything
 * wrong in all files is reported together, each {@link skidway.job.Problem} at its line and column.
 * Open {@link skidway.job.JobReader} first, then {@link skidway.job.PlanFiles}. The only user of
 * Jackson; files are turned into located nodes and rows here, never bound to classes.
 */
@NullMarked
package skidway.job;

import org.jspecify.annotations.NullMarked;
