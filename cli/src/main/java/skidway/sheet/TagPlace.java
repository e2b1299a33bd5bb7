package skidway.sheet;

import java.util.List;

/** Where a bundle lies, as its tags say it. */
public sealed interface TagPlace {
  /** In large letters: the spot's code. */
  String code();

  /** Below it. */
  String level();

  /** In one line of running text. */
  String words();

  /**
   * On a stack.
   *
   * @param ends where its ends point to: the left one seen from the open side, then the right one
   */
  record Stacked(String spotId, int tier, int tiers, List<String> ends) implements TagPlace {
    public Stacked {
      ends = List.copyOf(ends);
    }

    @Override
    public String code() {
      return spotId;
    }

    @Override
    public String level() {
      return "tier " + tier + " of " + tiers;
    }

    @Override
    public String words() {
      return spotId + ", " + level();
    }
  }

  /** Opened, its pieces standing in a rack; its ends point nowhere. */
  record OnEnd(String spotId) implements TagPlace {
    @Override
    public String code() {
      return spotId;
    }

    @Override
    public String level() {
      return "on end";
    }

    @Override
    public String words() {
      return spotId + ", on end";
    }
  }

  /** Nowhere: the plan has no spot for it. */
  record NoSpot() implements TagPlace {
    @Override
    public String code() {
      return "NO SPOT";
    }

    @Override
    public String level() {
      return "ask first";
    }

    @Override
    public String words() {
      return "no spot";
    }
  }
}
