/**
 * Turns a finished page (HTML with drawings in SVG) into a PDF whose letters are in the file. Knows
 * nothing of jobs and plans; the only user of the HTML-to-PDF library and of the fonts. Open {@link
 * skidway.paper.Press} first.
 */
@NullMarked
package skidway.paper;

import org.jspecify.annotations.NullMarked;
