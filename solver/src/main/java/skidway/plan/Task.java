package skidway.plan;

import skidway.rules.Settings;
import skidway.site.Site;
import skidway.timber.Delivery;
import skidway.units.Figures;

/**
 * The question: this delivery, onto this site, under these settings.
 *
 * @param figures how sentences and sheets of this job write quantities
 */
public record Task(
    String jobName, Site site, Delivery delivery, Settings settings, Figures figures) {}
