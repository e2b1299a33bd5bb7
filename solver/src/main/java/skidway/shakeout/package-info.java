/**
 * Opens the bundles of a plan: which pieces to bring in which wave onto piles by the walls, and
 * which to pull straight from their bundles. Open {@link skidway.shakeout.Waves} first. What
 * bundles cost is {@code staging}'s to say; nothing here moves a bundle.
 */
@NullMarked
package skidway.shakeout;

import org.jspecify.annotations.NullMarked;
