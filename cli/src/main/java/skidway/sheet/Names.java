package skidway.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import skidway.layout.LineClearance;
import skidway.plan.Task;
import skidway.site.Deck;
import skidway.site.FloorOpening;
import skidway.site.KeepClear;
import skidway.site.Lane;
import skidway.site.MachineStand;
import skidway.site.Outline;
import skidway.site.OverheadLine;
import skidway.site.Steps;
import skidway.site.TruckStand;
import skidway.site.Yard;
import skidway.site.Zone;
import skidway.units.Figures;
import skidway.units.Measure;

/**
 * Places the words of the ground plan: machine stands, keep-clears, openings, decks, yards, lanes.
 */
final class Names {
  private static final int LINE = 18;

  /** Within a deck or yard a name that costs more than this covers what one must see. */
  private static final double CROWDED = 25;

  /** Farther from its deck or yard a name is taken for another's, mm. */
  private static final double NEAR = 8;

  private static final Type SMALL = Type.plain(2.9);
  private static final Type STRONG = Type.bold(3.2);

  private record Within(Label label, Box box, double cost) {}

  private final MapView view;
  private final Task task;
  private final Frame frame;
  private final Labels labels;
  private final List<PlacedLabel> placed = new ArrayList<>();
  private final List<String> untold = new ArrayList<>();

  Names(MapView view, Frame frame, Labels labels) {
    this.view = view;
    this.task = view.task();
    this.frame = frame;
    this.labels = labels;
  }

  /** The short ones that must stand where they belong, before anything large is placed. */
  void placeFirst() {
    for (MachineStand stand : view.machineStands()) {
      Label label = new Label(List.of(Lettering.shortened(stand.id(), LINE)), STRONG);
      around(label, Box.around(frame.at(stand.at()), 2 * Stands.DIAMOND, 2 * Stands.DIAMOND));
    }
    for (TruckStand stand : task.site().truckStands()) {
      String name = Stands.name(task, stand);
      if (!Stands.holds(name, stand, task.site().machine(), frame)) {
        Label label = new Label(Lettering.wrapped(name, LINE), STRONG);
        around(label, Box.of(shown(stand.area().outline())));
      }
    }
    for (KeepClear area : task.site().keepClears()) {
      Label label = new Label(Lettering.wrapped(reason(area), LINE), STRONG.in(Palette.KEEP_CLEAR));
      inOrAround(label, area.outline());
    }
    task.site().overheadLines().forEach(this::overheadLine);
  }

  private String reason(KeepClear area) {
    if (!area.excavation()) {
      return area.reason();
    }
    return area.depthM().isPresent()
        ? area.reason() + ", " + task.figures().length(area.depthM().getAsDouble()) + " deep"
        : area.reason() + ", depth unknown";
  }

  /** Beside the line, its voltage and how far to stay from it. */
  private void overheadLine(OverheadLine line) {
    Figures figures = task.figures();
    String volts = figures.of(Measure.VOLTAGE, line.volts());
    String clear = figures.length(LineClearance.metres(line, task.settings()));
    Label label =
        new Label(
            List.of(Lettering.shortened(line.id(), LINE), volts + ", keep " + clear),
            STRONG.in(Palette.KEEP_CLEAR));
    List<PagePoint> ends = Overhead.ends(line, task, frame);
    List<PagePoint> seen =
        ends.isEmpty() ? ends : Clip.line(ends.get(0), ends.get(1), frame.area());
    if (!seen.isEmpty()) {
      keep(
          label,
          labels.place(Candidates.along(seen.get(0), seen.get(1), label.width(), label.height())));
    }
  }

  /** The others, where there is room left. */
  void placeRest() {
    for (Deck deck : task.site().decks()) {
      for (FloorOpening opening : deck.openings()) {
        Label label = new Label(Lettering.wrapped(opening.id(), LINE), SMALL);
        inOrAround(label, opening.outline());
      }
      deck.steps().forEach(this::steps);
      zone(deck, deck.outline());
    }
    for (Yard yard : task.site().yards()) {
      zone(yard, yard.outline());
    }
    task.site().lanes().forEach(this::lane);
  }

  /** What found no room. */
  List<String> untold() {
    return untold;
  }

  List<PlacedLabel> placed() {
    return placed;
  }

  /** In two lines or one, whichever finds room within the zone; else beside it. */
  private void zone(Zone zone, Outline outline) {
    String allowed = task.figures().pressure(zone.allowedKpa());
    String name = Lettering.shortened(zone.id(), LINE);
    Type type = STRONG.in(Palette.SOFT_INK);
    List<PagePoint> polygon = shown(outline);
    Label tall = new Label(List.of(name, allowed), type);
    Label wide = new Label(List.of(name + ", " + allowed), type);
    Optional<PlacedLabel> best =
        Stream.of(tall, wide)
            .flatMap(label -> within(label, polygon).stream())
            .filter(w -> w.cost() < CROWDED)
            .min(Comparator.comparingDouble(Within::cost))
            .map(w -> PlacedLabel.on(w.label(), w.box()));
    if (best.isPresent()) {
      labels.block(best.get().box());
      placed.add(best.get());
    } else {
      around(wide, Box.of(polygon), NEAR);
    }
  }

  private Optional<Within> within(Label label, List<PagePoint> polygon) {
    return labels
        .best(Candidates.within(polygon, label.width(), label.height()), box -> 0)
        .map(c -> new Within(label, c.box(), c.cost()));
  }

  private void steps(Steps steps) {
    Label label = new Label(Lettering.wrapped(name(steps), LINE), SMALL);
    around(label, Box.of(List.of(frame.at(steps.foot()), frame.at(steps.top()))));
  }

  /** Says that it is steps: their ids may look like a spot's code. */
  private static String name(Steps steps) {
    boolean said = steps.id().toLowerCase(Locale.ROOT).contains("step");
    return said ? steps.id() : "steps " + steps.id();
  }

  private void lane(Lane lane) {
    Label label = new Label(List.of(Lettering.shortened(lane.id(), LINE)), SMALL);
    List<Candidate> candidates = new ArrayList<>();
    List<PagePoint> line = frame.at(lane.centreLine());
    for (int i = 1; i < line.size(); i++) {
      candidates.addAll(
          Candidates.along(line.get(i - 1), line.get(i), label.width(), label.height()));
    }
    keep(label, labels.place(candidates));
  }

  /** What shows of an outline, which may reach beyond the map. */
  private List<PagePoint> shown(Outline outline) {
    List<PagePoint> whole = frame.at(outline);
    List<PagePoint> clipped = Clip.polygon(whole, frame.area());
    return clipped.size() < 3 ? whole : clipped;
  }

  private void inOrAround(Label label, Outline outline) {
    List<PagePoint> polygon = shown(outline);
    Optional<Box> inside = labels.place(Candidates.central(polygon, label.width(), label.height()));
    if (inside.isPresent()) {
      keep(label, inside);
    } else {
      around(label, Box.of(polygon));
    }
  }

  private void around(Label label, Box thing) {
    around(label, thing, Double.POSITIVE_INFINITY);
  }

  private void around(Label label, Box thing, double mostMm) {
    List<Candidate> near =
        Candidates.around(thing, label.width(), label.height()).stream()
            .filter(c -> thing.grown(mostMm).overlap(c.box()) > 0)
            .toList();
    Optional<Box> box = labels.place(near);
    box.ifPresentOrElse(
        b -> placed.add(PlacedLabel.beside(label, b, thing)),
        () -> untold.add(String.join(" ", label.lines())));
  }

  private void keep(Label label, Optional<Box> box) {
    box.ifPresentOrElse(
        b -> placed.add(PlacedLabel.on(label, b)),
        () -> untold.add(String.join(" ", label.lines())));
  }
}
