/** Tests distances and walks: text in, text out, and independent oracles. */
@NullMarked
package skidway.geometry;

import org.jspecify.annotations.NullMarked;
