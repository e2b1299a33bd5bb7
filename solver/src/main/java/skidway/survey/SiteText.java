package skidway.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import skidway.job.Bounds;
import skidway.job.LocatedNode;
import skidway.job.Place;
import skidway.job.Problems;
import skidway.job.SourceFile;
import skidway.job.Values;
import skidway.units.Nearest;
import skidway.units.UnitSystem;

/**
 * Reads a site told in lines, each beginning with the kind of thing it tells of. The walls come
 * first whatever their place in the file, because everything else is taped from them; then decks,
 * then what lies on them, and last what goes round everything.
 */
final class SiteText {
  /** Kinds of lines, in the order in which they are read. */
  private static final List<String> KINDS =
      List.of(
          "units",
          "name",
          "north",
          "course",
          "closing",
          "walls",
          "plan",
          "wall",
          "partition",
          "door",
          "window",
          "deck",
          "hole",
          "steps",
          "joists",
          "yard",
          "lane",
          "tree",
          "trench",
          "keep",
          "truck",
          "spot",
          "machine",
          "stand",
          "chart",
          "boundary",
          "wire");

  private final SourceFile file;
  private final Problems problems;
  private final Map<String, List<Integer>> lines = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();

  /** A line that nobody understands may be a wall, so the walls are not judged without it. */
  private boolean strayLines;

  private final Function<String, Optional<SourceFile>> drawings;

  private SiteText(
      SourceFile file, Function<String, Optional<SourceFile>> drawings, Problems problems) {
    this.file = file;
    this.drawings = drawings;
    this.problems = problems;
  }

  /**
   * What a file says.
   *
   * @param site as it goes into {@code site.json}, each part with its place in the lines
   * @param notes what was worked out and everybody should know
   * @param checks measures that show on the ground whether it is right
   */
  record Told(
      LocatedNode.Members site, UnitSystem units, List<String> notes, List<String> checks) {}

  /**
   * Reads the lines.
   *
   * @param job the units of the job, when it says them; the lines must not say others
   * @param drawings opens a drawing that a line names; empty after a problem
   * @return empty after a problem that leaves nothing to go on with
   */
  static Optional<Told> read(
      SourceFile file,
      Optional<UnitSystem> job,
      Function<String, Optional<SourceFile>> drawings,
      Problems problems) {
    SiteText text = new SiteText(file, drawings, problems);
    text.sort();
    return text.units(job).map(text::told);
  }

  /** Puts the lines to their kinds. */
  private void sort() {
    Values any = new Values(problems, UnitSystem.METRIC, false);
    int count = (int) file.text().chars().filter(c -> c == '\n').count() + 1;
    for (int number = 1; number <= count && !problems.isFull(); number++) {
      LineScanner line = new LineScanner(file, number, any);
      if (line.done()) {
        continue;
      }
      String kind = line.peek();
      if (KINDS.contains(kind)) {
        lines.computeIfAbsent(kind, k -> new ArrayList<>()).add(number);
      } else {
        strayLines = true;
        problems.add(
            line.here(),
            line.foundHere() + " at the beginning of a line" + Nearest.hint(kind, KINDS),
            "a line begins with one of " + String.join(", ", KINDS) + ", or with # for a remark",
            "correct it, or join it to the line before");
      }
    }
  }

  private Optional<UnitSystem> units(Optional<UnitSystem> job) {
    Values any = new Values(problems, UnitSystem.METRIC, false);
    List<UnitSystem> said = new ArrayList<>();
    once(
        "units",
        any,
        line -> {
          UnitSystem units = UnitLine.read(line, job);
          line.end("a line says the units alone");
          said.add(units);
        });
    if (said.isEmpty() && job.isEmpty() && !lines.containsKey("units")) {
      problems.add(
          file.whole(),
          "no line \"units\"",
          "numbers without a unit count in feet and pounds (us), or metres and kilograms (metric)",
          "add the line: units us");
    }
    return said.isEmpty() ? job : Optional.of(said.get(0));
  }

  private Told told(UnitSystem units) {
    Values values = new Values(problems, units, true);
    Thing site = new Thing(file.whole());
    site.put("format", Nodes.number(file.whole(), 1, 0));
    once("name", values, line -> site.put("name", line.name("the site's name")));
    Directions directions = north(values, site);
    once(
        "course",
        values,
        line -> site.put("course", line.quantity(Bounds.COURSE_HEIGHT).node(units)));

    WallsRead walls = walls(directions, values, units);
    Setup setup = new Setup(units, directions, walls.house());
    Draft draft = new Draft();
    walls.house().outside().ifPresent(ring -> draft.covers(ring.corners()));
    PartitionLines partitions = new PartitionLines(setup, walls.defaults(), walls.things());
    each("partition", values, partitions::partition);
    OpeningLines openings = new OpeningLines(setup);
    each("door", values, line -> openings.opening(line, "door"));
    each("window", values, line -> openings.opening(line, "window"));
    zones(setup, draft, values);
    MachineLines machine = new MachineLines(setup, draft, lines.containsKey("machine"));
    once("machine", values, machine::machine);
    each("stand", values, machine::stand);
    each("chart", values, machine::chart);
    EdgeLines edges = new EdgeLines(setup, draft);
    once("boundary", values, line -> site.put("boundary", edges.boundary(line)));
    each("wire", values, edges::wire);

    put(site, walls, openings);
    for (String list :
        List.of("decks", "yards", "lanes", "keepClears", "truckStands", "overheadLines")) {
      site.put(list, draft.list(list, file.whole()));
    }
    site.put("machine", machine.node());
    site.put("spots", draft.list("spots", file.whole()));
    List<String> checks =
        new Diagonals(values.figures()).of(List.copyOf(walls.things().keySet()), walls.house());
    return new Told(site.done(), units, List.copyOf(notes), checks);
  }

  private void zones(Setup setup, Draft draft, Values values) {
    DeckLines decks = new DeckLines(setup, draft);
    each("deck", values, decks::deck);
    each("hole", values, decks::hole);
    each("steps", values, decks::steps);
    each("joists", values, new JoistLines(setup, draft)::joists);
    GroundLines ground = new GroundLines(setup, draft);
    each("yard", values, ground::yard);
    each("lane", values, ground::lane);
    each("tree", values, ground::tree);
    each("trench", values, ground::trench);
    each("keep", values, ground::keep);
    each("truck", values, ground::truck);
    each("spot", values, new SpotLines(setup, draft)::spot);
  }

  private Directions north(Values values, Thing site) {
    double[] northDeg = {90};
    once(
        "north",
        values,
        line -> {
          Place place = line.here();
          northDeg[0] =
              line.atNumber()
                  ? line.quantity(Bounds.DIRECTION).si()
                  : 90.0
                      * line.oneOf("north on the drawing", List.of("right", "up", "left", "down"));
          line.end("a line says where north is on the drawing alone");
          site.put("north", Nodes.degrees(place, northDeg[0]));
        });
    return new Directions(northDeg[0]);
  }

  private record WallsRead(House house, WallDefaults defaults, Map<String, Thing> things) {}

  private WallsRead walls(Directions directions, Values values, UnitSystem units) {
    double[] least = {Closing.USUAL_LEAST};
    once("closing", values, line -> least[0] = UnitLine.closing(line));
    WallDefaults[] defaults = {WallDefaults.UNSAID};
    once("walls", values, line -> defaults[0] = WallDefaults.read(line));
    WallLines lines = new WallLines(directions);
    once("plan", values, line -> lines.drawn(() -> new PlanLine(drawings).read(line)));
    each("wall", values, line -> lines.wall(line));
    WallBuilder builder = new WallBuilder(defaults[0], problems, units, notes);
    House house =
        lines.sound() && !lines.read().isEmpty() && !strayLines
            ? builder.build(lines.read(), new Closing(least[0], values.figures(), problems))
            : House.unread();
    return new WallsRead(house, defaults[0], builder.things());
  }

  private void put(Thing site, WallsRead walls, OpeningLines openings) {
    List<Thing> all = new ArrayList<>(walls.things().values());
    for (Map.Entry<String, Thing> wall : walls.things().entrySet()) {
      List<Thing> inIt = openings.of(wall.getKey());
      if (!inIt.isEmpty()) {
        wall.getValue().put("openings", Draft.items(file.whole(), inIt));
      }
    }
    if (!all.isEmpty()) {
      site.put("walls", Draft.items(all.get(0).place(), all));
    }
  }

  /** Reads all lines of a kind; what is wrong in one does not keep the next from being read. */
  private void each(String kind, Values values, Consumer<LineScanner> reader) {
    for (int number : lines.getOrDefault(kind, List.of())) {
      LineScanner line = new LineScanner(file, number, values);
      line.take(kind);
      try {
        reader.accept(line);
        line.end("the line tells of one thing");
      } catch (Misread told) {
        // Its problem is among the others.
      }
    }
  }

  private void once(String kind, Values values, Consumer<LineScanner> reader) {
    List<Integer> numbers = lines.getOrDefault(kind, List.of());
    for (int number : numbers.subList(Math.min(1, numbers.size()), numbers.size())) {
      problems.add(
          file.at(number, 1),
          "a second line \"" + kind + '"',
          "the first is line " + numbers.get(0) + ", and it is said once",
          "remove one of them");
    }
    if (!numbers.isEmpty()) {
      lines.put(kind, List.of(numbers.get(0)));
      each(kind, values, reader);
    }
  }
}
