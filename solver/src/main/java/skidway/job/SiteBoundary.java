package skidway.job;

import java.util.ArrayList;
import java.util.List;
import skidway.site.Deck;
import skidway.site.Lane;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.Point;
import skidway.site.Steps;
import skidway.site.TruckStand;
import skidway.site.Wall;
import skidway.site.Yard;

/** Checks that what belongs on the site lies within its boundary. */
final class SiteBoundary {
  private static final String SITE = "the site's boundary";

  private final Inside inside;

  SiteBoundary(Outline boundary) {
    this.inside = Inside.of(boundary);
  }

  void walls(List<Read<Wall>> walls) {
    for (Read<Wall> wall : walls) {
      Wall w = wall.value();
      within(wall, "to", "wall \"" + w.id() + '"', List.of(new Segment(w.start(), w.end())));
    }
  }

  void zones(List<Read<Deck>> decks, List<Read<Yard>> yards) {
    for (Read<Deck> deck : decks) {
      Deck d = deck.value();
      within(deck, "outline", "deck \"" + d.id() + '"', OutlineCheck.sides(d.outline()));
      for (Steps s : d.steps()) {
        within(deck, "steps", "steps \"" + s.id() + '"', List.of(new Segment(s.foot(), s.top())));
      }
    }
    for (Read<Yard> yard : yards) {
      Yard y = yard.value();
      within(yard, "outline", "yard \"" + y.id() + '"', OutlineCheck.sides(y.outline()));
    }
  }

  void lanes(List<Read<Lane>> lanes) {
    for (Read<Lane> lane : lanes) {
      List<Point> line = lane.value().centreLine();
      List<Segment> parts = new ArrayList<>();
      for (int i = 1; i < line.size(); i++) {
        parts.add(new Segment(line.get(i - 1), line.get(i)));
      }
      within(lane, "line", "lane \"" + lane.value().id() + '"', parts);
    }
  }

  void truckStands(List<Read<TruckStand>> stands) {
    for (Read<TruckStand> stand : stands) {
      TruckStand t = stand.value();
      List<Segment> sides = OutlineCheck.sides(t.area().outline());
      within(stand, "centre", "truck stand \"" + t.id() + '"', sides);
    }
  }

  void machineStands(List<Read<MachineStand>> stands) {
    for (Read<MachineStand> stand : stands) {
      Point at = stand.value().at();
      String what = "machine stand \"" + stand.value().id() + '"';
      within(stand, "at", what, List.of(new Segment(at, at)));
    }
  }

  private void within(Read<?> thing, String field, String what, List<Segment> lines) {
    inside.check(thing.at().at(field), what, lines, SITE, thing.at());
  }
}
