package skidway.intake;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Knows which words stand above which columns, in nine languages ({@code header-words.csv}). */
final class HeaderWords {
  private static final String RESOURCE = "header-words.csv";
  private static final Map<Meaning, Set<String>> WORDS = load();

  /** The first meaning that a word alone stands for. */
  private static final Map<String, Meaning> MEANINGS = meanings();

  private HeaderWords() {}

  /** The meaning that a header names as a whole, the first if there are several. */
  static Optional<Meaning> named(Headline header) {
    return Optional.ofNullable(MEANINGS.get(header.words()));
  }

  /**
   * How well a header names a meaning: 1 as a whole, less if only some of its words do, 0 if none.
   */
  static double match(Headline header, Meaning meaning) {
    String words = header.words();
    if (words.isEmpty()) {
      return 0;
    }
    if (WORDS.getOrDefault(meaning, Set.of()).contains(words)) {
      return 1;
    }
    String apart = " " + words + " ";
    double best = 0;
    for (String known : WORDS.getOrDefault(meaning, Set.of())) {
      if (known.length() > 2 && words.contains(known) && apart.contains(" " + known + " ")) {
        best = Math.max(best, 0.6 + 0.3 * known.length() / words.length());
      }
    }
    return best;
  }

  private static Map<String, Meaning> meanings() {
    Map<String, Meaning> meanings = new HashMap<>();
    WORDS.forEach((meaning, words) -> words.forEach(w -> meanings.putIfAbsent(w, meaning)));
    return meanings;
  }

  private static Map<Meaning, Set<String>> load() {
    InputStream in = HeaderWords.class.getResourceAsStream(RESOURCE);
    if (in == null) {
      throw new IllegalStateException("The table " + RESOURCE + " is missing.");
    }
    Map<Meaning, Set<String>> words = new EnumMap<>(Meaning.class);
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      reader.lines().filter(l -> !l.startsWith("#")).skip(1).forEach(line -> add(line, words));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words;
  }

  private static void add(String line, Map<Meaning, Set<String>> words) {
    String[] cells = line.split(",", -1);
    Meaning meaning = Meaning.of(cells[0]).orElseThrow();
    for (String word : cells[2].split("\\|", -1)) {
      words.computeIfAbsent(meaning, m -> new LinkedHashSet<>()).add(Headline.plain(word));
    }
  }
}
