package skidway.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import skidway.job.JobTable;
import skidway.units.Measure;
import skidway.units.Quantities;
import skidway.units.UnitSystem;
import skidway.units.UnreadableQuantity;

/**
 * Sets a list beside what the job has of its loads. A timber that is the same keeps its row with
 * all that people added to it; so does a bundle whose timbers are the same.
 */
final class Merge {
  private static final double SAME_M = 0.0005;
  private static final List<String> COMPARED =
      List.of(
          "wall",
          "course",
          "position",
          "length",
          "width",
          "height",
          "species",
          "moisture",
          "bundle",
          "mass");

  private static final Set<String> LENGTHS = Set.of("length", "width", "height");

  private final JobTable pieces;
  private final JobTable bundles;
  private final Quantities quantities;

  Merge(JobTable pieces, JobTable bundles, UnitSystem units) {
    this.pieces = pieces;
    this.bundles = bundles;
    this.quantities = new Quantities(units);
  }

  /**
   * The job's tables with the list in them.
   *
   * @param keptPieces rows of other loads, which stand before those of the list
   * @param gone bundles and marks that the list takes away
   * @param differences a line for each timber that is added, removed or changed; none if the job
   *     had nothing of the loads
   */
  record Merged(
      JobTable pieces,
      JobTable bundles,
      int keptPieces,
      int keptBundles,
      boolean loadsWereThere,
      Set<String> gone,
      List<String> differences) {}

  Merged with(List<BundleRows.NewBundle> fresh) {
    Set<String> loads = new HashSet<>();
    fresh.forEach(b -> loads.add(b.fields().getOrDefault("load", "")));
    Map<String, Map<String, String>> oldBundles = new LinkedHashMap<>();
    for (List<String> row : bundles.rows()) {
      if (loads.contains(bundles.cell(row, "load"))) {
        oldBundles.put(bundles.cell(row, "bundle"), bundles.values(row));
      }
    }
    Map<String, Map<String, String>> oldPieces = new LinkedHashMap<>();
    for (List<String> row : pieces.rows()) {
      if (oldBundles.containsKey(pieces.cell(row, "bundle"))) {
        oldPieces.put(pieces.cell(row, "mark"), pieces.values(row));
      }
    }
    List<String> differences = new ArrayList<>();
    List<Map<String, String>> pieceRows = new ArrayList<>();
    List<Map<String, String>> bundleRows = new ArrayList<>();
    Map<String, Map<String, String>> gone = new LinkedHashMap<>(oldPieces);
    Map<String, Integer> oldSizes = new HashMap<>();
    oldPieces.values().forEach(p -> oldSizes.merge(p.getOrDefault("bundle", ""), 1, Integer::sum));
    for (BundleRows.NewBundle bundle : fresh) {
      boolean same = oldSizes.getOrDefault(bundle.id(), 0) == bundle.pieces().size();
      List<Map<String, String>> rows = new ArrayList<>();
      for (NewPiece piece : bundle.pieces()) {
        Map<String, String> old = gone.remove(piece.field("mark"));
        List<String> changes = old == null ? List.of() : changes(old, piece);
        if (old == null) {
          differences.add("+ " + piece.field("mark") + " in bundle " + bundle.id());
        } else if (!changes.isEmpty()) {
          differences.add("~ " + piece.field("mark") + ": " + String.join(", ", changes));
        }
        boolean kept = old != null && changes.isEmpty();
        same &= kept;
        rows.add(kept ? old : withOwn(pieces, old, piece.fields()));
      }
      Map<String, String> old = oldBundles.get(bundle.id());
      boolean keep = same && old != null;
      bundleRows.add(keep ? old : withOwn(bundles, old, bundle.fields()));
      for (int i = 0; i < rows.size(); i++) {
        // A bundle packed anew has new layers, its unchanged timbers too.
        String layer = bundle.pieces().get(i).field("layer");
        pieceRows.add(keep ? rows.get(i) : withLayer(rows.get(i), layer));
      }
    }
    gone.keySet().forEach(mark -> differences.add("- " + mark));
    Set<String> takenAway = new LinkedHashSet<>(gone.keySet());
    takenAway.addAll(oldBundles.keySet());
    fresh.forEach(b -> takenAway.remove(b.id()));
    JobTable otherPieces = pieces.keeping(r -> !oldBundles.containsKey(pieces.cell(r, "bundle")));
    JobTable otherBundles =
        bundles.keeping(r -> !oldBundles.containsKey(bundles.cell(r, "bundle")));
    return new Merged(
        otherPieces.with(pieceRows),
        otherBundles.with(bundleRows),
        otherPieces.rows().size(),
        otherBundles.rows().size(),
        !oldPieces.isEmpty(),
        takenAway,
        oldPieces.isEmpty() ? List.of() : differences);
  }

  private static Map<String, String> withLayer(Map<String, String> row, String layer) {
    if (layer.equals(row.get("layer"))) {
      return row;
    }
    Map<String, String> layered = new LinkedHashMap<>(row);
    layered.put("layer", layer);
    return layered;
  }

  /** A changed row keeps what people wrote into columns of their own. */
  private static Map<String, String> withOwn(
      JobTable table, @Nullable Map<String, String> old, Map<String, String> fresh) {
    if (old == null) {
      return fresh;
    }
    Map<String, String> all = new LinkedHashMap<>(fresh);
    all.putAll(table.own(old));
    return all;
  }

  /** What a list changes of a timber; fields that it does not have do not count. */
  private List<String> changes(Map<String, String> old, NewPiece piece) {
    List<String> changes = new ArrayList<>();
    for (String field : COMPARED) {
      String is = piece.field(field);
      String was = old.getOrDefault(field, "");
      boolean told = !is.isEmpty() || (!field.equals("mass") && !was.isEmpty());
      if (told && !is.equals(was) && !(LENGTHS.contains(field) && sameLength(is, was))) {
        changes.add(field + " " + (was.isEmpty() ? "none" : was) + " to " + is);
      }
    }
    return changes;
  }

  private boolean sameLength(String a, String b) {
    try {
      return Math.abs(quantities.read(Measure.LENGTH, a) - quantities.read(Measure.LENGTH, b))
          < SAME_M;
    } catch (UnreadableQuantity e) {
      return false; // what the job's table has there was never a length, so it changes
    }
  }
}
