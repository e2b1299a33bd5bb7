package skidway.job;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import skidway.timber.Bundle;

/** Reads {@code bundles.csv}: one banded bundle a row, still without its pieces. */
final class BundlesReader {
  static final String FILE = "bundles.csv";
  static final List<String> REQUIRED =
      List.of("bundle", "load", "off_order", "length", "width", "height");
  static final List<String> OPTIONAL = List.of("mass");

  private final Ids bundleIds;
  private final Ids loadIds;
  private final Map<String, BundleRow> rows = new LinkedHashMap<>();
  private final Map<String, Place> turns = new HashMap<>();

  /** A bundle without its pieces, and its row. */
  record BundleRow(Bundle bundle, CsvRow row) {}

  BundlesReader(Ids bundleIds, Ids loadIds) {
    this.bundleIds = bundleIds;
    this.loadIds = loadIds;
  }

  /** The sound bundles by id, in file order. */
  Map<String, BundleRow> read(Optional<SourceFile> file, Values values) {
    if (file.isEmpty() || !CsvTable.read(file.get(), REQUIRED, OPTIONAL, values, this::row)) {
      bundleIds.incomplete();
    }
    return rows;
  }

  private void row(CsvRow row) {
    String id = row.id("bundle", bundleIds);
    String load = load(row);
    int offOrder = row.whole("off_order", Bounds.OFF_ORDER);
    double lengthM = row.quantity("length", Bounds.BUNDLE_LENGTH);
    double widthM = row.quantity("width", Bounds.BUNDLE_SIDE);
    double heightM = row.quantity("height", Bounds.BUNDLE_SIDE);
    OptionalDouble weighedKg = row.optional("mass", Bounds.BUNDLE_MASS);
    ownTurn(row, load, offOrder);
    row.finish(() -> new Bundle(id, load, offOrder, lengthM, widthM, heightM, weighedKg, List.of()))
        .ifPresent(bundle -> rows.putIfAbsent(id, new BundleRow(bundle, row)));
  }

  private String load(CsvRow row) {
    if (row.text("load").isEmpty()) {
      row.report(
          "load",
          "bundle \"" + Quote.shortened(row.text("bundle")) + "\" in no load",
          "every bundle comes on a load of loads.csv",
          "name its load");
      return "";
    }
    String load = row.reference("load");
    loadIds.require(load, row.at("load"), "name a load of loads.csv, or add the load there");
    return load;
  }

  private void ownTurn(CsvRow row, String load, int offOrder) {
    if (load.isEmpty() || offOrder < 1) {
      return;
    }
    Place first = turns.putIfAbsent(offOrder + " " + load, row.at("off_order"));
    if (first != null) {
      row.report(
          "off_order",
          "off-order " + offOrder + " of load \"" + load + "\" a second time",
          "the first is in " + first.words() + ", and bundles come off one after the other",
          "give each bundle of a load its own off-order");
    }
  }
}
