/** Events folded one by one, and at random against a simple count. */
@NullMarked
package skidway.progress;

import org.jspecify.annotations.NullMarked;
