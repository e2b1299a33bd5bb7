/**
 * Finds the plan: which bundle goes to which spot, in what order on it, in which steps off the
 * truck. The only user of OptaPlanner and the only package with mutable state. Open {@link
 * skidway.staging.Stager} first; {@link skidway.staging.Board} is the problem in arrays, {@link
 * skidway.staging.Occupancy} a plan in the making.
 */
@NullMarked
package skidway.staging;

import org.jspecify.annotations.NullMarked;
