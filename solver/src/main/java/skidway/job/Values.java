package skidway.job;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import skidway.units.Figures;
import skidway.units.Measure;
import skidway.units.Quantities;
import skidway.units.UnitSystem;
import skidway.units.UnreadableQuantity;

/** Turns single values into quantities, and reports at their place those that are none. */
public final class Values {
  /**
   * Timbers repeat a few sections and lengths; a table of nothing but different ones stays small.
   */
  private static final int MOST_REMEMBERED = 5000;

  private final Map<Measure, Map<String, Double>> remembered = new EnumMap<>(Measure.class);
  private final Problems problems;
  private final Quantities quantities;
  private final boolean unitsKnown;

  /**
   * @param unitsKnown whether the job says its units; if not, sizes are not judged, because all of
   *     them would seem odd for one mistake
   */
  public Values(Problems problems, UnitSystem units, boolean unitsKnown) {
    this.problems = problems;
    this.quantities = new Quantities(units);
    this.unitsKnown = unitsKnown;
  }

  public Problems problems() {
    return problems;
  }

  boolean unitsKnown() {
    return unitsKnown;
  }

  public Figures figures() {
    return new Figures(quantities.units());
  }

  /** A quantity as JSON text or number, in SI; not a number after a problem. */
  double read(LocatedNode node, String name, Bounds.Range range) {
    if (node instanceof LocatedNode.Text text) {
      return read(text.place(), range, text.value());
    }
    if (node instanceof LocatedNode.Figure number) {
      return read(
          number.place(),
          range,
          () -> quantities.bare(range.measure(), number.value()),
          number.text());
    }
    String found = node.words() + " as \"" + name + '"';
    problems.add(node.place(), found, allowed(range.measure()), "correct it");
    return Double.NaN;
  }

  /** A quantity as text, in SI; not a number after a problem. */
  public double read(Place place, Bounds.Range range, String text) {
    return read(place, range, () -> readOnce(range.measure(), text), text);
  }

  /** The same text is the same quantity, and parsing it is most of the work of a large table. */
  private double readOnce(Measure measure, String text) {
    Map<String, Double> texts = remembered.computeIfAbsent(measure, m -> new HashMap<>());
    Double known = texts.get(text);
    if (known != null) {
      return known;
    }
    double si = quantities.read(measure, text);
    if (texts.size() < MOST_REMEMBERED) {
      texts.put(text, si);
    }
    return si;
  }

  public String allowed(Measure measure) {
    return quantities.allowed(measure);
  }

  private double read(Place place, Bounds.Range range, Reading reading, String text) {
    double si;
    try {
      si = reading.si();
    } catch (UnreadableQuantity e) {
      String also = unitsKnown ? "; " + range.allowed(figures()) : "";
      problems.add(place, e.found(), e.allowed() + also, "write it like that");
      return Double.NaN;
    }
    if (unitsKnown && !range.holds(si)) {
      String seen = range.measure() == Measure.COUNT ? "" : ", that is " + exact(range, si);
      problems.add(
          place,
          text.strip() + " as " + range.measure().word() + seen,
          range.allowed(figures()),
          range.measure() == Measure.COUNT ? "correct it" : "check the figure and its unit");
      return Double.NaN;
    }
    return si;
  }

  private String exact(Bounds.Range range, double si) {
    return figures().of(range.measure(), si);
  }

  private interface Reading {
    double si();
  }
}
