package skidway.plan;

import skidway.erection.PullOrder;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.timber.Delivery;
import skidway.units.Figures;

/**
 * The question: this delivery, onto this site, under these settings.
 *
 * @param figures how sentences and sheets of this job write quantities
 * @param start what lies there already
 */
public record Task(
    String jobName, Site site, Delivery delivery, Settings settings, Figures figures, Start start) {
  /** A delivery onto an empty site. */
  public Task(String jobName, Site site, Delivery delivery, Settings settings, Figures figures) {
    this(jobName, site, delivery, settings, figures, Start.EMPTY_SITE);
  }

  /** The same question with something else there already. */
  public Task startingFrom(Start other) {
    return new Task(jobName, site, delivery, settings, figures, other);
  }

  /** The order in which the pieces are pulled. */
  public PullOrder pullOrder() {
    return PullOrder.of(site, delivery.pieces(), start.held());
  }
}
