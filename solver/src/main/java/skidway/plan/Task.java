package skidway.plan;

import java.util.List;
import skidway.erection.ErectionRate;
import skidway.erection.PullOrder;
import skidway.erection.Schedule;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.timber.Bundle;
import skidway.timber.Delivery;
import skidway.timber.PackedPiece;
import skidway.timber.Piece;
import skidway.units.Figures;

/**
 * The question: this delivery, onto this site, under these settings.
 *
 * @param schedule when the walls go up; a plan counts on it only if the job states it
 * @param figures how sentences and sheets of this job write quantities
 * @param start what lies there already
 */
public record Task(
    String jobName,
    Site site,
    Delivery delivery,
    Settings settings,
    Schedule schedule,
    Figures figures,
    Start start) {

  /** A delivery onto an empty site. */
  public Task(
      String jobName,
      Site site,
      Delivery delivery,
      Settings settings,
      Schedule schedule,
      Figures figures) {
    this(jobName, site, delivery, settings, schedule, figures, Start.EMPTY_SITE);
  }

  /** The same of a job that says nothing of its schedule. */
  public Task(String jobName, Site site, Delivery delivery, Settings settings, Figures figures) {
    this(jobName, site, delivery, settings, usual(delivery, settings), figures);
  }

  private static Schedule usual(Delivery delivery, Settings settings) {
    return Schedule.usual(
        delivery.loads(), ErectionRate.piecesADay(settings.get(Setting.ERECTION_RATE)));
  }

  /** The same question with something else there already. */
  public Task startingFrom(Start other) {
    return new Task(jobName, site, delivery, settings, schedule, figures, other);
  }

  /**
   * The layer of its bundle in which a piece lies on its spot, 1 = lowest: as it was packed; but
   * people who carry a bundle off by hand begin with its top layer, so that this comes to lie
   * lowest.
   */
  public int layerOnSpot(Bundle bundle, PackedPiece packed) {
    return site.byHand() ? bundle.layers() + 1 - packed.layer() : packed.layer();
  }

  /** The pieces over which a piece of a bundle lies on its spot: all of lower layers there. */
  public List<Piece> beneathOnSpot(Bundle bundle, PackedPiece packed) {
    return site.byHand() ? bundle.above(packed) : bundle.beneath(packed);
  }

  /** The pieces that lie over a piece of a bundle on its spot: all of higher layers there. */
  public List<Piece> aboveOnSpot(Bundle bundle, PackedPiece packed) {
    return site.byHand() ? bundle.beneath(packed) : bundle.above(packed);
  }

  /**
   * Whether a bundle must stay where it lies: it is fixed there; or nothing is there to lift it
   * with, for nobody plans to carry a pile timber by timber to another spot.
   */
  public boolean staysWhereItLies(String bundleId) {
    return start.fixed().contains(bundleId) || (site.byHand() && start.lies(bundleId));
  }

  /** The order in which the pieces are pulled. */
  public PullOrder pullOrder() {
    return PullOrder.of(site, delivery.pieces(), start.held());
  }
}
