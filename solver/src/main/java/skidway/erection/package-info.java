/**
 * How the walls go up: where each piece lies on its wall and when it is pulled. Open {@link
 * skidway.erection.PullOrder} first.
 */
@NullMarked
package skidway.erection;

import org.jspecify.annotations.NullMarked;
