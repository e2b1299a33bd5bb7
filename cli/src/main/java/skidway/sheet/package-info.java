/**
 * What people print and hold: the stack map and the unloading sheet, in one page that needs no
 * network. Reads the task and the plan and draws; it decides and judges nothing. Lengths on paper
 * are millimetres, lengths on site metres; {@link skidway.sheet.Frame} goes from one to the other.
 * Open {@link skidway.sheet.Packet} first. Imports the records of site, timber, rules, plan, limits
 * and units only.
 */
@NullMarked
package skidway.sheet;

import org.jspecify.annotations.NullMarked;
