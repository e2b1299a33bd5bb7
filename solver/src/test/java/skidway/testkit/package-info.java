/**
 * Builders with safe defaults for tests, shared with the command line's tests. A test sets only
 * what matters to it. Open {@link skidway.testkit.SiteBuilder} first.
 */
@NullMarked
package skidway.testkit;

import org.jspecify.annotations.NullMarked;
