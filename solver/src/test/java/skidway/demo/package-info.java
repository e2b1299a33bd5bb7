/**
 * Writes the demo jobs: cuts an invented house into numbered timbers, bundles them as a mill would
 * and lays the job folder down as text. A house is described in whole ticks (inches or
 * millimetres), so that every figure is exact. Open {@link skidway.demo.House} first.
 */
@NullMarked
package skidway.demo;

import org.jspecify.annotations.NullMarked;
