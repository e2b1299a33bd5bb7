/** Tests of what puts pages into PDFs. */
@NullMarked
package skidway.paper;

import org.jspecify.annotations.NullMarked;
