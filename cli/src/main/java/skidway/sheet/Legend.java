package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import skidway.site.KeepClear;
import skidway.site.Site;
import skidway.site.Starter;
import skidway.site.WallOpening;
import skidway.timber.Load;

/** Explains the signs that are on a map, and only those. */
final class Legend {
  private Legend() {}

  static List<PanelItem> of(MapView view) {
    List<PanelItem> all = new ArrayList<>();
    List<StackView> stacks = view.stacks();
    loads(view, all);
    if (view.zone().isPresent() && !stacks.isEmpty()) {
      all.add(
          LegendEntry.of("stack from the side, tier 1 lowest; weighs at most", LegendSigns::card));
    }
    if (!stacks.isEmpty()) {
      all.add(LegendEntry.of("spot's code, on the stack", LegendSigns::stack));
      all.add(LegendEntry.of("open side: stand here to take pieces", LegendSigns::openSide));
    }
    if (stacks.stream().anyMatch(StackView::rack)) {
      all.add(LegendEntry.of("rack: short pieces on end", LegendSigns::rack));
    }
    if (!view.waiting().isEmpty()) {
      all.add(LegendEntry.of("set down here for now, then lifted on", LegendSigns::waiting));
    }
    site(view, all);
    if (!view.corners().isEmpty()) {
      all.add(LegendEntry.of("corner to tape from, see set-out", LegendSigns::tapeCorner));
    }
    if (!view.besides().isEmpty()) {
      all.add(LegendEntry.of("edge of another deck, yard, stack", LegendSigns::besides));
    }
    return all;
  }

  private static void loads(MapView view, List<PanelItem> all) {
    List<Load> loads = view.task().delivery().loads();
    for (int i = 0; i < loads.size(); i++) {
      int turn = i + 1;
      if (view.stacks().stream()
          .anyMatch(s -> s.tiers().stream().anyMatch(t -> t.loadTurn() == turn))) {
        String words =
            LoadNames.of(loads.get(i)) + (isHere(view, loads.get(i)) ? ", came " : ", comes ");
        all.add(
            LegendEntry.of(
                words + Moments.shortly(loads.get(i).arrival()),
                (drawing, box) -> Swatch.draw(drawing, turn, box)));
      }
    }
  }

  /** Whether something of a load lay on site before the plan began. */
  private static boolean isHere(MapView view, Load load) {
    return view.task().delivery().bundles().stream()
        .filter(bundle -> bundle.loadId().equals(load.id()))
        .anyMatch(bundle -> view.task().start().lies(bundle.id()));
  }

  private static void site(MapView view, List<PanelItem> all) {
    Site site = view.task().site();
    List<WallOpening> openings = site.walls().stream().flatMap(w -> w.openings().stream()).toList();
    if (site.walls().stream().anyMatch(w -> w.starter() == Starter.FULL)) {
      all.add(LegendEntry.of("wall, starts with a full course", LegendSigns::fullWall));
    }
    if (site.walls().stream().anyMatch(w -> w.starter() == Starter.HALF)) {
      all.add(LegendEntry.of("wall, starts with a half course", LegendSigns::halfWall));
    }
    if (openings.stream().anyMatch(WallOpening::door)) {
      all.add(LegendEntry.of("door", LegendSigns::door));
    }
    if (openings.stream().anyMatch(o -> !o.door())) {
      all.add(LegendEntry.of("window", LegendSigns::window));
    }
    if (site.decks().stream().anyMatch(d -> !d.openings().isEmpty())) {
      all.add(LegendEntry.of("floor opening: fall hazard", LegendSigns::opening));
    }
    if (site.keepClears().stream().anyMatch(k -> !k.excavation())) {
      all.add(LegendEntry.of("keep clear, with its margin", LegendSigns::keepClear));
    }
    if (site.keepClears().stream().anyMatch(KeepClear::excavation)) {
      all.add(LegendEntry.of("excavation: no load beside", LegendSigns::excavation));
    }
    if (site.overheadLines().stream().anyMatch(view::shows)) {
      all.add(LegendEntry.of("overhead line: keep clear, loads too", LegendSigns::overheadLine));
    }
    site.overheadLines().stream()
        .filter(line -> !view.shows(line))
        .map(line -> "overhead line " + line.id() + ", beyond the edge of this drawing")
        .forEach(words -> all.add(LegendEntry.of(words, LegendSigns::overheadLine)));
    if (!site.lanes().isEmpty()) {
      all.add(LegendEntry.of("lane: nothing stands here", LegendSigns::lane));
    }
    if (!site.yards().isEmpty()) {
      all.add(LegendEntry.of("yard, with its allowed load", LegendSigns::yard));
    }
    if (!site.decks().isEmpty()) {
      all.add(LegendEntry.of("deck, with its allowed load", LegendSigns::deck));
    }
    if (site.decks().stream().anyMatch(d -> d.joists().isPresent())) {
      all.add(LegendEntry.of("joists and what they lie on", LegendSigns::joists));
    }
    if (!view.machineStands().isEmpty()) {
      all.add(LegendEntry.of("machine stands here", LegendSigns::machine));
    }
  }
}
