package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody says happened, taken apart: the kind of event, what it names, and where, how high,
 * until when, through which piece. Words may come in any order as long as a spot follows {@code at}
 * or {@code to}.
 */
record Sentence(
    Kind kind,
    List<String> names,
    Optional<String> spot,
    Optional<Integer> tier,
    boolean asPlanned,
    Optional<String> until,
    Optional<String> through) {
  enum Kind {
    ARRIVED,
    PLACED,
    MOVED,
    MISSING,
    DAMAGED,
    FOUND,
    LATE,
    PULLED,
    UNDO;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static final List<String> FORMS =
      List.of(
          "arrived LOAD",
          "placed BUNDLE at SPOT [tier N]",
          "placed LOAD as planned",
          "moved BUNDLE to SPOT [tier N]",
          "moved as planned (or just: moved; all moves of the newest plan)",
          "missing BUNDLE-or-PIECE",
          "damaged BUNDLE-or-PIECE",
          "found BUNDLE-or-PIECE",
          "late LOAD --until 2031-05-12T08:00 (or 2031-05-12, or +3d)",
          "pulled PIECE ...",
          "pulled --through PIECE-or-COURSE (such as W3-C04)",
          "undo [NUMBER ...] (or 5-13; without a number the last one)");

  private static final List<String> FILLERS =
      List.of("load", "loads", "bundle", "bundles", "piece", "pieces", "spot", "event", "events");

  private static final Pattern TIER = Pattern.compile("tier(\\d{1,3})", Pattern.CASE_INSENSITIVE);

  Sentence {
    names = List.copyOf(names);
  }

  /**
   * Takes a sentence apart.
   *
   * @throws BadUsage if it has none of the forms
   */
  static Sentence of(List<String> words, Optional<String> until, Optional<String> through) {
    return new Reader(words, until, through).sentence();
  }

  static BadUsage bad(String what) {
    return bad(what, FORMS);
  }

  /** What is wrong with a sentence of one kind, and the forms of that kind. */
  static BadUsage bad(Kind kind, String what) {
    return bad(what, FORMS.stream().filter(form -> form.startsWith(kind.word())).toList());
  }

  private static BadUsage bad(String what, List<String> forms) {
    String say = forms.size() == 1 ? "Say" : "Say one of";
    return new BadUsage(
        what + " Nothing was recorded. " + say + "\n  " + String.join("\n  ", forms));
  }

  /** Reads word by word. */
  private static final class Reader {
    private final List<String> words;
    private int at;
    private Optional<Kind> kind = Optional.empty();
    private final List<String> names = new ArrayList<>();
    private Optional<String> spot = Optional.empty();
    private Optional<Integer> tier = Optional.empty();
    private boolean asPlanned;
    private Optional<String> until;
    private Optional<String> through;

    Reader(List<String> words, Optional<String> until, Optional<String> through) {
      boolean oneText = words.size() == 1 && words.get(0).strip().contains(" ");
      this.words = oneText ? List.of(words.get(0).strip().split("\\s+", -1)) : words;
      this.until = until;
      this.through = through;
    }

    Sentence sentence() {
      while (at < words.size()) {
        read(words.get(at++));
      }
      Kind found =
          kind.orElseThrow(
              () -> bad("'" + String.join(" ", words) + "' does not say what happened."));
      return new Sentence(found, names, spot, tier, asPlanned, until, through);
    }

    private void read(String word) {
      String plain = word.toLowerCase(Locale.ROOT);
      Matcher glued = TIER.matcher(word);
      if (kind.isEmpty() && kindOf(plain).isPresent()) {
        kind = kindOf(plain);
      } else if (glued.matches()) {
        tier = once(tier, number(glued.group(1)), word);
      } else if (plain.equals("tier")) {
        tier = once(tier, number(next(word)), word);
      } else if (List.of("at", "to", "on", "onto", "in").contains(plain)) {
        spot = once(spot, next(word), word);
      } else if (plain.equals("until") || plain.equals("till")) {
        until = once(until, next(word), word);
      } else if (plain.equals("through")) {
        through = once(through, next(word), word);
      } else if (plain.equals("as-planned") || (plain.equals("as") && nextIs("planned"))) {
        at += plain.equals("as") ? 1 : 0;
        asPlanned = true;
      } else if (!FILLERS.contains(plain)) {
        names.add(word.strip());
      }
    }

    private boolean nextIs(String word) {
      return at < words.size() && words.get(at).equalsIgnoreCase(word);
    }

    /** The word after one that needs another, whose own fillers are passed over. */
    private String next(String word) {
      while (at < words.size() && words.get(at).equalsIgnoreCase("spot")) {
        at++;
      }
      if (at == words.size()) {
        throw bad("Nothing follows '" + word + "'.");
      }
      return words.get(at++).strip();
    }

    private static <T> Optional<T> once(Optional<T> before, T value, String word) {
      if (before.isPresent()) {
        throw bad(
            "There are two words for '" + word + "': " + before.get() + " and " + value + ".");
      }
      return Optional.of(value);
    }

    private static int number(String text) {
      if (!text.matches("\\d{1,3}")) {
        throw bad("A tier is a whole number, 1 for the bottom, not '" + text + "'.");
      }
      return Integer.parseInt(text);
    }

    private static Optional<Kind> kindOf(String plain) {
      for (Kind kind : Kind.values()) {
        if (kind.word().equals(plain)) {
          return Optional.of(kind);
        }
      }
      return Optional.empty();
    }
  }
}
