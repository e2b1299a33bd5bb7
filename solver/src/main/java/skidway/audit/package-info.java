/**
 * The independent check of any plan, also one that a person edited by hand. It recomputes
 * everything from the site's raw geometry and the plan's own statements and shares no code with the
 * scoring: of Skidway it imports the model, the rules and the plan, nothing else. Open {@link
 * skidway.audit.Audit} first; plane geometry is in {@code plane}, walking in {@code walk}, statics
 * in {@code floor}.
 */
@NullMarked
package skidway.audit;

import org.jspecify.annotations.NullMarked;
