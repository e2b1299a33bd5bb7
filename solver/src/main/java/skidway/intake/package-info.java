/**
 * Takes a mill's packing list, a spreadsheet or separated values in any dialect, into the tables of
 * a job. What each column means is proposed and told; nothing is taken in silence. Open {@link
 * skidway.intake.Intake} first, then {@link skidway.intake.Columns}. The only user of the
 * spreadsheet reader.
 */
@NullMarked
package skidway.intake;

import org.jspecify.annotations.NullMarked;
