package skidway.audit;

import java.util.ArrayList;
import java.util.List;
import skidway.audit.walk.PathFlood;
import skidway.audit.walk.ShutPath;
import skidway.rules.Rule;
import skidway.rules.Setting;
import skidway.site.Spot;

/** Checks that people still get everywhere on foot with all stacks in place. */
final class PathRules {
  private final Scene scene;
  private final Ledger ledger;

  PathRules(Scene scene, Ledger ledger) {
    this.scene = scene;
    this.ledger = ledger;
  }

  /** What the site itself leaves unchecked or shut. */
  List<String> check() {
    if (scene.task().site().truckStands().isEmpty()) {
      return List.of("Not checked: open paths; needs a truck stand to start from.");
    }
    PathFlood flood = new PathFlood(scene.task());
    if (!flood.hasStart()) {
      return List.of(
          "Not checked: open paths; needs room for people beside the first truck stand.");
    }
    List<Spot> used = scene.stackSpots();
    List<ShutPath> shut = flood.shut(used);
    shut.forEach(this::pathsOpen);
    if (shut.isEmpty()) {
      tightestWay(used);
    }
    List<String> remarks = new ArrayList<>();
    if (flood.isCoarse()) {
      remarks.add("Open paths were checked roughly: the site is too large for the fine grid.");
    }
    for (String place : flood.shutOnEmptySite(used)) {
      remarks.add("Nobody gets to " + place + ", not even with no stack on the site.");
    }
    return remarks;
  }

  private void tightestWay(List<Spot> used) {
    WidestWay widest = WidestWay.of(scene.task(), used);
    double limitM = scene.setting(Setting.WALK_WIDTH);
    ledger.least(Rule.PATHS_OPEN, widest.place(), widest.widthM(), limitM, width -> width);
  }

  private void pathsOpen(ShutPath path) {
    double widthM = scene.setting(Setting.WALK_WIDTH);
    ledger.broken(
        Rule.PATHS_OPEN,
        path.id(),
        0,
        widthM,
        "No way "
            + scene.task().figures().length(widthM)
            + " wide leads to "
            + path.name()
            + ": stacks on "
            + String.join(", ", path.spotIds())
            + " shut it.");
  }
}
