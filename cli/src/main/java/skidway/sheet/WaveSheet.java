package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import skidway.plan.Brought;
import skidway.plan.PileTrip;
import skidway.plan.Plan;
import skidway.plan.Stack;
import skidway.plan.Task;
import skidway.plan.TimberPile;
import skidway.plan.Wave;
import skidway.plan.WavePlan;
import skidway.plan.Way;
import skidway.site.Spot;
import skidway.timber.Bundle;
import skidway.units.Figures;

/**
 * Writes a page for each wave: where its piles are, what to carry there from which bundle in which
 * order, and where the pieces of its courses are then taken from.
 */
public final class WaveSheet {
  private static final List<String> TEXTS =
      List.of(
          "Lay what is listed first lowest, layer after layer, on bearers and with stickers between"
              + " layers. Timbers lie still before the next layer comes; nothing leans on a wall.",
          "Keep the strip between pile and wall free for people, ladders and scaffold. Offcuts go out"
              + " of it, not under it.",
          "A pile near a deck's edge stays lower than the wall beside it. Do not heap more on it than"
              + " is listed: what the floor carries is its designer's to say.");

  private static final String BANDS =
      "Cut bands standing to the side: they spring. Wedge what stays in an opened bundle.";

  private static final String NO_BANDS =
      "Timbers lie loose, without bands: take them from the top, and wedge what stays.";

  private static final String GOVERNS =
      "The floor's designer and the machine's own chart govern; nobody stands under a load.";

  private static final String GOVERNS_BY_HAND = "The floor's designer and local codes govern.";

  private final Markup page;
  private final Task task;
  private final Plan plan;
  private final WavePlan waves;
  private final RunningHead head;
  private final Map<String, PullLine> lines = new HashMap<>();

  private WaveSheet(Markup page, Task task, Plan plan, WavePlan waves) {
    this.page = page;
    this.task = task;
    this.plan = plan;
    this.waves = waves;
    head = new RunningHead(waves.jobName(), waves.revision(), waves.plan());
    PullList.of(task, plan).forEach(line -> lines.put(line.piece().mark(), line));
  }

  /** The page, for a browser and for its printer. */
  public static String html(Task task, Plan plan, WavePlan waves, PaperSize paper) {
    return new WaveSheet(new Markup(), task, plan, waves).alone(paper);
  }

  /** The same as a part of another page. */
  static void write(Markup page, Task task, Plan plan, WavePlan waves) {
    new WaveSheet(page, task, plan, waves).sections();
  }

  private void sections() {
    page.open("section", "id", "waves").leaf("h2", "Waves: before the first one").open("ul");
    TEXTS.forEach(text -> page.leaf("li", text));
    page.leaf("li", task.site().byHand() ? NO_BANDS : BANDS);
    page.close();
    if (waves.waves().isEmpty()) {
      page.leaf("p", "No wave saves time here: pull every piece straight from its bundle.");
    }
    page.close().line();
    waves.waves().forEach(this::wave);
  }

  private String alone(PaperSize paper) {
    page.open("html", "lang", "en").line().open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", "Waves of " + head.words());
    page.open("style").verbatim(PageStyle.waves(paper)).close().close().line();
    page.open("body").line().open("header").open("div", "class", "job");
    page.leaf("h1", head.jobName()).leaf("p", "Waves: what to bring to the walls, and when");
    page.close().open("p", "class", "revision").text("revision");
    page.leaf("strong", Integer.toString(head.revision()));
    page.leaf("code", Fingerprints.brief(head.fingerprint())).close().close().line();
    page.open("main").line();
    sections();
    page.close().leaf("footer", head.words()).close().close();
    return "<!DOCTYPE html>\n" + page.done() + "\n";
  }

  private void wave(Wave wave) {
    page.open("section", "class", "wave", "id", "wave-" + wave.number());
    page.leaf("h2", "Wave " + wave.number() + ": for " + courses(wave));
    page.leaf("p", when(wave) + " " + work(wave));
    maps(wave);
    carry(wave);
    courseByCourse(wave);
    String governs = task.site().byHand() ? GOVERNS_BY_HAND : GOVERNS;
    page.leaf("p", head.words() + ". " + governs, "class", "governs");
    page.close().line();
  }

  /** Each deck and yard with piles, and the stacks that stand there then. */
  private void maps(Wave wave) {
    Set<String> zones =
        wave.piles().stream().map(pile -> pile.spot().zoneId()).collect(Collectors.toSet());
    Set<String> untold = new TreeSet<>();
    page.open("div", "class", "piles");
    for (MapView view : MapView.overview(task, during(wave)).zones()) {
      if (view.zone().filter(zones::contains).isPresent()) {
        MapDrawing map = MapDrawing.narrow(view);
        page.verbatim(map.alone("Piles on " + view.zone().orElse("")));
        List<String> codes = view.spots().stream().map(Spot::id).toList();
        map.scene().untold().stream().filter(codes::contains).forEach(untold::add);
      }
    }
    page.close().line();
    if (!untold.isEmpty()) {
      page.leaf("p", "No room on the map for: " + String.join(", ", untold) + ".");
    }
  }

  private static String courses(Wave wave) {
    return wave.fromCourse() == wave.toCourse()
        ? "course " + wave.fromCourse()
        : "courses " + wave.fromCourse() + " to " + wave.toCourse();
  }

  static String when(Wave wave) {
    return wave.laidBefore() == 0
        ? "Bring it in before the first course."
        : "Bring it in when course " + (wave.fromCourse() - 1) + " lies on every wall.";
  }

  private String work(Wave wave) {
    long carried = wave.brought().stream().filter(b -> b.way() == Way.BY_HAND).count();
    List<String> work = new ArrayList<>();
    if (carried > 0) {
      work.add(Figures.counted(carried, "piece") + " by hand.");
    }
    if (!wave.trips().isEmpty()) {
      work.add(
          Figures.counted(wave.brought().size() - carried, "piece")
              + " by the machine: "
              + wave.trips().stream().map(this::trip).collect(Collectors.joining("; "))
              + ".");
    }
    int people = wave.brought().stream().mapToInt(Brought::people).max().orElse(0);
    work.add("Most people on one piece: " + people + ".");
    return String.join(" ", work);
  }

  private String trip(PileTrip trip) {
    return String.join(
        " ",
        Integer.toString(trip.marks().size()),
        "of",
        trip.bundleId(),
        "to",
        trip.pileId() + ",",
        "from stand",
        trip.standId() + ",",
        "at most",
        task.figures().mass(trip.massKg()),
        "where the chart lifts",
        task.figures().mass(trip.capacityKg()));
  }

  /** The plan as the map shows it then: what stands there, and the piles. */
  private Plan during(Wave wave) {
    List<Stack> stacks = new ArrayList<>();
    plan.stacks().stream().filter(stack -> isThere(stack, wave)).forEach(stacks::add);
    wave.piles().forEach(pile -> stacks.add(new Stack(pile.spot(), List.of())));
    return plan.standing(stacks);
  }

  /** Whether a piece is still to be laid from it. */
  private boolean isThere(Stack stack, Wave wave) {
    return stack.bundleIds().stream()
        .flatMap(id -> task.delivery().bundle(id).stream())
        .map(Bundle::pieces)
        .flatMap(List::stream)
        .map(piece -> lines.get(piece.mark()))
        .anyMatch(line -> line != null && line.turn() > wave.laidBefore());
  }

  private void carry(Wave wave) {
    SheetTable table =
        SheetTable.open(
            page,
            head,
            "pulls",
            "",
            "Piece",
            "From",
            "Tier",
            "Layer from below",
            "Bundle",
            "People",
            "Layer of the pile",
            "How");
    for (TimberPile pile : wave.piles()) {
      table.group().openHeading("wall");
      page.leaf("span", "Onto pile " + pile.id(), "class", "name");
      page.leaf("span", about(pile), "class", "about");
      table.close().close();
      page.line();
      for (int layer = 0; layer < pile.layers().size(); layer++) {
        for (String mark : pile.layers().get(layer)) {
          row(table, wave, mark, (layer + 1) + " of " + pile.layers().size());
        }
      }
    }
    table.end();
  }

  private String about(TimberPile pile) {
    return String.join(
        ", ",
        "on " + pile.spot().zoneId(),
        pile.bearers().count()
            + " bearers of "
            + task.figures().length(pile.bearers().lengthM())
            + " beneath",
        task.figures().length(pile.heightM()) + " high",
        "at most " + task.figures().mass(pile.massKg()));
  }

  private void row(SheetTable table, Wave wave, String mark, String layer) {
    Optional<PullLine> found = Optional.ofNullable(lines.get(mark));
    Optional<Brought> brought =
        wave.brought().stream().filter(b -> b.mark().equals(mark)).findFirst();
    if (found.isEmpty() || brought.isEmpty()) {
      return;
    }
    PullLine line = found.get();
    table.openRow("pull");
    table.openCell("turn").leaf("span", "", "class", "box").close();
    Markup name = table.openName("piece").text(mark);
    name.leaf("small", task.figures().length(line.piece().lengthM())).close();
    table.openCell("spot").leaf("span", line.spotCode(), "class", "plate").close();
    table.cell("tier-of", Integer.toString(line.tier()));
    int layers = line.bundle().packed().stream().mapToInt(p -> p.layer()).max().orElse(1);
    table.cell("layer", line.layer() + " of " + layers);
    table.cell("of-bundle", line.bundle().id());
    table.openCell("people").leaf("b", people(line, brought.get())).close();
    table.cell("layer", layer);
    table.cell("words", brought.get().way() == Way.BY_HAND ? "by hand" : "by machine");
    table.close();
    page.line();
  }

  private static String people(PullLine line, Brought brought) {
    return line.device() ? "device" : Integer.toString(brought.people());
  }

  /** For each course the places to take its pieces from, and those in each as their turn comes. */
  private void courseByCourse(Wave wave) {
    SheetTable table =
        SheetTable.open(page, head, "courses", "Course", "Take from here, as their turn comes");
    Map<String, String> pileOf = new HashMap<>();
    wave.brought().forEach(b -> pileOf.put(b.mark(), b.pileId()));
    for (int course = wave.fromCourse(); course <= wave.toCourse(); course++) {
      table.openRow("course");
      table.openName("name").text(Integer.toString(course)).close();
      Markup takes = table.openCell("takes");
      byPlace(course, pileOf)
          .forEach(
              (place, marks) -> {
                takes.leaf("span", place, "class", "code");
                marks.forEach(mark -> takes.text(" ").leaf("span", mark, "class", "timber"));
                takes.text(" ");
              });
      takes.close();
      table.close();
      page.line();
    }
    table.end();
  }

  private Map<String, List<String>> byPlace(int course, Map<String, String> pileOf) {
    Map<String, List<String>> byPlace = new LinkedHashMap<>();
    lines.values().stream()
        .filter(line -> line.piece().course() == course)
        .sorted(Comparator.comparingInt(PullLine::turn))
        .forEach(
            line ->
                byPlace
                    .computeIfAbsent(
                        pileOf.getOrDefault(line.piece().mark(), line.place()),
                        place -> new ArrayList<>())
                    .add(line.piece().mark()));
    return byPlace;
  }
}
