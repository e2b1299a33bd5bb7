package skidway.job;

import java.util.List;
import java.util.Optional;
import skidway.rules.Settings;
import skidway.site.Deck;
import skidway.site.KeepClear;
import skidway.site.Lane;
import skidway.site.Machine;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Site;
import skidway.site.Spot;
import skidway.site.TruckStand;
import skidway.site.Wall;
import skidway.site.Yard;

/** Reads {@code site.json}. */
final class SiteReader {
  static final String FILE = "site.json";

  private final Problems problems;
  private final Ids walls;
  private final Ids truckStands;
  private final Settings settings;

  /**
   * The ids found are left with {@code walls} and {@code truckStands}, for the other files.
   *
   * @param settings in force, which what the site says must not contradict
   */
  SiteReader(Problems problems, Ids walls, Ids truckStands, Settings settings) {
    this.problems = problems;
    this.walls = walls;
    this.truckStands = truckStands;
    this.settings = settings;
  }

  /** The site; empty after a problem. */
  Optional<Site> read(Optional<Fields> file) {
    if (file.isEmpty()) {
      walls.incomplete();
      truckStands.incomplete();
    }
    return file.flatMap(this::site);
  }

  private Optional<Site> site(Fields f) {
    Ids zoneIds = new Ids("deck or yard", problems);
    ZoneReader zones = new ZoneReader(zoneIds, problems);
    Ids laneIds = new Ids("lane", problems);
    GroundReader ground = new GroundReader(laneIds, truckStands, problems);
    OverheadLineReader lineReader = new OverheadLineReader(problems, settings);
    WallReader wallReader = new WallReader(problems, walls);
    SpotReader spotReader = new SpotReader(zoneIds, problems);

    Format.check(f);
    String name = Plain.line(f, "name");
    double northDeg = f.optional("north", Bounds.DIRECTION).orElse(90);
    double courseM = f.quantity("course", Bounds.COURSE_HEIGHT);
    int beforeBoundary = problems.count();
    Outline boundary = OutlineCheck.simple(f, "boundary");
    boolean bounded = problems.count() == beforeBoundary;
    List<Read<Wall>> wallsRead = f.objects("walls", 1, walls, wallReader::wall);
    List<Read<Deck>> decks = f.optionalObjects("decks", zoneIds, zones::deck);
    List<Read<Yard>> yards = f.optionalObjects("yards", zoneIds, zones::yard);
    List<Read<Lane>> lanes = ground.lanes(f);
    List<Read<KeepClear>> keepClears = ground.keepClears(f);
    List<Read<TruckStand>> stands = ground.truckStands(f);
    List<Read<OverheadLine>> lines = lineReader.lines(f);
    Optional<MachineReader.Found> machine =
        f.has("machine") ? new MachineReader(laneIds, problems).machine(f) : Optional.empty();
    List<Read<Spot>> spots = f.optionalObjects("spots", spotReader.ids(), spotReader::spot);

    if (decks.isEmpty() && yards.isEmpty() && !f.has("decks") && !f.has("yards")) {
      f.report(
          f.at("decks"),
          "a site without decks and yards",
          "stacks stand on a deck or a yard",
          "add \"yards\" or \"decks\"");
    }
    DeckChecks.apart("deck", decks);
    DeckChecks.apart("yard", yards);
    WallRing.check(f, wallsRead);
    if (bounded) {
      SiteBoundary within = new SiteBoundary(boundary);
      within.walls(wallsRead);
      within.zones(decks, yards);
      within.lanes(lanes);
      within.truckStands(stands);
      machine.ifPresent(m -> within.machineStands(m.stands()));
    }
    return f.finish(
        () ->
            new Site(
                name,
                boundary,
                northDeg,
                courseM,
                Read.values(wallsRead),
                Read.values(decks),
                Read.values(yards),
                Read.values(lanes),
                Read.values(keepClears),
                Read.values(stands),
                Read.values(lines),
                machine.map(MachineReader.Found::machine).orElse(Machine.NONE),
                Read.values(spots)));
  }
}
