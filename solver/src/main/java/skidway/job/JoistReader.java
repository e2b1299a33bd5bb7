package skidway.job;

import java.util.List;
import java.util.Optional;
import skidway.limits.LumberTable;
import skidway.site.JoistDesign;
import skidway.site.Joists;
import skidway.site.Point;

/** Reads the joists of a deck: where they lie, and what each of them can bear. */
final class JoistReader {
  private static final List<String> FLOOR_CHECKS = List.of("area", "joists");
  private static final List<String> LUMBER = List.of("species", "grade", "size");
  private static final String STRENGTH =
      "either \"live\", the load that the floor was designed for, or \"species\", \"grade\" and"
          + " \"size\" of the joists";

  private JoistReader() {}

  /** The joists with their fields; empty when there are none, and after a problem. */
  static Optional<Read<Joists>> joists(Fields deck) {
    floorCheck(deck);
    return deck.has("joists")
        ? deck.object("joists", "set of joists")
            .flatMap(f -> read(f).map(joists -> new Read<>(joists, f)))
        : Optional.empty();
  }

  /** The word says what the joists say by being there; it is held against them. */
  private static void floorCheck(Fields deck) {
    boolean given = deck.has("joists");
    int before = deck.problemCount();
    if (!deck.has("floorCheck")) {
      return;
    }
    boolean wanted = deck.choice("floorCheck", FLOOR_CHECKS) == 1;
    if (deck.problemCount() > before || wanted == given) {
      return;
    }
    deck.report(
        deck.at("floorCheck"),
        wanted ? "a check by joists without \"joists\"" : "a check by area beside \"joists\"",
        "a deck with joists is checked by them and by area, one without by area alone",
        wanted ? "add \"joists\", or write \"area\"" : "write \"joists\", or remove them");
  }

  private static Optional<Joists> read(Fields f) {
    double directionDeg = f.quantity("direction", Bounds.DIRECTION);
    double spacingM = f.quantity("spacing", Bounds.JOIST_SPACING);
    Point first = Points.point(f, "first");
    List<Point> supports = Points.line(f, "supports");
    Optional<JoistDesign> design = design(f, spacingM);
    return f.finish(
        () -> new Joists(directionDeg, spacingM, first, supports, design.orElseThrow()));
  }

  private static Optional<JoistDesign> design(Fields f, double spacingM) {
    boolean live = f.has("live");
    boolean lumber = LUMBER.stream().filter(f::has).count() > 0;
    if (live == lumber) {
      f.report(
          f.at("live"),
          live ? "joists with \"live\" and with timber" : "joists whose strength nobody said",
          STRENGTH,
          live ? "keep one of the two" : "ask the floor's designer and add it");
      return Optional.empty();
    }
    if (!live) {
      return lumber(f, spacingM);
    }
    if (f.has("dead")) {
      f.remark(
          f.at("dead"),
          "\"dead\" beside \"live\"",
          "a floor's live load comes on top of its own weight, so it is not read",
          "remove \"dead\"");
    }
    return Optional.of(new JoistDesign.LiveLoad(f.quantity("live", Bounds.LIVE_LOAD)));
  }

  private static Optional<JoistDesign> lumber(Fields f, double spacingM) {
    int before = f.problemCount();
    String species = Plain.line(f, "species");
    String grade = Plain.line(f, "grade");
    String size = Plain.line(f, "size");
    double deadKpa = f.optional("dead", Bounds.DEAD_LOAD).orElse(LumberTable.USUAL_DEAD_KPA);
    if (f.problemCount() > before) {
      return Optional.empty();
    }
    Optional<JoistDesign> lumber =
        LumberTable.find(species, grade, size, spacingM, deadKpa).map(found -> found);
    if (lumber.isEmpty()) {
      f.report(
          f.at("species"),
          "joists of " + Quote.found(species + ' ' + grade + ' ' + size),
          "known are "
              + String.join(", ", LumberTable.gradeNames())
              + " in "
              + String.join(", ", LumberTable.sizeNames()),
          "correct them, or give \"live\", the load that the floor was designed for, instead");
    }
    return lumber;
  }
}
