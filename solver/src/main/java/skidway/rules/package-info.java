/**
 * The list of rules and of the settings that put numbers into them. No logic: whoever checks a rule
 * looks its sentence, level, unit and source up here. Open {@link skidway.rules.Rule} first.
 */
@NullMarked
package skidway.rules;

import org.jspecify.annotations.NullMarked;
