package skidway.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import skidway.Hedge;
import skidway.Lateness;
import skidway.plan.Task;
import skidway.timber.Load;

/** Reads how late loads may be. */
final class HedgeOption {
  private static final Pattern FORM =
      Pattern.compile("(.+?)=(\\d{1,3})(?:\\.\\.(\\d{1,3}))?\\s*(?:d|days?)?");

  /** More cases take long to reckon and tell no more. */
  private static final int MOST_CASES = 200;

  private HedgeOption() {}

  /**
   * What each option says.
   *
   * @throws BadUsage for one that says nothing about a load of the job
   */
  static List<Lateness> read(Task task, List<String> options) {
    List<Lateness> lates = new ArrayList<>();
    for (String option : options) {
      Lateness late = read(task, option);
      if (lates.stream().anyMatch(other -> other.loadId().equals(late.loadId()))) {
        throw new BadUsage("--hedge " + option + ": " + late.loadId() + " is named twice.");
      }
      lates.add(late);
    }
    if (!lates.isEmpty() && Hedge.cases(lates) > MOST_CASES) {
      throw new BadUsage(
          "--hedge: that makes "
              + Hedge.cases(lates)
              + " cases, every lateness with every other; allowed are "
              + MOST_CASES
              + ". Way out: name fewer loads or days.");
    }
    return lates;
  }

  private static Lateness read(Task task, String option) {
    Matcher said = FORM.matcher(option.strip());
    if (!said.matches()) {
      throw new BadUsage(
          "--hedge is '"
              + option
              + "'; it is a load and how many days late it may be, such as"
              + " L2=0..5days.");
    }
    String loadId = said.group(1).strip();
    if (task.delivery().load(loadId).isEmpty()) {
      throw new BadUsage(
          "--hedge "
              + option
              + ": there is no load "
              + loadId
              + ". Allowed are "
              + task.delivery().loads().stream().map(Load::id).collect(Collectors.joining(", "))
              + ".");
    }
    int least = Integer.parseInt(said.group(2));
    int most = said.group(3) == null ? least : Integer.parseInt(said.group(3));
    if (most < least) {
      throw new BadUsage("--hedge " + option + ": the days go from fewer to more.");
    }
    return new Lateness(loadId, least, most);
  }
}
