/**
 * How people there write and read figures: lengths with feet and inches, pounds or kilograms.
 * Inside Skidway every quantity is SI; {@link skidway.units.Quantities} is where it comes in,
 * {@link skidway.units.Figures} where it goes out. {@link skidway.units.Nearest} finds what a
 * mistyped name may have meant. Imports nothing.
 */
@NullMarked
package skidway.units;

import org.jspecify.annotations.NullMarked;
