package skidway.job;

import java.util.Optional;

/** Reads plain texts and numbers, without units. */
final class Plain {
  private Plain() {}

  /** A text on one line, not empty. */
  static String line(Fields fields, String name) {
    String allowed = '"' + name + "\" is a text in double quotes, 1 to 200 characters";
    Optional<LocatedNode.Text> text = fields.typed(name, LocatedNode.Text.class, allowed);
    String value = text.map(t -> t.value().strip()).orElse("");
    if (text.isPresent() && (value.isEmpty() || !Names.isLine(value))) {
      fields.wrong(name, text.get(), allowed);
      return "";
    }
    return value;
  }

  /** A text on one line; left out and empty are the same. */
  static String lineOrNothing(Fields fields, String name) {
    String allowed = '"' + name + "\" is a text in double quotes, up to 200 characters";
    if (!fields.has(name)) {
      return "";
    }
    Optional<LocatedNode.Text> text = fields.typed(name, LocatedNode.Text.class, allowed);
    String value = text.map(t -> t.value().strip()).orElse("");
    if (text.isPresent() && !Names.isLine(value)) {
      fields.wrong(name, text.get(), allowed);
      return "";
    }
    return value;
  }

  /** A text of any length, which may be empty. */
  static String text(Fields fields, String name) {
    String allowed = '"' + name + "\" is a text in double quotes";
    return fields
        .typed(name, LocatedNode.Text.class, allowed)
        .map(LocatedNode.Text::value)
        .orElse("");
  }

  /** A finite number; not a number after a problem. */
  static double number(Fields fields, String name) {
    String allowed = '"' + name + "\" is a number";
    Optional<LocatedNode.Figure> figure = fields.typed(name, LocatedNode.Figure.class, allowed);
    figure
        .filter(f -> !Double.isFinite(f.value()))
        .ifPresent(f -> fields.wrong(name, f, allowed + " of usual size"));
    return figure.map(LocatedNode.Figure::value).orElse(Double.NaN);
  }

  /** A whole number from a least one up; the least after a problem. */
  static int whole(Fields fields, String name, int least) {
    return whole(fields, name, least, Integer.MAX_VALUE);
  }

  /** A whole number between two; the least after a problem. */
  static int whole(Fields fields, String name, int least, int most) {
    return (int) whole(fields, name, (long) least, most);
  }

  /** Any whole number of 64 bits; the least after a problem. */
  static long whole(Fields fields, String name) {
    return whole(fields, name, Long.MIN_VALUE, Long.MAX_VALUE);
  }

  private static long whole(Fields fields, String name, long least, long most) {
    String allowed = '"' + name + "\" is a whole number from " + least + " to " + most;
    Optional<LocatedNode.Figure> figure = fields.typed(name, LocatedNode.Figure.class, allowed);
    if (figure.isEmpty()) {
      return least;
    }
    try {
      long value = Long.parseLong(figure.get().text());
      if (value >= least && value <= most) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Falls through: a number with a fraction, or too large, is reported as any other.
    }
    fields.wrong(name, figure.get(), allowed);
    return least;
  }
}
