package skidway.sheet;

import static java.util.stream.Collectors.toCollection;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** How large the letters of stack signs are: the more tiers on a sheet, the smaller. */
final class SignSizes {
  private static final double CODE_WIDTH_MM = 172;

  private SignSizes() {}

  /** Of the code on a sheet of so many tiers, millimetres. */
  static double codeMm(String code, int tiers) {
    double highestMm = Math.max(26, Math.min(92, 180.0 / tiers));
    double widthOfOneMm = Lettering.widthMm(code, 1, true);
    return Math.max(9, Math.min(highestMm, CODE_WIDTH_MM / widthOfOneMm));
  }

  /**
   * Style rules for sheets of as many tiers as these have; style sheets cannot reckon so far.
   *
   * @param layers how many layers the sheets of piles hold
   */
  static String rules(List<StackView> stacks, List<Integer> layers) {
    StringBuilder rules = new StringBuilder();
    SortedSet<Integer> counts = tierCounts(stacks);
    counts.addAll(layers);
    for (int tiers : counts) {
      String of = ".tiers-" + tiers + " ";
      rule(rules, of + ".level", Math.max(13, Math.min(20, 70.0 / tiers)));
      rule(rules, of + ".id", Math.max(11, Math.min(42, 110.0 / tiers)));
      rule(rules, of + ".mass", Math.max(11, Math.min(32, 100.0 / tiers)));
      rule(rules, of + "li p", Math.max(10, Math.min(20, 52.0 / tiers)));
      rule(rules, of + ".order", Math.max(12, Math.min(17, 70.0 / tiers)));
      String gap = Numbers.of(Math.min(2.5, 8.0 / tiers));
      rules.append(of).append("li { margin-bottom: ").append(gap).append("mm; }\n");
    }
    return rules.toString();
  }

  private static SortedSet<Integer> tierCounts(List<StackView> stacks) {
    return stacks.stream()
        .flatMap(stack -> SignSheet.of(stack).stream())
        .map(sheet -> sheet.tiers().size())
        .collect(toCollection(TreeSet::new));
  }

  private static void rule(StringBuilder rules, String of, double points) {
    rules.append(of).append(" { font-size: ").append(Numbers.of(points)).append("pt; }\n");
  }
}
