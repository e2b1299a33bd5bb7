package skidway.sheet;

import java.util.List;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.Footprint;
import skidway.site.Point;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.site.Steps;
import skidway.site.Wall;
import skidway.site.WallOpening;

/** Draws the building: decks with their openings and steps, walls with doors and windows. */
final class House {
  private static final double TREAD_M = 0.28;

  private House() {}

  static void drawDecks(Drawing drawing, Site site, Frame frame) {
    drawing.open("decks");
    for (Deck deck : site.decks()) {
      drawing.polygon(
          frame.at(deck.outline()),
          "fill",
          Palette.DECK,
          "stroke",
          Palette.INK,
          "stroke-width",
          "0.25");
      JoistArt.draw(drawing, deck, frame);
      deck.openings().forEach(opening -> floorOpening(drawing, opening, frame));
      deck.steps().forEach(steps -> steps(drawing, steps, frame));
    }
    drawing.close();
  }

  static void drawWalls(Drawing drawing, Site site, Frame frame) {
    drawing.open("walls");
    for (Wall wall : site.walls()) {
      boolean full = wall.starter() == Starter.FULL;
      drawing.polygon(
          frame.at(wall.footprint().outline()),
          "data-wall",
          wall.id(),
          "fill",
          full ? Palette.INK : Palette.PAPER,
          "stroke",
          Palette.INK,
          "stroke-width",
          "0.3");
      wall.openings().forEach(opening -> wallOpening(drawing, wall, opening, frame));
    }
    drawing.close();
  }

  private static void floorOpening(Drawing drawing, FloorOpening opening, Frame frame) {
    List<PagePoint> corners = frame.at(opening.outline());
    drawing.polygon(corners, "fill", Palette.PAPER, "stroke", Palette.INK, "stroke-width", "0.45");
    if (corners.size() == 4) {
      drawing.line(corners.get(0), corners.get(2), "stroke", Palette.INK, "stroke-width", "0.2");
      drawing.line(corners.get(1), corners.get(3), "stroke", Palette.INK, "stroke-width", "0.2");
    }
  }

  private static void steps(Drawing drawing, Steps steps, Frame frame) {
    Point way = steps.top().minus(steps.foot());
    double lengthM = way.length();
    if (!(lengthM > 0) || !(steps.widthM() > 0)) {
      return;
    }
    Point side = way.times(1 / lengthM).turnedLeft().times(steps.widthM() / 2);
    int treads = (int) Math.max(2, Math.round(lengthM / TREAD_M));
    for (int i = 0; i <= treads; i++) {
      Point middle = steps.foot().plus(way.times((double) i / treads));
      drawing.line(
          frame.at(middle.minus(side)),
          frame.at(middle.plus(side)),
          "stroke",
          Palette.INK,
          "stroke-width",
          i == treads ? "0.5" : "0.25");
    }
    for (Point edge : List.of(side, side.times(-1))) {
      drawing.line(
          frame.at(steps.foot().plus(edge)),
          frame.at(steps.top().plus(edge)),
          "stroke",
          Palette.INK,
          "stroke-width",
          "0.35");
    }
  }

  private static void wallOpening(Drawing drawing, Wall wall, WallOpening opening, Frame frame) {
    Point from = wall.at(opening.fromM());
    Point to = wall.at(opening.toM());
    Footprint gap =
        new Footprint(
            wall.at((opening.fromM() + opening.toM()) / 2),
            wall.footprint().headingDeg(),
            opening.widthM(),
            wall.thicknessM());
    drawing.polygon(
        frame.at(gap.outline()),
        "fill",
        opening.door() ? Palette.DECK : Palette.PAPER,
        "stroke",
        opening.door() ? Palette.DECK : Palette.INK,
        "stroke-width",
        opening.door() ? "0.4" : "0.3");
    if (opening.door()) {
      Point half = wall.inward().times(wall.thicknessM() * 0.9);
      for (Point jamb : List.of(from, to)) {
        drawing.line(
            frame.at(jamb.plus(half)),
            frame.at(jamb.minus(half)),
            "stroke",
            Palette.INK,
            "stroke-width",
            "0.45");
      }
    } else {
      drawing.line(frame.at(from), frame.at(to), "stroke", Palette.INK, "stroke-width", "0.25");
    }
  }
}
