package skidway.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;
import skidway.staging.SearchLimits;

/** How long to search and with which dice. */
final class SearchOptions {
  private static final Pattern PERCENT = Pattern.compile("([0-9]{1,2}(?:\\.[0-9]{1,3})?) ?%");

  @Option(
      names = "--effort",
      paramLabel = "N",
      description = "score calculations to spend (default: ${DEFAULT-VALUE})")
  private long effort = SearchLimits.DEFAULT.calculations();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "dice of the search; same seed, same plan (default: ${DEFAULT-VALUE})")
  private long seed = SearchLimits.DEFAULT.seed();

  @Option(
      names = "--until",
      paramLabel = "SHARE",
      description =
          "stop as soon as the plan is proven to be this near the best possible, such as 1%%;"
              + " looked at after a sixteenth of the effort, an eighth and so on (default: never)")
  private String until = "";

  /**
   * The limits asked for.
   *
   * @throws BadUsage if they make no sense
   */
  SearchLimits limits() {
    if (effort < 1) {
      throw new BadUsage("--effort is " + effort + "; allowed are 1 or more score calculations.");
    }
    return new SearchLimits(seed, effort, share());
  }

  private double share() {
    if (until.isEmpty()) {
      return 0;
    }
    Matcher percent = PERCENT.matcher(until);
    double share = percent.matches() ? Double.parseDouble(percent.group(1)) / 100 : 0;
    if (!(share > 0 && share < 1)) {
      throw new BadUsage(
          "--until is '"
              + until
              + "'; allowed are shares above 0 % and below 100 %. Way out: write it like 1% or"
              + " 0.5%.");
    }
    return share;
  }
}
