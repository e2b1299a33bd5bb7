package skidway.site;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything about the place that a plan depends on.
 *
 * @param northDeg direction of north, degrees counter-clockwise from the x axis (90: north is up)
 * @param courseM height of one full course
 * @param walls counter-clockwise seen from above
 * @param machine that unloads, or {@link Machine#NONE}
 * @param spots spots given by the people there; when empty, Skidway lays spots out itself
 */
public record Site(
    String name,
    Outline boundary,
    double northDeg,
    double courseM,
    List<Wall> walls,
    List<Deck> decks,
    List<Yard> yards,
    List<Lane> lanes,
    List<KeepClear> keepClears,
    List<TruckStand> truckStands,
    List<OverheadLine> overheadLines,
    Machine machine,
    List<Spot> spots) {
  public Site {
    walls = List.copyOf(walls);
    decks = List.copyOf(decks);
    yards = List.copyOf(yards);
    lanes = List.copyOf(lanes);
    keepClears = List.copyOf(keepClears);
    truckStands = List.copyOf(truckStands);
    overheadLines = List.copyOf(overheadLines);
    spots = List.copyOf(spots);
  }

  /** A site without overhead lines. */
  public Site(
      String name,
      Outline boundary,
      double northDeg,
      double courseM,
      List<Wall> walls,
      List<Deck> decks,
      List<Yard> yards,
      List<Lane> lanes,
      List<KeepClear> keepClears,
      List<TruckStand> truckStands,
      Machine machine,
      List<Spot> spots) {
    this(
        name,
        boundary,
        northDeg,
        courseM,
        walls,
        decks,
        yards,
        lanes,
        keepClears,
        truckStands,
        List.of(),
        machine,
        spots);
  }

  /** The same site with its walls as they stand now. */
  public Site withWalls(List<Wall> now) {
    return new Site(
        name,
        boundary,
        northDeg,
        courseM,
        now,
        decks,
        yards,
        lanes,
        keepClears,
        truckStands,
        overheadLines,
        machine,
        spots);
  }

  /** Whether no machine unloads, so that every timber comes off by hand. */
  public boolean byHand() {
    return machine.isNone();
  }

  public Optional<Wall> wall(String id) {
    return walls.stream().filter(w -> w.id().equals(id)).findFirst();
  }

  /** Decks first, then yards. */
  public List<Zone> zones() {
    return Stream.<Zone>concat(decks.stream(), yards.stream()).toList();
  }

  public Optional<Zone> zone(String id) {
    return zones().stream().filter(z -> z.id().equals(id)).findFirst();
  }

  public Optional<TruckStand> truckStand(String id) {
    return truckStands.stream().filter(t -> t.id().equals(id)).findFirst();
  }
}
