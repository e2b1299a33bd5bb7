/**
 * The question and the answer, frozen: what is asked of the planner ({@link skidway.plan.Task}) and
 * what it says ({@link skidway.plan.Plan}). Records only; nothing here searches or judges.
 */
@NullMarked
package skidway.plan;

import org.jspecify.annotations.NullMarked;
