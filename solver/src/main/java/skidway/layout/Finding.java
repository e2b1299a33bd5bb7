package skidway.layout;

import java.util.function.DoubleSupplier;
import skidway.rules.Rule;

/**
 * A breach not yet measured: a search only asks whether there is one, and measuring is slow.
 *
 * @param valueM measures; see {@link Breach}
 */
record Finding(Rule rule, String against, DoubleSupplier valueM, double limitM) {
  Breach measured(String spotId) {
    return new Breach(rule, spotId, against, valueM.getAsDouble(), limitM);
  }
}
