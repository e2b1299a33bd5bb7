package skidway.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import skidway.timber.Moisture;
import skidway.timber.Species;
import skidway.timber.WoodDensity;
import skidway.units.Measure;
import skidway.units.Quantities;
import skidway.units.UnitSystem;
import skidway.units.UnreadableQuantity;

/**
 * Reads a row's moisture, percent of the oven-dry mass: {@code 19} when measured, {@code 15-25} or
 * {@code 15-19-25} when not, {@code green} for freshly felled wood of a species whose green
 * moisture is known. Each wood holds so much water and no more.
 */
final class MoistureCell {
  private static final Quantities PLAIN = new Quantities(UnitSystem.METRIC);
  private static final String GREEN = "green";
  private static final String COLUMN = "moisture";
  private static final Moisture STAND_IN = Moisture.of(0);
  private static final int MOST_REMEMBERED = 1000;

  /** Moistures are few and rows many. */
  private final Map<String, List<Double>> remembered = new HashMap<>();

  /** After a problem a stand-in. */
  Moisture read(CsvRow row, Optional<Species> species) {
    String text = row.text(COLUMN);
    if (text.equalsIgnoreCase(GREEN)) {
      return green(row, species);
    }
    List<Double> pct =
        remembered.size() < MOST_REMEMBERED
            ? remembered.computeIfAbsent(text, MoistureCell::numbers)
            : numbers(text);
    double most = species.map(WoodDensity::mostMoisturePct).orElse(Double.MAX_VALUE);
    boolean share = pct.stream().anyMatch(MoistureCell::isShare);
    if (pct.isEmpty() || share || pct.stream().anyMatch(p -> p > most)) {
      row.report(
          COLUMN,
          Quote.found(text) + " as moisture",
          allowed(species),
          share ? "write percent, not a share of one" : "correct it");
      return STAND_IN;
    }
    double low = pct.get(0);
    double high = pct.get(pct.size() - 1);
    double likely = pct.size() == 3 ? pct.get(1) : (low + high) / 2;
    if (low > likely || likely > high) {
      row.report(
          COLUMN,
          Quote.found(text) + " as moisture",
          "a range goes from dry to wet, such as 15-25 or 15-19-25",
          "put the lowest figure first");
      return STAND_IN;
    }
    return new Moisture(low, likely, high);
  }

  private static Moisture green(CsvRow row, Optional<Species> species) {
    Optional<Moisture> green = species.flatMap(Species::green);
    if (species.isPresent() && green.isEmpty()) {
      row.report(
          COLUMN,
          "green " + species.get().name() + ", whose moisture was read nowhere",
          allowed(species),
          "write a range of percent that the wood may have, and weigh some");
    }
    return green.orElse(STAND_IN);
  }

  /** One, two or three numbers; none if the text is something else. */
  private static List<Double> numbers(String text) {
    List<Double> numbers = new ArrayList<>();
    for (String part : text.replace('\u2013', '-').split("-", -1)) {
      String cell = part.strip();
      String bare = cell.endsWith("%") ? cell.substring(0, cell.length() - 1) : cell;
      if (bare.contains("%")) {
        return List.of();
      }
      try {
        numbers.add(PLAIN.read(Measure.RATIO, bare));
      } catch (UnreadableQuantity e) {
        return List.of();
      }
    }
    return numbers.size() <= 3 ? numbers : List.of();
  }

  /** A share written where percent is asked for would make timbers seem lighter than they are. */
  private static boolean isShare(double pct) {
    return pct > 0 && pct < 1;
  }

  private static String allowed(Optional<Species> species) {
    if (species.isEmpty()) {
      return "moisture is a number of percent, such as 18, or a range, such as 15-25";
    }
    return String.format(
        Locale.ROOT,
        "moisture is 0 to %.0f percent of the dry mass in %s, such as 18 or 15-25%s",
        Math.floor(WoodDensity.mostMoisturePct(species.get())),
        species.get().name(),
        species.get().green().isPresent() ? ", or " + GREEN : "");
  }
}
