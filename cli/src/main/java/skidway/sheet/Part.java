package skidway.sheet;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The parts of the paper that can be printed alone; what to heed first goes with all of them. */
public enum Part {
  MAP,
  SET_OUT,
  UNLOAD,
  SHOP,
  SETTLE,
  STACKS,
  HOURS,
  LIMITS,
  PULL,
  WAVES,
  SIGNS,
  PLACARDS,
  TAGS;

  /** As it is asked for, and as its place on the page is called. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<Part> of(String word) {
    return Arrays.stream(values()).filter(part -> part.word().equals(word)).findFirst();
  }
}
