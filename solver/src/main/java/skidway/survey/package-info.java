/**
 * House and site told in words and tape measures ({@code site.txt}), turned into {@code site.json}:
 * walls as a traverse that is closed as surveyors do, everything else by its distance from a wall.
 * Open {@link skidway.survey.SiteSurvey} first. What a site must be is judged by {@code
 * skidway.job}; here words only become places.
 */
@NullMarked
package skidway.survey;

import org.jspecify.annotations.NullMarked;
