/**
 * The whole planner in one call: {@link skidway.Planner} puts the packages below it together.
 * Nothing else lives here.
 */
@NullMarked
package skidway;

import org.jspecify.annotations.NullMarked;
