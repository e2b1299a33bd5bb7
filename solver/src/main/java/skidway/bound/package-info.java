/** How cheap a staging could be at best: a lower bound that holds for every plan, and its proof. */
@NullMarked
package skidway.bound;

import org.jspecify.annotations.NullMarked;
