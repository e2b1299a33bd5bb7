package skidway.sheet;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import skidway.plan.Plan;
import skidway.plan.Stack;

/** Reads the scale that is written on a map, as somebody with a ruler would. */
final class MapScales {
  private static final Pattern METRIC = Pattern.compile("\\b1:(\\d+) at full size");
  private static final Pattern PARTS = Pattern.compile("\\b1/(\\d+)\" = 1' at full size");
  private static final Pattern MORE_PARTS = Pattern.compile("\\b3/(\\d+)\" = 1' at full size");
  private static final Pattern FEET = Pattern.compile("\\b1\" = (\\d+)' at full size");

  private MapScales() {}

  /** Millimetres on site for one on paper. */
  static double ratio(String svg) {
    String words = svg.replace("&quot;", "\"").replace("&#39;", "'");
    for (Pattern pattern : List.of(METRIC, PARTS, MORE_PARTS, FEET)) {
      Matcher found = pattern.matcher(words);
      if (found.find()) {
        double number = Double.parseDouble(found.group(1));
        return pattern == METRIC ? number : pattern == MORE_PARTS ? 12 * number / 3 : 12 * number;
      }
    }
    throw new AssertionError("no scale is written on this map");
  }

  /** The same plan with other stacks. */
  static Plan with(Plan plan, List<Stack> stacks) {
    return new Plan(
        plan.jobName(),
        plan.revision(),
        "",
        "",
        plan.search(),
        stacks,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        plan.effort(),
        List.of(),
        List.of());
  }
}
