package skidway.job;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import skidway.timber.Species;
import skidway.timber.SpeciesTable;

/**
 * The woods that a job's packing list may name: its own, and those of the handbook. No name is in
 * both, so nobody has to know which of two is meant.
 *
 * @param own by {@link #key}
 * @param complete whether all of the job's own could be read; if not, no name counts as unknown
 */
record Woods(Map<String, Species> own, boolean complete) {
  private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}\\p{N}]");

  /** What a job has whose file could not be read. */
  static Woods unread() {
    return new Woods(Map.of(), false);
  }

  /** Names count whatever their case, hyphens, spaces and brackets. */
  static String key(String name) {
    return NO_LETTERS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
  }

  Optional<Species> find(String name) {
    return Optional.ofNullable(own.get(key(name))).or(() -> SpeciesTable.find(name));
  }

  /** The job's own first. */
  List<String> names() {
    return Stream.concat(own.values().stream().map(Species::name), SpeciesTable.names().stream())
        .toList();
  }
}
