package skidway.staging;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a stacking problem with weights: one JSON object with {@code n_items}, {@code n_stacks},
 * {@code capacity}, and for each item in the order in which they come {@code departures} and {@code
 * weights}.
 */
final class BayFile {
  /** No more weigh differently, for one millimetre of a spot stands for each. */
  private static final int MOST_WEIGHT = 900;

  /** More are never tried on one another. */
  private static final int MOST_TIERS = 12;

  private static final int MOST_ITEMS = 10_000;

  private static final ObjectReader JSON =
      new ObjectMapper().reader().with(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private final Path file;
  private final JsonNode root;

  private BayFile(Path file, JsonNode root) {
    this.file = file;
    this.root = root;
  }

  static Bay read(Path file) throws IOException {
    try {
      return new BayFile(file, JSON.readTree(Files.readString(file))).bay();
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(file + ": not JSON: " + e.getOriginalMessage(), e);
    }
  }

  private Bay bay() {
    int items = whole(root.path("n_items"), "n_items", MOST_ITEMS);
    int stacks = whole(root.path("n_stacks"), "n_stacks", MOST_ITEMS);
    int tiers = whole(root.path("capacity"), "capacity", MOST_TIERS);
    if (items > stacks * tiers) {
      throw wrong(items + " items do not fit into " + stacks + " stacks of " + tiers);
    }
    return new Bay(
        stacks,
        tiers,
        row("departures", items, Integer.MAX_VALUE),
        row("weights", items, MOST_WEIGHT));
  }

  private List<Integer> row(String name, int items, int most) {
    JsonNode row = root.path(name);
    if (!row.isArray() || row.size() != items) {
      String found = row.isArray() ? row.size() + " numbers" : "no list";
      throw wrong(name + " has " + found + " where " + items + " numbers belong, one an item");
    }
    List<Integer> numbers = new ArrayList<>();
    for (JsonNode cell : row) {
      numbers.add(whole(cell, name, most));
    }
    return numbers;
  }

  private int whole(JsonNode node, String name, int most) {
    if (!node.isIntegralNumber() || !node.canConvertToInt() || node.intValue() < 1) {
      String found = node.isMissingNode() ? "nothing" : node.toString();
      throw wrong(name + " has " + found + " where a whole number from 1 belongs");
    }
    if (node.intValue() > most) {
      throw wrong(name + " has " + node + ", more than the " + most + " that can be measured");
    }
    return node.intValue();
  }

  private IllegalArgumentException wrong(String what) {
    return new IllegalArgumentException(file + ": " + what + ".");
  }
}
