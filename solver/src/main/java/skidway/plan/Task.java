package skidway.plan;

import skidway.erection.ErectionRate;
import skidway.erection.Schedule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.timber.Delivery;
import skidway.units.Figures;

/**
 * The question: this delivery, onto this site, under these settings.
 *
 * @param schedule when the walls go up; the plan does not depend on it
 * @param figures how sentences and sheets of this job write quantities
 */
public record Task(
    String jobName,
    Site site,
    Delivery delivery,
    Settings settings,
    Schedule schedule,
    Figures figures) {

  /** On a job that says nothing of its schedule. */
  public Task(String jobName, Site site, Delivery delivery, Settings settings, Figures figures) {
    this(jobName, site, delivery, settings, usual(delivery, settings), figures);
  }

  private static Schedule usual(Delivery delivery, Settings settings) {
    return Schedule.usual(
        delivery.loads(), ErectionRate.piecesADay(settings.get(Setting.ERECTION_RATE)));
  }
}
