package skidway.intake;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Gives timbers the weights that a list has. A weight in a row of several is that of one or of all
 * of them: the header may say, else what wood can weigh decides.
 */
final class Weights {
  /** Wood of any kind and moisture, kilograms a cubic metre (assumption, wide). */
  private static final double LIGHTEST = 200;

  private static final double HEAVIEST = 1400;

  private final ListTable table;
  private final RowReader reader;
  private final List<String> notes;
  private final Trouble trouble;

  Weights(ListTable table, RowReader reader, List<String> notes, Trouble trouble) {
    this.table = table;
    this.reader = reader;
    this.notes = notes;
    this.trouble = trouble;
  }

  /** The timbers with {@code mass}, where the list has it. */
  List<NewPiece> give(List<NewPiece> pieces) {
    if (!table.has(Meaning.WEIGHT)) {
      return pieces;
    }
    Map<Integer, Integer> counts = new HashMap<>();
    pieces.forEach(p -> counts.merge(p.row().number(), 1, Integer::sum));
    Map<Integer, Optional<Double>> weights = new HashMap<>();
    pieces.forEach(p -> weights.computeIfAbsent(p.row().number(), n -> reader.kilograms(p.row())));
    boolean ofAll = counts.values().stream().anyMatch(c -> c > 1) && ofAll(pieces, counts, weights);
    List<NewPiece> weighed = new ArrayList<>();
    for (NewPiece piece : pieces) {
      double share = ofAll ? counts.getOrDefault(piece.row().number(), 1) : 1;
      weighed.add(
          weights
              .getOrDefault(piece.row().number(), Optional.empty())
              .map(kg -> piece.with("mass", text(kg / share)))
              .orElse(piece));
    }
    return weighed;
  }

  private boolean ofAll(
      List<NewPiece> pieces, Map<Integer, Integer> counts, Map<Integer, Optional<Double>> weights) {
    int all = 0;
    int each = 0;
    for (NewPiece piece : pieces) {
      int count = counts.getOrDefault(piece.row().number(), 1);
      Optional<Double> kg = weights.getOrDefault(piece.row().number(), Optional.empty());
      if (count > 1 && kg.isPresent() && piece.sized()) {
        double m3 = piece.lengthM() * piece.widthM() * piece.heightM();
        each += isWood(kg.get() / m3) ? 1 : 0;
        all += isWood(kg.get() / count / m3) ? 1 : 0;
      }
    }
    if (all == each && all > 0) {
      trouble.add(
          "weights that can be of one timber or of all in the row",
          "the list shows which",
          "leave the weights out with --column weight=none, or write a row a timber");
    }
    notes.add(
        "Weights of rows with several timbers count for "
            + (all > each ? "all of the row together." : "one of them."));
    return all > each;
  }

  private static boolean isWood(double kgPerM3) {
    return kgPerM3 >= LIGHTEST && kgPerM3 <= HEAVIEST;
  }

  private static String text(double kg) {
    return BigDecimal.valueOf(kg).setScale(2, RoundingMode.HALF_UP).toPlainString() + " kg";
  }
}
