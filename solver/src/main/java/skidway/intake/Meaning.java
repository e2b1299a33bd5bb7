package skidway.intake;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a column of a packing list may be taken for. */
public enum Meaning {
  MARK(Kind.TEXT),
  WALL(Kind.TEXT),
  COURSE(Kind.WHOLE),
  POSITION(Kind.WHOLE),
  FROM_LEFT(Kind.LENGTH),
  LENGTH(Kind.LENGTH),
  WIDTH(Kind.LENGTH),
  HEIGHT(Kind.LENGTH),
  /** Stands for the width when there is a height or nothing else, see {@link Columns}. */
  THICKNESS(Kind.LENGTH),
  /** Width and height in one cell. */
  SECTION(Kind.LENGTH),
  SPECIES(Kind.TEXT),
  MOISTURE(Kind.TEXT),
  BUNDLE(Kind.TEXT),
  LAYER(Kind.WHOLE),
  WEIGHT(Kind.MASS),
  COUNT(Kind.WHOLE),
  LOAD(Kind.TEXT),
  OFF_ORDER(Kind.WHOLE);

  /** How cells of the column are read. */
  enum Kind {
    TEXT,
    WHOLE,
    LENGTH,
    MASS
  }

  private final Kind kind;

  Meaning(Kind kind) {
    this.kind = kind;
  }

  Kind kind() {
    return kind;
  }

  /** As written on the command line and in the job. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<Meaning> of(String word) {
    String plain = word.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    return Arrays.stream(values()).filter(m -> m.name().equals(plain)).findFirst();
  }

  /** All words, for messages. */
  static String words() {
    return String.join(", ", Arrays.stream(values()).map(Meaning::word).toList());
  }
}
