@NullMarked
package skidway.shakeout;

import org.jspecify.annotations.NullMarked;
