package skidway.layout;

import java.util.ArrayList;
import java.util.List;
import skidway.rules.Setting;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.Footprint;
import skidway.site.KeepClear;
import skidway.site.Lane;
import skidway.site.OverheadLine;
import skidway.site.Point;
import skidway.site.Site;

/**
 * Something stacks keep off, as far as it helps to find places snug against it. Whether a place is
 * legal is asked of {@link LegalSpots} afterwards.
 */
record Obstacle(List<Point> corners, double marginM) {
  static List<Obstacle> all(Site site, Settings settings) {
    List<Obstacle> all = new ArrayList<>();
    double stripM = settings.get(Setting.OPEN_STRIP);
    double setbackM = settings.get(Setting.OPENING_SETBACK);
    for (Deck deck : site.decks()) {
      deck.openings().forEach(o -> all.add(new Obstacle(o.outline().corners(), setbackM)));
      // Stacks in the yard keep off a deck, and so do their open strips.
      all.add(new Obstacle(deck.outline().corners(), 0));
      all.add(new Obstacle(deck.outline().corners(), stripM));
    }
    for (KeepClear keepClear : site.keepClears()) {
      double marginM =
          keepClear.excavation()
              ? ExcavationSetback.metres(keepClear, settings)
              : keepClear.marginM();
      all.add(new Obstacle(keepClear.outline().corners(), marginM));
    }
    for (OverheadLine line : site.overheadLines()) {
      all.add(new Obstacle(List.of(line.from(), line.to()), LineClearance.metres(line, settings)));
    }
    site.walls().forEach(w -> all.add(of(WorkingStrip.along(w, settings))));
    site.truckStands().forEach(t -> all.add(of(t.area())));
    double roomM = settings.get(Setting.MACHINE_STAND_ROOM);
    site.machine()
        .stands()
        .forEach(stand -> all.add(new Obstacle(List.of(stand.at(), stand.at()), roomM)));
    site.lanes().forEach(lane -> all.addAll(of(lane)));
    return all;
  }

  private static Obstacle of(Footprint footprint) {
    return new Obstacle(footprint.outline().corners(), 0);
  }

  private static List<Obstacle> of(Lane lane) {
    List<Obstacle> legs = new ArrayList<>();
    for (int i = 0; i + 1 < lane.centreLine().size(); i++) {
      legs.add(new Obstacle(lane.centreLine().subList(i, i + 2), lane.widthM() / 2));
    }
    return legs;
  }
}
