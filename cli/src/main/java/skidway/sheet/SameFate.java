package skidway.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import skidway.plan.Unplaced;
import skidway.rules.Rule;

/**
 * Bundles without a spot for the same reason, told once. What a sentence says of the bundle itself,
 * its sizes and mass in brackets after its id, is left out where several are told together.
 *
 * @param sentence to be read alone; it begins with who it is about
 */
public record SameFate(List<String> bundleIds, Rule rule, String sentence) {
  public SameFate {
    bundleIds = List.copyOf(bundleIds);
  }

  private record Cause(Rule rule, String words) {}

  /** In the order in which the plan lists the first of each. */
  public static List<SameFate> of(List<Unplaced> all) {
    Map<Cause, List<Unplaced>> byCause =
        all.stream()
            .collect(
                Collectors.groupingBy(
                    u -> new Cause(u.rule(), cause(u)), LinkedHashMap::new, Collectors.toList()));
    return byCause.entrySet().stream().map(e -> of(e.getKey(), e.getValue())).toList();
  }

  private static SameFate of(Cause cause, List<Unplaced> together) {
    List<String> ids = together.stream().map(Unplaced::bundleId).toList();
    String sentence =
        together.size() == 1
            ? together.get(0).sentence()
            : ids.size() + " bundles (" + IdRanges.words(ids) + "): " + cause.words();
    return new SameFate(ids, cause.rule(), sentence);
  }

  /** Which bundles they are. */
  String who() {
    return IdRanges.words(bundleIds);
  }

  private static String cause(Unplaced unplaced) {
    String sentence = unplaced.sentence();
    String start = unplaced.bundleId() + " (";
    int end = sentence.indexOf("): ");
    return sentence.startsWith(start) && end > 0 ? sentence.substring(end + 3) : sentence;
  }
}
