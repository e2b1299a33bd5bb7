/** Drives the commands in-process, as a shell would. */
@NullMarked
package skidway.cli;

import org.jspecify.annotations.NullMarked;
