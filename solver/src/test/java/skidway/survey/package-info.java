/** Tests of {@link skidway.survey}: sites told in words, against published surveys. */
@NullMarked
package skidway.survey;

import org.jspecify.annotations.NullMarked;
