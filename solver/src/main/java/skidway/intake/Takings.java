package skidway.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import skidway.job.JobTable;

/** Turns a reading into timbers in bundles of known loads, or says why it cannot. */
final class Takings {
  private final Reading reading;
  private final Trouble trouble;
  private final List<String> notes;

  Takings(Reading reading, List<String> notes) {
    this.reading = reading;
    this.trouble = reading.trouble();
    this.notes = notes;
  }

  /** The timbers, each with its load and its bundle's name in the list. */
  List<NewPiece> pieces(Optional<MarkPattern> pattern) {
    ListTable table = reading.table();
    RowReader reader = new RowReader(table, trouble, moistureInShares());
    String load = wholeLoad();
    trouble.throwIfAny();
    Places places = new Places();
    Set<String> loads = loads(load);
    takenByOthers(loads, places);
    List<NewPiece> loaded =
        new PieceRows(table, pattern, load, reader, places, trouble).read(reading.rows());
    List<NewPiece> weighed = new Weights(table, reader, notes, trouble).give(loaded);
    reader
        .filled()
        .forEach(
            (meaning, count) ->
                notes.add(
                    "Empty cells for "
                        + meaning.word()
                        + " take what stands above them: "
                        + count
                        + " rows."));
    if (places.counted() > 0) {
      notes.add(
          places.counted()
              + " positions are counted in the list's order, from the left seen from outside.");
    }
    unknownNames(weighed, "wall", new LinkedHashSet<>(reading.job().walls()));
    unknownWoods(weighed);
    return weighed;
  }

  /** Moisture as shares of one, as spreadsheets keep cells that show percent. */
  private boolean moistureInShares() {
    ListTable table = reading.table();
    if (!table.columns().containsKey(Meaning.MOISTURE)) {
      return false;
    }
    List<Cell> cells =
        reading.rows().stream()
            .map(r -> table.cell(r, Meaning.MOISTURE))
            .filter(c -> !c.empty())
            .toList();
    boolean shares =
        !cells.isEmpty()
            && cells.stream().allMatch(c -> c.number() && Double.parseDouble(c.text()) <= 1)
            && cells.stream().anyMatch(c -> Double.parseDouble(c.text()) > 0);
    if (shares) {
      notes.add("Moisture stands in the sheet as shares of one; it is taken as percent.");
    }
    return shares;
  }

  /** The one load of the whole list; empty if a column has it. */
  private String wholeLoad() {
    Set<String> inList = new LinkedHashSet<>();
    if (reading.table().has(Meaning.LOAD)) {
      reading.rows().forEach(r -> inList.add(reading.table().text(r, Meaning.LOAD)));
      inList.remove("");
    }
    JobTable known = reading.job().loads();
    Optional<String> told = reading.wishes().load();
    if (told.isPresent() && inList.size() > 1) {
      trouble.add(
          "--load "
              + told.get()
              + " and "
              + inList.size()
              + " loads in the list ("
              + String.join(", ", inList)
              + ")",
          "a list is of one load, or says of each timber which",
          "leave --load out, or say --column load=none");
    }
    if (told.isPresent()) {
      return told.get();
    }
    if (!inList.isEmpty()) {
      return "";
    }
    if (known.rows().size() == 1) {
      String only = known.cell(known.rows().get(0), "load");
      notes.add("Taken for load " + only + ", the only one of the job.");
      return only;
    }
    trouble.add("no load", "every bundle comes on a load of loads.csv", "say which with --load L1");
    return "";
  }

  private Set<String> loads(String whole) {
    Set<String> loads = new HashSet<>();
    if (whole.isEmpty()) {
      reading.rows().forEach(r -> loads.add(reading.table().text(r, Meaning.LOAD)));
    } else {
      loads.add(whole);
    }
    return loads;
  }

  /** Places that timbers of other loads have already. */
  private void takenByOthers(Set<String> loads, Places places) {
    Map<String, String> loadOf = new LinkedHashMap<>();
    JobTable bundles = reading.job().bundles();
    bundles.rows().forEach(r -> loadOf.put(bundles.cell(r, "bundle"), bundles.cell(r, "load")));
    JobTable pieces = reading.job().pieces();
    for (List<String> row : pieces.rows()) {
      String course = pieces.cell(row, "course");
      String position = pieces.cell(row, "position");
      boolean other = !loads.contains(loadOf.getOrDefault(pieces.cell(row, "bundle"), ""));
      if (other && Digits.only(course, 4) && Digits.only(position, 5)) {
        places.take(pieces.cell(row, "wall"), Integer.parseInt(course), Integer.parseInt(position));
      }
    }
  }

  private void unknownNames(List<NewPiece> pieces, String field, Set<String> known) {
    Map<String, NewPiece> unknown = new LinkedHashMap<>();
    pieces.forEach(p -> unknown.putIfAbsent(p.field(field), p));
    unknown.keySet().removeAll(known);
    if (known.isEmpty() || unknown.isEmpty()) {
      return;
    }
    trouble.add(
        reading.table().cell(unknown.values().iterator().next().row(), Meaning.WALL),
        "walls "
            + some(unknown.keySet())
            + " in the list, first in row "
            + unknown.values().iterator().next().row().number(),
        "the walls of site.json are " + some(known),
        "say what they are called there, such as --call \""
            + unknown.keySet().iterator().next()
            + "="
            + known.iterator().next()
            + "\", or correct --mark or site.json");
  }

  private void unknownWoods(List<NewPiece> pieces) {
    Map<String, List<NewPiece>> woods = new LinkedHashMap<>();
    pieces.forEach(p -> woods.computeIfAbsent(p.field("species"), s -> new ArrayList<>()).add(p));
    woods.forEach(
        (wood, of) -> {
          if (!wood.isEmpty() && !reading.job().knowsWood(wood)) {
            trouble.add(
                reading.table().cell(of.get(0).row(), Meaning.SPECIES),
                "unknown species "
                    + Trouble.quote(wood)
                    + " of "
                    + of.size()
                    + (of.size() == 1 ? " timber, in row " : " timbers, first in row ")
                    + of.get(0).row().number(),
                "species are those of the Wood Handbook that Skidway knows, and the \"woods\" of"
                    + " job.json",
                "say which it is, such as --call \""
                    + wood
                    + "=eastern white pine\", or add it to \"woods\"");
          }
        });
  }

  private static String some(Set<String> names) {
    return String.join(", ", names.stream().limit(12).toList())
        + (names.size() > 12 ? ", ..." : "");
  }
}
