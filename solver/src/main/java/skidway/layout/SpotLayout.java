package skidway.layout;

import java.util.List;
import skidway.rules.Settings;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.timber.Delivery;

/** Lays out candidate spots. */
public final class SpotLayout {
  private SpotLayout() {}

  /**
   * The spots that a plan may use: those given with the site, as they are, or else those laid out
   * here, all of them legal.
   */
  public static List<Spot> candidates(Site site, Delivery delivery, Settings settings) {
    return site.spots().isEmpty() ? new Rows(site, settings).all(delivery) : site.spots();
  }
}
