/**
 * The place: walls, decks, yards, lanes, keep-clears, machine, spots. Plain records in metres and
 * site axes (x to the right, y up on the sheet), JDK only. Open {@link skidway.site.Site} first.
 * What is delivered onto it is in {@code skidway.timber}.
 */
@NullMarked
package skidway.site;

import org.jspecify.annotations.NullMarked;
