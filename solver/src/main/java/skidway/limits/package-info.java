/**
 * What floor, machine and people can bear: pure functions with units in their names and a source in
 * their comments. Which limit is in force is not decided here but in {@code skidway.rules}. Open
 * {@link skidway.limits.AreaLoad} first; imports units, site and timber only.
 */
@NullMarked
package skidway.limits;

import org.jspecify.annotations.NullMarked;
