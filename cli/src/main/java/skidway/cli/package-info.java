/**
 * The command line: one class per command, exit codes, what is said on the screen. The only place
 * that touches standard streams or picocli. Open {@link skidway.cli.Main} first.
 */
@NullMarked
package skidway.cli;

import org.jspecify.annotations.NullMarked;
