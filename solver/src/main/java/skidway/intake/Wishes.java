package skidway.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What the person says about a list and its truck.
 *
 * @param columns meaning to header text, letter or number of its column, or {@code none}
 * @param units meaning to unit, or an empty text for all others
 * @param constants meaning to the text that goes for every row
 * @param calls what the list says to what the job calls it, of walls and species
 * @param load the truck that the list belongs to
 * @param replace whether what the job has of the load may be replaced
 */
public record Wishes(
    Optional<String> sheet,
    OptionalInt header,
    Optional<String> encoding,
    Map<String, String> columns,
    Map<String, String> units,
    Optional<String> mark,
    Optional<String> decimal,
    OptionalInt bundleSize,
    Map<String, String> constants,
    Map<String, String> calls,
    Optional<String> load,
    Optional<String> arrival,
    Optional<String> stand,
    boolean replace) {

  /** No wish at all. */
  public static final Wishes NONE =
      new Wishes(
          Optional.empty(),
          OptionalInt.empty(),
          Optional.empty(),
          Map.of(),
          Map.of(),
          Optional.empty(),
          Optional.empty(),
          OptionalInt.empty(),
          Map.of(),
          Map.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          false);

  /** The wishes that can be spelt wrong. */
  List<String> meaningWords() {
    return Stream.of(columns, constants, units)
        .flatMap(m -> m.keySet().stream())
        .filter(w -> !w.isEmpty())
        .toList();
  }
}
