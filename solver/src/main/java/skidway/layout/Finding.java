package skidway.layout;

import java.util.function.DoubleSupplier;
import skidway.rules.Rule;

/**
 * A breach not yet measured: a search only asks whether there is one, and measuring is slow.
 *
 * @param value measures; see {@link Breach}
 */
record Finding(Rule rule, String against, DoubleSupplier value, double limit) {
  Breach measured(String spotId) {
    return new Breach(rule, spotId, against, value.getAsDouble(), limit);
  }
}
