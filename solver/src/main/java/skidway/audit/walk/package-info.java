/**
 * Walking, on a fine grid: whether people still get everywhere with all stacks in place, and how
 * far they carry. Independent of the exact distances that plans are made with. Open {@link
 * skidway.audit.walk.PathFlood} first.
 */
@NullMarked
package skidway.audit.walk;

import org.jspecify.annotations.NullMarked;
