/**
 * How people there write and read figures: lengths with feet and inches, pounds or kilograms.
 * Inside Skidway every quantity is SI; this package is where it comes in and goes out. Open {@link
 * skidway.units.Figures} first. Imports nothing.
 */
@NullMarked
package skidway.units;

import org.jspecify.annotations.NullMarked;
