/**
 * Says where stacks and racks may stand: lays out candidate spots ({@link
 * skidway.layout.SpotLayout}; open it first), tells which placement rules a spot breaks ({@link
 * skidway.layout.LegalSpots}) and which spots must not be used together ({@link
 * skidway.layout.Exclusion}). What stands on a spot is decided elsewhere. Measures with {@code
 * skidway.geometry}; imports no geometry library.
 */
@NullMarked
package skidway.layout;

import org.jspecify.annotations.NullMarked;
