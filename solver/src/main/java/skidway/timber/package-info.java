/**
 * What is delivered: species, pieces, bundles, loads, and what they weigh. Records and pure
 * functions. Open {@link skidway.timber.Delivery} first.
 */
@NullMarked
package skidway.timber;

import org.jspecify.annotations.NullMarked;
