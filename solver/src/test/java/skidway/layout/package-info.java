/** Tests where spots may stand and where they are laid out. */
@NullMarked
package skidway.layout;

import org.jspecify.annotations.NullMarked;
