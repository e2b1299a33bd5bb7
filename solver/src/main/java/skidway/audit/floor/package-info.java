/**
 * The audit's own floor: which joist gets what of a stack, and what that does to it by the statics
 * of a simple span. Written for the audit alone so that a fault in the sums that plans are made
 * with cannot hide here. Open {@link skidway.audit.floor.JoistField} first.
 */
@NullMarked
package skidway.audit.floor;

import org.jspecify.annotations.NullMarked;
