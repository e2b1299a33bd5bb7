package skidway.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a person writes into a tick sheet, in the ways people write it. */
enum Tick {
  YES(List.of("yes", "y", "x", "ok", "1", "there", "true")),
  NO(List.of("no", "n", "0", "missing", "false")),
  DAMAGED(List.of("damaged", "d", "broken", "bad")),
  EXTRA(List.of("extra"));

  private final List<String> ways;

  Tick(List<String> ways) {
    this.ways = ways;
  }

  static Optional<Tick> of(String text) {
    String plain = Headline.plain(text);
    boolean mark = text.strip().equals("\u2713") || text.strip().equals("\u2714");
    return mark
        ? Optional.of(YES)
        : Arrays.stream(values()).filter(t -> t.ways.contains(plain)).findFirst();
  }

  String word() {
    return ways.get(0);
  }

  static String words() {
    return Arrays.stream(values()).map(Tick::word).collect(Collectors.joining(", "));
  }
}
