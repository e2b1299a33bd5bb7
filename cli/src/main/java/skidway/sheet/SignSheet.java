package skidway.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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
    List<Span> spans = spans(all.size());
    List<SignSheet> of = new ArrayList<>();
    for (Span span : spans) {
      List<Tier> tiers = all.subList(span.from, span.to);
      of.add(new SignSheet(stack, of.size() + 1, spans.size(), tiers, span.from));
    }
    return of;
  }

  /** What is on one sheet: from one of the things on a sign up to before another. */
  record Span(int from, int to) {
    int count() {
      return to - from;
    }
  }

  /** How so many things are shared out over sheets, none fuller than another by more than one. */
  static List<Span> spans(int things) {
    int sheets = (things + MOST_TIERS - 1) / MOST_TIERS;
    return IntStream.range(0, sheets)
        .mapToObj(i -> new Span(things * i / sheets, things * (i + 1) / sheets))
        .toList();
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
    String what = stack.rack() ? "" : ", tiers " + tierNumber(0) + " to " + tierNumber(last());
    return words(number, sheets, what);
  }

  /** Which of several sheets one is, and that they belong together. */
  static String words(int number, int sheets, String what) {
    return "Sheet " + number + " of " + sheets + what + ". Put all " + sheets + " up together.";
  }

  private int last() {
    return tiers.size() - 1;
  }
}
