package skidway.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import skidway.job.JobTable;
import skidway.units.UnitSystem;

/**
 * Puts timbers into bundles: those of the list, or so many timbers each. A bundle that the job has
 * already of the same load keeps what people wrote about it, if its timbers are the same.
 */
final class BundleRows {
  private final JobTable known;
  private final BundleSizes sizes;
  private final List<String> notes;
  private final Trouble trouble;

  /** Which load has a name, of those of this list. */
  private final Map<String, String> named = new HashMap<>();

  BundleRows(JobTable known, UnitSystem units, List<String> notes, Trouble trouble) {
    this.known = known;
    this.sizes = new BundleSizes(units);
    this.notes = notes;
    this.trouble = trouble;
  }

  /**
   * One bundle with its timbers.
   *
   * @param fields as {@code bundles.csv} has them; sizes are worked out
   */
  record NewBundle(Map<String, String> fields, List<NewPiece> pieces) {
    String id() {
      return fields.getOrDefault("bundle", "");
    }
  }

  /** The bundles in the order of the list, which counts as the order in which they come off. */
  List<NewBundle> of(List<NewPiece> pieces, OptionalInt bundleSize) {
    Map<String, List<NewPiece>> groups = new LinkedHashMap<>();
    Map<String, Integer> perLoad = new HashMap<>();
    for (NewPiece piece : pieces) {
      String load = piece.load();
      String name = piece.field("bundle");
      if (name.isEmpty() && bundleSize.isPresent()) {
        int number = perLoad.merge(load, 1, Integer::sum);
        int bundle = (number - 1) / bundleSize.getAsInt() + 1;
        name = String.format(Locale.ROOT, "%s-B%02d", load, bundle);
      }
      groups
          .computeIfAbsent(load + "\n" + name, g -> new ArrayList<>())
          .add(piece.with("bundle", name));
    }
    List<NewBundle> bundles = new ArrayList<>();
    Map<String, Integer> turns = new HashMap<>();
    boolean counted = false;
    for (List<NewPiece> group : groups.values()) {
      NewPiece first = group.get(0);
      if (first.field("bundle").isEmpty()) {
        trouble.add(
            first.row().cell(0),
            "a timber in no bundle, row " + first.row().number(),
            "every timber is in a bundle",
            "fill it in, or say --bundle-size");
        continue;
      }
      String load = first.load();
      int turn = turns.merge(load, 1, Integer::sum);
      counted |= first.offOrder().isEmpty();
      String offOrder = first.offOrder().isEmpty() ? Integer.toString(turn) : first.offOrder();
      bundles.add(bundle(group, load, offOrder));
    }
    notes.add(
        (bundles.size() == 1 ? "1 bundle: size" : bundles.size() + " bundles: sizes")
            + " computed from the timbers, without bands and stickers; measure and correct"
            + " bundles.csv.");
    if (counted) {
      notes.add(
          "Off-order: the first bundle of the list comes off first; correct off_order in bundles.csv if not.");
    }
    return bundles;
  }

  private NewBundle bundle(List<NewPiece> group, String load, String offOrder) {
    String name = group.get(0).field("bundle");
    String id = id(name, load);
    BundleSizes.Packed packed = sizes.pack(group);
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("bundle", id);
    fields.put("load", load);
    fields.put("off_order", offOrder);
    fields.putAll(packed.fields());
    return new NewBundle(fields, packed.pieces().stream().map(p -> p.with("bundle", id)).toList());
  }

  /** Mills number bundles from 1 on every truck; on site every bundle has its own name. */
  private String id(String name, String load) {
    boolean elsewhere =
        known.rows().stream()
            .anyMatch(
                r -> known.cell(r, "bundle").equals(name) && !known.cell(r, "load").equals(load));
    String first = named.putIfAbsent(name, load);
    if (!elsewhere && (first == null || first.equals(load))) {
      return name;
    }
    String own = load + "-" + name;
    notes.add(
        "Bundle "
            + name
            + " is called "
            + own
            + " in the job, because another load has a bundle "
            + name
            + ".");
    return own;
  }
}
