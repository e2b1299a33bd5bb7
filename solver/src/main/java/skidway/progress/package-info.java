/**
 * What happened on site and what it comes to: {@link skidway.progress.Event}s are recorded one
 * after the other and never changed; {@link skidway.progress.Progress} is their fold over a task
 * and its newest plan, and says what contradicts what. Pure: no files, no clock.
 */
@NullMarked
package skidway.progress;

import org.jspecify.annotations.NullMarked;
