/**
 * Tests of what is printed. Open {@link skidway.sheet.SampleHouse} for the house most of them draw.
 */
@NullMarked
package skidway.sheet;

import org.jspecify.annotations.NullMarked;
