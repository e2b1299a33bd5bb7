package skidway.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * One printed page of a stack's sign. A stack of many bundles has several, each with the stack's
 * code on it, so that none says less than whose it is when they come apart.
 *
 * @param number this one of the sheets, from 1
 * @param tiers as they are read: a stack's from the top, a rack's in their order
 * @param before how many of the stack's are on the sheets before it
 */
record SignSheet(StackView stack, int number, int sheets, List<Tier> tiers, int before) {
  /** As many fit on Letter paper beside the cautions, in letters that are still read upright. */
  static final int MOST_TIERS = 8;

  SignSheet {
    tiers = List.copyOf(tiers);
  }

  /** The sheets of a stack, none fuller than another by more than one. */
  static List<SignSheet> of(StackView stack) {
    List<Tier> all = stack.rack() ? stack.tiers() : stack.fromTheTop();
    int sheets = (all.size() + MOST_TIERS - 1) / MOST_TIERS;
    List<SignSheet> of = new ArrayList<>();
    for (int i = 0; i < sheets; i++) {
      int from = all.size() * i / sheets;
      int to = all.size() * (i + 1) / sheets;
      of.add(new SignSheet(stack, i + 1, sheets, all.subList(from, to), from));
    }
    return of;
  }

  /** Which tier one on this sheet is, in words. */
  String level(int place) {
    return stack.rack() ? "on end" : "tier " + tierNumber(place);
  }

  private int tierNumber(int place) {
    return stack.tiers().size() - before - place;
  }

  /** Which of the sheets this is; nothing where there is one alone. */
  String words() {
    if (sheets == 1) {
      return "";
    }
    String which = "Sheet " + number + " of " + sheets;
    String what = stack.rack() ? "" : ", tiers " + tierNumber(0) + " to " + tierNumber(last());
    return which + what + ". Put all " + sheets + " up together.";
  }

  private int last() {
    return tiers.size() - 1;
  }
}
