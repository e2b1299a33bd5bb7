/**
 * Tests of the job folder. Open {@link skidway.job.JobFolder} first: it writes a small valid folder
 * that each test then spoils.
 */
@NullMarked
package skidway.job;

import org.jspecify.annotations.NullMarked;
